import { type StaffActor, requirePermission } from '@/lib/access';
import { recordAudit } from '@/lib/db/audit';
import { saveHandover } from '@/lib/db/orders';
import { type FormEntries, parseHandoverForm } from '@/lib/forms';
import { canStep, stateWords, stepFrom } from '@/lib/orders';
import { assessStored } from './assess-stored';
import { changing, orderForChange, refuseStop, refuseWithin, saveChange } from './change-order';
import { invoicePapersOf } from './invoice-papers';
import { type Outcome, refuseFields } from './outcome';
import { shopSettings } from './shop-settings';
import { shopView } from './shop-view';

/** Hands the animal over: no stop against it, everything paid, the tag back, who took it. */
export async function handOver(actor: StaffActor, number: string, baseVersion: number, entries: FormEntries): Promise<Outcome> {
  requirePermission(actor, 'order.release');
  const parsed = parseHandoverForm(entries);
  if (!parsed.ok) return refuseFields(parsed.fieldErrors);
  const settings = await shopSettings();
  const shop = await shopView(settings);
  const done = await changing(async (transaction) => {
    const order = await orderForChange(transaction, { number }, baseVersion);
    if (!canStep(order.state, 'hand-over')) refuseWithin(`This animal is ${stateWords(order.state)}; it is handed over once it is ready.`);
    refuseStop(assessStored(order, shop, 'release'), 'It is not handed over.');
    const papers = invoicePapersOf(order, settings);
    if (!papers) return refuseWithin('There is no invoice yet. Issue it first.');
    if (papers.dueMinor > 0) refuseWithin(`${papers.due} is still due. Take the payment first.`);
    await saveChange(transaction, order, { state: stepFrom(order.state, 'hand-over') });
    await saveHandover(transaction, { orderId: order.id, ...parsed.value, by: actor.name });
    await recordAudit(transaction, actor, 'handed-over', { orderId: order.id, after: parsed.value });
  });
  return done.ok ? { ok: true } : done;
}
