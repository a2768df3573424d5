import type { Tariff } from '@/lib/pricing';
import { now } from './clock';
import type { Database, DatabaseTransaction } from './client';

export type StoredTariff = { readonly id: number; readonly tariff: Tariff; readonly createdAt: Date; readonly createdBy: string };

/** The price list in force: the newest one. Throws where there is none, which set-up never leaves. */
export async function latestTariff(client: Database | DatabaseTransaction): Promise<StoredTariff> {
  const row = await client.tariffVersion.findFirst({ orderBy: { id: 'desc' } });
  if (!row) throw new Error('There is no price list');
  // Written only by set-up and by the price page, both of which check it.
  return { ...row, tariff: row.tariff as unknown as Tariff };
}

/** Saves a changed price list as a new version. Orders booked before keep theirs. */
export async function addTariff(transaction: DatabaseTransaction, tariff: Tariff, by: string): Promise<void> {
  await transaction.tariffVersion.create({ data: { tariff, createdBy: by, createdAt: now() } });
}
