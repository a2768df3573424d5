import { type Bill, type Tariff, priceOrder } from '@/lib/pricing';

export type ExampleAnimal = { readonly speciesId: string; readonly hangingGrams: number };

/** Packed weight of each extra cut, and of each product with the meat added to it, in grams. */
export const EXTRA_CUT = 2_722;
export const FINISHED = 4_536;
export const ADDED = 1_361;

/**
 * Prices an invented animal on a price list: hide on, antlers kept, 6 lb of every cut that costs extra, 10 lb of every
 * product, 3 lb of it added meat. Weights in grams.
 */
export function priceExample({ speciesId, hangingGrams }: ExampleAnimal, tariff: Tariff): Bill {
  return priceOrder(
    {
      speciesId,
      hangingGrams,
      arrivedSkinned: false,
      packed: tariff.perWeight.flatMap(({ name, cutIds }) => {
        const [cutId] = cutIds;
        return cutId === undefined ? [] : [{ label: name, cutId, grams: EXTRA_CUT, packages: 3 }];
      }),
      extras: ['skinning', 'antlers'].filter((id) => tariff.perPiece.some((extra) => extra.id === id)).map((extraId) => ({ extraId, count: 1 })),
      products: tariff.products.map(({ id }) => ({ productId: id, finishedGrams: FINISHED, addedGrams: ADDED })),
      depositMinor: 0,
      payments: [],
    },
    tariff,
  );
}
