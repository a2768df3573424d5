import type { Result } from '@/lib/units';

/**
 * A totally anti-symmetric quasigroup of order 10 with a zero diagonal.
 * Source: H. M. Damm, Total anti-symmetrische Quasigruppen, thesis, Philipps-Universität Marburg, 2004.
 */
const dammRows = [
  '0317598642', '7092154863', '4206871359', '1750983426', '6123045978',
  '3674209581', '5869720134', '8945362017', '9438617205', '2581436790',
] as const;

const highestSequence = 99_999;
const highestSheetVersion = 999;
const howToWriteIt = 'Write the number as it stands on the tag, for example 10427-7.';

/**
 * Gives the short number of an animal as it is stored: five digits of the sequence and a Damm check digit,
 * which catches every single wrong digit and every swap of two neighbours. Throws a RangeError outside 1 to 99999.
 *
 * @example makeOrderNumber(10427) // '104277'
 */
export function makeOrderNumber(sequence: number): string {
  if (!Number.isInteger(sequence) || sequence < 1 || sequence > highestSequence) {
    throw new RangeError(`An order number counts from 1 to ${highestSequence}, not ${sequence}`);
  }
  const digits = String(sequence).padStart(5, '0');
  return `${digits}${dammDigit(digits)}`;
}

/**
 * Writes a stored number for reading, with the check digit set apart. Throws a RangeError on anything that
 * is no order number.
 *
 * @example formatOrderNumber('104277') // '10427-7'
 */
export function formatOrderNumber(number: string): string {
  assertOrderNumber(number);
  return `${number.slice(0, 5)}-${number.slice(5)}`;
}

/**
 * Reads a number that was typed, read out or scanned, and gives it as it is stored. Blanks, a missing dash
 * and the version of a scan code ("104277v2") do not matter.
 *
 * @example parseOrderNumber('10427 7') // { ok: true, value: '104277' }
 */
export function parseOrderNumber(text: string): Result<string> {
  const digits = wholeNumberDigits(text);
  if (digits === null) return { ok: false, message: howToWriteIt };
  if (!isOrderNumber(digits)) {
    return { ok: false, message: 'That number does not add up: one digit is wrong or two are swapped.' };
  }
  return { ok: true, value: digits };
}

/**
 * The six digits of what is meant for a whole number, added up or not; null for anything else.
 *
 * @example wholeNumberDigits('10045 - 3') // '100453'
 */
export function wholeNumberDigits(text: string): string | null {
  return /^#?(\d{6})(?:V\d{1,3})?$/.exec(tidy(text))?.[1] ?? null;
}

/**
 * Gives the text of the code printed on a sheet: the number and the version of the instructions, in the
 * alphanumeric characters a QR code packs best. Throws a RangeError on anything that is no order number and
 * on a version outside 1 to 999.
 *
 * @example scanCode('104277', 2) // '104277V2'
 */
export function scanCode(number: string, sheetVersion: number): string {
  assertOrderNumber(number);
  if (!Number.isInteger(sheetVersion) || sheetVersion < 1 || sheetVersion > highestSheetVersion) {
    throw new RangeError(`A sheet version counts from 1 to ${highestSheetVersion}, not ${sheetVersion}`);
  }
  return `${number}V${sheetVersion}`;
}

/**
 * Reads the code printed on a sheet.
 *
 * @example parseScanCode('104277v2') // { ok: true, value: { number: '104277', sheetVersion: 2 } }
 */
export function parseScanCode(text: string): Result<{ readonly number: string; readonly sheetVersion: number }> {
  const match = /^\d{6}V([1-9]\d{0,2})$/.exec(tidy(text));
  if (match === null) return { ok: false, message: 'Scan the code on the sheet, or write the number on the tag.' };
  const number = parseOrderNumber(text);
  return number.ok ? { ok: true, value: { number: number.value, sheetVersion: Number(match[1]) } } : number;
}

/** Tells whether a text is a stored order number: six digits that add up. */
export function isOrderNumber(text: string): boolean {
  return /^\d{6}$/.test(text) && !text.startsWith('00000') && dammDigit(text) === '0';
}

function dammDigit(digits: string): string {
  let interim = '0';
  for (const digit of digits) {
    const next = dammRows[Number(interim)]?.[Number(digit)];
    if (next === undefined) throw new RangeError(`Not a digit: ${digit}`);
    interim = next;
  }
  return interim;
}

function tidy(text: string): string {
  return text.length > 40 ? '' : text.replace(/[\s\-\u2010-\u2015\u2212.]/g, '').toUpperCase();
}

function assertOrderNumber(number: string): void {
  if (!isOrderNumber(number)) throw new RangeError(`Not an order number: ${number}`);
}
