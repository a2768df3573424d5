import { now } from '@/lib/db/clock';
import { clientAddress } from './client-address';
import { type ThrottlePolicy, takeTry, throttleKey } from './throttle';
import { waitWords } from './wait-words';

/** Plans asked by another program from one address: sixty at a stretch, then waits of half a minute; a quiet minute starts anew. */
export const planPolicy: ThrottlePolicy = { free: 60, closedAfter: null, forgottenAfterHours: 1 / 60 };

/** Counts one plan asked for. Null: go ahead. Otherwise how long to wait, and a sentence that says so. */
export async function mayPlan(headers: Headers): Promise<{ readonly seconds: number; readonly message: string } | null> {
  const at = now();
  const taken = await takeTry([{ key: throttleKey('plan', clientAddress(headers) ?? 'unknown'), policy: planPolicy }], at);
  if (taken.outcome === 'counted') return null;
  if (taken.outcome === 'closed') throw new Error('Plans are never closed for good');
  const seconds = Math.max(1, Math.ceil((taken.until.getTime() - at.getTime()) / 1000));
  return { seconds, message: `Too many requests came from your address. ${waitWords(taken.until, at)}` };
}
