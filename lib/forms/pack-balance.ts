import type { PackRow } from '@/lib/orders';
import { type WeightUnit, formatWeight, parseWeight } from '@/lib/units';

export type PackBalance = {
  /** Everything weighed so far. Grams. */
  readonly packedGrams: number;
  /** Of that, the hunter's own meat: without the added pork or fat the rows are expected to hold, and without offal and bones. */
  readonly ownGrams: number;
  /** Rows whose weight cannot be read yet. */
  readonly unread: number;
  /** A sentence where more of the animal is packed than hung; null while that is possible. */
  readonly alarm: string | null;
};

/**
 * Adds up the packing table as it is typed and holds it against the weight on the rail, in grams. Added meat counts in
 * the proportion the forecast expects of its row, rounded half up. Never throws on what people type.
 *
 * @example packBalance([row], { 'line-1': '3 lb' }, { hangingGrams: 1000, unit: 'lb', locale: 'en-US' }).alarm // '3.0 lb of own meat is more than the 2.2 lb that hung: ...'
 */
export function packBalance(
  rows: readonly PackRow[],
  typed: Readonly<Record<string, string>>,
  { hangingGrams, unit, locale }: { readonly hangingGrams: number; readonly unit: WeightUnit; readonly locale: string },
): PackBalance {
  let packedGrams = 0;
  let ownGrams = 0;
  let unread = 0;
  for (const row of rows) {
    const text = (typed[row.lineKey] ?? '').trim();
    if (text === '') continue;
    const weight = parseWeight(text, { unit, locale });
    if (!weight.ok) {
      unread += 1;
      continue;
    }
    packedGrams += weight.value;
    if (row.cutId === 'kept') continue;
    const added = row.expected.likely > 0 ? Math.round((weight.value * row.addedGrams) / row.expected.likely) : 0;
    ownGrams += weight.value - added;
  }
  const words = (grams: number): string => formatWeight(grams, unit, locale);
  const alarm =
    ownGrams > hangingGrams
      ? `${words(ownGrams)} of own meat is more than the ${words(hangingGrams)} that hung: ${words(ownGrams - hangingGrams)} too much. Look for a lug of another animal or a wrong unit, and weigh again.`
      : null;
  return { packedGrams, ownGrams, unread, alarm };
}
