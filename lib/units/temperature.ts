import { decimalMark, longestNumberText, readExactNumber, tidyNumberText } from './exact-number';
import { writeDecimal } from './number-format';
import type { Result } from './result';
import { roundHalfUp, scaleHalfUp } from './rounding';

/** The unit a shop reads its thermometers in. */
export type TemperatureUnit = 'F' | 'C';

/**
 * Turns integer tenths of a degree Fahrenheit into integer tenths Celsius, rounded half up (below zero a
 * tie goes away from zero).
 *
 * @example celsiusTenthsOf(1600) // 711
 */
export function celsiusTenthsOf(fahrenheitTenths: number): number {
  return scaleHalfUp({ value: fahrenheitTenths - 320, times: 5, over: 9 });
}

/**
 * Turns integer tenths of a degree Celsius into integer tenths Fahrenheit, rounded half up (below zero a
 * tie goes away from zero).
 *
 * @example fahrenheitTenthsOf(50) // 410
 */
export function fahrenheitTenthsOf(celsiusTenths: number): number {
  return roundHalfUp(celsiusTenths * 9 + 1600, 5);
}

/**
 * Reads a typed temperature as integer tenths of a degree Celsius, rounded half up. A bare number is in
 * the given unit; "165 F", "4 °C" and "-18" are known. Outside -100 to 300 °C it comes back as a sentence.
 *
 * @example parseTemperature('165 F', { unit: 'C' }) // { ok: true, value: 739 }
 */
export function parseTemperature(
  text: string,
  { unit, locale = 'en-US' }: { readonly unit: TemperatureUnit; readonly locale?: string },
): Result<number> {
  const tenths = text.length > longestNumberText ? null : readTenths(tidyNumberText(text), { unit, locale });
  if (tenths !== null && tenths >= -1000 && tenths <= 3000) return { ok: true, value: tenths };
  const example = unit === 'F' ? '40' : `4${decimalMark(locale)}5`;
  return { ok: false, message: `Write the temperature as a number, for example ${example} °${unit}.` };
}

/**
 * Writes integer tenths of a degree Celsius with one decimal.
 *
 * @example formatTemperature(711, 'C') // '71.1 °C'
 * @example formatTemperature(711, 'F') // '160.0 °F'
 */
export function formatTemperature(celsiusTenths: number, unit: TemperatureUnit, locale = 'en-US'): string {
  const tenths = unit === 'C' ? celsiusTenths : fahrenheitTenthsOf(celsiusTenths);
  return `${writeDecimal(tenths, { decimals: 1, locale })} °${unit}`;
}

function readTenths(
  text: string,
  { unit, locale }: { readonly unit: TemperatureUnit; readonly locale: string },
): number | null {
  const match = /^([-+]?) ?([\d.,]+) ?(?:°|deg(?:rees)?)? ?([cf])?\.?$/.exec(text);
  if (match === null) return null;
  const [, sign, numberText = '', letter] = match;
  const number = readExactNumber(numberText, locale);
  if (number === null) return null;
  const above = sign === '-' ? -number.numerator : number.numerator;
  const inFahrenheit = letter === undefined ? unit === 'F' : letter === 'f';
  if (number.numerator > 1000n * number.denominator) return null;
  return inFahrenheit
    ? roundHalfUp((above - 32n * number.denominator) * 50n, 9n * number.denominator)
    : roundHalfUp(above * 10n, number.denominator);
}
