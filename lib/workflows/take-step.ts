import { type StaffActor, can, requirePermission } from '@/lib/access';
import { recordAudit } from '@/lib/db/audit';
import type { StoredOrder } from '@/lib/db/orders';
import { type OrderFormShop, tidyLine } from '@/lib/forms';
import { type OrderStep, canStep, stateWords, stepFrom } from '@/lib/orders';
import { assessStored } from './assess-stored';
import { changing, orderForChange, refuseStop, refuseWithin, saveChange } from './change-order';
import { type Outcome, refuse, refuseFields } from './outcome';
import { shopSettings } from './shop-settings';
import { shopView } from './shop-view';

const STEP_PERMISSION = {
  hang: 'order.receive',
  hold: 'order.receive',
  free: 'order.receive',
  'start-cutting': 'bench.start',
  cancel: 'order.write',
} as const;
type PlainStep = keyof typeof STEP_PERMISSION;

const LONGEST_REASON = 200;

/**
 * Takes a step: hang, hold, lift a hold, start cutting, cancel. Why an animal is held may be said, and is kept in its
 * history. The knife does not start while a stop stands.
 */
export async function takeStep(actor: StaffActor, number: string, baseVersion: number, step: OrderStep, why = ''): Promise<Outcome> {
  if (!isPlainStep(step)) return refuse('That step has a page of its own.');
  requirePermission(actor, STEP_PERMISSION[step]);
  const reason = tidyLine(why);
  if (reason.length > LONGEST_REASON) return refuseFields({ reason: `The reason has room for ${LONGEST_REASON} characters.` });
  const shop = await shopView(await shopSettings());
  const done = await changing(async (transaction) => {
    const order = await orderForChange(transaction, { number }, baseVersion);
    if (!canStep(order.state, step)) refuseWithin(`This animal is ${stateWords(order.state)}; that step is not open from here.`);
    if (step === 'start-cutting') refuseTheKnife(order, shop, actor);
    // A held animal that never hung still has to be weighed on the rail.
    const state = step === 'free' && order.hangingGrams === null ? 'received' : stepFrom(order.state, step);
    await saveChange(transaction, order, { state });
    await recordAudit(transaction, actor, step, { orderId: order.id, before: { state: order.state }, after: { state, ...(reason !== '' && { reason }) } });
  });
  return done.ok ? { ok: true } : done;
}

function isPlainStep(step: OrderStep): step is PlainStep {
  return Object.hasOwn(STEP_PERMISSION, step);
}

function refuseTheKnife(order: StoredOrder, shop: OrderFormShop, actor: StaffActor): void {
  refuseStop(assessStored(order, shop, 'cutting'), 'The knife stays down.');
  const open = order.questions.filter((question) => question.answeredAt === null).length;
  if (open > 0) {
    const wayOn = can(actor, 'order.answer') ? 'call and answer for them' : 'ask the counter';
    refuseWithin(`The knife stays down: ${open === 1 ? 'one question to the hunter is' : `${open} questions to the hunter are`} still open. Wait for the answer, or ${wayOn}.`);
  }
}
