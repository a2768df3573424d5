import { createHash } from 'node:crypto';
import { withTransaction, type DatabaseTransaction } from '@/lib/db/client';
import { clearThrottle, readThrottle, saveThrottle, type Throttle } from '@/lib/db/sign-in-throttle';

/** How a key's failures in a row slow down its next try. */
export type ThrottlePolicy = {
  /** So many failures cost nothing. */
  readonly free: number;
  /** After so many in a row no further try is taken; null for no end. */
  readonly closedAfter: number | null;
  /** A quiet time after which failures are forgotten; null for never. */
  readonly forgottenAfterHours: number | null;
};

const firstWaitSeconds = 30;
const longestWaitSeconds = 900;

/**
 * One account, from browsers that have not signed in to it before. With the ten left to one that has, an account is never
 * tried more than 100 times in a row. Whoever closes it like that shuts out no one: browsers that signed in before are
 * counted by themselves, and the owner can open it again.
 */
export const accountPolicy: ThrottlePolicy = { free: 4, closedAfter: 90, forgottenAfterHours: null };
export const knownBrowserPolicy: ThrottlePolicy = { free: 4, closedAfter: 10, forgottenAfterHours: null };
export const addressPolicy: ThrottlePolicy = { free: 20, closedAfter: null, forgottenAfterHours: 24 };
export const setUpPolicy: ThrottlePolicy = { free: 4, closedAfter: null, forgottenAfterHours: 24 };

export type ThrottledKey = { readonly key: string; readonly policy: ThrottlePolicy };

/** A try that was counted, one that has to wait, or one that no wait opens. */
export type TakenTry =
  | { readonly outcome: 'counted' }
  | { readonly outcome: 'wait'; readonly until: Date }
  | { readonly outcome: 'closed' };

/** A key of the table. What a person typed goes in as a digest: it may be a password in the wrong field. */
export function throttleKey(kind: 'account' | 'browser' | 'address' | 'set-up' | 'plan' | 'order', about: string): string {
  return `${kind}:${createHash('sha256').update(about).digest('base64url')}`;
}

/**
 * Counts a try as failed under every key before it is made, so that many at once gain nothing. Refused by one key, it
 * is counted under none.
 */
export function takeTry(keys: readonly ThrottledKey[], now: Date): Promise<TakenTry> {
  return withTransaction((transaction) => takeTryWithin(transaction, keys, now));
}

/** The same as part of a transaction, whose rollback takes the count back. */
export async function takeTryWithin(transaction: DatabaseTransaction, keys: readonly ThrottledKey[], now: Date): Promise<TakenTry> {
  const counts = [];
  for (const { key, policy } of keys) {
    const failures = standingFailures(await readThrottle(transaction, key), policy, now);
    if (failures.outcome !== 'counted') return failures;
    counts.push({ key, failures: failures.failures + 1, policy });
  }
  for (const { key, failures, policy } of counts) {
    await saveThrottle(transaction, key, { failures, blockedUntil: waitAfter(failures, policy, now), now });
  }
  return { outcome: 'counted' };
}

/** Takes back the count of a try that succeeded: accounts and browsers start anew, an address gets this one try back. */
export async function forgiveTry(transaction: DatabaseTransaction, keys: readonly ThrottledKey[], now: Date): Promise<void> {
  for (const { key, policy } of keys) {
    const standing = await readThrottle(transaction, key);
    if (policy.forgottenAfterHours === null || standing === null || standing.failures <= 1) await clearThrottle(transaction, key);
    else await saveThrottle(transaction, key, { failures: standing.failures - 1, blockedUntil: null, now });
  }
}

/** Until when the next try waits after so many failures in a row: 30 s, doubling up to a quarter of an hour. */
export function waitAfter(failures: number, policy: ThrottlePolicy, now: Date): Date | null {
  const waits = failures - policy.free;
  if (waits <= 0) return null;
  const seconds = Math.min(firstWaitSeconds * 2 ** Math.min(waits - 1, 10), longestWaitSeconds);
  return new Date(now.getTime() + seconds * 1000);
}

type Standing = { readonly outcome: 'counted'; readonly failures: number } | Exclude<TakenTry, { outcome: 'counted' }>;

function standingFailures(row: Throttle | null, policy: ThrottlePolicy, now: Date): Standing {
  if (row === null) return { outcome: 'counted', failures: 0 };
  const hours = policy.forgottenAfterHours;
  if (hours !== null && now.getTime() - row.updatedAt.getTime() > hours * 3_600_000) return { outcome: 'counted', failures: 0 };
  if (policy.closedAfter !== null && row.failures >= policy.closedAfter) return { outcome: 'closed' };
  if (row.blockedUntil !== null && row.blockedUntil > now) return { outcome: 'wait', until: row.blockedUntil };
  return { outcome: 'counted', failures: row.failures };
}
