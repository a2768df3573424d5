/** A day without time or zone, written 'YYYY-MM-DD'. */
export type CalendarDay = string;

const msPerDay = 86_400_000;

/**
 * Tells whether a text is a day that exists, written 'YYYY-MM-DD'.
 *
 * @example isCalendarDay('2026-02-29') // false
 */
export function isCalendarDay(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  const ms = Date.parse(`${text}T00:00:00Z`);
  return !Number.isNaN(ms) && writeDay(ms) === text;
}

/**
 * Gives the day so many days later, or earlier for a negative number. Throws a RangeError on a text that
 * is no day and on a fraction.
 *
 * @example addDays('2026-11-25', 90) // '2027-02-23'
 */
export function addDays(day: CalendarDay, days: number): CalendarDay {
  assertWhole(days);
  return toDay(readDay(day) + days * msPerDay);
}

/**
 * Gives the same day of the month so many months later or earlier; where that month is too short, its
 * last day. Throws a RangeError on a text that is no day and on a fraction.
 *
 * @example addMonths('2026-11-25', 18) // '2028-05-25'
 * @example addMonths('2027-01-31', 1) // '2027-02-28'
 */
export function addMonths(day: CalendarDay, months: number): CalendarDay {
  assertWhole(months);
  const start = new Date(readDay(day));
  const firstOfMonth = new Date(start);
  firstOfMonth.setUTCDate(1);
  firstOfMonth.setUTCMonth(firstOfMonth.getUTCMonth() + months);
  const lastOfMonth = new Date(firstOfMonth);
  lastOfMonth.setUTCMonth(lastOfMonth.getUTCMonth() + 1, 0);
  firstOfMonth.setUTCDate(Math.min(start.getUTCDate(), lastOfMonth.getUTCDate()));
  return toDay(firstOfMonth.getTime());
}

/**
 * Counts the days from one day to another, negative when the second is earlier. Throws a RangeError on a
 * text that is no day.
 *
 * @example daysBetween('2026-11-25', '2027-02-23') // 90
 */
export function daysBetween(from: CalendarDay, to: CalendarDay): number {
  return (readDay(to) - readDay(from)) / msPerDay;
}

/**
 * Writes a day for reading, in the manner of the locale. Throws a RangeError on a text that is no day.
 *
 * @example formatDay('2026-11-25', 'en-US') // 'Nov 25, 2026'
 */
export function formatDay(day: CalendarDay, locale = 'en-US'): string {
  return new Date(readDay(day)).toLocaleDateString(locale, { dateStyle: 'medium', timeZone: 'UTC' });
}

/**
 * Writes a day that is near, with its weekday and without its year. Throws a RangeError on a text that is no day.
 *
 * @example formatNearDay('2026-12-01', 'en-US') // 'Tue, Dec 1'
 */
export function formatNearDay(day: CalendarDay, locale = 'en-US'): string {
  return new Date(readDay(day)).toLocaleDateString(locale, { weekday: 'short', day: 'numeric', month: 'short', timeZone: 'UTC' });
}

function readDay(day: CalendarDay): number {
  if (!isCalendarDay(day)) throw new RangeError(`Not a day: ${day}`);
  return Date.parse(`${day}T00:00:00Z`);
}

function toDay(ms: number): CalendarDay {
  const day = Number.isNaN(new Date(ms).getTime()) ? '' : writeDay(ms);
  if (!isCalendarDay(day)) throw new RangeError(`Outside the years 0000 to 9999: ${ms}`);
  return day;
}

function writeDay(ms: number): CalendarDay {
  return new Date(ms).toISOString().slice(0, 10);
}

function assertWhole(value: number): void {
  if (!Number.isSafeInteger(value)) throw new RangeError(`Not a whole number: ${value}`);
}
