/**
 * Rounds numerator / denominator to the nearest integer. This is the one rounding rule of the shop:
 * a tie goes up, and below zero it goes away from zero, so that a credit mirrors its invoice.
 * Throws a RangeError unless both are safe integers (or bigints), the denominator is positive and the
 * answer is a safe integer.
 *
 * @example roundHalfUp(26250, 10000) // 3
 * @example roundHalfUp(5, 2) // 3
 * @example roundHalfUp(-5, 2) // -3
 */
export function roundHalfUp(numerator: number | bigint, denominator: number | bigint): number {
  assertInteger(numerator);
  assertInteger(denominator);
  if (denominator <= 0) throw new RangeError(`A denominator is above zero, not ${denominator}`);
  const over = BigInt(denominator);
  const size = numerator < 0 ? -BigInt(numerator) : BigInt(numerator);
  const rounded = Number((2n * size + over) / (2n * over));
  assertInteger(rounded);
  return numerator < 0 && rounded !== 0 ? -rounded : rounded;
}

/**
 * Gives value x times / over as an integer, rounded once as `roundHalfUp` rounds; the product may be of
 * any size. Throws as `roundHalfUp` does.
 *
 * @example scaleHalfUp({ value: 1235, times: 349, over: 100 }) // 4310
 */
export function scaleHalfUp({ value, times, over }: {
  readonly value: number;
  readonly times: number;
  readonly over: number;
}): number {
  assertInteger(value);
  assertInteger(times);
  return roundHalfUp(BigInt(value) * BigInt(times), over);
}

/**
 * Shares an integer total by integer weights so that the shares sum to the total exactly: each gets the
 * whole part of its share, and the units left over go to the largest remainders, ties to the lower index.
 * A zero weight gets nothing. Throws a RangeError on a negative or fractional number, and when there is
 * something to share but every weight is zero.
 *
 * @example allocateByLargestRemainder(10, [1, 1, 1]) // [4, 3, 3]
 */
export function allocateByLargestRemainder(total: number, weights: readonly number[]): number[] {
  assertCount(total);
  weights.forEach(assertCount);
  const sum = weights.reduce((running, weight) => running + weight, 0);
  if (sum === 0) {
    if (total > 0) throw new RangeError(`Nothing to share ${total} by: every weight is zero`);
    return weights.map(() => 0);
  }
  const shares = total * sum <= Number.MAX_SAFE_INTEGER ? divideExactly(total, weights, sum) : divideBig(total, weights);
  const leftOver = total - shares.reduce((running, share) => running + share.units, 0);
  const lucky = new Set(
    [...shares]
      .sort((a, b) => (a.remainder === b.remainder ? a.index - b.index : a.remainder > b.remainder ? -1 : 1))
      .slice(0, leftOver)
      .map((share) => share.index),
  );
  return shares.map((share) => share.units + (lucky.has(share.index) ? 1 : 0));
}

function assertInteger(value: number | bigint): void {
  if (typeof value === 'number' && !Number.isSafeInteger(value)) {
    throw new RangeError(`Not a safe integer: ${value}`);
  }
}

type Share = { readonly index: number; readonly units: number; readonly remainder: number | bigint };

/** Whole parts and remainders where every product is a safe integer: a plan divides some fifty tissues this way. */
function divideExactly(total: number, weights: readonly number[], sum: number): readonly Share[] {
  return weights.map((weight, index) => {
    const exact = total * weight;
    const remainder = exact % sum;
    return { index, units: (exact - remainder) / sum, remainder };
  });
}

function divideBig(total: number, weights: readonly number[]): readonly Share[] {
  const sum = weights.reduce((running, weight) => running + BigInt(weight), 0n);
  return weights.map((weight, index) => {
    const exact = BigInt(total) * BigInt(weight);
    return { index, units: Number(exact / sum), remainder: exact % sum };
  });
}

function assertCount(value: number): void {
  assertInteger(value);
  if (value < 0) throw new RangeError(`A share or weight is not negative: ${value}`);
}
