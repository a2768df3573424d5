import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { type PoolSupply, type ProductWish, addedToOwn, chanceOfWishes, fitWishes, leastOwnGrams } from '@/lib/plan';
import { type FitCase, anyFit } from './any-fit';

const wish = (id: string, from: readonly string[], more: Partial<ProductWish> = {}): ProductWish => ({
  id, from, askedGrams: null, leastGrams: 0, stepGrams: 1, addedPer10k: 0, pooled: false, ...more,
});

const pools = (grams: Readonly<Record<string, number>>): readonly PoolSupply[] =>
  Object.entries(grams).map(([pool, held]) => ({ pool, grams: held }));

describe('worked by hand', () => {
  it('serves jerky before sausage before mince, and adds pork to the sausage', () => {
    const fit = fitWishes(pools({ 'whole-muscle': 2_000, stewing: 1_500, grinding: 8_000 }), [
      wish('jerky', ['whole-muscle'], { askedGrams: 2_500 }),
      wish('sausage', ['grinding', 'stewing'], { askedGrams: 9_000, addedPer10k: 2_500 }),
      wish('mince', ['grinding', 'stewing']),
    ]);
    expect(fit).toEqual({
      wishes: [
        { id: 'jerky', gameGrams: 2_000, addedGrams: 0, blockGrams: 2_000, shortGrams: 500, draws: { 'whole-muscle': 2_000 }, why: 'short' },
        { id: 'sausage', gameGrams: 9_000, addedGrams: 3_000, blockGrams: 12_000, shortGrams: 0, draws: { grinding: 8_000, stewing: 1_000 }, why: 'met' },
        { id: 'mince', gameGrams: 500, addedGrams: 0, blockGrams: 500, shortGrams: 0, draws: { stewing: 500 }, why: 'met' },
      ],
      left: { 'whole-muscle': 0, stewing: 0, grinding: 0 },
    });
  });

  it('turns a wish away from the pool it prefers only so far as a later wish needs it', () => {
    // Sausage likes grinding, but kebab can have nothing else: 3000 stays there, and sausage takes 1000 of stewing.
    const fit = fitWishes(pools({ stewing: 4_000, grinding: 5_000 }), [
      wish('sausage', ['grinding', 'stewing'], { askedGrams: 3_000 }),
      wish('kebab', ['grinding'], { askedGrams: 3_000 }),
    ]);
    expect(fit.wishes.map(({ draws }) => draws)).toEqual([{ grinding: 2_000, stewing: 1_000 }, { grinding: 3_000 }]);
    expect(fit.left).toEqual({ stewing: 3_000, grinding: 0 });
  });

  it('passes a shortage along a chain of wishes', () => {
    // The third can only have c, so the second goes to b, so the first goes to a.
    const fit = fitWishes(pools({ a: 10, b: 10, c: 10 }), [
      wish('first', ['b', 'a'], { askedGrams: 10 }),
      wish('second', ['c', 'b'], { askedGrams: 10 }),
      wish('third', ['c'], { askedGrams: 10 }),
    ]);
    expect(fit.wishes.map(({ draws }) => draws)).toEqual([{ a: 10 }, { b: 10 }, { c: 10 }]);
  });

  it('gives a batch under its minimum nothing, and its meat to the next', () => {
    // A shop makes 25 lb (11340 g) of block or none; a quarter is pork, so 8505 g of own meat. There are 8504.
    const leastGrams = leastOwnGrams({ blockGrams: 11_340, addedPer10k: 2_500 });
    const salami = wish('salami', ['grinding'], { askedGrams: 10_000, leastGrams, addedPer10k: 2_500 });
    const short = fitWishes(pools({ grinding: 8_504 }), [salami, wish('mince', ['grinding'])]);
    expect(short.wishes).toMatchObject([
      { gameGrams: 0, addedGrams: 0, blockGrams: 0, shortGrams: 10_000, draws: {}, why: 'below-least' },
      { gameGrams: 8_504, why: 'met' },
    ]);
    const enough = fitWishes(pools({ grinding: 8_505 }), [salami, wish('mince', ['grinding'])]);
    expect(enough.wishes).toMatchObject([
      { gameGrams: 8_505, addedGrams: 2_835, blockGrams: 11_340, shortGrams: 1_495, why: 'short' },
      { gameGrams: 0, why: 'nothing-there' },
    ]);
  });

  it('makes whole batches only', () => {
    const fit = fitWishes(pools({ grinding: 10_000 }), [
      wish('snack sticks', ['grinding'], { askedGrams: 9_000, stepGrams: 4_000 }),
      wish('bologna', ['grinding'], { askedGrams: 9_000, stepGrams: 4_000 }),
      wish('mince', ['grinding']),
    ]);
    expect(fit.wishes).toMatchObject([
      { gameGrams: 8_000, shortGrams: 1_000, why: 'short' },
      { gameGrams: 0, shortGrams: 9_000, why: 'below-least' },
      { gameGrams: 2_000, shortGrams: 0, why: 'met' },
    ]);
  });

  it('holds a least that is no whole number of steps', () => {
    // At least 5000 in batches of 2000 is three batches.
    const sticks = wish('sticks', ['grinding'], { leastGrams: 5_000, stepGrams: 2_000 });
    expect(fitWishes(pools({ grinding: 5_999 }), [sticks]).wishes[0]?.gameGrams).toBe(0);
    expect(fitWishes(pools({ grinding: 6_001 }), [sticks]).wishes[0]?.gameGrams).toBe(6_000);
  });

  it('knows what to do with nothing', () => {
    expect(fitWishes([], [])).toEqual({ wishes: [], left: {} });
    expect(fitWishes(pools({ grinding: 0 }), [
      wish('some', ['grinding'], { askedGrams: 5 }), wish('any', ['grinding']), wish('none', ['grinding'], { askedGrams: 0 }), wish('nowhere', []),
    ]).wishes.map(({ why }) => why)).toEqual(['nothing-there', 'nothing-there', 'met', 'nothing-there']);
  });

  test.each([
    // Half of 2001 is 1000.5 of block to own: 1001 own; a third of 10: 6.67, so 7.
    [2_001, 5_000, 1_001], [10, 3_333, 7], [11_340, 2_500, 8_505], [11_340, 0, 11_340], [0, 2_500, 0], [1, 9_999, 1],
  ])('a block of %i g with %i per 10,000 added needs %i g of own meat', (blockGrams, addedPer10k, own) => {
    expect(leastOwnGrams({ blockGrams, addedPer10k })).toBe(own);
  });

  test.each([[9_000, 2_500, 3_000], [1, 5_000, 1], [1, 3_333, 0], [3, 1_429, 1], [500, 0, 0]])(
    '%i g of own meat with %i per 10,000 added takes %i g more', (gameGrams, addedPer10k, added) => {
      expect(addedToOwn({ gameGrams, addedPer10k })).toBe(added);
    },
  );
});

describe('a fit of any wishes', () => {
  const any = anyFit({ pools: { min: 1, max: 6 }, wishes: { min: 0, max: 8 }, mostGrams: 60_000 });
  const amounts = ({ supplies, wishes }: FitCase): readonly number[] =>
    fitWishes(supplies, wishes).wishes.map(({ gameGrams }) => gameGrams);

  it('loses no gram, draws only where it may, and keeps least, step and amount', () => {
    fc.assert(fc.property(any, ({ supplies, wishes }) => {
      const fit = fitWishes(supplies, wishes);
      for (const { pool, grams } of supplies) {
        const drawn = fit.wishes.reduce((sum, { draws }) => sum + (draws[pool] ?? 0), 0);
        expect(drawn + (fit.left[pool] ?? Number.NaN)).toBe(grams);
        expect(fit.left[pool]).toBeGreaterThanOrEqual(0);
      }
      wishes.forEach(({ from, askedGrams, leastGrams, stepGrams }, at) => {
        const { gameGrams, addedGrams, blockGrams, shortGrams, draws, why } = fit.wishes[at] ?? expect.fail();
        expect(Object.keys(draws).every((pool) => from.includes(pool))).toBe(true);
        expect(Object.values(draws)).not.toContain(0);
        expect(from.reduce((sum, pool) => sum + (draws[pool] ?? 0), 0)).toBe(gameGrams);
        expect(gameGrams % stepGrams).toBe(0);
        expect(gameGrams === 0 || gameGrams >= leastGrams).toBe(true);
        expect(shortGrams).toBe(askedGrams === null ? 0 : askedGrams - gameGrams);
        expect(shortGrams).toBeGreaterThanOrEqual(0);
        expect(blockGrams).toBe(gameGrams + addedGrams);
        expect(why === 'met' || why === 'short').toBe(gameGrams > 0 || askedGrams === 0);
      });
    }));
  });

  it('never gives the first wish less when a pool holds more', () => {
    fc.assert(fc.property(any, fc.nat({ max: 5 }), fc.integer({ min: 1, max: 5_000 }), ({ supplies, wishes }, at, more) => {
      const fuller = supplies.map((supply, place) => (place === at % supplies.length ? { ...supply, grams: supply.grams + more } : supply));
      expect(amounts({ supplies: fuller, wishes })[0] ?? 0).toBeGreaterThanOrEqual(amounts({ supplies, wishes })[0] ?? 0);
    }));
  });

  it('never gives a wish less because of one that comes after it', () => {
    fc.assert(fc.property(any, ({ supplies, wishes }) => {
      expect(amounts({ supplies, wishes: wishes.slice(0, -1) })).toEqual(amounts({ supplies, wishes }).slice(0, -1));
    }));
  });

  it('does not depend on the order in which pools are listed', () => {
    fc.assert(fc.property(any, ({ supplies, wishes }) => {
      expect(fitWishes(supplies.toReversed(), wishes)).toEqual(fitWishes(supplies, wishes));
    }));
  });

  it('gives the same amounts whatever pools a wish prefers', () => {
    fc.assert(fc.property(any, fc.nat(), ({ supplies, wishes }, turn) => {
      const others = wishes.map((one) => ({ ...one, from: [...one.from.slice(turn % one.from.length), ...one.from.slice(0, turn % one.from.length)] }));
      expect(amounts({ supplies, wishes: others })).toEqual(amounts({ supplies, wishes }));
    }));
  });

  it('makes a block that reaches the minimum of the shop, with no gram of own meat too many', () => {
    fc.assert(fc.property(fc.nat({ max: 200_000 }), fc.integer({ min: 0, max: 9_999 }), (blockGrams, addedPer10k) => {
      const own = leastOwnGrams({ blockGrams, addedPer10k });
      expect(own + addedToOwn({ gameGrams: own, addedPer10k })).toBeGreaterThanOrEqual(blockGrams);
      expect((own - 1) * 10_000).toBeLessThan(blockGrams * (10_000 - addedPer10k));
    }));
  });

  it('is the best of all divisions there are, tried one by one', () => {
    const tiny = fc.oneof(
      anyFit({ pools: { min: 1, max: 2 }, wishes: { min: 1, max: 4 }, mostGrams: 4 }),
      anyFit({ pools: { min: 3, max: 3 }, wishes: { min: 2, max: 3 }, mostGrams: 3 }),
    );
    fc.assert(fc.property(tiny, (fitCase) => {
      const fit = fitWishes(fitCase.supplies, fitCase.wishes);
      const drawn = fitCase.wishes.flatMap(({ from }, at) => from.map((pool) => fit.wishes[at]?.draws[pool] ?? 0));
      expect([...fit.wishes.map(({ gameGrams }) => gameGrams), ...drawn]).toEqual(bestOfAll(fitCase));
    }), { numRuns: 300 });
  });
});

/** Amounts, then draws in order of wishes and preference: the greatest such list of all divisions, first figure first. */
function bestOfAll({ supplies, wishes }: FitCase): readonly number[] {
  const arcs = wishes.flatMap(({ from }, at) => from.map((pool) => ({ at, pool })));
  let best: readonly number[] = [];
  const tryFrom = (arc: number, left: ReadonlyMap<string, number>, draws: readonly number[]): void => {
    const { pool } = arcs[arc] ?? {};
    if (pool !== undefined) {
      const held = left.get(pool) ?? 0;
      for (let grams = 0; grams <= held; grams += 1) tryFrom(arc + 1, new Map(left).set(pool, held - grams), [...draws, grams]);
      return;
    }
    const got = wishes.map((_, at) => draws.reduce((sum, grams, place) => (arcs[place]?.at === at ? sum + grams : sum), 0));
    const allowed = wishes.every(({ askedGrams, leastGrams, stepGrams }, at) => {
      const grams = got[at] ?? 0;
      return grams === 0 || (grams >= leastGrams && grams % stepGrams === 0 && grams <= (askedGrams ?? grams));
    });
    const list = [...got, ...draws];
    const differs = list.findIndex((grams, place) => grams !== best[place]);
    if (allowed && differs >= 0 && (list[differs] ?? 0) > (best[differs] ?? -1)) best = list;
  };
  tryFrom(0, new Map(supplies.map(({ pool, grams }) => [pool, grams])), []);
  return best;
}

describe('the chance of wishes', () => {
  // Grinding holds 4000 to 6000 g, each as likely; stewing half as much.
  const evenly = (held: readonly string[], grams: number): number => {
    const share = held.reduce((sum, pool) => sum + (pool === 'grinding' ? 1 : 0.5), 0);
    return Math.min(1, Math.max(0, (6_000 - grams / share) / 2_000));
  };

  test.each<[string, readonly ProductWish[], readonly number[]]>([
    ['one after the other from one pool',
      [wish('a', ['grinding'], { askedGrams: 4_500 }), wish('b', ['grinding'], { askedGrams: 1_000 }), wish('c', ['grinding'])], [0.75, 0.25, 0.2495]],
    ['from two pools together', [wish('a', ['grinding', 'stewing'], { askedGrams: 7_500 })], [0.5]],
    ['untouched by a wish from another pool', [wish('a', ['grinding'], { askedGrams: 6_000 }), wish('b', ['stewing'], { askedGrams: 2_500 })], [0, 0.5]],
    ['from what an earlier wish cannot reach', [wish('a', ['grinding'], { askedGrams: 9_000 }), wish('b', ['grinding', 'stewing'], { askedGrams: 2_500 })], [0, 0.5]],
    ['after one who takes all there is', [wish('a', ['grinding']), wish('b', ['grinding', 'stewing'], { askedGrams: 2_500 }), wish('c', ['grinding'])], [1, 0.5, 0]],
    ['of a least for whatever there is', [wish('a', ['grinding'], { leastGrams: 5_000 })], [0.5]],
    ['of a least in steps', [wish('a', ['grinding'], { leastGrams: 4_300, stepGrams: 1_500 })], [0.75]],
    ['of half a batch', [wish('a', ['grinding'], { askedGrams: 1_500, stepGrams: 1_000 }), wish('b', ['grinding'], { askedGrams: 3_500 })], [0, 0.75]],
    ['of nothing', [wish('a', ['grinding'], { askedGrams: 0 }), wish('b', [], { askedGrams: 1 }), wish('c', [])], [1, 0, 0]],
  ])('%s', (_, wishes, chances) => {
    expect(chanceOfWishes(wishes, evenly)).toEqual(wishes.map(({ id }, at) => ({ id, chance: chances[at] })));
  });

  const any = anyFit({ pools: { min: 1, max: 5 }, wishes: { min: 1, max: 7 }, mostGrams: 60_000 });
  const SIZES = Array.from({ length: 40 }, (_, at) => at + 1);

  /** Animals of forty sizes, each as likely, whose pools grow together, though not at one rate. */
  function bySizes({ supplies, wishes }: FitCase): { readonly chances: readonly number[]; readonly met: readonly number[] } {
    const animals = SIZES.map((size) => supplies.map(({ pool, grams }, at) => ({ pool, grams: Math.floor(grams * (size / 20) ** (1 + at / 3)) })));
    const fits = animals.map((animal) => fitWishes(animal, wishes));
    const chances = chanceOfWishes(wishes, (held, grams) => {
      const enough = animals.filter((animal) => animal.reduce((sum, one) => (held.includes(one.pool) ? sum + one.grams : sum), 0) >= grams);
      return enough.length / SIZES.length;
    });
    return {
      chances: chances.map(({ chance }) => chance),
      met: wishes.map((_, at) => fits.filter((fit) => fit.wishes[at]?.why === 'met').length / SIZES.length),
    };
  }

  it('is the share of animals that meet the wish, when all pools grow together', () => {
    fc.assert(fc.property(any, ({ supplies, wishes }) => {
      const { chances, met } = bySizes({ supplies, wishes: wishes.map((one) => ({ ...one, leastGrams: 0, stepGrams: 1 })) });
      expect(chances).toEqual(met);
    }));
  });

  it('is never more than that share where wishes have leasts and steps', () => {
    fc.assert(fc.property(any, (fitCase) => {
      const { chances, met } = bySizes(fitCase);
      chances.forEach((chance, at) => expect(chance).toBeLessThanOrEqual(met[at] ?? -1));
    }));
  });

  it('refuses what is no chance', () => {
    const one = [wish('a', ['grinding'], { askedGrams: 1 })];
    expect(() => chanceOfWishes(one, () => Number.NaN)).toThrow(new RangeError('A chance is a number from 0 to 1, not NaN'));
    expect(() => chanceOfWishes(one, () => 1.5)).toThrow(new RangeError('A chance is a number from 0 to 1, not 1.5'));
    expect(() => chanceOfWishes([wish('a', [], { askedGrams: -1 })], () => 1)).toThrow(RangeError);
  });
});

describe('what cannot be', () => {
  const supplies = pools({ grinding: 5_000, stewing: 1_000 });
  const grams = 'is a whole number of grams, 0 or more, not';

  test.each<[readonly PoolSupply[], readonly ProductWish[], string]>([
    [pools({ grinding: -1 }), [], `What the pool grinding holds ${grams} -1`],
    [pools({ grinding: 0.5 }), [], `What the pool grinding holds ${grams} 0.5`],
    [pools({ grinding: Number.NaN }), [], `What the pool grinding holds ${grams} NaN`],
    [pools({ a: Number.MAX_SAFE_INTEGER, b: 1 }), [], `What all pools hold ${grams} 9007199254740992`],
    [[...supplies, ...supplies], [], 'The pool grinding is there twice'],
    [Array.from({ length: 13 }, (_, at) => ({ pool: `${at}`, grams: 1 })), [], 'Wishes are fitted to 12 pools at most, not 13'],
    [supplies, [wish('jerky', ['whole-muscle'])], 'The wish jerky is from a pool nobody knows: whole-muscle'],
    [supplies, [wish('jerky', ['stewing', 'stewing'])], 'The wish jerky names the pool stewing twice'],
    [supplies, [wish('jerky', ['stewing']), wish('jerky', ['grinding'])], 'The wish jerky is there twice'],
    [supplies, [wish('jerky', ['stewing'], { askedGrams: -1 })], `What the wish jerky asks ${grams} -1`],
    [supplies, [wish('jerky', ['stewing'], { askedGrams: 1.5 })], `What the wish jerky asks ${grams} 1.5`],
    [supplies, [wish('jerky', ['stewing'], { leastGrams: -5 })], `The least of the wish jerky ${grams} -5`],
    [supplies, [wish('jerky', ['stewing'], { stepGrams: -5 })], `The step of the wish jerky ${grams} -5`],
    [supplies, [wish('jerky', ['stewing'], { stepGrams: 0 })], 'The step of the wish jerky is 1 g or more, not 0'],
    [supplies, [wish('jerky', ['stewing'], { addedPer10k: 10_000 })], 'An added share is a whole number from 0 to 9,999 per 10,000, not 10000'],
  ])('is refused in a sentence (%#)', (pools, wishes, message) => {
    expect(() => fitWishes(pools, wishes)).toThrow(new RangeError(message));
  });

  it('is refused by the helpers too', () => {
    expect(() => leastOwnGrams({ blockGrams: -1, addedPer10k: 0 })).toThrow(new RangeError(`The minimum of a block ${grams} -1`));
    expect(() => addedToOwn({ gameGrams: 1, addedPer10k: -1 })).toThrow('An added share is a whole number from 0 to 9,999 per 10,000, not -1');
  });
});
