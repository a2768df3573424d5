import fc from 'fast-check';
import loadHighs from 'highs';
import { expect, test } from 'vitest';
import { type Fit, fitWishes } from '@/lib/plan';
import { type FitCase, anyFit } from './any-fit';
import { solveWithHighs } from './highs-fit';

const SEED = 20_261_126;

// Few, some and many wishes; whole animals in grams, and trifles in which every gram is a tie.
const cases: readonly FitCase[] = [
  { numRuns: 1_300, size: { pools: { min: 1, max: 4 }, wishes: { min: 1, max: 4 }, mostGrams: 60_000 } },
  { numRuns: 600, size: { pools: { min: 2, max: 6 }, wishes: { min: 3, max: 8 }, mostGrams: 60_000 } },
  { numRuns: 500, size: { pools: { min: 1, max: 4 }, wishes: { min: 2, max: 6 }, mostGrams: 12 } },
  { numRuns: 100, size: { pools: { min: 4, max: 6 }, wishes: { min: 9, max: 12 }, mostGrams: 60_000 } },
].flatMap(({ numRuns, size }) => fc.sample(anyFit(size), { seed: SEED, numRuns }));

/** One of so many instances is compared draw by draw as well. */
const DRAWS_EVERY = 4;

/** What an instance must have for it to test something; each is counted, and none may run dry. */
const features: Readonly<Record<string, (fitCase: FitCase, fit: Fit) => boolean>> = {
  'a least that leaves a wish with nothing': ({ wishes }, fit) =>
    fit.wishes.some(({ why }, at) => why === 'below-least' && (wishes[at]?.leastGrams ?? 0) > (wishes[at]?.stepGrams ?? 0)),
  'a least that is reached to within a gram': ({ wishes }, fit) =>
    fit.wishes.some(({ gameGrams }, at) => gameGrams > 1 && gameGrams - (wishes[at]?.leastGrams ?? 0) <= 1),
  'a step that keeps a wish short': ({ wishes }, fit) =>
    wishes.some(({ from, stepGrams }, at) =>
      stepGrams > 1 && fit.wishes[at]?.why === 'short' && from.some((pool) => (fit.left[pool] ?? 0) > 0)),
  'a wish for whatever there is, with others after it': ({ wishes }, fit) =>
    wishes.slice(0, -1).some(({ askedGrams }, at) => askedGrams === null && (fit.wishes[at]?.gameGrams ?? 0) > 0),
  'a pool that no wish can reach': ({ supplies, wishes }) =>
    supplies.some(({ pool, grams }) => grams > 0 && wishes.every(({ from }) => !from.includes(pool))),
  'a wish from empty pools only': ({ supplies, wishes }) =>
    wishes.some(({ from }) => supplies.every(({ pool, grams }) => grams === 0 || !from.includes(pool))),
  'an empty pool among others': ({ supplies }) =>
    supplies.some(({ grams }) => grams === 0) && supplies.some(({ grams }) => grams > 0),
  'a wish within a gram of all its pools hold': ({ supplies, wishes }) =>
    wishes.some(({ from, askedGrams }) => askedGrams !== null && askedGrams > 1 && Math.abs(askedGrams - heldBy(supplies, from)) <= 1),
  'a wish that is short': (_, fit) => fit.wishes.some(({ why }) => why === 'short'),
  'amounts that plain serving in turn does not reach': ({ supplies, wishes }, fit) => {
    const left = new Map(supplies.map(({ pool, grams }) => [pool, grams]));
    return wishes.some(({ from }, at) => {
      let rest = fit.wishes[at]?.gameGrams ?? 0;
      for (const pool of from) {
        const drawn = Math.min(rest, left.get(pool) ?? 0);
        left.set(pool, (left.get(pool) ?? 0) - drawn);
        rest -= drawn;
      }
      return rest > 0;
    });
  },
};

function heldBy(supplies: FitCase['supplies'], pools: readonly string[]): number {
  return supplies.reduce((sum, { pool, grams }) => (pools.includes(pool) ? sum + grams : sum), 0);
}

test('every amount, and every draw of one case in four, is what HiGHS finds by integer programming', async () => {
  const highs = await loadHighs();
  let wishCount = 0;
  let drawCount = 0;
  cases.forEach((fitCase, serial) => {
    const withDraws = serial % DRAWS_EVERY === 0;
    const fit = fitWishes(fitCase.supplies, fitCase.wishes);
    const solved = solveWithHighs(highs, fitCase, { withDraws });
    expect({ fitCase, gameGrams: fit.wishes.map(({ gameGrams }) => gameGrams) }).toEqual({ fitCase, gameGrams: solved.gameGrams });
    wishCount += solved.gameGrams.length;
    if (!withDraws) return;
    const draws = fitCase.wishes.map(({ from }, at) => from.map((pool) => fit.wishes[at]?.draws[pool] ?? 0));
    expect({ fitCase, draws }).toEqual({ fitCase, draws: solved.draws });
    drawCount += draws.flat().length;
  });
  expect(cases.length).toBe(2_500);
  expect(wishCount).toBeGreaterThan(9_000);
  expect(drawCount).toBeGreaterThan(4_000);
});

test.each(Object.entries(features))('the cases hold %s, more than a hundred times', (_, isIn) => {
  expect(cases.filter((fitCase) => isIn(fitCase, fitWishes(fitCase.supplies, fitCase.wishes))).length).toBeGreaterThan(100);
});
