import { longestNumberText, readExactNumber, tidyNumberText } from './exact-number';
import { numberFormat, writeDecimal } from './number-format';
import type { Result } from './result';

/** The digits after the mark of each currency the shop may use. Source: ISO 4217, minor unit column. */
const digitsOf = {
  AUD: 2, CAD: 2, CHF: 2, CZK: 2, DKK: 2, EUR: 2, GBP: 2, HUF: 2, ISK: 0, JPY: 0, KWD: 3, NAD: 2,
  NOK: 2, NZD: 2, PLN: 2, RON: 2, SEK: 2, USD: 2, ZAR: 2,
} as const;

/** An ISO 4217 code. */
export type Currency = keyof typeof digitsOf;

/** Every currency a shop can choose, in the order of the alphabet. */
export const currencies: readonly Currency[] = Object.keys(digitsOf).filter(isCurrency);

const mostMajor = 10_000_000;

/** Tells whether a text is the code of a currency a shop can choose. */
export function isCurrency(text: string): text is Currency {
  return Object.hasOwn(digitsOf, text);
}

/**
 * Gives the number of digits after the mark: 2 for USD, 0 for JPY.
 *
 * @example minorDigits('USD') // 2
 */
export function minorDigits(currency: Currency): number {
  return digitsOf[currency];
}

/**
 * Reads a typed amount as integer minor units, digit by digit. The currency's sign or code may stand
 * before or after. Nothing is rounded: more decimals than the currency has, a negative amount and more
 * than ten million come back as a sentence.
 *
 * @example parseMoney('$1,234.50', 'USD', 'en-US') // { ok: true, value: 123450 }
 */
export function parseMoney(text: string, currency: Currency, locale = 'en-US'): Result<number> {
  const decimals = digitsOf[currency];
  const example = writeDecimal(decimals === 0 ? 125 : 125 * 10 ** (decimals - 1), { decimals, locale });
  return readScaled(text, { currency, locale, decimals, hint: `Write the amount as a number, for example ${example}.` });
}

/**
 * Writes integer minor units in the currency and manner of the locale.
 *
 * @example formatMoney(123450, 'USD', 'en-US') // '$1,234.50'
 */
export function formatMoney(minor: number, currency: Currency, locale = 'en-US'): string {
  assertInteger(minor);
  const digits = digitsOf[currency];
  return numberFormat(locale, {
    style: 'currency',
    currency,
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
  }).format(minor / 10 ** digits);
}

/**
 * Reads a typed unit price as integer ten-thousandths of a major unit. Nothing is rounded: more than
 * four decimals, a negative price and more than ten million come back as a sentence.
 *
 * @example parseRate('16.4569', 'EUR', 'en-US') // { ok: true, value: 164569 }
 */
export function parseRate(text: string, currency: Currency, locale = 'en-US'): Result<number> {
  const example = writeDecimal(349, { decimals: 2, locale });
  const hint = `Write the price as a number with up to four decimals, for example ${example}.`;
  return readScaled(text, { currency, locale, decimals: 4, hint });
}

/**
 * Writes a unit price in integer ten-thousandths of a major unit, with the currency's own decimals and
 * up to four where the price has them.
 *
 * @example formatRate(34900, 'USD', 'en-US') // '$3.49'
 * @example formatRate(164569, 'USD', 'en-US') // '$16.4569'
 */
export function formatRate(ratePer10k: number, currency: Currency, locale = 'en-US'): string {
  assertInteger(ratePer10k);
  return numberFormat(locale, {
    style: 'currency',
    currency,
    minimumFractionDigits: digitsOf[currency],
    maximumFractionDigits: 4,
  }).format(ratePer10k / 10_000);
}

function readScaled(
  text: string,
  { currency, locale, decimals, hint }: {
    readonly currency: Currency;
    readonly locale: string;
    readonly decimals: number;
    readonly hint: string;
  },
): Result<number> {
  const number = text.length > longestNumberText || text.includes('/')
    ? null
    : readExactNumber(withoutSign(tidyNumberText(text), currency, locale), locale);
  if (number === null) return { ok: false, message: hint };
  if (number.numerator > BigInt(mostMajor) * number.denominator) {
    return { ok: false, message: `Write a figure of ${writeDecimal(mostMajor, { decimals: 0, locale })} or less.` };
  }
  const scaled = number.numerator * 10n ** BigInt(decimals);
  return scaled % number.denominator === 0n
    ? { ok: true, value: Number(scaled / number.denominator) }
    : { ok: false, message: hint };
}

function withoutSign(text: string, currency: Currency, locale: string): string {
  const signs = [currency, ...(['symbol', 'narrowSymbol'] as const).map((currencyDisplay) =>
    numberFormat(locale, { style: 'currency', currency, currencyDisplay })
      .formatToParts(0).find((part) => part.type === 'currency')?.value ?? currency)]
    .map((sign) => sign.toLowerCase());
  for (const sign of signs) {
    if (text.startsWith(sign)) return text.slice(sign.length).trim();
    if (text.endsWith(sign)) return text.slice(0, -sign.length).trim();
  }
  return text;
}

function assertInteger(value: number): void {
  if (!Number.isSafeInteger(value)) throw new RangeError(`Not a whole number of money units: ${value}`);
}
