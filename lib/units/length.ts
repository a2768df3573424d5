import { decimalMark, longestNumberText, readExactNumber, tidyNumberText } from './exact-number';
import type { Result } from './result';
import { roundHalfUp, scaleHalfUp } from './rounding';

/** The unit a shop measures thickness and girth in. */
export type LengthUnit = 'in' | 'mm';

const longestMm = 5_000n;

/** Tenths of a millimetre in one unit; the inch is 25.4 mm exactly. Source: NIST Special Publication 811. */
const tenthsIn: ReadonlyMap<string, bigint> = new Map([
  ...['in', 'inch', 'inches', '"', "''"].map((word): [string, bigint] => [word, 254n]),
  ['mm', 10n],
  ['cm', 100n],
]);

/**
 * Reads a typed length as integer millimetres, rounded half up. A bare number is in the given unit, but
 * a bare fraction ("3/4") is always inches: nobody writes three quarters of a millimetre.
 * Zero, negatives and more than five metres come back as a sentence.
 *
 * @example parseLength('3/4"', { unit: 'in' }) // { ok: true, value: 19 }
 * @example parseLength('25 mm', { unit: 'in' }) // { ok: true, value: 25 }
 */
export function parseLength(
  text: string,
  { unit, locale = 'en-US' }: { readonly unit: LengthUnit; readonly locale?: string },
): Result<number> {
  const mm = text.length > longestNumberText ? null : readLength(tidyNumberText(text), { unit, locale });
  if (mm !== null) return { ok: true, value: mm };
  const example = unit === 'in' ? `3/4 in or 1${decimalMark(locale)}5 in` : '20 mm';
  return { ok: false, message: `Write the length as a number, for example ${example}.` };
}

/**
 * Writes integer millimetres for a cutter: inches to the nearest sixteenth as a fraction in lowest terms
 * (a tie goes up), or whole millimetres.
 *
 * @example formatThickness(19, 'in') // '3/4 in'
 * @example formatThickness(32, 'in') // '1 1/4 in'
 * @example formatThickness(19, 'mm') // '19 mm'
 */
export function formatThickness(mm: number, unit: LengthUnit): string {
  if (!Number.isSafeInteger(mm) || mm < 0) throw new RangeError(`Not a whole number of millimetres: ${mm}`);
  if (unit === 'mm') return `${mm} mm`;
  const sixteenths = scaleHalfUp({ value: mm, times: 160, over: 254 });
  const whole = Math.floor(sixteenths / 16);
  let above = sixteenths % 16;
  let below = 16;
  while (above > 0 && above % 2 === 0) {
    above /= 2;
    below /= 2;
  }
  const fraction = above === 0 ? '' : `${above}/${below}`;
  return `${whole > 0 && fraction !== '' ? `${whole} ` : ''}${fraction === '' ? whole : fraction} in`;
}

function readLength(text: string, { unit, locale }: { readonly unit: LengthUnit; readonly locale: string }): number | null {
  const match = /^([\d.,'/ -]*?\d[.,]?) ?(in|inch|inches|"|''|mm|cm)?\.?$/.exec(text);
  if (match === null) return null;
  const [, numberText = '', word] = match;
  const number = readExactNumber(numberText.trim(), locale);
  const tenths = tenthsIn.get(word ?? (numberText.includes('/') ? 'in' : unit));
  if (number === null || tenths === undefined) return null;
  const above = number.numerator * tenths;
  const below = number.denominator * 10n;
  if (above > longestMm * below) return null;
  const mm = roundHalfUp(above, below);
  return mm > 0 ? mm : null;
}
