import { type FitPoolId, type ProductWish, assertWishes, takenOf } from './wishes';

export type WishChance = { readonly id: string; readonly chance: number };

/**
 * The chance that each wish gets all it asks while what the pools hold is uncertain; for "whatever there is", that at
 * least its least (or 1 g) is left for it. `chanceAtLeast` says how likely these pools together hold so many grams.
 *
 * By maximum flow, a wish is met if and only if each set of pools that contains its own has a part, perhaps an empty
 * one, without which it still holds what the wishes so far ask within the set beyond what they ask within the part:
 * the part is where earlier wishes are short, or take whatever there is. We take the most likely part and the least
 * likely set. These are Frechet's bounds, from below for "any" and from above for "all", and exact when all pools rise
 * and fall together. They nearly do: the weight of one animal drives them all. Then the chance that a wish and all
 * before it are met is the least of their chances.
 *
 * An earlier wish counts with all it asks even where it falls below its least and gets nothing, so that the chance of
 * a later one is then stated too low, never too high. What can never be met, as half a batch cannot, has chance 0.
 *
 * Throws a RangeError as `fitWishes` does, and on a chance that is not from 0 to 1.
 *
 * @example
 * // grinding holds 4000 to 6000 g, each as likely; sausage asks 4500, salami another 1000, both from grinding
 * chanceOfWishes([sausage, salami], chanceAtLeast) // [{ id: 'sausage', chance: 0.75 }, { id: 'salami', chance: 0.25 }]
 */
export function chanceOfWishes<Pool extends FitPoolId>(
  wishes: readonly ProductWish<Pool>[],
  chanceAtLeast: (pools: readonly Pool[], grams: number) => number,
): readonly WishChance[] {
  const pools = [...new Set(wishes.flatMap(({ from }) => from))];
  assertWishes(wishes, pools);
  const froms = wishes.map(({ from }) => from.reduce((set, pool) => set | (1 << pools.indexOf(pool)), 0));
  const known = new Map<string, number>();

  const chanceOf = (set: number, grams: number): number => {
    if (grams <= 0) return 1;
    if (set === 0) return 0;
    const key = `${set} ${grams}`;
    const chance = known.get(key) ?? chanceAtLeast(pools.filter((_, at) => set & (1 << at)), grams);
    if (!(chance >= 0 && chance <= 1)) throw new RangeError(`A chance is a number from 0 to 1, not ${chance}`);
    known.set(key, chance);
    return chance;
  };

  return wishes.map((wish, at) => {
    const needed = neededGrams(wish);
    if (needed === null) return { id: wish.id, chance: 0 };
    const own = froms[at] ?? 0;
    const sets = unionsOf(froms.slice(0, at));
    const promised = new Map(sets.map((set) => [set, promisedWithin(set, wishes.slice(0, at), froms)]));
    let chance = 1;
    for (const set of new Set(sets.map((earlier) => earlier | own))) {
      const all = promisedWithin(set, wishes.slice(0, at), froms);
      let best = 0;
      for (const [part, within] of promised) {
        // Asking for whatever there is has no end and no set covers it: it must lie within the part.
        if ((part & set) !== part || within.takers !== all.takers || best >= chance) continue;
        best = Math.max(best, chanceOf(set & ~part, all.grams + needed - within.grams));
      }
      chance = Math.min(chance, best);
    }
    return { id: wish.id, chance };
  });
}

/** Grams that count as met; null for an amount that no number of steps above the least makes up. */
function neededGrams(wish: ProductWish): number | null {
  const { askedGrams, leastGrams, stepGrams } = wish;
  if (askedGrams === null) return Math.ceil(Math.max(leastGrams, 1) / stepGrams) * stepGrams;
  return takenOf(wish, askedGrams) === askedGrams ? askedGrams : null;
}

/** What the wishes confined to a set of pools take, and how many of them take all there is. */
function promisedWithin(
  set: number,
  wishes: readonly ProductWish[],
  froms: readonly number[],
): { readonly grams: number; readonly takers: number } {
  let grams = 0;
  let takers = 0;
  wishes.forEach((wish, at) => {
    const from = froms[at] ?? 0;
    if ((from & set) !== from) return;
    if (wish.askedGrams === null) takers += 1;
    else grams += takenOf(wish, wish.askedGrams);
  });
  return { grams, takers };
}

function unionsOf(sets: readonly number[]): readonly number[] {
  const unions = new Set([0]);
  for (const set of sets) for (const union of unions) unions.add(union | set);
  return [...unions];
}
