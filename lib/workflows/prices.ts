import { type StaffActor, requirePermission } from '@/lib/access';
import { recordAudit } from '@/lib/db/audit';
import { database } from '@/lib/db/client';
import { addTariff, latestTariff } from '@/lib/db/tariffs';
import { type Tariff, checkTariff } from '@/lib/pricing';
import { changing, refuseWithin } from './change-order';
import { type Outcome, refuseFields } from './outcome';

/** The price list in force, for who may read prices. */
export async function readTariff(
  actor: StaffActor,
): Promise<{ readonly tariff: Tariff; readonly versionId: number; readonly since: Date; readonly by: string }> {
  requirePermission(actor, 'prices.read');
  const { tariff, id, createdAt, createdBy } = await latestTariff(database());
  return { tariff, versionId: id, since: createdAt, by: createdBy };
}

/** Puts a changed price list in force. Orders booked before keep the one they were booked under. */
export async function saveTariff(actor: StaffActor, versionId: number, tariff: Tariff): Promise<Outcome> {
  requirePermission(actor, 'prices.write');
  const wrong = checkTariff(tariff);
  if (wrong.length > 0) return refuseFields(Object.fromEntries(wrong.map(({ path, message }) => [path, message])));
  const done = await changing(async (transaction) => {
    const before = await latestTariff(transaction);
    if (before.id !== versionId) {
      refuseWithin(`${before.createdBy} changed the prices while you had them open. Nothing was overwritten: look at them as they stand now, then change them again.`);
    }
    await addTariff(transaction, tariff, actor.name);
    await recordAudit(transaction, actor, 'prices-changed', { before: before.tariff, after: tariff });
  });
  return done.ok ? { ok: true } : done;
}
