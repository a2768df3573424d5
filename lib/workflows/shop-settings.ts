import { cache } from 'react';
import { requirePermission, type StaffActor } from '@/lib/access';
import { checkForm, refuseForm, shopSettingsSchema, type FormOutcome, type ShopSettings } from '@/lib/forms';
import { recordAudit } from '@/lib/db/audit';
import { database, withTransaction } from '@/lib/db/client';
import { readShop, replaceShopSettings, type Shop } from '@/lib/db/shop';

/** The shop, read once a request; null before set-up. */
export const currentShop = cache(async (): Promise<Shop | null> => readShop(database()));

/** The shop's settings. Throws before set-up: no order and no member of staff is there then. */
export async function shopSettings(): Promise<ShopSettings> {
  const shop = await currentShop();
  if (shop === null) throw new Error('The shop has not been set up');
  return shop.settings;
}

/** Saves the settings over the version the form was filled in on. */
export async function saveShopSettings(actor: StaffActor, typed: unknown, version: number): Promise<FormOutcome<ShopSettings>> {
  requirePermission(actor, 'shop.settings');
  const checked = checkForm(shopSettingsSchema, typed);
  if (!checked.ok) return checked;
  return withTransaction(async (transaction) => {
    const before = await readShop(transaction);
    if (before === null) throw new Error('The shop has not been set up');
    if (!(await replaceShopSettings(transaction, checked.value, version))) {
      return refuseForm('Somebody else saved the settings while you were changing them. Nothing of yours is saved. Open the settings in a new tab to see theirs, then enter your change there');
    }
    await recordAudit(transaction, actor, 'settings-changed', { before: before.settings, after: checked.value });
    return checked;
  });
}
