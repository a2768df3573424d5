import { describe, expect, it, test } from 'vitest';
import { PUBLISHED_SPECIES, forecastCarcass, partsOf } from '@/lib/carcass';
import { TARGETS, USUAL_CUTS, gramsPerPerson } from '@/lib/cuts';
import { PLAIN_INSTRUCTIONS, type Instructions, newLine } from '@/lib/instructions';
import { largestPiece, planOrder } from '@/lib/plan';
import { GRAMS_PER_LB as LB, animal, gramsOf, ofKind, percentOf, percentOfMeat } from './model-figures';

// What the trade knows. Each is common practice, no source, unless one is named; independent unless told otherwise.

const everythingMinced: Instructions = {
  ...PLAIN_INSTRUCTIONS,
};

/** What a shop does with a deer when nothing special is asked: what is not named is ground. */
const nothingSpecial: Instructions = {
  ...everythingMinced,
  squaredOff: 'mince',
  lines: partsOf('four-legged')
    .flatMap((part) => USUAL_CUTS[part])
    .filter(({ cut }) => cut !== 'mince')
    .map(({ target, cut }, at) => newLine(`line-${at + 1}`, target, cut)),
};

const plan = (instructions: Instructions, facts: Parameters<typeof animal>[0]) => planOrder(instructions, forecastCarcass(animal(facts), PUBLISHED_SPECIES));
const DEER = ['white-tailed-deer', 'mule-deer', 'roe-deer', 'red-deer', 'fallow-deer', 'sika-deer', 'muntjac', 'chinese-water-deer'] as const;
const aDoe = { speciesId: 'white-tailed-deer', sex: 'female', weight: { grams: Math.round(100 * LB), basis: 'field-dressed' } } as const;

describe('a deer as the trade knows it', () => {
  // Common practice, no source (the spread of the white-tail was set from it).
  it('is 50 to 60% boneless of what hangs, a clean white-tail', () => {
    const share = percentOf('white-tailed-deer', 'hanging', 'boneless').likely;
    expect(share >= 50 && share <= 60).toBe(true);
  });

  // Common practice, no source. Weighed deer lie above it: PAREY 62%, MASSEY1985 70 to 74% dissected, and our figures follow those.
  test.each(DEER)('is at least half boneless of what hangs: %s', (id) => {
    expect(percentOf(id, 'hanging', 'boneless').likely).toBeGreaterThan(50);
  });

  // Donation programmes: 31 to 52 lb finished, about 42 on average. Common practice, no source.
  it('gives 31 to 52 lb finished, a white-tail of unknown sex and age', () => {
    const { likely } = plan(everythingMinced, { speciesId: 'white-tailed-deer', sex: 'unknown', ageClass: 'unknown' }).packedTotal;
    expect(likely / LB).toBeGreaterThan(31);
    expect(likely / LB).toBeLessThan(52);
  });

  // Common practice, no source: half of the boneless meat ends ground. Taken as within 7 points.
  test.each(DEER)('ends half as grind when nothing special is asked: %s', (id) => {
    const { pools } = plan(nothingSpecial, { speciesId: id });
    const share = pools.grinding.likely / gramsOf(animal({ speciesId: id }), ofKind('muscle')).likely;
    expect(Math.abs(share - 0.5)).toBeLessThan(0.07);
  });

  // Common practice, no source: hind legs about half and shoulders about a quarter of the boneless meat. Rounded in the telling:
  // weighed, they are 42 to 46% (PAREY, PJFNS2009) and 17 to 20%. Taken as within 10 points.
  test.each(DEER)('has about half of its boneless meat in the hind legs and a quarter in the shoulders: %s', (id) => {
    expect(Math.abs(percentOfMeat(id, 'haunch').likely - 50)).toBeLessThan(10);
    expect(Math.abs(percentOfMeat(id, 'shoulder').likely - 25)).toBeLessThan(10);
  });
});

describe('the haunch as the trade knows it', () => {
  // Common practice, no source.
  it('comes apart along its seams in this order: hind shank, rump, topside, thick flank, silverside, salmon cut', () => {
    expect(TARGETS.haunch.muscles).toEqual(['hind-shank', 'rump', 'topside', 'thick-flank', 'silverside', 'salmon-cut']);
  });

  // Common practice, no source: a seamed joint off a small deer suits about two people. 200 g a person: MAGCUISINE, 2016.
  it('of a roe has a topside joint for one and a half to three people', () => {
    const planned = plan({ ...everythingMinced, lines: [newLine('line-1', 'topside', 'joint')] }, { speciesId: 'roe-deer' });
    const [line] = planned.lines;
    const people = line ? largestPiece(planned, line).likely / gramsPerPerson('joint') : 0;
    expect(people).toBeGreaterThan(1.5);
    expect(people).toBeLessThan(3);
  });

  // Common practice, no source: the largest single muscle of a deer weighs 1.5 to 3 lb.
  it('of a doe of 100 lb has a topside of 1.5 to 3 lb', () => {
    const topside = gramsOf(animal(aDoe), ({ tissue, place }) => tissue === 'topside' && place === 'left').likely / LB;
    expect(topside > 1.5 && topside < 3).toBe(true);
  });

  // Common practice, no source: a pair of fillets weighs 1 to 1 1/4 lb on a big deer. Same source: fillet to loin was set from it.
  it('of a big buck leaves a pair of fillets of 1 to 1 1/4 lb beside it', () => {
    const buck = animal({ speciesId: 'white-tailed-deer', weight: { grams: Math.round(115 * LB), basis: 'field-dressed' } });
    const pair = gramsOf(buck, ({ tissue }) => tissue === 'fillet').likely / LB;
    expect(pair > 1 && pair < 1.25).toBe(true);
  });

  // Left out on purpose: "a small deer's rump gives two or three steaks". A weight does not tell how long the muscle is across
  // the grain, and a length made up for the purpose would prove nothing.
});

describe('a bird as the trade knows it', () => {
  // Common practice, no source: the breasts are the best of it, more than the legs, and a plucked bird keeps its skin.
  test.each(['pheasant', 'mallard', 'canada-goose', 'wild-turkey'])('has more meat on the breast than on the legs: %s', (id) => {
    expect(percentOfMeat(id, 'bird-breast').likely).toBeGreaterThan(percentOfMeat(id, 'bird-leg').likely);
  });

  it('packed whole weighs what it hung, less what dried', () => {
    const planned = plan({ ...everythingMinced, lines: [newLine('line-1', 'whole-bird', 'on-the-bone')] }, { speciesId: 'mallard' });
    const { hanging } = planned.forecast;
    expect(planned.packedTotal.likely).toBe(hanging.likely - planned.pools.drying.likely);
    expect(planned.pools.bone.likely + planned.pools.waste.likely).toBe(0);
  });

  it('taken apart in the usual way is breasts and legs, without the wings', () => {
    const lines = partsOf('bird').flatMap((part) => USUAL_CUTS[part]).map(({ target, cut }, at) => newLine(`line-${at + 1}`, target, cut));
    const planned = plan({ ...everythingMinced, lines }, { speciesId: 'pheasant', sex: 'male' });
    const [breasts, legs, wings] = planned.lines.map(({ packed }) => packed.likely);
    expect(breasts).toBeGreaterThan(220);
    expect(legs).toBeGreaterThan(breasts ?? 0);
    expect(wings).toBe(0);
    expect(planned.undecided).toEqual([]);
  });
});
