import { type StaffActor, requirePermission } from '@/lib/access';
import { recordAudit } from '@/lib/db/audit';
import { database } from '@/lib/db/client';
import { loadOrder, replaceWeighings } from '@/lib/db/orders';
import { type FormEntries, WEIGHTS_ARE_RIGHT, parsePackForm, saysRight } from '@/lib/forms';
import { canStep, lookAgain, packRows, stateWords, stepFrom } from '@/lib/orders';
import { assessStored } from './assess-stored';
import { changing, orderForChange, refuseFieldsWithin, refuseStop, refuseWithin, saveChange } from './change-order';
import { type Outcome, refuse, refuseFields } from './outcome';
import { shopSettings } from './shop-settings';
import { shopView } from './shop-view';
import { recordYield } from './yields';

/**
 * Saves what was weighed at the packing table, unless a stop stands against these weights. May be saved again until the
 * invoice is issued. Weights far off the forecast, and rows left empty, are asked back once: they are saved with the
 * tick that they are right.
 */
export async function savePacking(actor: StaffActor, number: string, baseVersion: number, entries: FormEntries): Promise<Outcome> {
  requirePermission(actor, 'pack.weigh');
  const settings = await shopSettings();
  const shop = await shopView(settings);
  const known = await loadOrder(database(), { number });
  if (!known) return refuse('That order is not here any more.');
  const rows = packRows(known.instructions, assessStored(known, shop).plan, shop.country);
  const parsed = parsePackForm(entries, rows.map((row) => row.lineKey), shop);
  if (!parsed.ok) return refuseFields(parsed.fieldErrors);
  if (parsed.value.length === 0) return refuse('Nothing has been weighed yet. Write at least one weight.');
  const done = await changing(async (transaction) => {
    const order = await orderForChange(transaction, { number }, baseVersion);
    if (order.invoice) refuseWithin('The invoice has been issued: its weights stand.');
    if (!canStep(order.state, 'pack') && order.state !== 'packed') {
      refuseWithin(`This animal is ${stateWords(order.state)}; it is weighed out once it has been on the bench.`);
    }
    const assessment = assessStored({ ...order, weighings: parsed.value }, shop, 'packing');
    refuseStop(assessment, 'The weights are not saved.');
    const doubt = lookAgain(rows, parsed.value, shop);
    if (doubt !== null && !saysRight(entries)) refuseFieldsWithin({ [WEIGHTS_ARE_RIGHT]: doubt });
    await saveChange(transaction, order, canStep(order.state, 'pack') ? { state: stepFrom(order.state, 'pack') } : {});
    await replaceWeighings(transaction, order.id, parsed.value, actor.name);
    await recordYield(transaction, order, assessment.plan, { rows, weighings: parsed.value });
    await recordAudit(transaction, actor, 'packed', {
      orderId: order.id,
      before: order.weighings.map((one) => ({ ...one })),
      after: parsed.value.map((one) => ({ ...one })),
    });
  });
  return done.ok ? { ok: true } : done;
}
