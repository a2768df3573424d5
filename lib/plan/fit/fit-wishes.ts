import {
  type FitPoolId, type PoolSupply, type ProductWish, addedToOwn, assertSupplies, assertWishes, takenOf,
} from './wishes';

/**
 * How a wish fared. Met: all that was asked, or for "whatever there is" something. Short: less than asked.
 * Below-least: what it could have is under its least or under one step. Nothing-there: no meat is left for it.
 */
export type FitWhy = 'met' | 'short' | 'below-least' | 'nothing-there';

/** What one wish gets. Grams; `blockGrams` is own and added meat together, raw. */
export type FittedWish<Pool extends FitPoolId = FitPoolId> = {
  readonly id: string;
  readonly gameGrams: number;
  readonly addedGrams: number;
  readonly blockGrams: number;
  /** Asked less got; 0 where whatever there is was asked. */
  readonly shortGrams: number;
  /** Own meat by pool; a pool it draws nothing from is absent. */
  readonly draws: Readonly<Partial<Record<Pool, number>>>;
  readonly why: FitWhy;
};

/** All draws + all that is left = all supplies, to the gram. */
export type Fit<Pool extends FitPoolId = FitPoolId> = {
  readonly wishes: readonly FittedWish<Pool>[];
  readonly left: Readonly<Record<Pool, number>>;
};

/**
 * Fits wishes to pools, in whole grams and exactly: the first wish gets as much as it can, the second as much as it
 * can given that, and so on, each within its least and step. Among all divisions that give these amounts, the first
 * wish draws as much as it can from the pool it prefers, then from its next, then the second wish. A wish from no
 * pool gets nothing.
 *
 * Amounts can be served together if and only if no set of pools holds less than the wishes confined to it ask, which
 * is what maximum flow equals minimum cut says of this network; with whole supplies the flow is whole (Ford and
 * Fulkerson 1956). So we keep, for each set of pools, what it holds beyond what is promised within it: its slack. A
 * wish can have the least slack of the sets that contain all its pools, and draw from one pool the least slack of the
 * sets that contain that pool, if what it was promised is first taken back.
 *
 * Throws a RangeError on fractional or negative figures, unknown or repeated names, a step of 0, and over 12 pools.
 *
 * @example
 * // stewing 3000, grinding 5000; jerky asks 4000 from stewing, else grinding; mince whatever grinding has
 * fitWishes(supplies, [jerky, mince]).wishes // jerky: stewing 3000, grinding 1000; mince: grinding 4000
 */
export function fitWishes<Pool extends FitPoolId>(
  supplies: readonly PoolSupply<Pool>[],
  wishes: readonly ProductWish<Pool>[],
): Fit<Pool> {
  assertSupplies(supplies);
  const pools = supplies.map(({ pool }) => pool);
  assertWishes(wishes, pools);

  const slack = gramsOfSets(supplies);
  const promised = wishes.map((wish) => {
    const from = wish.from.reduce((set, pool) => set | bitOf(pool, pools), 0);
    const there = leastSlack(slack, from);
    const gameGrams = takenOf(wish, there);
    promise(slack, from, gameGrams);
    return { wish, from, there, gameGrams };
  });

  const fitted = promised.map(({ wish, from, there, gameGrams }): FittedWish<Pool> => {
    const draws: Partial<Record<Pool, number>> = {};
    // What was promised to it anywhere among its pools is taken back, and promised anew pool by pool.
    promise(slack, from, -gameGrams);
    let rest = gameGrams;
    for (const pool of wish.from) {
      const bit = bitOf(pool, pools);
      const grams = Math.min(rest, leastSlack(slack, bit));
      if (grams === 0) continue;
      promise(slack, bit, grams);
      draws[pool] = grams;
      rest -= grams;
    }
    const addedGrams = addedToOwn({ gameGrams, addedPer10k: wish.addedPer10k });
    return {
      id: wish.id,
      gameGrams,
      addedGrams,
      blockGrams: gameGrams + addedGrams,
      shortGrams: wish.askedGrams === null ? 0 : wish.askedGrams - gameGrams,
      draws,
      why: whyOf(wish, gameGrams, there),
    };
  });
  // Now all is promised from single pools, so that the slack of a pool is what is left in it.
  const left = Object.fromEntries(pools.map((pool) => [pool, slack[bitOf(pool, pools)] ?? 0]));
  return { wishes: fitted, left: left as Record<Pool, number> }; // fromEntries forgets which keys it was given
}

function whyOf({ askedGrams }: ProductWish, gameGrams: number, thereGrams: number): FitWhy {
  if (gameGrams === askedGrams || (askedGrams === null && gameGrams > 0)) return 'met';
  if (gameGrams > 0) return 'short';
  return thereGrams > 0 ? 'below-least' : 'nothing-there';
}

/** A set of pools is a number with a bit for each pool. */
function bitOf<Pool>(pool: Pool, pools: readonly Pool[]): number {
  return 1 << pools.indexOf(pool);
}

function gramsOfSets(supplies: readonly PoolSupply[]): Float64Array {
  const grams = new Float64Array(1 << supplies.length);
  supplies.forEach((supply, at) => {
    const bit = 1 << at;
    for (let set = 0; set < bit; set += 1) grams[set | bit] = (grams[set] ?? 0) + supply.grams;
  });
  return grams;
}

function leastSlack(slack: Float64Array, within: number): number {
  let least = Infinity;
  for (let set = within; set < slack.length; set = (set + 1) | within) least = Math.min(least, slack[set] ?? 0);
  return least;
}

/** Takes grams from the slack of every set that contains `within`. */
function promise(slack: Float64Array, within: number, grams: number): void {
  for (let set = within; set < slack.length; set = (set + 1) | within) slack[set] = (slack[set] ?? 0) - grams;
}
