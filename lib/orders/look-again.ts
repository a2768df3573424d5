import { type WeightUnit, formatWeight } from '@/lib/units';
import type { PackRow, Weighing } from './bill-facts';

/** So far above what was expected at most, or below what was expected at least, that a figure or a lug may be wrong. Judgement. */
const FAR_ABOVE_PER_10 = 13;
const FAR_BELOW_PER_10 = 5;

/**
 * Whether a weight in grams is far from what its row should give: above 1.3 times the high figure, or below half the low
 * one. A row of which nothing is expected is never far off.
 *
 * @example farOff({ expected: { low: 800, likely: 1000, high: 1200 } }, 2000) // 'more'
 */
export function farOff({ expected }: Pick<PackRow, 'expected'>, grams: number): 'more' | 'less' | null {
  if (expected.likely === 0) return null;
  if (grams * 10 > expected.high * FAR_ABOVE_PER_10) return 'more';
  return grams * 10 < expected.low * FAR_BELOW_PER_10 ? 'less' : null;
}

/** What a row is called in a sentence: 'Both tenderloins' of 'Both tenderloins, whole'. */
export function rowName({ label }: Pick<PackRow, 'label'>): string {
  return label.split(', ')[0] ?? label;
}

/**
 * What to look at once more before the weights are saved: rows far off, and rows left empty that should give something.
 * Null where there is nothing of the kind.
 *
 * @example lookAgain([row], [{ lineKey: 'line-1', grams: 4536 }], { unit: 'lb', locale: 'en-US' }) // 'Look again: both tenderloins 10.0 lb, about 1.0 lb was expected.'
 */
export function lookAgain(
  rows: readonly PackRow[],
  weighings: readonly Pick<Weighing, 'lineKey' | 'grams'>[],
  { unit, locale }: { readonly unit: WeightUnit; readonly locale: string },
): string | null {
  const gramsOf = new Map(weighings.map(({ lineKey, grams }) => [lineKey, grams]));
  const words = (grams: number): string => formatWeight(grams, unit, locale);
  const far = rows.flatMap((row) => {
    const grams = gramsOf.get(row.lineKey);
    if (grams === undefined || farOff(row, grams) === null) return [];
    return [`${inSentence(rowName(row))} ${words(grams)}, about ${words(row.expected.likely)} was expected`];
  });
  const empty = rows.filter((row) => row.expected.low > 0 && !gramsOf.has(row.lineKey)).map((row) => inSentence(rowName(row)));
  const said = [...far, ...(empty.length > 0 ? [`nothing was weighed for ${allOf(empty)}`] : [])];
  return said.length > 0 ? `Look again: ${said.join('; ')}.` : null;
}

function inSentence(name: string): string {
  return name.charAt(0).toLowerCase() + name.slice(1);
}

/** 'stew meat', 'stew meat and ground meat', 'the heart, stew meat and ground meat'. */
function allOf(names: readonly string[]): string {
  return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1) ?? ''}`;
}
