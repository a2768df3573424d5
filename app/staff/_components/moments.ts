import type { ShopSettings } from '@/lib/forms';

type Place = Pick<ShopSettings, 'locale' | 'timeZone'>;

/**
 * A moment on the shop's own clock: 'Nov 25, 2:05 PM'. The year stands with it once it is another.
 */
export function momentWords(at: Date, { locale, timeZone }: Place, now = new Date()): string {
  const isThisYear = yearOf(at, timeZone) === yearOf(now, timeZone);
  return at.toLocaleString(locale, {
    timeZone,
    ...(isThisYear ? {} : { year: 'numeric' }),
    month: 'short',
    day: 'numeric',
    hour: 'numeric',
    minute: '2-digit',
  });
}

/** The day a moment falls on at the shop: 'Nov 25'. */
export function dayWords(at: Date, { locale, timeZone }: Place, now = new Date()): string {
  const isThisYear = yearOf(at, timeZone) === yearOf(now, timeZone);
  return at.toLocaleDateString(locale, { timeZone, ...(isThisYear ? {} : { year: 'numeric' }), month: 'short', day: 'numeric' });
}

/** How many nights ago that was: 'today', 'yesterday', '6 days ago'. */
export function agoWords(at: Date, { timeZone }: Pick<Place, 'timeZone'>, now = new Date()): string {
  const nights = Math.round((Date.parse(isoDay(now, timeZone)) - Date.parse(isoDay(at, timeZone))) / 86_400_000);
  if (nights <= 0) return 'today';
  return nights === 1 ? 'yesterday' : `${nights} days ago`;
}

/** The day at the shop as a date input holds it: '2026-11-25'. */
export function isoDay(at: Date, timeZone: string): string {
  return at.toLocaleDateString('en-CA', { timeZone, year: 'numeric', month: '2-digit', day: '2-digit' });
}

function yearOf(at: Date, timeZone: string): string {
  return isoDay(at, timeZone).slice(0, 4);
}
