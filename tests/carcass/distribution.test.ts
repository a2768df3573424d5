import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import {
  type Distribution,
  type Moments,
  type ShareNode,
  type TissueKey,
  type Weighing,
  betaMoments,
  buildShareTree,
  chanceOfAtLeast,
  distributionOf,
  logNormalMoments,
  meanShares,
  normalBelow,
  productOf,
  pruneShareTree,
  publishedSpecies,
  quantileAt,
  readTissueKey,
  seenFromMeat,
  shareMoments,
  tenthAndNinetieth,
} from '@/lib/carcass';
import { chanceFrom, shareDrawer } from './carcass-draws';

/** 10th and 90th percentile of the standard normal distribution: standard normal table. */
const Z90 = 1.281_551_565_544_6;

const anyDistribution: fc.Arbitrary<Distribution> = fc.record({
  mean: fc.double({ min: 100, max: 100_000, noNaN: true }),
  relativeSpread: fc.double({ min: 0.001, max: 0.5, noNaN: true }),
  skew: fc.double({ min: -1.5, max: 3, noNaN: true }),
}).map(({ mean, relativeSpread, skew }) => ({ mean, sd: mean * relativeSpread, skew }));

const anyZ = fc.double({ min: -3, max: 3, noNaN: true });

describe('the standard normal distribution', () => {
  // Standard normal table; the approximation is good to 7.5e-8.
  test.each([
    [0, 0.5],
    [0.5, 0.691_462_5],
    [1, 0.841_344_7],
    [-1, 0.158_655_3],
    [1.644_853_6, 0.95],
    [1.959_964, 0.975],
    [2, 0.977_249_9],
    [-3, 0.001_349_9],
    [4, 0.999_968_3],
    [Z90, 0.9],
  ])('lies below %f with probability %f', (z, probability) => {
    expect(Math.abs(normalBelow(z) - probability)).toBeLessThan(1.3e-7);
  });

  it('grows, and is as much below as above', () => {
    fc.assert(fc.property(anyZ, (z) => {
      expect(normalBelow(z) + normalBelow(-z)).toBeCloseTo(1, 8);
      expect(normalBelow(z + 0.01)).toBeGreaterThan(normalBelow(z));
    }));
  });
});

describe('a quantity of given mean, spread and skewness', () => {
  it('is at least its percentile with the chance of that percentile', () => {
    fc.assert(fc.property(anyDistribution, anyZ, (quantity, z) => {
      const grams = quantileAt(quantity, z);
      // Amounts are not below nothing: there the answer is that it is there for certain.
      fc.pre(grams > 0);
      expect(Math.abs(chanceOfAtLeast(quantity, grams) - (1 - normalBelow(z)))).toBeLessThan(1e-6);
    }));
  });

  it('has percentiles in order and a chance that falls with what is asked', () => {
    fc.assert(fc.property(anyDistribution, anyZ, fc.double({ min: 0, max: 200_000, noNaN: true }), (quantity, z, grams) => {
      expect(quantileAt(quantity, z + 0.01)).toBeGreaterThan(quantileAt(quantity, z));
      expect(chanceOfAtLeast(quantity, grams * 1.01 + 1)).toBeLessThanOrEqual(chanceOfAtLeast(quantity, grams) + 1e-12);
      const chance = chanceOfAtLeast(quantity, grams);
      expect(chance >= 0 && chance <= 1).toBe(true);
    }));
  });

  it('that is log-normal has exactly the percentiles and chances of a log-normal', () => {
    fc.assert(fc.property(fc.double({ min: 100, max: 100_000, noNaN: true }), fc.double({ min: 0.01, max: 0.6, noNaN: true }), anyZ, (median, cv, z) => {
      const quantity = distributionOf(logNormalMoments(median, cv));
      const exact = median * Math.exp(z * Math.sqrt(Math.log1p(cv * cv)));
      expect(quantileAt(quantity, z) / exact).toBeCloseTo(1, 6);
      expect(chanceOfAtLeast(quantity, exact)).toBeCloseTo(1 - normalBelow(z), 6);
    }));
  });

  it('has the spread and skewness of a log-normal in closed form', () => {
    // Skewness (w + 2) sqrt(w - 1) with w = 1 + cv^2: (3 + cv^2) cv.
    const { mean, sd, skew } = distributionOf(logNormalMoments(1_000, 0.3));
    expect(mean).toBeCloseTo(1_000 * Math.sqrt(1.09), 9);
    expect(sd / mean).toBeCloseTo(0.3, 12);
    expect(skew).toBeCloseTo(3.09 * 0.3, 9);
  });

  it('of no skewness is normal', () => {
    const quantity = { mean: 1_000, sd: 100, skew: 0 };
    expect(quantileAt(quantity, Z90)).toBeCloseTo(1_128.155, 3);
    expect(chanceOfAtLeast(quantity, 1_100)).toBeCloseTo(0.158_655_3, 6);
    const { low, high } = tenthAndNinetieth(quantity);
    expect(low).toBeCloseTo(871.845, 3);
    expect(high).toBeCloseTo(1_128.155, 3);
  });

  it('goes over into the normal without a step where the skewness fades', () => {
    for (const skew of [-1.01e-4, -0.99e-4, 0.99e-4, 1.01e-4]) {
      expect(quantileAt({ mean: 1_000, sd: 100, skew }, 2)).toBeCloseTo(1_200, 1);
    }
  });

  it('of negative skewness mirrors that of positive', () => {
    fc.assert(fc.property(anyDistribution, anyZ, ({ mean, sd, skew }, z) => {
      const mirrored = quantileAt({ mean, sd, skew: -skew }, -z);
      expect(Math.abs(quantileAt({ mean, sd, skew }, z) - (2 * mean - mirrored))).toBeLessThan(1e-9 * mean);
    }));
  });

  it('of no spread is its mean, and there for certain up to that', () => {
    const known = { mean: 1_000, sd: 0, skew: 0 };
    expect(tenthAndNinetieth(known)).toEqual({ low: 1_000, high: 1_000 });
    expect([999, 1_000, 1_001].map((grams) => chanceOfAtLeast(known, grams))).toEqual([1, 1, 0]);
  });

  it('is never told to be less than nothing', () => {
    const { low } = tenthAndNinetieth({ mean: 10, sd: 20, skew: 0.1 });
    expect(low).toBe(0);
    expect(chanceOfAtLeast({ mean: 10, sd: 20, skew: 0.1 }, 0)).toBe(1);
  });

  it('that is known to the gram is not given a spread or a skewness by rounding', () => {
    fc.assert(fc.property(fc.constantFrom('white-tailed-deer', 'elk', 'roe-deer'), fc.double({ min: 0.01, max: 1, noNaN: true }), (id, weight) => {
      const whole = shareMoments(buildShareTree(publishedSpecies(id).composition), () => weight);
      const { mean, sd, skew } = distributionOf(productOf(logNormalMoments(50_000, 0), whole));
      expect({ sd, skew }).toEqual({ sd: 0, skew: 0 });
      expect(mean / weight).toBeCloseTo(50_000, 6);
    }));
  });

  it('has the skewness of a log-normal down to a spread of a hundredth of a percent', () => {
    for (const cv of [0.1, 0.01, 0.001, 0.000_2]) {
      expect(Math.abs(distributionOf(logNormalMoments(47_123, cv)).skew - 3 * cv)).toBeLessThan(Math.max(0.005, 0.01 * cv));
    }
  });
});

describe('moments of a Beta share', () => {
  it('have mean, variance and skewness of the closed form', () => {
    fc.assert(fc.property(fc.double({ min: 0.5, max: 500, noNaN: true }), fc.double({ min: 0.5, max: 500, noNaN: true }), (a, b) => {
      const { mean, square, cube } = betaMoments(a, b);
      const n = a + b;
      const variance = (a * b) / (n * n * (n + 1));
      const skew = (2 * (b - a) * Math.sqrt(n + 1)) / ((n + 2) * Math.sqrt(a * b));
      expect(mean).toBeCloseTo(a / n, 12);
      expect(square - mean ** 2).toBeCloseTo(variance, 12);
      expect(cube - 3 * mean * square + 2 * mean ** 3).toBeCloseTo(skew * variance ** 1.5, 12);
    }));
  });

  it('of an even chance are those of a number between nothing and one', () => {
    const { mean, square, cube } = betaMoments(1, 1);
    expect([mean, square, cube].map((moment) => Number(moment.toFixed(12)))).toEqual([0.5, 0.333333333333, 0.25]);
  });
});

/** A share that takes only these values, each as likely as another. */
function discrete(values: readonly number[]): Moments {
  const power = (of: number): number => values.reduce((sum, value) => sum + value ** of, 0) / values.length;
  return { mean: power(1), square: power(2), cube: power(3) };
}

const fillet: ShareNode = { leaf: 'left:fillet' };
const pair: ShareNode = { concentration: 12, children: [{ mean: 0.4, node: { leaf: 'left:fore-shank' } }, { mean: 0.6, node: { leaf: 'left:blade' } }] };

/** Moments of a quantity whose every value is listed, each as likely as another. */
function enumerated(values: readonly number[]): readonly number[] {
  const { mean, square, cube } = discrete(values);
  return [mean, square, cube];
}

const listed = ({ mean, square, cube }: Moments): readonly number[] => [mean, square, cube];

/** Ten digits after the point. */
function near(moments: readonly number[]): readonly number[] {
  return moments.map((moment) => expect.closeTo(moment, 10) as number);
}

describe('moments of what a wound leaves', () => {
  const shares = [0.1, 0.4, 0.75, 0.9];

  it('of one muscle are those of every case counted', () => {
    fc.assert(fc.property(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }), (sound, lost) => {
      const told = shareMoments({ sound: discrete(shares), node: fillet }, (_, isLost) => (isLost ? lost : sound));
      expect(listed(told)).toEqual(near(enumerated(shares.map((s) => s * sound + (1 - s) * lost))));
    }));
  });

  it('of a wound within a wound are those of every case counted', () => {
    const second = [0.2, 0.5, 1];
    const told = shareMoments({ sound: discrete(shares), node: { sound: discrete(second), node: fillet } }, (_, isLost) => (isLost ? 0.3 : 1));
    const twice = second.map((t) => t + (1 - t) * 0.3);
    // What is lost to the outer wound counts as lost, whatever the inner one left of it.
    expect(listed(told)).toEqual(near(enumerated(shares.flatMap((s) => twice.map((within) => s * within + (1 - s) * 0.3)))));
  });

  it('of two muscles of a part agree with those drawn, where sound and lost meat count for different things', () => {
    const tree: ShareNode = { sound: betaMoments(10, 10), node: pair };
    const weightOf: Weighing = (key, isLost) => (key === 'left:blade' ? (isLost ? 0.2 : 0.9) : isLost ? 0.7 : 0.1);
    const count = 200_000;
    const { columns, next } = shareDrawer(tree, count, chanceFrom(20_261_125));
    next();
    const sum = new Float64Array(count);
    for (const [key, { sound, lost }] of columns) {
      for (let at = 0; at < count; at += 1) sum[at] = (sum[at] ?? 0) + weightOf(key, false) * (sound[at] ?? 0) + weightOf(key, true) * (lost?.[at] ?? 0);
    }
    const told = distributionOf(shareMoments(tree, weightOf));
    const drawn = distributionOf(discrete([...sum]));
    // Standard errors: of a mean sd / sqrt(n), of a spread sd / sqrt(2 n), of a skewness sqrt(6 / n). The seed is allowed four.
    expect(Math.abs(drawn.mean - told.mean)).toBeLessThan((4 * told.sd) / Math.sqrt(count));
    expect(Math.abs(drawn.sd / told.sd - 1)).toBeLessThan(4 / Math.sqrt(2 * count));
    expect(Math.abs(drawn.skew - told.skew)).toBeLessThan(4 * Math.sqrt(6 / count));
  });

  it('of a part wholly lost are those of what is lost', () => {
    const lost: Weighing = (key, isLost) => (isLost ? (key === 'left:blade' ? 0.5 : 0.25) : 1);
    expect(listed(shareMoments({ sound: { mean: 0, square: 0, cube: 0 }, node: pair }, lost))).toEqual(near(listed(shareMoments(pair, (key) => lost(key, true)))));
  });

  it('count all that was there, sound and lost together', () => {
    expect(listed(shareMoments({ sound: betaMoments(6, 34), node: pair }, () => 1))).toEqual(near([1, 1, 1]));
  });
});

describe('moments of a split', () => {
  it('are those of a Beta where it has two members', () => {
    expect(listed(shareMoments(pair, (key) => (key === 'left:blade' ? 1 : 0)))).toEqual(near(listed(betaMoments(7.2, 4.8))));
  });

  it('of members told together are those of a Beta of their sum', () => {
    const three: ShareNode = {
      concentration: 30,
      children: [{ mean: 0.2, node: { leaf: 'left:rump' } }, { mean: 0.3, node: { leaf: 'left:topside' } }, { mean: 0.5, node: { leaf: 'left:silverside' } }],
    };
    expect(listed(shareMoments(three, (key) => (key === 'left:silverside' ? 0 : 1)))).toEqual(near(listed(betaMoments(15, 15))));
  });
});

describe('a carcass told from its meat', () => {
  it('hangs by the inverse of a Beta share', () => {
    // 1 / p of p ~ Beta(a, b): moments (n-1)/(a-1), (n-1)(n-2)/((a-1)(a-2)) and one more of each, with n = a + b.
    const [a, n] = [84, 150];
    const { mean, square, cube } = shareMoments(seenFromMeat(buildShareTree(publishedSpecies('white-tailed-deer').composition)), () => 1);
    expect(mean).toBeCloseTo((n - 1) / (a - 1), 9);
    expect(square).toBeCloseTo(((n - 1) * (n - 2)) / ((a - 1) * (a - 2)), 9);
    expect(cube).toBeCloseTo(((n - 1) * (n - 2) * (n - 3)) / ((a - 1) * (a - 2) * (a - 3)), 9);
  });
});

describe('a tree of what came', () => {
  const tree = buildShareTree(publishedSpecies('white-tailed-deer').composition);

  it('without whole members is exactly a Dirichlet of the rest', () => {
    // Boned out: meat alone, of which a part is as in the meat of the whole; without a neck its concentration is the less.
    const isHere = (key: TissueKey): boolean => readTissueKey(key).kind === 'muscle' && readTissueKey(key).part !== 'neck';
    const node = pruneShareTree(tree, isHere)?.node;
    if (!node) throw new Error('Something came');
    const { meat } = publishedSpecies('white-tailed-deer').composition;
    const { haunch = 0, neck = 0 } = meat.per10k;
    const c = meat.concentration / 10_000;
    expect(listed(shareMoments(node, (key) => (readTissueKey(key).part === 'haunch' ? 1 : 0)))).toEqual(near(listed(betaMoments(c * haunch, c * (10_000 - neck - haunch)))));
  });

  it('is the whole of itself, with no spread', () => {
    fc.assert(fc.property(fc.subarray(meanShares(tree).map(({ key }) => key), { minLength: 1 }), (present) => {
      const node = pruneShareTree(tree, (key) => present.includes(key))?.node;
      if (!node) throw new Error('Something came');
      expect(distributionOf(shareMoments(node, () => 1))).toEqual({ mean: expect.closeTo(1, 9), sd: 0, skew: 0 });
      const one = shareMoments(node, (key) => (key === present[0] ? 1 : 0));
      expect(one.square - one.mean ** 2).toBeGreaterThanOrEqual(-1e-15);
    }));
  });

  it('gives nothing to what did not come', () => {
    const node = pruneShareTree(tree, (key) => key !== 'left:topside' && key !== 'right:spine')?.node;
    if (!node) throw new Error('Something came');
    expect(listed(shareMoments(node, (key) => (key === 'left:topside' || key === 'right:spine' ? 1 : 0)))).toEqual(near([0, 0, 0]));
  });
});
