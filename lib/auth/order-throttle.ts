import type { DatabaseTransaction } from '@/lib/db/client';
import { logSecurity } from './security-log';
import { type ThrottlePolicy, takeTryWithin, throttleKey } from './throttle';
import { waitWords } from './wait-words';

const hourMs = 3_600_000;

/** New orders from one address: twenty in an hour of the clock, then waits of half a minute that double up to a quarter of an hour. */
export const orderPolicy: ThrottlePolicy = { free: 20, closedAfter: null, forgottenAfterHours: 1 };

/** Counts one new order in the transaction that saves it. Null: go ahead. Otherwise a sentence that says how long to wait. */
export async function mayOrder(transaction: DatabaseTransaction, address: string, at: Date): Promise<string | null> {
  // A key an hour: a shop whose hunters share one address all day starts anew with each.
  const key = throttleKey('order', `${address} ${Math.floor(at.getTime() / hourMs)}`);
  const taken = await takeTryWithin(transaction, [{ key, policy: orderPolicy }], at);
  if (taken.outcome === 'counted') return null;
  if (taken.outcome === 'closed') throw new Error('Orders are never closed for good');
  logSecurity('order has to wait', { address });
  return `Many orders came from your network just now, so this one was not sent. Everything you filled in is still here. ${waitWords(taken.until, at)}`;
}
