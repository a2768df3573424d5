import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { estimateOrder, priceOrder, type BillFacts, type Tariff } from '@/lib/pricing';
import { makeFacts, sampleTariff } from './sample';

const lineAmounts = (facts: BillFacts, tariff = sampleTariff) =>
  priceOrder(facts, tariff).lines.map(({ id, amountMinor }) => [id, amountMinor]);

const packedRolled = (grams: number) => ({ label: 'Left haunch', cutId: 'boned-and-rolled', grams, packages: 1 });

describe('the base price', () => {
  test.each([
    [27_216, [['base:deer', 9500]]], // 60.00 lb
    [27_220, [['base:deer', 11_500]]], // 60.01 lb
    [45_359, [['base:deer', 11_500]]], // 100.00 lb
    [51_029, [['base:deer', 11_500], ['base:deer:excess', 1438]]], // 112.50 lb: 12.50 x 1.15 = 14.375
    [0, [['base:deer', 9500]]],
  ])('by steps at %i g is the step, and above the last step the excess by weight', (hangingGrams, lines) => {
    expect(lineAmounts(makeFacts({ hangingGrams }))).toEqual(lines);
  });

  it('by weight is on the whole hanging weight', () => {
    expect(lineAmounts(makeFacts({ speciesId: 'elk', hangingGrams: 165_108 }))).toEqual([['base:elk', 45_500]]); // 364 lb
  });

  it('is flat at any weight', () => {
    expect(lineAmounts(makeFacts({ speciesId: 'roe-deer', hangingGrams: 900_000 }))).toEqual([['base:roe', 8000]]);
  });

  it('tells what each line was worked out from', () => {
    expect(priceOrder(makeFacts({ hangingGrams: 51_029 }), sampleTariff).lines).toEqual([
      { id: 'base:deer', label: 'Deer', basis: { kind: 'flat', upToHundredths: 10_000, unit: 'lb' }, amountMinor: 11_500, taxId: null },
      {
        id: 'base:deer:excess', label: 'Deer, extra weight', amountMinor: 1438, taxId: null,
        basis: { kind: 'weight', quantityHundredths: 1250, aboveHundredths: 10_000, unit: 'lb', ratePer10k: 11_500 },
      },
    ]);
  });
});

describe('extras and products', () => {
  it('price a cut on all its packed weight, rounded once', () => {
    const facts = makeFacts({ packed: [packedRolled(1000), packedRolled(1001), { ...packedRolled(5000), cutId: 'steaks' }] });
    expect(lineAmounts(facts)).toEqual([['base:deer', 9500], ['cut:rolled', 331]]); // 4.41 lb x 0.75 = 3.3075
  });

  it('count pieces, and work by the animal once', () => {
    const facts = makeFacts({ extras: [{ extraId: 'box', count: 3 }, { extraId: 'skinning', count: 2 }, { extraId: 'skinning', count: 1 }] });
    expect(lineAmounts(facts)).toEqual([['base:deer', 9500], ['extra:skinning', 2500], ['extra:box', 450]]);
  });

  it('leave out skinning when the animal arrived skinned', () => {
    const facts = makeFacts({ arrivedSkinned: true, extras: [{ extraId: 'skinning', count: 1 }] });
    expect(lineAmounts(facts)).toEqual([['base:deer', 9500]]);
  });

  it('leave out skinning when the base price includes it', () => {
    const facts = makeFacts({ speciesId: 'roe-deer', extras: [{ extraId: 'skinning', count: 1 }] });
    expect(lineAmounts(facts)).toEqual([['base:roe', 8000]]);
  });

  it('price a product by finished weight and the added meat at cost, both batches together', () => {
    const half = { productId: 'fresh-sausage', finishedGrams: 2268, addedGrams: 454 };
    expect(lineAmounts(makeFacts({ products: [half, half] }))).toEqual([
      ['base:deer', 9500], ['product:fresh-sausage', 2250], ['product:fresh-sausage:added', 498],
    ]); // 10.00 lb x 2.25; 2.00 lb x 2.49
  });

  it('charge nothing for what was not made', () => {
    const facts = makeFacts({
      packed: [packedRolled(0)],
      extras: [{ extraId: 'box', count: 0 }],
      products: [{ productId: 'fresh-sausage', finishedGrams: 0, addedGrams: 0 }],
    });
    expect(lineAmounts(facts)).toEqual([['base:deer', 9500]]);
  });
});

describe('the totals', () => {
  it('round each tax once on the sum of its lines', () => {
    const tariff: Tariff = {
      ...sampleTariff,
      perPiece: ['a', 'b', 'c'].map((id) => ({ id, name: id, eachMinor: 4, per: 'piece', needsHide: false, taxId: 'state' })),
    };
    const bill = priceOrder(makeFacts({ extras: ['a', 'b', 'c'].map((extraId) => ({ extraId, count: 1 })) }), tariff);
    // 0.12 x 8.875% = 0.01065; each line alone would round to nothing.
    expect(bill.taxes).toEqual([{ taxId: 'state', name: 'State tax', ratePer100k: 8875, taxableMinor: 12, amountMinor: 1 }]);
  });

  it('take the deposit and the payments off, and show what is owed back', () => {
    const bill = priceOrder(makeFacts({ depositMinor: 6000, payments: [{ amountMinor: 5000 }, { amountMinor: -500 }] }), sampleTariff);
    expect([bill.totalMinor, bill.paidMinor, bill.dueMinor]).toEqual([9500, 10_500, -1000]);
  });

  it('name what has no price', () => {
    const bill = priceOrder(makeFacts({
      speciesId: 'moose',
      extras: [{ extraId: 'hoof-ashtray', count: 1 }],
      products: [{ productId: 'jerky', finishedGrams: 100, addedGrams: 0 }],
    }), sampleTariff);
    expect(bill.lines).toEqual([]);
    expect(bill.unpriced).toEqual([
      { kind: 'base', id: 'moose' }, { kind: 'extra', id: 'hoof-ashtray' }, { kind: 'product', id: 'jerky' },
    ]);
  });

  test.each([
    [{ hangingGrams: -1 }, -1],
    [{ hangingGrams: 1.5 }, 1.5],
    [{ hangingGrams: Number.NaN }, Number.NaN],
    [{ extras: [{ extraId: 'box', count: -2 }] }, -2],
    [{ depositMinor: -3 }, -3],
    [{ payments: [{ amountMinor: 0.5 }] }, 0.5],
  ])('are not worked out from %j', (changes, wrong) => {
    expect(() => priceOrder(makeFacts(changes), sampleTariff)).toThrow(`Not a weight, count or amount to price: ${wrong}`);
  });
});

const rate = fc.nat(1_000_000);
const minor = fc.nat(100_000);
const taxId = fc.constantFrom('state', 'food', null);
const anyCharge: fc.Arbitrary<Tariff['base'][number]['charge']> = fc.oneof(
  fc.record({ kind: fc.constant('flat' as const), amountMinor: minor }),
  fc.record({ kind: fc.constant('per-weight' as const), ratePer10k: rate }),
  fc.record({
    kind: fc.constant('steps' as const),
    steps: fc.array(fc.tuple(fc.integer({ min: 1, max: 10_000 }), fc.nat(5000)), { minLength: 1, maxLength: 4 }).map((rises) => {
      let upToHundredths = 0;
      let amountMinor = 0;
      return rises.map(([further, dearer]) => {
        upToHundredths += further;
        amountMinor += dearer;
        return { upToHundredths, amountMinor };
      });
    }),
    excessRatePer10k: rate,
  }),
);
const anyTariff: fc.Arbitrary<Tariff> = fc.record({
  currency: fc.constantFrom('USD' as const, 'JPY' as const, 'KWD' as const),
  weightUnit: fc.constantFrom('lb' as const, 'kg' as const),
  taxes: fc.tuple(fc.nat(100_000), fc.nat(100_000)).map(([state, food]) => [
    { id: 'state', name: 'State tax', ratePer100k: state }, { id: 'food', name: 'Food tax', ratePer100k: food },
  ]),
  base: fc.record({ charge: anyCharge, taxId }).map((changes) => [
    { id: 'deer', name: 'Deer', speciesIds: ['white-tailed-deer'], includes: [], ...changes },
  ]),
  perWeight: fc.record({ ratePer10k: rate, taxId }).map((changes) => [
    { id: 'rolled', name: 'Boning and rolling', cutIds: ['boned-and-rolled'], ...changes },
  ]),
  perPiece: fc.record({ eachMinor: minor, per: fc.constantFrom('animal' as const, 'piece' as const), needsHide: fc.boolean(), taxId })
    .map((changes) => [{ id: 'box', name: 'Box', ...changes }]),
  products: fc.record({ ratePer10k: rate, addedRatePer10k: rate, taxId }).map((changes) => [
    { id: 'fresh-sausage', name: 'Fresh sausage', ...changes },
  ]),
});
const grams = fc.nat(400_000);
const anyFacts: fc.Arbitrary<BillFacts> = fc.record({
  hangingGrams: grams,
  arrivedSkinned: fc.boolean(),
  packed: fc.array(grams.map(packedRolled), { maxLength: 5 }),
  extras: fc.array(fc.nat(9).map((count) => ({ extraId: 'box', count })), { maxLength: 3 }),
  products: fc.array(fc.record({ productId: fc.constant('fresh-sausage'), finishedGrams: grams, addedGrams: grams }), { maxLength: 3 }),
  depositMinor: minor,
  payments: fc.array(fc.integer({ min: -50_000, max: 50_000 }).map((amountMinor) => ({ amountMinor })), { maxLength: 3 }),
}).map(makeFacts);

describe('over any tariff and any order', () => {
  it('lines and taxes sum to the total, and total less paid is due', () => {
    fc.assert(fc.property(anyFacts, anyTariff, (facts, tariff) => {
      const bill = priceOrder(facts, tariff);
      const sum = (values: number[]) => values.reduce((running, value) => running + value, 0);
      expect(sum(bill.lines.map((line) => line.amountMinor))).toBe(bill.subtotalMinor);
      expect(bill.subtotalMinor + sum(bill.taxes.map((tax) => tax.amountMinor))).toBe(bill.totalMinor);
      expect(bill.totalMinor - bill.paidMinor).toBe(bill.dueMinor);
      expect([bill.totalMinor, bill.dueMinor, ...bill.lines.map((line) => line.amountMinor)].every(Number.isSafeInteger)).toBe(true);
      expect(new Set(bill.lines.map((line) => line.id)).size).toBe(bill.lines.length);
    }));
  });

  it('more meat or more work never costs less, and an estimate runs from low to high', () => {
    fc.assert(fc.property(anyFacts, anyTariff, fc.nat(50_000), (low, tariff, more) => {
      const likely = { ...low, hangingGrams: low.hangingGrams + more };
      const high = { ...likely, packed: [...likely.packed, packedRolled(more)], extras: [...likely.extras, { extraId: 'box', count: 1 }] };
      const estimate = estimateOrder({ low, likely, high }, tariff);
      expect(estimate.low.totalMinor).toBeLessThanOrEqual(estimate.likely.totalMinor);
      expect(estimate.likely.totalMinor).toBeLessThanOrEqual(estimate.high.totalMinor);
    }));
  });

  it('the estimate on the facts of the invoice is the invoice', () => {
    fc.assert(fc.property(anyFacts, anyTariff, (facts, tariff) => {
      expect(estimateOrder({ low: facts, likely: facts, high: facts }, tariff).likely).toEqual(priceOrder(facts, tariff));
    }));
  });
});
