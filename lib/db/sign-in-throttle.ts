import type { DatabaseTransaction } from './client';

/** Failures in a row under one key, and until when its next try has to wait. */
export type Throttle = { readonly failures: number; readonly blockedUntil: Date | null; readonly updatedAt: Date };

const keptDays = 30;

export async function readThrottle(transaction: DatabaseTransaction, key: string): Promise<Throttle | null> {
  return transaction.signInThrottle.findUnique({ where: { key }, select: { failures: true, blockedUntil: true, updatedAt: true } });
}

/** Saves the count of a key. A new key makes room first: rows untouched for 30 days go. */
export async function saveThrottle(
  transaction: DatabaseTransaction,
  key: string,
  { failures, blockedUntil, now }: { failures: number; blockedUntil: Date | null; now: Date },
): Promise<void> {
  const stale = new Date(now.getTime() - keptDays * 86_400_000);
  if (failures === 1) await transaction.signInThrottle.deleteMany({ where: { updatedAt: { lt: stale } } });
  const counted = { failures, blockedUntil, updatedAt: now };
  await transaction.signInThrottle.upsert({ where: { key }, create: { key, ...counted }, update: counted });
}

export async function clearThrottle(transaction: DatabaseTransaction, key: string): Promise<void> {
  await transaction.signInThrottle.deleteMany({ where: { key } });
}
