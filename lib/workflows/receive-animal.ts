import { type StaffActor, requirePermission } from '@/lib/access';
import { recordAudit } from '@/lib/db/audit';
import { database } from '@/lib/db/client';
import { now } from '@/lib/db/clock';
import { type StoredOrder, hasSameTag, loadOrder, saveArrival } from '@/lib/db/orders';
import { type ArrivalFormValues, parseArrivalForm } from '@/lib/forms';
import { type ArrivalDetails, canStep, formatOrderNumber, searchKeyOf, stateWords, stepFrom, tagKey } from '@/lib/orders';
import { formatWeight, parseWeight } from '@/lib/units';
import { assessStored, settleQuestions } from './assess-stored';
import { changing, orderForChange, refuseFieldsWithin, refuseWithin, saveChange } from './change-order';
import { dayIn } from './clock';
import { type Outcome, refuse, refuseFields } from './outcome';
import { shopSettings } from './shop-settings';
import { shopView } from './shop-view';

/** Takes the animal in, or corrects what was taken down before the knife starts. The rules run on the true weight. */
export async function receiveAnimal(
  actor: StaffActor,
  number: string,
  baseVersion: number,
  values: ArrivalFormValues,
): Promise<{ readonly ok: true; readonly openQuestions: number } | Extract<Outcome, { ok: false }>> {
  requirePermission(actor, 'order.receive');
  const known = await loadOrder(database(), { number });
  if (!known) return refuse('That order is not here any more.');
  const settings = await shopSettings();
  const shop = await shopView(settings);
  const parsed = parseArrivalForm(values, { speciesId: known.animal.speciesId, shop, today: dayIn(settings.timeZone, now()) });
  if (!parsed.ok) return refuseFields(parsed.fieldErrors);
  const details = parsed.value;
  const done = await changing(async (transaction) => {
    const order = await orderForChange(transaction, { number }, baseVersion);
    const isFirst = canStep(order.state, 'receive');
    if (!isFirst && order.state !== 'received' && order.state !== 'hanging' && order.state !== 'on-hold') {
      refuseWithin(`This animal is ${stateWords(order.state)}; what came in can no longer be changed.`);
    }
    // Looked up inside the transaction: two counters may hold the same tag at the same moment.
    const sameTag = await hasSameTag(transaction, tagKey(details.tag), order.id);
    if (sameTag) refuseFieldsWithin({ tag: `Animal ${formatOrderNumber(sameTag)} was taken in under this very tag. Look at both tags again.` });
    const hangingGrams = onTheRail(order, details);
    if (hangingGrams !== null && details.weight.basis !== 'boneless' && details.weight.grams < hangingGrams) {
      refuseFieldsWithin({
        weight: `That is less than the ${formatWeight(hangingGrams, shop.unit, shop.locale)} on the rail. Weigh it again, or correct the weight on the rail first.`,
      });
    }
    await saveChange(transaction, order, {
      ...(isFirst && { state: stepFrom(order.state, 'receive') }),
      searchKey: searchKeyOf({ number, name: order.hunter.name, phone: order.hunter.phone, tag: details.tag, licence: details.licence }),
    });
    await saveArrival(transaction, { orderId: order.id, details, hangingGrams, by: actor.name });
    await recordAudit(transaction, actor, isFirst ? 'animal-received' : 'receiving-corrected', {
      orderId: order.id,
      ...(order.arrival && { before: order.arrival }),
      after: details,
    });
    return settleQuestions(transaction, { ...order, arrival: details, hangingGrams }, shop);
  });
  return done.ok ? { ok: true, openQuestions: done.value } : done;
}

/**
 * The weight on the rail after receiving, in grams: what was weighed there, or what came in without hide. A weight that
 * was taken for the one on the rail by mistake goes with its correction.
 */
function onTheRail(order: StoredOrder, { weight }: ArrivalDetails): number | null {
  const before = order.arrival?.weight;
  const isCorrected = before?.grams !== weight.grams || before.basis !== weight.basis;
  if (weight.basis === 'hanging') return isCorrected ? weight.grams : (order.hangingGrams ?? weight.grams);
  return before?.basis === 'hanging' && before.grams === order.hangingGrams ? null : order.hangingGrams;
}

/** Records the weight on the rail, hide, head and lower legs off; the animal then hangs. */
export async function recordHanging(actor: StaffActor, number: string, baseVersion: number, weightText: string): Promise<Outcome> {
  requirePermission(actor, 'order.receive');
  const settings = await shopSettings();
  const shop = await shopView(settings);
  const weight = parseWeight(weightText, { unit: shop.unit, locale: shop.locale, tooHeavy: 'That is more than any animal weighs. Read the scale again.' });
  if (!weight.ok) return refuseFields({ weight: weight.message });
  if (weight.value === 0) return refuseFields({ weight: 'Write what the scale shows; it reads more than nothing.' });
  const done = await changing(async (transaction) => {
    const order = await orderForChange(transaction, { number }, baseVersion);
    if (!order.arrival) return refuseWithin('Take the animal in first, then weigh it on the rail.');
    if (order.state !== 'received' && order.state !== 'hanging' && order.state !== 'on-hold') {
      refuseWithin(`This animal is ${stateWords(order.state)}; its weight on the rail can no longer be changed.`);
    }
    const { weight: arrived } = order.arrival;
    if (arrived.basis !== 'boneless' && weight.value > arrived.grams) {
      refuseWithin(
        `${formatWeight(weight.value, shop.unit, shop.locale)} on the rail is more than the ${formatWeight(arrived.grams, shop.unit, shop.locale)} it came in with. Weigh it again, or correct the weight at receiving.`,
      );
    }
    const { likely } = assessStored({ ...order, hangingGrams: null }, shop).plan.forecast.hanging;
    if (arrived.basis !== 'hanging' && weight.value * 2 < likely) {
      refuseWithin(
        `${formatWeight(weight.value, shop.unit, shop.locale)} on the rail is less than half of what it should be, about ${formatWeight(likely, shop.unit, shop.locale)}. Read the scale again, or correct the weight at receiving.`,
      );
    }
    await saveChange(transaction, order, canStep(order.state, 'hang') ? { state: stepFrom(order.state, 'hang') } : {});
    await saveArrival(transaction, { orderId: order.id, details: order.arrival, hangingGrams: weight.value, by: actor.name });
    await recordAudit(transaction, actor, 'weighed-hanging', {
      orderId: order.id,
      before: { hangingGrams: order.hangingGrams },
      after: { hangingGrams: weight.value },
    });
    await settleQuestions(transaction, { ...order, hangingGrams: weight.value }, shop);
  });
  return done.ok ? { ok: true } : done;
}
