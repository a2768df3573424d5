import { roundHalfUp } from '@/lib/units';
import type { PackRow, Weighing } from './bill-facts';

/** What was packed, added up. Grams. */
export type Balance = {
  /** Everything weighed. */
  readonly packedGrams: number;
  /** Of that, what is not the hunter's own: added pork or fat. */
  readonly addedGrams: number;
  /** The hunter's own meat: without what was added, and without offal and bones kept besides. */
  readonly ownGrams: number;
};

/**
 * What of a weighed row is not the hunter's own, in the proportion the forecast expects of it, half up. Grams.
 *
 * @example addedGramsOf({ addedGrams: 250, expected: { likely: 1000 } }, 2000) // 500
 */
export function addedGramsOf(row: Pick<PackRow, 'addedGrams'> & { readonly expected: { readonly likely: number } }, grams: number): number {
  return row.expected.likely > 0 ? roundHalfUp(grams * row.addedGrams, row.expected.likely) : 0;
}

/** Adds up the weighings of an order. Weighings of no row are passed over. */
export function balanceOf(rows: readonly PackRow[], weighings: readonly Pick<Weighing, 'lineKey' | 'grams'>[]): Balance {
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
  return { packedGrams, addedGrams, ownGrams };
}
