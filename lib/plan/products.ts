import { type Instructions, PRODUCT_IDS, type ProductId } from '@/lib/instructions';
import { type Range, roundHalfUp } from '@/lib/units';
import { chanceOfWishes } from './fit/chance-of-wishes';
import { type FitWhy, fitWishes } from './fit/fit-wishes';
import { type ProductWish, leastOwnGrams } from './fit/wishes';

/** Own meat that made things draw on: what is for grinding, and muscles set aside whole. */
export const PRODUCT_POOLS = ['grinding', 'whole-muscle'] as const;
export type ProductPool = (typeof PRODUCT_POOLS)[number];

/** Something made from own meat. Recipe shares are ours and judgement where no source is named; a shop states its own. */
export type ProductRecipe = {
  readonly id: ProductId;
  readonly name: string;
  /** One word, for a strip on a tub. */
  readonly tubName: string;
  /** Pools it may be made from, the first choice first. */
  readonly from: readonly ProductPool[];
  /** Added pork as a share of the raw mix, in ten-thousandths. */
  readonly addedPorkPer10k: number;
  /** The smallest batch by raw mix, added meat included. Grams; judgement, by what a stuffer or a drying rack takes. */
  readonly leastBlockGrams: number;
  /** Finished weight of the raw mix, in ten-thousandths. */
  readonly finishedPer10k: number;
  readonly contains: readonly string[];
  readonly source: string;
};

export const PRODUCTS: Readonly<Record<ProductId, ProductRecipe>> = {
  'fresh-sausage': {
    id: 'fresh-sausage',
    name: 'fresh sausage',
    tubName: 'sausage',
    from: ['grinding', 'whole-muscle'],
    addedPorkPer10k: 2_500,
    leastBlockGrams: 0,
    finishedPer10k: 10_000,
    contains: ['pork'],
    source: 'common practice, no source',
  },
  'snack-sticks': {
    id: 'snack-sticks',
    name: 'snack sticks',
    tubName: 'sticks',
    from: ['grinding', 'whole-muscle'],
    addedPorkPer10k: 3_000,
    leastBlockGrams: 4_535,
    finishedPer10k: 4_550,
    contains: ['pork'],
    source: 'J. Food Protection 42(3):211, 1979: 39.6% of a lean raw mix to 51.4% of a fat one; the middle of the two',
  },
  'summer-sausage': {
    id: 'summer-sausage',
    name: 'summer sausage',
    tubName: 'summer',
    from: ['grinding', 'whole-muscle'],
    addedPorkPer10k: 3_000,
    leastBlockGrams: 4_535,
    finishedPer10k: 8_500,
    contains: ['pork'],
    source: 'judgement: smoked and cooked, not dried; a dried one loses 34 to 40% in 45 days',
  },
  jerky: {
    id: 'jerky',
    name: 'jerky',
    tubName: 'jerky',
    from: ['whole-muscle'],
    addedPorkPer10k: 0,
    leastBlockGrams: 2_267,
    finishedPer10k: 2_500,
    contains: [],
    source: 'USDA FSIS, Jerky and Food Safety: a pound of raw meat gives about four ounces',
  },
};

/** Grams of one product: what is asked of the hunter's own meat, what there is for it, and what is added. */
export type PlannedProduct = {
  readonly productId: ProductId;
  readonly askedGrams: number;
  /** Own meat there is for it once the products before it have had theirs, whatever it asks. */
  readonly there: Range;
  /** Own meat it gets at low, likely and high: never more than asked. */
  readonly gameGrams: Range;
  readonly addedGrams: number;
  readonly finished: Range;
  /** The least own meat it can be made of. */
  readonly leastGrams: number;
  readonly why: FitWhy;
  /** Probability, 0 to 1, that it gets all it asks. */
  readonly chance: number;
};

type Pools = Readonly<Record<ProductPool, Range>>;

/**
 * Fits the products to the pools in the order written, exactly, at the low, the likely and the high of the pools; what
 * is left of both is plain mince. `chanceAtLeast` is the probability that pools together hold so many grams.
 */
export function planProducts(
  instructions: Pick<Instructions, 'products' | 'mixing'>,
  pools: Pools,
  chanceAtLeast: (pools: readonly ProductPool[], grams: number) => number,
): { readonly products: readonly PlannedProduct[]; readonly mince: Range } {
  const isMixed = instructions.mixing === 'may-be-mixed';
  const wishes = instructions.products.map((product) => wishOf(product, isMixed));
  const fitAt = (level: keyof Range, of: readonly ProductWish<ProductPool>[]) =>
    fitWishes(PRODUCT_POOLS.map((pool) => ({ pool, grams: pools[pool][level] })), of);
  const fits = { low: fitAt('low', wishes), likely: fitAt('likely', wishes), high: fitAt('high', wishes) };
  const chances = wishes.length > 0 ? chanceOfWishes(wishes, chanceAtLeast) : [];
  const products = instructions.products.map(({ productId, gameGrams }, at): PlannedProduct => {
    const recipe = PRODUCTS[productId];
    const own = (level: keyof Range): number => fits[level].wishes[at]?.gameGrams ?? 0;
    const got = { low: own('low'), likely: own('likely'), high: own('high') };
    const wish = wishOf({ productId, gameGrams }, isMixed);
    const unbound = [...wishes.slice(0, at), { ...wish, askedGrams: null, leastGrams: 0 }];
    const thereAt = (level: keyof Range): number => fitAt(level, unbound).wishes[at]?.gameGrams ?? 0;
    const added = (game: number): number => roundHalfUp(game * recipe.addedPorkPer10k, 10_000 - recipe.addedPorkPer10k);
    return {
      productId,
      askedGrams: gameGrams,
      there: { low: thereAt('low'), likely: thereAt('likely'), high: thereAt('high') },
      gameGrams: ordered(got),
      addedGrams: added(got.likely),
      finished: ordered(map(got, (grams) => roundHalfUp((grams + added(grams)) * recipe.finishedPer10k, 10_000))),
      leastGrams: wish.leastGrams,
      why: fits.likely.wishes[at]?.why ?? 'nothing-there',
      chance: chances[at]?.chance ?? 0,
    };
  });
  const left = (level: keyof Range): number => PRODUCT_POOLS.reduce((sum, pool) => sum + fits[level].left[pool], 0);
  return { products, mince: ordered({ low: left('low'), likely: left('likely'), high: left('high') }) };
}

/** A product as the fit takes it. A shared batch has no minimum for one owner. */
function wishOf({ productId, gameGrams }: Instructions['products'][number], isMixed: boolean): ProductWish<ProductPool> {
  const { from, addedPorkPer10k, leastBlockGrams } = PRODUCTS[productId];
  return {
    id: productId,
    from,
    askedGrams: gameGrams,
    leastGrams: isMixed ? 0 : leastOwnGrams({ blockGrams: leastBlockGrams, addedPer10k: addedPorkPer10k }),
    stepGrams: 1,
    addedPer10k: addedPorkPer10k,
    pooled: isMixed,
  };
}

/** Added pork in a finished weight: raw, since that is what it is bought as. Grams, half up. */
export function addedToFinished(productId: ProductId, finishedGrams: number): number {
  const { addedPorkPer10k, finishedPer10k } = PRODUCTS[productId];
  return roundHalfUp(finishedGrams * addedPorkPer10k, finishedPer10k);
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

/** A batch that does not come about leaves more to grind than one that does: the range is put in order again. */
function ordered({ low, likely, high }: Range): Range {
  return { low: Math.min(low, likely, high), likely, high: Math.max(low, likely, high) };
}
