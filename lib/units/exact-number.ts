import { writeDecimal } from './number-format';

/** A number as a ratio of integers, so that no binary fraction comes in; the denominator is above zero. */
export type ExactNumber = { readonly numerator: bigint; readonly denominator: bigint };

/** More than this was pasted, not typed. */
export const longestNumberText = 40;

const vulgarFractions: Readonly<Record<string, string>> = {
  '½': '1/2', '⅓': '1/3', '⅔': '2/3', '¼': '1/4', '¾': '3/4', '⅕': '1/5', '⅖': '2/5', '⅗': '3/5',
  '⅘': '4/5', '⅙': '1/6', '⅚': '5/6', '⅛': '1/8', '⅜': '3/8', '⅝': '5/8', '⅞': '7/8',
};

/** Brings the blanks, apostrophes, fraction signs and quote marks a keyboard may give into one plain form, in lower case. */
export function tidyNumberText(text: string): string {
  return text
    .replace(/[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]/g, (sign) => ` ${vulgarFractions[sign] ?? sign}`)
    .replace(/\u2044/g, '/')
    .replace(/[’‘]/g, "'")
    .replace(/[″”“]/g, '"')
    .replace(/[\u2212\u2013]/g, '-')
    .replace(/\s+/g, ' ')
    .trim()
    .toLowerCase();
}

/**
 * Reads a tidy text without sign or unit as an exact number, digit by digit, or gives null.
 * Knows "12.35", "12,35", "1,200.5", "1 200,5", "3/4", "12 1/2" and "12-1/2".
 * The locale decides what a lone mark before exactly three digits is ("1.200"); where a mark can only be
 * a decimal mark ("1,5", "0,125") it is one everywhere.
 *
 * @example readExactNumber('12 1/2', 'en-US') // { numerator: 25n, denominator: 2n }
 */
export function readExactNumber(text: string, locale: string): ExactNumber | null {
  if (text.length > longestNumberText) return null;
  return readFraction(text) ?? readDecimal(text, locale);
}

/** The decimal mark of a locale, "." or ",". */
export function decimalMark(locale: string): '.' | ',' {
  return writeDecimal(15, { decimals: 1, locale }).includes(',') ? ',' : '.';
}

function readFraction(text: string): ExactNumber | null {
  const match = /^(?:(\d{1,6})[ -])?(\d{1,4})\/(\d{1,4})$/.exec(text);
  if (match === null) return null;
  const [, whole, above = '', below = ''] = match;
  const denominator = BigInt(below);
  const part = BigInt(above);
  if (denominator === 0n || (whole !== undefined && part >= denominator)) return null;
  return { numerator: BigInt(whole ?? 0) * denominator + part, denominator };
}

function readDecimal(text: string, locale: string): ExactNumber | null {
  const decimal = findDecimalMark(text, locale);
  if (decimal === null) return null;
  const [whole = '', fraction = '', ...rest] = text.split(decimal);
  if (rest.length > 0 || !/^\d{0,10}$/.test(fraction)) return null;
  const grouped = /^[1-9]\d{0,2}([.,' ])\d{3}(?:\1\d{3}){0,3}$/.test(whole);
  if (!grouped && !/^\d{0,15}$/.test(whole)) return null;
  const digits = whole.replace(/\D/g, '') + fraction;
  if (digits === '') return null;
  return { numerator: BigInt(digits), denominator: 10n ** BigInt(fraction.length) };
}

function findDecimalMark(text: string, locale: string): '.' | ',' | null {
  const own = decimalMark(locale);
  const other = own === '.' ? ',' : '.';
  const otherAt = text.lastIndexOf(other);
  if (otherAt === -1 || text.indexOf(other) !== otherAt) return own;
  if (text.includes(own)) return text.lastIndexOf(own) > otherAt ? own : other;
  const whole = text.slice(0, otherAt);
  if (text.length - otherAt - 1 !== 3 || /^0?$/.test(whole)) return other;
  return /^[1-9]\d{0,2}$/.test(whole) ? own : null;
}
