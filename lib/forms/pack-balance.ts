import { type Balance, type PackRow, balanceOf } from '@/lib/orders';
import { type WeightUnit, parseWeight } from '@/lib/units';

/** The balance of the packing table while it is typed. */
export type PackBalance = Balance & {
  /** Rows whose weight cannot be read yet. */
  readonly unread: number;
};

/**
 * Adds up the packing table as it is typed, in grams. Never throws on what people type.
 *
 * @example packBalance([row], { 'line-1': '3 lb' }, { unit: 'lb', locale: 'en-US' }).ownGrams // 1361
 */
export function packBalance(
  rows: readonly PackRow[],
  typed: Readonly<Record<string, string>>,
  scale: { readonly unit: WeightUnit; readonly locale: string },
): PackBalance {
  const filled = rows.map(({ lineKey }) => ({ lineKey, text: (typed[lineKey] ?? '').trim() })).filter(({ text }) => text !== '');
  const weighings = filled.flatMap(({ lineKey, text }) => {
    const weight = parseWeight(text, scale);
    return weight.ok ? [{ lineKey, grams: weight.value }] : [];
  });
  return { ...balanceOf(rows, weighings), unread: filled.length - weighings.length };
}
