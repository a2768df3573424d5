/**
 * Counts the whole days a carcass hangs to gather at least the degree-days asked for, at a steady
 * temperature in degrees Celsius (taken to the nearest tenth). A begun day is a whole day. Gives null at or
 * below zero, where none are gathered. Throws a RangeError on a target that is negative or no number.
 * Source: Swedish Hunters' Association, at least 40 degree-days for a hoofed animal.
 *
 * @example ageingDays({ targetDegreeDays: 40, celsius: 5 }) // 8
 * @example ageingDays({ targetDegreeDays: 40, celsius: 3 }) // 14
 */
export function ageingDays({ targetDegreeDays, celsius }: {
  readonly targetDegreeDays: number;
  readonly celsius: number;
}): number | null {
  if (!Number.isFinite(targetDegreeDays) || targetDegreeDays < 0) {
    throw new RangeError(`Not a number of degree-days: ${targetDegreeDays}`);
  }
  if (!Number.isFinite(celsius)) throw new RangeError(`Not a temperature: ${celsius}`);
  const tenths = Math.round(celsius * 10);
  if (tenths <= 0) return null;
  return Math.ceil(Math.round(targetDegreeDays * 10) / tenths);
}
