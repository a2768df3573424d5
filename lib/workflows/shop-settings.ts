import { cache } from 'react';
import { requirePermission, type StaffActor } from '@/lib/access';
import { checkForm, lawReader, parseLawForm, parseRuleChanges, refuseForm, settingsFormSchema, type FormOutcome, type ShopSettings } from '@/lib/forms';
import { recordAudit } from '@/lib/db/audit';
import { database, withTransaction } from '@/lib/db/client';
import { readShop, replaceShopSettings, type Shop } from '@/lib/db/shop';
import { RULES } from '@/lib/rules';

/** The shop, read once a request; null before set-up. */
export const currentShop = cache(async (): Promise<Shop | null> => readShop(database()));

/** The shop's settings. Throws before set-up: no order and no member of staff is there then. */
export async function shopSettings(): Promise<ShopSettings> {
  const shop = await currentShop();
  if (shop === null) throw new Error('The shop has not been set up');
  return shop.settings;
}

/** Saves the settings over the version the form was filled in on. Law and softened rules, which have forms of their own, stay as they are. */
export async function saveShopSettings(actor: StaffActor, typed: unknown, version: number): Promise<FormOutcome<ShopSettings>> {
  requirePermission(actor, 'shop.settings');
  const checked = checkForm(settingsFormSchema, typed);
  if (!checked.ok) return checked;
  return replaceSettings(actor, { action: 'settings-changed', version }, ({ law, ruleChanges }) => ({ ok: true, value: { ...checked.value, law, ruleChanges } }));
}

/** Saves the form of the law over the version it was filled in on; of the settings it changes nothing else. */
export async function saveLaw(actor: StaffActor, typed: Readonly<Record<string, string>>, version: number): Promise<FormOutcome<ShopSettings>> {
  requirePermission(actor, 'shop.settings');
  return replaceSettings(actor, { action: 'law-changed', version }, (before) => {
    const checked = parseLawForm(typed, { before: before.law, reader: lawReader(before) });
    return checked.ok ? { ok: true, value: { ...before, law: checked.value } } : checked;
  });
}

/** Saves which rules the shop softens over the version their form was filled in on; of the settings it changes nothing else. */
export async function saveRuleChanges(actor: StaffActor, typed: Readonly<Record<string, string>>, version: number): Promise<FormOutcome<ShopSettings>> {
  requirePermission(actor, 'shop.settings');
  const checked = parseRuleChanges(typed, RULES);
  if (!checked.ok) return checked;
  return replaceSettings(actor, { action: 'rules-changed', version }, (before) => ({ ok: true, value: { ...before, ruleChanges: checked.value } }));
}

/** Puts new settings in the place of those of the version, unless somebody was quicker, and records both. */
async function replaceSettings(
  actor: StaffActor,
  { action, version }: { readonly action: string; readonly version: number },
  change: (before: ShopSettings) => FormOutcome<ShopSettings>,
): Promise<FormOutcome<ShopSettings>> {
  return withTransaction(async (transaction) => {
    const before = await readShop(transaction);
    if (before === null) throw new Error('The shop has not been set up');
    const after = change(before.settings);
    if (!after.ok) return after;
    if (!(await replaceShopSettings(transaction, after.value, version))) {
      return refuseForm('Somebody else saved the settings while you were changing them. Nothing of yours is saved. Open this page in a new tab to see theirs, then enter your change there');
    }
    await recordAudit(transaction, actor, action, { before: before.settings, after: after.value });
    return after;
  });
}
