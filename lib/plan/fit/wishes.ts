import { scaleHalfUp } from '@/lib/units';

/** Own meat of one animal that made things may draw on: 'whole-muscle', 'stewing', 'grinding'. */
export type FitPoolId = string;

export type PoolSupply<Pool extends FitPoolId = FitPoolId> = {
  readonly pool: Pool;
  readonly grams: number;
};

/** One made thing that is wished for. Wishes stand in the order in which they are served. */
export type ProductWish<Pool extends FitPoolId = FitPoolId> = {
  readonly id: string;
  /** Pools it may be made from, in order of preference. */
  readonly from: readonly Pool[];
  /** Own meat, raw, at most; null: whatever there is. */
  readonly askedGrams: number | null;
  /** It gets this much own meat or none: the minimum of a batch, or the least share in a pooled one. */
  readonly leastGrams: number;
  /** It gets whole multiples of this: 1, or the own meat of one batch. */
  readonly stepGrams: number;
  /** Added meat and fat as a share of the raw block, in ten-thousandths, below 10,000. */
  readonly addedPer10k: number;
  /** Made in one batch with meat of other animals. The fit treats it no differently: `leastGrams` says it all. */
  readonly pooled: boolean;
};

/** More would make the fit slow, not wrong: it looks at every set of pools. */
const MOST_POOLS = 12;

/**
 * Turns a minimum that a shop states on the raw block, added pork included, into own meat: block x (1 - added),
 * rounded up, so that the block it makes is never below the minimum. Throws a RangeError on a negative or fractional
 * weight and on a share outside 0 to 9,999.
 *
 * @example leastOwnGrams({ blockGrams: 11340, addedPer10k: 2500 }) // 8505
 * @example leastOwnGrams({ blockGrams: 1001, addedPer10k: 5000 }) // 501
 */
export function leastOwnGrams({ blockGrams, addedPer10k }: {
  readonly blockGrams: number;
  readonly addedPer10k: number;
}): number {
  assertGrams(blockGrams, 'The minimum of a block');
  assertAddedShare(addedPer10k);
  const exact = BigInt(blockGrams) * BigInt(10_000 - addedPer10k);
  return Number((exact + 9_999n) / 10_000n);
}

/**
 * Meat and fat to add to own meat: own x added / (1 - added), half up. Grams. Throws as `leastOwnGrams` does.
 *
 * @example addedToOwn({ gameGrams: 8505, addedPer10k: 2500 }) // 2835
 */
export function addedToOwn({ gameGrams, addedPer10k }: {
  readonly gameGrams: number;
  readonly addedPer10k: number;
}): number {
  assertGrams(gameGrams, 'Own meat');
  assertAddedShare(addedPer10k);
  return addedPer10k === 0 ? 0 : scaleHalfUp({ value: gameGrams, times: addedPer10k, over: 10_000 - addedPer10k });
}

/**
 * The most a wish takes of what is there: all of it up to what was asked, down to a whole multiple of its step, and
 * nothing below its least. Grams.
 *
 * @example takenOf({ askedGrams: 5000, leastGrams: 2000, stepGrams: 1500 }, 4900) // 4500
 */
export function takenOf(
  { askedGrams, leastGrams, stepGrams }: Pick<ProductWish, 'askedGrams' | 'leastGrams' | 'stepGrams'>,
  thereGrams: number,
): number {
  const most = askedGrams === null ? thereGrams : Math.min(askedGrams, thereGrams);
  const whole = most - (most % stepGrams);
  return whole < leastGrams ? 0 : whole;
}

/** Throws a RangeError unless the pools are named once each and hold whole grams. */
export function assertSupplies(supplies: readonly PoolSupply[]): void {
  let total = 0;
  supplies.forEach(({ pool, grams }, at) => {
    assertGrams(grams, `What the pool ${pool} holds`);
    total += grams;
    if (supplies.findIndex((other) => other.pool === pool) !== at) throw new RangeError(`The pool ${pool} is there twice`);
  });
  assertGrams(total, 'What all pools hold');
}

/** Throws a RangeError unless every wish is named once, draws on these few pools, and its figures are whole and sensible. */
export function assertWishes<Pool extends FitPoolId>(wishes: readonly ProductWish<Pool>[], pools: readonly Pool[]): void {
  if (pools.length > MOST_POOLS) throw new RangeError(`Wishes are fitted to ${MOST_POOLS} pools at most, not ${pools.length}`);
  wishes.forEach((wish, at) => {
    const { id, from } = wish;
    if (wishes.findIndex((other) => other.id === id) !== at) throw new RangeError(`The wish ${id} is there twice`);
    from.forEach((pool, place) => {
      if (!pools.includes(pool)) throw new RangeError(`The wish ${id} is from a pool nobody knows: ${pool}`);
      if (from.indexOf(pool) !== place) throw new RangeError(`The wish ${id} names the pool ${pool} twice`);
    });
    if (wish.askedGrams !== null) assertGrams(wish.askedGrams, `What the wish ${id} asks`);
    assertGrams(wish.leastGrams, `The least of the wish ${id}`);
    assertGrams(wish.stepGrams, `The step of the wish ${id}`);
    if (wish.stepGrams === 0) throw new RangeError(`The step of the wish ${id} is 1 g or more, not 0`);
    assertAddedShare(wish.addedPer10k);
  });
}

function assertGrams(grams: number, what: string): void {
  if (!Number.isSafeInteger(grams) || grams < 0) {
    throw new RangeError(`${what} is a whole number of grams, 0 or more, not ${grams}`);
  }
}

function assertAddedShare(addedPer10k: number): void {
  if (!Number.isSafeInteger(addedPer10k) || addedPer10k < 0 || addedPer10k > 9_999) {
    throw new RangeError(`An added share is a whole number from 0 to 9,999 per 10,000, not ${addedPer10k}`);
  }
}
