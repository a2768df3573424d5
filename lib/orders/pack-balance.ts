import { type WeightUnit, formatWeight, roundHalfUp } from '@/lib/units';
import type { PackRow, Weighing } from './bill-facts';

/** What was packed, held against what hung. Grams. */
export type Balance = {
  /** Everything weighed. */
  readonly packedGrams: number;
  /** Of that, what is not the hunter's own: added pork or fat. */
  readonly addedGrams: number;
  /** The hunter's own meat: without what was added, and without offal and bones kept besides. */
  readonly ownGrams: number;
  /** A sentence where more of the animal is packed than hung; null while that is possible. */
  readonly alarm: string | null;
};

/**
 * What of a weighed row is not the hunter's own, in the proportion the forecast expects of it, half up. Grams.
 *
 * @example addedGramsOf({ addedGrams: 250, expected: { likely: 1000 } }, 2000) // 500
 */
export function addedGramsOf(row: Pick<PackRow, 'addedGrams'> & { readonly expected: { readonly likely: number } }, grams: number): number {
  return row.expected.likely > 0 ? roundHalfUp(grams * row.addedGrams, row.expected.likely) : 0;
}

/** Adds up the weighings of an order and holds its own meat against the weight on the rail. Weighings of no row are passed over. */
export function balanceOf(
  rows: readonly PackRow[],
  weighings: readonly Pick<Weighing, 'lineKey' | 'grams'>[],
  { hangingGrams, unit, locale }: { readonly hangingGrams: number; readonly unit: WeightUnit; readonly locale: string },
): Balance {
  const rowOf = new Map(rows.map((row) => [row.lineKey, row]));
  let packedGrams = 0;
  let addedGrams = 0;
  let ownGrams = 0;
  for (const { lineKey, grams } of weighings) {
    const row = rowOf.get(lineKey);
    if (!row) continue;
    packedGrams += grams;
    if (row.cutId === 'kept') continue;
    const added = addedGramsOf(row, grams);
    addedGrams += added;
    ownGrams += grams - added;
  }
  const words = (grams: number): string => formatWeight(grams, unit, locale);
  const alarm =
    ownGrams > hangingGrams
      ? `${words(ownGrams)} of own meat is more than the ${words(hangingGrams)} that hung. Look for a lug of another animal or a wrong unit, and weigh again.`
      : null;
  return { packedGrams, addedGrams, ownGrams, alarm };
}
