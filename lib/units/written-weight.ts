import { scaleHalfUp } from './rounding';
import type { WeightUnit } from './weight';

/** Millionths of a gram. Source: NIST Special Publication 811, appendix B. */
const TENTH_OF_A_POUND = 45_359_237;

/**
 * The largest weight a person would write that is not above this: tenths of a pound, or steps of 50 g.
 *
 * @example roundedDown(9321, 'lb') // 9299, which is 20.5 lb
 */
export function roundedDown(grams: number, unit: WeightUnit): number {
  if (unit === 'kg') return Math.floor(grams / 50) * 50;
  return tenthsOfAPound(Math.floor((grams * 1_000_000) / TENTH_OF_A_POUND));
}

function tenthsOfAPound(tenths: number): number {
  return scaleHalfUp({ value: tenths, times: TENTH_OF_A_POUND, over: 1_000_000 });
}

/**
 * The smallest weight a person would write that is not below this: tenths of a pound, or steps of 50 g.
 *
 * @example roundedUp(3176, 'lb') // 3221, which is 7.1 lb
 */
export function roundedUp(grams: number, unit: WeightUnit): number {
  if (unit === 'kg') return Math.ceil(grams / 50) * 50;
  const tenths = Math.floor((grams * 1_000_000) / TENTH_OF_A_POUND);
  return tenthsOfAPound(tenthsOfAPound(tenths) >= grams ? tenths : tenths + 1);
}
