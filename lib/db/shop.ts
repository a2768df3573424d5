import { checkForm, shopSettingsSchema, type ShopSettings } from '@/lib/forms';
import type { Tariff } from '@/lib/pricing';
import { now } from './clock';
import type { Database, DatabaseTransaction } from './client';

/** The shop's settings and their version, which a save has to name. */
export type Shop = { readonly settings: ShopSettings; readonly version: number };

/** The shop, or null before set-up. Throws when what is stored does not pass the settings' own check. */
export async function readShop(client: Database | DatabaseTransaction): Promise<Shop | null> {
  const row = await client.shop.findUnique({ where: { id: 1 }, select: { settings: true, version: true } });
  if (row === null) return null;
  const checked = checkForm(shopSettingsSchema, row.settings);
  if (!checked.ok) throw new Error(`The stored shop settings do not pass: ${JSON.stringify(checked.fieldErrors)}`);
  return { settings: checked.value, version: row.version };
}

/** Saves a new shop with its first price list. */
export async function createShop(
  transaction: DatabaseTransaction,
  { settings, tariff, createdBy }: { settings: ShopSettings; tariff: Tariff; createdBy: string },
): Promise<void> {
  await transaction.shop.create({ data: { name: settings.name, settings, createdAt: now() } });
  await transaction.tariffVersion.create({ data: { tariff, createdBy, createdAt: now() } });
}

/** Saves settings over the version they were read at. False when somebody saved in between: nothing is changed then. */
export async function replaceShopSettings(transaction: DatabaseTransaction, settings: ShopSettings, version: number): Promise<boolean> {
  const { count } = await transaction.shop.updateMany({
    where: { id: 1, version },
    data: { name: settings.name, settings, version: { increment: 1 } },
  });
  return count === 1;
}
