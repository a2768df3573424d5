import { decimalMark, longestNumberText, readExactNumber, tidyNumberText, type ExactNumber } from './exact-number';
import { writeDecimal } from './number-format';
import type { Range } from './range';
import type { Result } from './result';
import { roundHalfUp } from './rounding';

/** The unit a shop weighs, prices and prints in. */
export type WeightUnit = 'lb' | 'kg';

/** The heaviest weight that can be typed: 2,000 kg, more than a bull moose or a lug of trim will ever be. */
export const heaviestGrams = 2_000_000;

type SmallUnit = WeightUnit | 'oz' | 'g';

/**
 * Grams in one unit as an exact ratio: the international pound is 0.45359237 kg and the ounce its
 * sixteenth. Source: NIST Special Publication 811, appendix B.
 */
const gramsIn: Readonly<Record<SmallUnit, ExactNumber>> = {
  lb: { numerator: 45_359_237n, denominator: 100_000n },
  oz: { numerator: 45_359_237n, denominator: 1_600_000n },
  kg: { numerator: 1_000n, denominator: 1n },
  g: { numerator: 1n, denominator: 1n },
};

const unitWords: ReadonlyMap<string, SmallUnit> = new Map([
  ...words('lb', ['lb', 'lbs', 'pound', 'pounds', '#']),
  ...words('oz', ['oz', 'ozs', 'ounce', 'ounces']),
  ...words('kg', ['kg', 'kgs', 'kilo', 'kilos', 'kilogram', 'kilograms', 'kilogramme', 'kilogrammes']),
  ...words('g', ['g', 'gram', 'grams', 'gramme', 'grammes', 'gramm']),
]);

const weightPattern =
  /^([\d.,'/ -]+?)(?: ?([a-z]+\.?|#)(?:,? ?(?:and )?([\d.,'/ -]+?) ?([a-z]+)\.?)?)?$/;

/**
 * Reads a typed weight as integer grams, rounded once, half up. A bare number is in the given unit;
 * "3 lb 4 oz", "12 1/2", "1½ lb", "700 g", "3#" and the locale's decimal and grouping marks are known.
 * Anything else, a negative weight and more than 2,000 kg come back as a sentence; the last in the caller's words, where
 * it has better ones.
 *
 * @example parseWeight('37.5', { unit: 'lb' }) // { ok: true, value: 17010 }
 * @example parseWeight('1,5 kg', { unit: 'lb', locale: 'de-DE' }) // { ok: true, value: 1500 }
 */
export function parseWeight(
  text: string,
  { unit, locale = 'en-US', tooHeavy }: { readonly unit: WeightUnit; readonly locale?: string; readonly tooHeavy?: string },
): Result<number> {
  const exact = text.length > longestNumberText ? null : readWeight(tidyNumberText(text), { unit, locale });
  if (exact === null) {
    const example = (unit === 'lb' ? '12.5' : '5.5').replace('.', decimalMark(locale));
    return { ok: false, message: `Write the weight as a number, for example ${example} ${unit}.` };
  }
  if (exact.numerator > BigInt(heaviestGrams) * exact.denominator) {
    const most = writeDecimal(Math.floor(weighedQuantity(heaviestGrams, unit) / 100), { decimals: 0, locale });
    return { ok: false, message: tooHeavy ?? `Write a weight of ${most} ${unit} or less.` };
  }
  return { ok: true, value: roundHalfUp(exact.numerator, exact.denominator) };
}

/**
 * Gives the quantity a price is multiplied by and a customer reads: integer hundredths of a pound or of
 * a kilogram, rounded half up from integer grams. Throws a RangeError on a fractional number of grams.
 *
 * @example weighedQuantity(5602, 'lb') // 1235
 * @example weighedQuantity(108880, 'kg') // 10888
 */
export function weighedQuantity(grams: number, unit: WeightUnit): number {
  return inUnit({ grams, unit, parts: 100 });
}

/**
 * Writes integer hundredths of a unit, with two decimals.
 *
 * @example formatWeighedQuantity(1235, 'lb') // '12.35 lb'
 */
export function formatWeighedQuantity(quantityHundredths: number, unit: WeightUnit, locale = 'en-US'): string {
  return `${writeDecimal(quantityHundredths, { decimals: 2, locale })} ${unit}`;
}

/**
 * Writes integer grams for reading, rounded half up: pounds with one decimal (two below one pound),
 * kilograms with two (whole grams below one kilogram).
 *
 * @example formatWeight(3360, 'lb') // '7.4 lb'
 * @example formatWeight(3360, 'kg') // '3.36 kg'
 */
export function formatWeight(grams: number, unit: WeightUnit, locale = 'en-US'): string {
  const style = styleFor(grams, unit);
  return `${writeGrams(grams, style, locale)} ${style.sign}`;
}

/**
 * Writes a forecast in grams; all three weights in the style that fits the likely one. A forecast
 * without spread is written as a plain weight.
 *
 * @example formatWeightRange({ low: 2860, likely: 3360, high: 3900 }, 'lb') // 'about 7.4 lb (6.3 to 8.6)'
 */
export function formatWeightRange(range: Range, unit: WeightUnit, locale = 'en-US'): string {
  const style = styleFor(range.likely, unit);
  const likely = `${writeGrams(range.likely, style, locale)} ${style.sign}`;
  if (range.low === range.high) return likely;
  return `about ${likely} (${writeGrams(range.low, style, locale)} to ${writeGrams(range.high, style, locale)})`;
}

type Style = { readonly sign: 'lb' | 'kg' | 'g'; readonly unit: WeightUnit; readonly parts: number; readonly decimals: number };

function styleFor(grams: number, unit: WeightUnit): Style {
  if (unit === 'lb') {
    return weighedQuantity(grams, 'lb') < 100
      ? { sign: 'lb', unit, parts: 100, decimals: 2 }
      : { sign: 'lb', unit, parts: 10, decimals: 1 };
  }
  return grams < 1000
    ? { sign: 'g', unit, parts: 1000, decimals: 0 }
    : { sign: 'kg', unit, parts: 100, decimals: 2 };
}

function writeGrams(grams: number, { unit, parts, decimals }: Style, locale: string): string {
  return writeDecimal(inUnit({ grams, unit, parts }), { decimals, locale });
}

function inUnit({ grams, unit, parts }: { readonly grams: number; readonly unit: WeightUnit; readonly parts: number }): number {
  if (!Number.isSafeInteger(grams)) throw new RangeError(`Not a whole number of grams: ${grams}`);
  const size = gramsIn[unit];
  return roundHalfUp(BigInt(grams) * BigInt(parts) * size.denominator, size.numerator);
}

function readWeight(
  text: string,
  { unit, locale }: { readonly unit: WeightUnit; readonly locale: string },
): ExactNumber | null {
  const match = weightPattern.exec(text);
  if (match === null) return null;
  const [, firstText = '', firstWord, secondText, secondWord] = match;
  const firstUnit = firstWord === undefined ? unit : unitWords.get(firstWord.replace('.', ''));
  const first = readExactNumber(firstText.trim(), locale);
  if (first === null || firstUnit === undefined) return null;
  if (secondText === undefined || secondWord === undefined) return multiply(first, gramsIn[firstUnit]);

  const second = readExactNumber(secondText.trim(), locale);
  const secondUnit = unitWords.get(secondWord);
  const smallest = firstUnit === 'lb' ? 'oz' : firstUnit === 'kg' ? 'g' : undefined;
  if (second === null || secondUnit === undefined || secondUnit !== smallest) return null;
  const whole = first.numerator % first.denominator === 0n;
  const limit = firstUnit === 'lb' ? 16n : 1000n;
  if (!whole || second.numerator >= limit * second.denominator) return null;
  return add(multiply(first, gramsIn[firstUnit]), multiply(second, gramsIn[secondUnit]));
}

function multiply(a: ExactNumber, b: ExactNumber): ExactNumber {
  return { numerator: a.numerator * b.numerator, denominator: a.denominator * b.denominator };
}

function add(a: ExactNumber, b: ExactNumber): ExactNumber {
  return {
    numerator: a.numerator * b.denominator + b.numerator * a.denominator,
    denominator: a.denominator * b.denominator,
  };
}

function words(unit: SmallUnit, spellings: readonly string[]): [string, SmallUnit][] {
  return spellings.map((spelling) => [spelling, unit]);
}
