import type { BillFacts, Tariff } from '@/lib/pricing';

/** A small price list with one of everything. */
export const sampleTariff: Tariff = {
  currency: 'USD',
  weightUnit: 'lb',
  taxes: [
    { id: 'state', name: 'State tax', ratePer100k: 8_875 },
    { id: 'food', name: 'Food tax', ratePer100k: 2_000 },
  ],
  base: [
    {
      id: 'deer', name: 'Deer', speciesIds: ['white-tailed-deer'], includes: [], taxId: null,
      charge: {
        kind: 'steps',
        steps: [{ upToHundredths: 6000, amountMinor: 9500 }, { upToHundredths: 10_000, amountMinor: 11_500 }],
        excessRatePer10k: 11_500,
      },
    },
    { id: 'roe', name: 'Roe deer', speciesIds: ['roe-deer'], includes: ['skinning'], taxId: null, charge: { kind: 'flat', amountMinor: 8000 } },
    { id: 'elk', name: 'Elk', speciesIds: ['elk'], includes: [], taxId: 'state', charge: { kind: 'per-weight', ratePer10k: 12_500 } },
  ],
  perWeight: [{ id: 'rolled', name: 'Boning and rolling', cutIds: ['boned-and-rolled'], ratePer10k: 7500, taxId: null }],
  perPiece: [
    { id: 'skinning', name: 'Skinning', eachMinor: 2500, per: 'animal', needsHide: true, taxId: null },
    { id: 'box', name: 'Box', eachMinor: 150, per: 'piece', needsHide: false, taxId: 'state' },
  ],
  products: [{ id: 'fresh-sausage', name: 'Fresh sausage', ratePer10k: 22_500, addedRatePer10k: 24_900, taxId: 'food' }],
};

/** One white-tailed deer of 50 lb hanging, in the hide, with nothing extra. */
export function makeFacts(changes: Partial<BillFacts> = {}): BillFacts {
  return {
    speciesId: 'white-tailed-deer',
    hangingGrams: 22_680,
    arrivedSkinned: false,
    packed: [],
    extras: [],
    products: [],
    depositMinor: 0,
    payments: [],
    ...changes,
  };
}
