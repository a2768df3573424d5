import { isTimeZone, SHOP_LOCALES } from '@/lib/forms';
import { currencies } from '@/lib/units';

/** A choice of a menu: what is sent, and what is read. */
export type PlaceChoice = { readonly value: string; readonly text: string };

/** The currencies, by name. */
export function currencyChoices(): readonly PlaceChoice[] {
  const names = new Intl.DisplayNames('en', { type: 'currency' });
  const choices = currencies.map((value) => ({ value, text: `${names.of(value) ?? value} (${value})` }));
  return choices.toSorted((a, b) => a.text.localeCompare(b.text, 'en'));
}

/** The time zones by name. */
export function timeZoneChoices(): readonly PlaceChoice[] {
  return Intl.supportedValuesOf('timeZone').map((value) => ({ value, text: value.replaceAll('_', ' ') }));
}

/** The time zone of the machine that serves the shop, most often the shop's own. '' when it keeps none. */
export function serverTimeZone(): string {
  const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
  return isTimeZone(zone) && Intl.supportedValuesOf('timeZone').includes(zone) ? zone : '';
}

/** Ways to write numbers and dates, each with an example. */
export function localeChoices(): readonly PlaceChoice[] {
  const names = new Intl.DisplayNames('en', { type: 'language', languageDisplay: 'standard' });
  return SHOP_LOCALES.map((value) => {
    const number = new Intl.NumberFormat(value, { minimumFractionDigits: 2 }).format(1234.5);
    const day = new Intl.DateTimeFormat(value, { dateStyle: 'medium', timeZone: 'UTC' }).format(new Date('2026-11-25T12:00:00Z'));
    return { value, text: `${names.of(value) ?? value}: ${number}; ${day}` };
  });
}
