import type { NameCountry } from '@/lib/cuts';
import type { Tariff } from '@/lib/pricing';

/**
 * The price list a new shop starts from. Every figure is invented; the shape (a flat price to a weight and
 * a price by weight above it, skinning, cape and antlers by the animal, products by finished weight with
 * added meat at cost) is that of United States price lists. The owner writes the shop's own.
 */
export const defaultTariff: Tariff = {
  currency: 'USD',
  weightUnit: 'lb',
  taxes: [{ id: 'sales-tax', name: 'Sales tax', ratePer100k: 6_000 }],
  base: [
    {
      id: 'deer',
      name: 'Deer, cut, ground, wrapped and frozen',
      speciesIds: ['white-tailed-deer', 'mule-deer', 'fallow-deer', 'sika-deer', 'pronghorn'],
      charge: {
        kind: 'steps',
        steps: [
          { upToHundredths: 60_00, amountMinor: 95_00 },
          { upToHundredths: 100_00, amountMinor: 115_00 },
        ],
        excessRatePer10k: 1_1500,
      },
      includes: [],
      taxId: null,
    },
    {
      id: 'roe-deer',
      name: 'Small deer, cut, ground, wrapped and frozen',
      speciesIds: ['roe-deer', 'muntjac', 'chinese-water-deer'],
      charge: { kind: 'flat', amountMinor: 80_00 },
      includes: ['skinning'],
      taxId: null,
    },
    {
      id: 'elk',
      name: 'Elk or another large deer, cut, ground, wrapped and frozen',
      speciesIds: ['elk', 'red-deer', 'moose', 'caribou'],
      charge: { kind: 'per-weight', ratePer10k: 1_2500 },
      includes: [],
      taxId: null,
    },
    {
      id: 'wild-boar',
      name: 'Wild boar, cut, ground, wrapped and frozen',
      speciesIds: ['wild-boar'],
      charge: { kind: 'per-weight', ratePer10k: 1_3500 },
      includes: [],
      taxId: null,
    },
    {
      id: 'bear',
      name: 'Bear, cut, ground, wrapped and frozen',
      speciesIds: ['black-bear'],
      charge: { kind: 'per-weight', ratePer10k: 1_5000 },
      includes: [],
      taxId: null,
    },
    {
      id: 'bird',
      name: 'Bird, plucked and drawn',
      speciesIds: ['pheasant', 'mallard', 'canada-goose', 'wild-turkey'],
      charge: { kind: 'flat', amountMinor: 15_00 },
      // A bird comes in its feathers: plucking is the price, and nobody skins it besides.
      includes: ['skinning'],
      taxId: null,
    },
  ],
  perWeight: [
    { id: 'boned-and-rolled', name: 'Boning and rolling', cutIds: ['boned-and-rolled'], ratePer10k: 7500, taxId: null },
    { id: 'tenderised-steaks', name: 'Tenderizing steaks', cutIds: ['tenderised-steaks'], ratePer10k: 5000, taxId: null },
  ],
  perPiece: [
    { id: 'skinning', name: 'Skinning', eachMinor: 25_00, per: 'animal', needsHide: true, taxId: null },
    { id: 'cape', name: 'Caping for a shoulder mount', eachMinor: 45_00, per: 'animal', needsHide: true, taxId: null },
    { id: 'antlers', name: 'Antlers sawn off and tagged', eachMinor: 8_00, per: 'animal', needsHide: false, taxId: null },
    { id: 'cleaning', name: 'Cleaning off hair and dirt', eachMinor: 25_00, per: 'animal', needsHide: false, taxId: null },
  ],
  products: [
    { id: 'fresh-sausage', name: 'Fresh sausage', ratePer10k: 2_2500, addedRatePer10k: 2_4900, taxId: 'sales-tax' },
    { id: 'snack-sticks', name: 'Snack sticks', ratePer10k: 6_5000, addedRatePer10k: 2_4900, taxId: 'sales-tax' },
    { id: 'summer-sausage', name: 'Summer sausage', ratePer10k: 4_2500, addedRatePer10k: 2_4900, taxId: 'sales-tax' },
    { id: 'jerky', name: 'Jerky', ratePer10k: 12_5000, addedRatePer10k: 0, taxId: 'sales-tax' },
  ],
};

/** What most shops of a country take in: the menu a new shop starts with. The owner prices more of them, or fewer. */
const FIRST_MENU: Readonly<Record<NameCountry, readonly string[]>> = {
  us: ['white-tailed-deer', 'mule-deer', 'elk', 'moose', 'caribou', 'pronghorn', 'wild-boar', 'black-bear', 'pheasant', 'mallard', 'canada-goose', 'wild-turkey'],
  uk: ['red-deer', 'roe-deer', 'fallow-deer', 'sika-deer', 'muntjac', 'chinese-water-deer', 'wild-boar', 'pheasant', 'mallard'],
};

/** The first price list of a shop: the default one, without the animals that its country does not bring in. */
export function firstTariff(country: NameCountry): Tariff {
  return tariffFor(FIRST_MENU[country]);
}

/** The default price list with these animals on it, and no others. */
export function tariffFor(menu: readonly string[]): Tariff {
  const base = defaultTariff.base.map((price) => ({ ...price, speciesIds: price.speciesIds.filter((id) => menu.includes(id)) }));
  return { ...defaultTariff, base: base.filter(({ speciesIds }) => speciesIds.length > 0) };
}
