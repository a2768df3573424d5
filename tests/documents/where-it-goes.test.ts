import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type AnimalFacts, PUBLISHED_SPECIES, forecastCarcass } from '@/lib/carcass';
import { type WhereItGoesInput, threeSentences, whereItGoes } from '@/lib/documents';
import { PLAIN_INSTRUCTIONS, type Instructions } from '@/lib/instructions';
import { packRows } from '@/lib/orders';
import { planOrder } from '@/lib/plan';
import { anyFacts, anyWeight } from '../carcass/any-facts';
import { anyInstructions } from '../instructions/any-instructions';
import { makeLine } from '../pdf/samples';
import { inventedBird, inventedDeer } from './invented-species';

const POUND = 453.59237;
const words = { country: 'us', unit: 'lb', locale: 'en-US' } as const;
const BOOK = { ...PUBLISHED_SPECIES, 'invented-deer': inventedDeer, 'invented-bird': inventedBird };
const planned = (facts: AnimalFacts, instructions: Instructions) => planOrder(instructions, forecastCarcass(facts, BOOK));
const likely = (parts: readonly { readonly range: { readonly likely: number } }[]) => parts.reduce((sum, { range }) => sum + range.likely, 0);

/** Weighings that are some share of what was expected, so that never more is packed than hung. */
const anyPacking = (plan: ReturnType<typeof planned>, instructions: Instructions, per10k: number): WhereItGoesInput['packing'] => {
  const rows = packRows(instructions, plan, 'us');
  return { rows, weighings: rows.map(({ lineKey, expected }) => ({ lineKey, grams: Math.floor((expected.likely * per10k) / 10_000), packages: 1 })) };
};

describe('any animal, any order', () => {
  test('every stage is what leaves it and the next, to the gram, and low and high stand round likely', () => {
    fc.assert(
      fc.property(anyFacts, anyInstructions, fc.array(anyWeight, { maxLength: 2 }), fc.option(fc.integer({ min: 0, max: 10_000 })), (facts, instructions, told, per10k) => {
        const plan = planned(facts, instructions);
        const goes = whereItGoes({ plan, told, packing: per10k === null ? null : anyPacking(plan, instructions, per10k) }, words) ?? expect.fail('no picture');
        goes.stages.forEach((stage, at) => {
          const next = goes.stages[at + 1];
          if (next) expect(likely(stage.leaves) + next.range.likely).toBe(stage.range.likely);
        });
        expect(likely(goes.home)).toBe(goes.stages.at(-1)?.range.likely);
        const hung = goes.stages.at(-2);
        expect(hung?.range.likely).toBe(plan.forecast.hanging.likely);
        for (const { range, text, known } of [...goes.stages, ...goes.stages.flatMap(({ leaves }) => leaves), ...goes.home, goes.takesHome]) {
          expect(range.low).toBeGreaterThanOrEqual(0);
          expect(range.low).toBeLessThanOrEqual(range.likely);
          expect(range.high).toBeGreaterThanOrEqual(range.likely);
          if (known === 'measured') expect(range.low).toBe(range.high);
          expect(text).not.toMatch(/NaN|undefined|-/);
        }
        if (goes.isPacked) return;
        expect(goes.takesHome.range).toEqual(plan.packedTotal);
        expect(goes.home.find(({ id }) => id === 'undecided')?.range.likely ?? 0).toBe(plan.pools.undecided.likely);
        expect(hung?.leaves.find(({ id }) => id === 'bone')?.range.likely ?? 0).toBe(plan.pools.bone.likely);
      }),
    );
  });

  test('three sentences, each with an end, and no number that is none', () => {
    fc.assert(
      fc.property(anyFacts, anyInstructions, fc.option(fc.integer({ min: 0, max: 10_000 })), (facts, instructions, per10k) => {
        const plan = planned(facts, instructions);
        const goes = whereItGoes({ plan, packing: per10k === null ? null : anyPacking(plan, instructions, per10k) }, words) ?? expect.fail('no picture');
        for (const sentence of threeSentences(goes, words)) {
          expect(sentence).toMatch(/^[A-Z].*[^.]\.$/);
          expect(sentence).not.toMatch(/NaN|undefined|null| {2}|\.\.| ,|,,/);
          expect(sentence.match(/\d+(?:\.\d+)?%/g)?.every((percent) => Number.parseFloat(percent) <= 100) ?? true).toBe(true);
        }
      }),
    );
  });
});

const plain: Instructions = {
  ...PLAIN_INSTRUCTIONS,
  lines: [makeLine('loin', 'butterfly'), makeLine('haunch', 'steaks')],
  rest: 'mince',
  squaredOff: 'stew',
  mince: { addedFat: 'none', fatPercent: 0, packGrams: 454, shape: 'bulk' },
  stewPackGrams: 454,
  products: [],
  keep: { heart: false, liver: false, bones: false, antlers: 'none', cape: false, hide: false, taxidermist: '' },
  noPork: false,
  note: '',
};
const buck: AnimalFacts = { speciesId: 'invented-deer', sex: 'male', ageClass: 'adult', weight: { grams: Math.round(118 * POUND), basis: 'hanging' }, form: 'hide-on', missing: [], wounds: [] };
const said = (facts: AnimalFacts, instructions: Instructions, rest: Omit<WhereItGoesInput, 'plan'> = {}, read: Parameters<typeof whereItGoes>[1] = words) =>
  threeSentences(whereItGoes({ plan: planned(facts, instructions), ...rest }, read) ?? expect.fail('no picture'), read);

describe('the three sentences', () => {
  const pounds = (amount: number): number => Math.round(amount * POUND);

  test('a buck that was weighed gutted, on the rail and packed', () => {
    const rows = packRows(plain, planned(buck, plain), 'us');
    const weighed = [6.2, 20.1, 8, 31];
    const packing = { rows, weighings: rows.map(({ lineKey }, at) => ({ lineKey, grams: pounds(weighed[at] ?? 0), packages: 1 })) };
    expect(said(buck, plain, { told: [{ grams: pounds(150), basis: 'field-dressed' }], packing })).toEqual([
      'Your buck weighed 150.0 lb gutted; without head, hide and lower legs it hung at 118.0 lb.',
      'Of that about 32.0 lb was bone, 17.5 lb fat, membrane and trim, and 3.2 lb dried off on the rail.',
      'You take home 65.3 lb of meat, 55% of what hung; the forecast was 64.2 lb to 74.5 lb.',
    ]);
  });

  test('a deer of which nothing is known yet', () => {
    expect(said({ ...buck, sex: 'unknown', weight: null }, plain)).toEqual([
      'Your white-tailed deer should weigh about 132.3 lb gutted; without head, hide and lower legs it should hang at about 105.8 lb.',
      'Of that about 26.5 lb should be bone, 14.5 lb fat, membrane and trim, and 2.6 lb should dry off on the rail.',
      'You should take home about 62.2 lb of meat, 59% of what hangs; eight times in ten it is between 48.4 lb and 79.7 lb.',
    ]);
  });

  test('a wounded buck, cut on the bone, the rest not decided', () => {
    const facts: AnimalFacts = { ...buck, weight: { grams: pounds(145), basis: 'field-dressed' }, wounds: [{ part: 'shoulder', place: 'left', severity: 'heavy' }] };
    expect(said(facts, { ...plain, rest: 'undecided', lines: [makeLine('saddle', 'on-the-bone')] })).toEqual([
      'Your buck weighed 145.0 lb gutted; without head, hide and lower legs it should hang at about 116.0 lb.',
      'Of that about 20.3 lb should be bone, 13.2 lb fat, membrane and trim, 3.5 lb round the wound will not be fit to eat, and 2.9 lb should dry off on the rail.',
      'You should take home about 20.4 lb of meat, some of it on the bone, 18% of what hangs; eight times in ten it is between 18.7 lb and 22.2 lb, and another 55.7 lb of meat waits for you to say how it is cut.',
    ]);
  });

  test('a fawn in kilograms and the words of the other country, its fillets taken in the field, jerky to make', () => {
    const facts: AnimalFacts = { ...buck, ageClass: 'young', weight: { grams: 12_000, basis: 'hanging' }, missing: [{ part: 'fillet', place: 'left' }, { part: 'fillet', place: 'right' }] };
    const jerky: Instructions = { ...plain, lines: [makeLine('haunch', 'set-aside-whole')], products: [{ productId: 'jerky', gameGrams: 2_500 }] };
    expect(said(facts, jerky, {}, { unit: 'kg', country: 'uk', locale: 'en-GB' })).toEqual([
      'Without both fillets, your fawn hung at 12.00 kg.',
      'Of that about 3.04 kg should be bone, 1.66 kg fat, membrane and trim, and 303 g should dry off on the rail.',
      'You should take home about 7.00 kg of meat, 58% of what came; eight times in ten it is between 6.47 kg and 7.52 kg; what goes into jerky comes out lighter.',
    ]);
  });

  test('a buck in quarters', () => {
    expect(said({ ...buck, form: 'quartered', weight: { grams: pounds(210), basis: 'quarters' } }, plain)).toEqual([
      'The quarters of your buck weighed 210.0 lb.',
      'Of that about 31.1 lb should be bone, 28.2 lb fat, membrane and trim, and 7.8 lb should dry off.',
      'You should take home about 142.8 lb of meat, 68% of what came; eight times in ten it is between 134.1 lb and 151.3 lb.',
    ]);
  });

  test('a bird is drawn and plucked, and has feathers and feet', () => {
    const cock: AnimalFacts = { ...buck, speciesId: 'invented-bird', weight: { grams: 1_000, basis: 'hanging' } };
    const read = { ...words, unit: 'kg' } as const;
    expect(said(cock, { ...plain, lines: [makeLine('bird-breast', 'whole')] }, {}, read)).toEqual([
      'Your cock weighed about 1.25 kg drawn, in its feathers; without head, feathers and feet it came to 1.00 kg.',
      'Of that about 350 g should be bone, 135 g skin, fat and trim, and 5 g should dry off.',
      'You should take home about 510 g of meat, 51% of the plucked bird; eight times in ten it is between 458 g and 561 g.',
    ]);
    const { stages } = whereItGoes({ plan: planned(cock, plain) }, words) ?? expect.fail('no picture');
    expect(stages.map(({ label }) => label)).toEqual(['Alive', 'Drawn, in its feathers', 'Plucked and drawn', 'To take home']);
  });
});

describe('weights told beside the one the plan stands on', () => {
  const stagesOf = (told: WhereItGoesInput['told']) => (whereItGoes({ plan: planned(buck, plain), told }, words) ?? expect.fail('no picture')).stages;

  test('one that fits is measured, and what lies between two is found on the way', () => {
    const [live, gutted, rail] = stagesOf([{ grams: 84_000, basis: 'live' }]);
    expect([live?.known, gutted?.known, rail?.known]).toEqual(['measured', 'forecast', 'measured']);
    expect(gutted?.range.low).toBeGreaterThan(rail?.range.high ?? 0);
    expect(gutted?.range.high).toBeLessThan(live?.range.low ?? 0);
  });

  test('a guess that cannot be true of this animal is passed over', () => {
    const withoutIt = stagesOf([]);
    expect(stagesOf([{ grams: 140_000, basis: 'live' }])).toEqual(withoutIt);
    expect(stagesOf([{ grams: 50_000, basis: 'field-dressed' }])).toEqual(withoutIt);
  });

  test('a row that was not weighed makes no picture where meat is wanting, and one where it went in with another', () => {
    const plan = planned(buck, plain);
    const rows = packRows(plain, plan, 'us');
    const weighings = rows.map(({ lineKey, expected }) => ({ lineKey, grams: expected.likely, packages: 1 }));
    const without = (key: string) => whereItGoes({ plan, packing: { rows, weighings: weighings.filter(({ lineKey }) => lineKey !== key) } }, words);
    expect(without('pool:mince')).toBeNull();
    expect(without('pool:stew')?.isPacked).toBe(true);
  });

  test('more packed than hung makes no picture', () => {
    const plan = planned(buck, plain);
    const rows = packRows(plain, plan, 'us');
    expect(whereItGoes({ plan, packing: { rows, weighings: [{ lineKey: rows[0]?.lineKey ?? '', grams: 60_000, packages: 1 }] } }, words)).toBeNull();
  });
});
