import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { type AnimalFacts, type TissueKey, forecastCarcass, readTissueKey, PUBLISHED_SPECIES } from '@/lib/carcass';
import { PLAIN_INSTRUCTIONS, type Instructions, type InstructionLine, newLine } from '@/lib/instructions';
import { POOLS, addedFatGrams, claimsOf, isProductId, largestPiece, planOrder, planProducts, settleClaims } from '@/lib/plan';
import { anyFacts } from '../carcass/any-facts';
import { anyInstructions, anyLine } from '../instructions/any-instructions';

const doe: AnimalFacts = {
  speciesId: 'white-tailed-deer',
  sex: 'female',
  ageClass: 'adult',
  weight: { grams: 40_000, basis: 'hanging' },
  form: 'skinned',
  missing: [],
  wounds: [],
};

function planOf(lines: readonly InstructionLine[], facts: Partial<AnimalFacts> = {}, rest: Partial<Instructions> = {}) {
  return planOrder({ ...PLAIN_INSTRUCTIONS, ...rest, lines }, forecastCarcass({ ...doe, ...facts }, PUBLISHED_SPECIES));
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, one) => total + one, 0);
}

describe('claims', () => {
  it('of a leg on the bone take its muscles, bones and cover on that side', () => {
    expect(claimsOf({ target: 'haunch', side: 'left', cut: 'on-the-bone' })).toEqual([
      'left:hind-shank', 'left:rump', 'left:topside', 'left:thick-flank', 'left:silverside', 'left:salmon-cut',
      'left:haunch-bone', 'left:hind-shank-bone', 'left:haunch-cover',
    ]);
  });

  it('of a boned saddle take both loins and both fillets and leave the spine', () => {
    expect(claimsOf({ target: 'saddle', side: 'both', cut: 'boned-and-rolled' })).toEqual(['left:loin', 'left:fillet', 'right:loin', 'right:fillet']);
  });

  it('are granted once: the first line keeps what a later one also wants', () => {
    const { owner, doubles } = settleClaims([newLine('a', 'topside', 'joint', 'left'), newLine('b', 'haunch', 'mince')]);
    expect(owner.get('left:topside')?.id).toBe('a');
    expect(owner.get('right:topside')?.id).toBe('b');
    expect(doubles).toEqual([{ key: 'left:topside', lineIds: ['a', 'b'] }]);
  });

  it('are never granted twice, whatever the lines', () => {
    fc.assert(fc.property(anyInstructions, ({ lines }) => {
      const { owner, doubles } = settleClaims(lines);
      for (const [key, line] of owner) {
        const wanting = lines.filter((one) => claimsOf(one).includes(key)).map(({ id }) => id);
        expect(wanting[0]).toBe(line.id);
        expect(doubles.find((double) => double.key === key)?.lineIds ?? [line.id]).toEqual(wanting);
      }
    }));
  });
});

describe('a plan', () => {
  it('conserves mass to the gram, in all and tissue by tissue', () => {
    fc.assert(fc.property(anyInstructions, anyFacts, (instructions, facts) => {
      const forecast = forecastCarcass(facts, PUBLISHED_SPECIES);
      const { ledger, lines, pools } = planOrder(instructions, forecast);
      expect(ledger.map(({ key, grams }) => ({ key, grams }))).toEqual(forecast.tissues.map(({ key, grams }) => ({ key, grams })));
      for (const row of ledger) {
        expect(row.packed + sum(POOLS.map((pool) => row.pools[pool]))).toBe(row.grams);
        for (const grams of [row.packed, ...POOLS.map((pool) => row.pools[pool])]) expect(grams).toBeGreaterThanOrEqual(0);
      }
      const packed = sum(lines.map((line) => line.packed.likely));
      expect(packed + sum(POOLS.map((pool) => pools[pool].likely))).toBe(forecast.hanging.likely);
    }));
  });

  it('keeps low at most likely and likely at most high, everywhere', () => {
    fc.assert(fc.property(anyInstructions, anyFacts, (instructions, facts) => {
      const plan = planOrder(instructions, forecastCarcass(facts, PUBLISHED_SPECIES));
      const ranges = [
        plan.forecast.hanging, plan.mince, plan.packedTotal, ...POOLS.map((pool) => plan.pools[pool]),
        ...plan.lines.flatMap((line) => [line.packed, largestPiece(plan, line)]),
        ...plan.products.flatMap(({ gameGrams, finished }) => [gameGrams, finished]),
      ];
      for (const { low, likely, high } of ranges) {
        expect([low, likely, high].every(Number.isSafeInteger)).toBe(true);
        expect(0 <= low && low <= likely && likely <= high).toBe(true);
      }
    }));
  });

  it('never gives less of anything wanted for a heavier animal', () => {
    // Largest remainder may move a single gram of one tissue as the total grows, so the heavier animal is at least 1% heavier.
    const heavier = anyFacts.filter(({ weight }) => weight !== null);
    fc.assert(fc.property(anyInstructions, heavier, fc.integer({ min: 1, max: 100 }), (instructions, facts, percent) => {
      if (!facts.weight) return;
      const grams = Math.ceil((facts.weight.grams * (100 + percent)) / 100);
      const light = planOrder(instructions, forecastCarcass(facts, PUBLISHED_SPECIES));
      const heavy = planOrder(instructions, forecastCarcass({ ...facts, weight: { ...facts.weight, grams } }, PUBLISHED_SPECIES));
      light.lines.forEach((line, at) => expect(heavy.lines[at]?.packed.likely).toBeGreaterThanOrEqual(line.packed.likely));
      for (const pool of POOLS) expect(heavy.pools[pool].likely).toBeGreaterThanOrEqual(light.pools[pool].likely);
      expect(heavy.packedTotal.likely).toBeGreaterThanOrEqual(light.packedTotal.likely);
    }));
  });

  it('never gives more meat for a wound', () => {
    fc.assert(fc.property(anyInstructions, anyFacts, (instructions, facts) => {
      const hurt = planOrder(instructions, forecastCarcass(facts, PUBLISHED_SPECIES));
      const sound = planOrder(instructions, forecastCarcass({ ...facts, wounds: [] }, PUBLISHED_SPECIES));
      hurt.lines.forEach((line, at) => expect(line.packed.likely).toBeLessThanOrEqual(sound.lines[at]?.packed.likely ?? -1));
      expect(hurt.packedTotal.likely).toBeLessThanOrEqual(sound.packedTotal.likely);
      expect(hurt.pools.waste.likely).toBeGreaterThanOrEqual(sound.pools.waste.likely);
    }));
  });

  it('gives a lost part to nobody', () => {
    const plan = planOf([newLine('a', 'shoulder', 'boned-and-rolled', 'left')], { wounds: [{ part: 'shoulder', place: 'left', severity: 'lost' }] });
    expect(plan.lines[0]?.packed).toEqual({ low: 0, likely: 0, high: 0 });
  });

  it('packs nothing from a part that did not come, not even the bone it left behind', () => {
    const gone = { missing: [{ part: 'loin', place: 'left' }, { part: 'loin', place: 'right' }] } as const;
    expect(planOf([newLine('a', 'loin', 'chops')], gone).lines[0]?.packed.likely).toBe(0);
    expect(planOf([newLine('a', 'saddle', 'on-the-bone')], { missing: [...gone.missing, { part: 'fillet', place: 'left' }, { part: 'fillet', place: 'right' }] }).lines[0]?.packed.likely).toBe(0);
    const left = planOf([newLine('a', 'loin', 'chops')], { missing: [{ part: 'loin', place: 'left' }] });
    expect(left.ledger.find(({ key }) => key === 'left:spine')).toMatchObject({ lineId: null, packed: 0 });
  });

  it('does not quarrel over the bone of a loin that did not come', () => {
    const plan = planOf([newLine('a', 'loin', 'chops'), newLine('b', 'saddle', 'on-the-bone')], {
      missing: [{ part: 'loin', place: 'left' }, { part: 'loin', place: 'right' }],
    });
    expect(plan.doubles).toEqual([]);
  });

  it('sends squared-off pieces to the stew or into the mince, as asked, and as much either way', () => {
    const lines = [newLine('a', 'topside', 'joint')];
    const stew = planOf(lines, {}, { squaredOff: 'stew' });
    const mince = planOf(lines, {}, { squaredOff: 'mince' });
    expect(mince.pools.stewing.likely).toBe(0);
    expect(stew.lines[0]?.packed).toEqual(mince.lines[0]?.packed);
    expect(stew.pools.stewing.likely + stew.pools.grinding.likely).toBe(mince.pools.grinding.likely);
  });

  const rests = [
    ['mince', 'grinding'],
    ['stew', 'stewing'],
    ['undecided', 'undecided'],
  ] as const;
  test.each(rests)('sends what no line names to %s', (rest, pool) => {
    const plan = planOf([newLine('a', 'loin', 'whole')], {}, { rest });
    expect(plan.pools[pool].likely).toBeGreaterThan(15_000);
    expect(plan.undecided.length > 0).toBe(rest === 'undecided');
  });

  it('lists every muscle nobody has named as undecided, and no bone', () => {
    const plan = planOf([newLine('a', 'haunch', 'mince', 'left')], {}, { rest: 'undecided' });
    expect(plan.undecided).toContain('right:topside');
    expect(plan.undecided).not.toContain('left:topside');
    expect(plan.undecided.every((key: TissueKey) => readTissueKey(key).kind === 'muscle')).toBe(true);
  });
});

describe('the largest piece of a line', () => {
  it('is one of two joints, and the whole of a saddle', () => {
    const joints = planOf([newLine('a', 'topside', 'joint')]);
    const saddle = planOf([newLine('a', 'saddle', 'boned-and-rolled')]);
    const [joint, rolled] = [joints.lines[0], saddle.lines[0]];
    if (!joint || !rolled) throw new Error('No line was planned');
    expect(largestPiece(joints, joint).likely * 2).toBeGreaterThanOrEqual(joint.packed.likely);
    expect(largestPiece(joints, joint).likely).toBeLessThan(joint.packed.likely * 0.51);
    const whole = largestPiece(saddle, rolled);
    expect(whole.likely).toBe(rolled.packed.likely);
    // One is reckoned from shares and the other from whole grams.
    expect(Math.abs(whole.low - rolled.packed.low)).toBeLessThanOrEqual(1);
    expect(Math.abs(whole.high - rolled.packed.high)).toBeLessThanOrEqual(1);
  });

  it('never outweighs its line', () => {
    fc.assert(fc.property(anyLine('a'), anyFacts, (line, facts) => {
      const plan = planOrder({ ...PLAIN_INSTRUCTIONS, lines: [line] }, forecastCarcass(facts, PUBLISHED_SPECIES));
      const [planned] = plan.lines;
      expect(planned && largestPiece(plan, planned).likely).toBeLessThanOrEqual(planned?.packed.likely ?? -1);
    }));
  });
});

describe('products', () => {
  it('get what they ask for and leave the rest as mince', () => {
    const { products, mince } = planProducts({ mixing: 'own-meat-only', products: [{ productId: 'fresh-sausage', gameGrams: 3_000 }] }, { grinding: { low: 2_000, likely: 5_000, high: 8_000 }, 'whole-muscle': { low: 0, likely: 0, high: 0 } }, () => 0.7);
    expect(products[0]?.chance).toBe(0.7);
    expect(products[0]?.there).toEqual({ low: 2_000, likely: 5_000, high: 8_000 });
    expect(products[0]?.gameGrams).toEqual({ low: 2_000, likely: 3_000, high: 3_000 });
    expect(products[0]?.addedGrams).toBe(1_000);
    expect(products[0]?.finished).toEqual({ low: 2_667, likely: 4_000, high: 4_000 });
    expect(mince).toEqual({ low: 0, likely: 2_000, high: 5_000 });
  });

  it('are known by their id alone', () => {
    expect(isProductId('fresh-sausage')).toBe(true);
    expect(isProductId('unicorn')).toBe(false);
  });

  const fats: readonly (readonly [number, number, number])[] = [
    [8_000, 20, 2_000],
    [9_000, 10, 1_000],
    [5_000, 0, 0],
    [1_000, 15, 176],
  ];
  test.each(fats)('%i g of game take a share of %i percent with %i g of fat', (game, percent, fat) => {
    expect(addedFatGrams(game, percent)).toBe(fat);
  });
});
