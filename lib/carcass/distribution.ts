import type { Moments } from './share-tree';

/** 90th percentile of the standard normal distribution. */
const Z90 = 1.2815515655446004;

/**
 * A quantity by mean, standard deviation and skewness, taken as a shifted log-normal: exact for a log-normal weight times a fixed
 * share, and near for the beta-like shares of a carcass.
 */
export type Distribution = { readonly mean: number; readonly sd: number; readonly skew: number };

/**
 * From raw moments. A spread below a millionth of the mean is none, and a skewness of one below a ten-thousandth is none: both are
 * lost in the rounding of the moments.
 */
export function distributionOf({ mean, square, cube }: Moments): Distribution {
  const variance = square - mean * mean;
  if (variance <= 1e-12 * mean * mean) return { mean, sd: 0, skew: 0 };
  const sd = Math.sqrt(variance);
  if (variance <= 1e-8 * mean * mean) return { mean, sd, skew: 0 };
  return { mean, sd, skew: (cube - 3 * mean * square + 2 * mean ** 3) / sd ** 3 };
}

/** Raw moments of a log-normal quantity with this median and relative spread. */
export function logNormalMoments(median: number, cv: number): Moments {
  const spread = 1 + cv * cv;
  const mean = median * Math.sqrt(spread);
  return { mean, square: mean ** 2 * spread, cube: mean ** 3 * spread ** 3 };
}

/** The value below which the quantity lies with the probability of a standard normal below `z`. */
export function quantileAt({ mean, sd, skew }: Distribution, z: number): number {
  if (sd === 0) return mean;
  const turned = Math.sign(skew) * z;
  const shape = shapeOf(skew);
  return shape === null ? mean + sd * z : mean + Math.sign(skew) * sd * shape.scale * (Math.exp(shape.sigma * turned - shape.sigma ** 2 / 2) - 1);
}

/** 10th and 90th percentile. */
export function tenthAndNinetieth(quantity: Distribution): { readonly low: number; readonly high: number } {
  return { low: Math.max(0, quantileAt(quantity, -Z90)), high: Math.max(0, quantileAt(quantity, Z90)) };
}

/** Probability that the quantity is at least this much, from 0 to 1. */
export function chanceOfAtLeast({ mean, sd, skew }: Distribution, least: number): number {
  if (least <= 0) return 1;
  if (sd === 0) return mean >= least ? 1 : 0;
  const shape = shapeOf(skew);
  if (shape === null) return 1 - normalBelow((least - mean) / sd);
  const sign = Math.sign(skew);
  const inside = (sign * (least - mean)) / (sd * shape.scale) + 1;
  const below = inside <= 0 ? 0 : normalBelow((Math.log(inside) + shape.sigma ** 2 / 2) / shape.sigma);
  return sign > 0 ? 1 - below : below;
}

/**
 * Sigma and relative scale of the shifted log-normal of a skewness: skew = (w + 2) sqrt(w - 1) with w = exp(sigma^2), solved in
 * closed form; the spread of exp(...) is sqrt(w - 1). Null where the skewness is too small to tell from none.
 */
function shapeOf(skew: number): { readonly sigma: number; readonly scale: number } | null {
  if (Math.abs(skew) < 1e-4) return null;
  const half = (skew * skew) / 2;
  const root = Math.abs(skew) * Math.sqrt(1 + (skew * skew) / 4);
  const w = Math.cbrt(1 + half + root) + Math.cbrt(1 + half - root) - 1;
  return { sigma: Math.sqrt(Math.log(w)), scale: 1 / Math.sqrt(w - 1) };
}

/** Standard normal distribution function, to 7.5e-8: Abramowitz and Stegun (1964), 26.2.17. */
export function normalBelow(z: number): number {
  const t = 1 / (1 + 0.231_641_9 * Math.abs(z));
  const tail =
    (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) *
    t * (0.319_381_53 + t * (-0.356_563_782 + t * (1.781_477_937 + t * (-1.821_255_978 + t * 1.330_274_429))));
  return z >= 0 ? 1 - tail : tail;
}
