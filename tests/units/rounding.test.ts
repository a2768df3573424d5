import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { allocateByLargestRemainder, roundHalfUp, scaleHalfUp } from '@/lib/units';

describe('roundHalfUp', () => {
  test.each([[26_250, 10_000, 3], [5, 2, 3], [4, 3, 1], [-5, 2, -3], [-1, 3, 0], [0, 7, 0], [1, 2, 1], [-1, 2, -1]])(
    '%i / %i is %i', (numerator, denominator, rounded) => {
      expect(roundHalfUp(numerator, denominator)).toBe(rounded);
    },
  );

  it('is exact where a product passes 2^53', () => {
    expect(roundHalfUp(9_007_199_254_740_993n * 2n + 1n, 4n)).toBe(4_503_599_627_370_497);
    expect(scaleHalfUp({ value: Number.MAX_SAFE_INTEGER, times: 999_999, over: 1_000_000 })).toBe(9_007_190_247_541_736);
  });

  it('mirrors a credit of the same amount', () => {
    fc.assert(fc.property(fc.integer(), fc.integer({ min: 1 }), (numerator, denominator) => {
      expect(roundHalfUp(-numerator, denominator) + roundHalfUp(numerator, denominator)).toBe(0);
    }));
  });

  it('refuses fractions, a denominator of zero and answers that are not safe', () => {
    expect(() => roundHalfUp(1.5, 2)).toThrow('Not a safe integer: 1.5');
    expect(() => roundHalfUp(Number.NaN, 2)).toThrow('Not a safe integer: NaN');
    expect(() => roundHalfUp(1, 0)).toThrow('A denominator is above zero, not 0');
    expect(() => roundHalfUp(2n ** 60n, 1)).toThrow('Not a safe integer');
  });
});

describe('allocateByLargestRemainder', () => {
  test.each([
    [10, [1, 1, 1], [4, 3, 3]],
    [100, [1, 2], [33, 67]],
    [5, [0, 1, 0], [0, 5, 0]],
    [2, [1, 1, 1], [1, 1, 0]],
    [0, [0, 0], [0, 0]],
    [0, [], []],
    [1, [1, 3, 3], [0, 1, 0]],
  ])('%i by %j gives %j', (total, weights, shares) => {
    expect(allocateByLargestRemainder(total, weights)).toEqual(shares);
  });

  it('shares the whole, nobody further than one unit from the exact share, nothing to a zero weight', () => {
    fc.assert(fc.property(
      fc.nat({ max: Number.MAX_SAFE_INTEGER }),
      fc.array(fc.nat({ max: 1_000_000 }), { minLength: 1, maxLength: 30 }).filter((weights) => weights.some((weight) => weight > 0)),
      (total, weights) => {
        const shares = allocateByLargestRemainder(total, weights);
        const sum = weights.reduce((running, weight) => running + BigInt(weight), 0n);
        expect(shares.reduce((running, share) => running + BigInt(share), 0n)).toBe(BigInt(total));
        shares.forEach((share, index) => {
          const weight = weights[index] ?? 0;
          const gap = BigInt(share) * sum - BigInt(total) * BigInt(weight);
          expect(gap < sum && gap > -sum).toBe(true);
          if (weight === 0) expect(share).toBe(0);
        });
      },
    ));
  });

  it('refuses what cannot be shared', () => {
    expect(() => allocateByLargestRemainder(-1, [1])).toThrow('A share or weight is not negative: -1');
    expect(() => allocateByLargestRemainder(1, [1, -2])).toThrow('A share or weight is not negative: -2');
    expect(() => allocateByLargestRemainder(1, [0.5])).toThrow('Not a safe integer: 0.5');
    expect(() => allocateByLargestRemainder(1, [0, 0])).toThrow('every weight is zero');
  });
});
