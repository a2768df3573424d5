import type { StoredOrder } from '@/lib/db/orders';
import { type WhereItGoes, threeSentences, whereItGoes } from '@/lib/documents';
import type { OrderFormShop } from '@/lib/forms';
import { type Assessment, packRows } from '@/lib/orders';

/** Where a stored animal goes, and the three sentences that say so. */
export type WhereItWent = { readonly goes: WhereItGoes; readonly sentences: readonly string[] };

/** Forecast until the animal is packed, by its weighings afterwards. Null where the figures cannot be true of one animal. */
export function whereItWent(
  order: Pick<StoredOrder, 'animal' | 'arrival' | 'instructions' | 'weighings'>,
  { plan }: Pick<Assessment, 'plan'>,
  shop: Pick<OrderFormShop, 'country' | 'unit' | 'locale'>,
): WhereItWent | null {
  const goes = whereItGoes(
    {
      plan,
      told: [order.arrival?.weight, order.animal.weight],
      packing: { rows: packRows(order.instructions, plan, shop.country), weighings: order.weighings },
    },
    shop,
  );
  return goes && { goes, sentences: threeSentences(goes, shop) };
}
