import fc from 'fast-check';
import type { PoolSupply, ProductWish } from '@/lib/plan';

/** Pools and wishes to fit. */
export type FitCase = { readonly supplies: readonly PoolSupply[]; readonly wishes: readonly ProductWish[] };

export type FitSize = {
  readonly pools: { readonly min: number; readonly max: number };
  readonly wishes: { readonly min: number; readonly max: number };
  /** What one pool holds at most. */
  readonly mostGrams: number;
};

const POOLS = ['whole-muscle', 'stewing', 'grinding', 'bone', 'heart', 'liver'] as const;

/** A figure of a wish: any, or within a gram of another figure or a part of it, where the ties are. */
const anyFigure = (mostGrams: number): fc.Arbitrary<(otherGrams: number) => number> =>
  fc.oneof(
    { weight: 3, arbitrary: fc.integer({ min: 0, max: mostGrams }).map((grams) => () => grams) },
    { weight: 1, arbitrary: fc.integer({ min: 1, max: Math.max(1, mostGrams >> 3) }).map((grams) => () => grams) },
    {
      weight: 2,
      arbitrary: fc.record({ parts: fc.integer({ min: 1, max: 3 }), off: fc.integer({ min: -1, max: 1 }) })
        .map(({ parts, off }) => (otherGrams: number) => Math.max(0, Math.floor(otherGrams / parts) + off)),
    },
  );

/** Wishes with leasts, steps and open amounts, many of them within a gram of what there is; empty pools among the pools. */
export function anyFit({ pools, wishes, mostGrams }: FitSize): fc.Arbitrary<FitCase> {
  const anySupply = fc.oneof(
    { weight: 1, arbitrary: fc.constant(0) },
    { weight: 5, arbitrary: fc.integer({ min: 0, max: mostGrams }) },
  );
  const anyStep = fc.oneof(
    { weight: 3, arbitrary: fc.constant(1) },
    { weight: 1, arbitrary: fc.integer({ min: 1, max: Math.max(1, mostGrams >> 2) }) },
  );
  return fc
    .integer(pools)
    .chain((count) => {
      const names = POOLS.slice(0, count);
      return fc.record({
        grams: fc.tuple(...names.map(() => anySupply)),
        raw: fc.array(
          fc.record({
            from: fc.shuffledSubarray(names, { minLength: 1 }),
            asked: fc.option(anyFigure(mostGrams), { freq: 5 }),
            least: fc.oneof({ weight: 3, arbitrary: fc.constant(() => 0) }, { weight: 2, arbitrary: anyFigure(mostGrams >> 1) }),
            stepGrams: anyStep,
            addedPer10k: fc.integer({ min: 0, max: 6_000 }),
            pooled: fc.boolean(),
          }),
          { minLength: wishes.min, maxLength: wishes.max },
        ),
      });
    })
    .map(({ grams, raw }): FitCase => {
      const supplies = grams.map((held, at): PoolSupply => ({ pool: POOLS[at] ?? 'none', grams: held }));
      return {
        supplies,
        wishes: raw.map(({ from, asked, least, ...wish }, at): ProductWish => {
          const held = supplies.reduce((sum, { pool, grams }) => (from.some((name) => name === pool) ? sum + grams : sum), 0);
          const askedGrams = asked?.(held) ?? null;
          return { ...wish, id: `wish-${at + 1}`, from, askedGrams, leastGrams: least(askedGrams ?? held) };
        }),
      };
    });
}
