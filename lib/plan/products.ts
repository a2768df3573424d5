import { type Instructions, PRODUCT_IDS, type ProductId } from '@/lib/instructions';
import { type Range, roundHalfUp } from '@/lib/units';

/** Something made from the mince pool. Judgement: recipe shares are ours; a shop states its own. */
export type ProductRecipe = {
  readonly id: ProductId;
  readonly name: string;
  /** Added pork as a share of the raw mix, in ten-thousandths. */
  readonly addedPorkPer10k: number;
  readonly contains: readonly string[];
};

export const PRODUCTS: Readonly<Record<ProductId, ProductRecipe>> = {
  'fresh-sausage': { id: 'fresh-sausage', name: 'fresh sausage', addedPorkPer10k: 2_500, contains: ['pork'] },
};

/** Grams of one product: what is asked of the hunter's own meat, what there is for it, and what is added. */
export type PlannedProduct = {
  readonly productId: ProductId;
  readonly askedGrams: number;
  /** Own meat it gets at low, likely and high: never more than asked. */
  readonly gameGrams: Range;
  readonly addedGrams: number;
  readonly finished: Range;
};

/**
 * Gives each product its meat from the grinding pool in the order written; what is left is plain mince.
 * The low of what is left is the pool's low less what is asked, and never below zero.
 */
export function planProducts(
  instructions: Pick<Instructions, 'products'>,
  grinding: Range,
): { readonly products: readonly PlannedProduct[]; readonly mince: Range } {
  let left = grinding;
  const products = instructions.products.map(({ productId, gameGrams }): PlannedProduct => {
    const recipe = PRODUCTS[productId];
    const given = map(left, (grams) => Math.min(gameGrams, grams));
    left = { low: left.low - given.low, likely: left.likely - given.likely, high: left.high - given.high };
    const added = (game: number): number => roundHalfUp(game * recipe.addedPorkPer10k, 10_000 - recipe.addedPorkPer10k);
    return {
      productId,
      askedGrams: gameGrams,
      gameGrams: given,
      addedGrams: added(given.likely),
      finished: map(given, (grams) => grams + added(grams)),
    };
  });
  return { products, mince: left };
}

/** Whether an id names a product of the menu. */
export function isProductId(id: string): id is ProductId {
  return PRODUCT_IDS.some((known) => known === id);
}

/**
 * Fat that brings own meat to a share of the finished mince: game x f / (1 - f), half up. Grams.
 *
 * @example addedFatGrams(8000, 20) // 2000
 */
export function addedFatGrams(gameGrams: number, fatPercent: number): number {
  return fatPercent <= 0 ? 0 : roundHalfUp(gameGrams * fatPercent, 100 - fatPercent);
}

function map(range: Range, each: (grams: number) => number): Range {
  return { low: each(range.low), likely: each(range.likely), high: each(range.high) };
}
