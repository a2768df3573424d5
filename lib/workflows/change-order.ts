import { isDeepStrictEqual } from 'node:util';
import type { Actor } from '@/lib/access';
import { recordAudit } from '@/lib/db/audit';
import { now } from '@/lib/db/clock';
import { type DatabaseTransaction, withTransaction } from '@/lib/db/client';
import {
  type OrderChange,
  type OrderKey,
  type StoredOrder,
  addInstructionVersion,
  answerOpenQuestion,
  changeOrderRow,
  listAudit,
  loadOrder,
} from '@/lib/db/orders';
import { type FieldErrors, type OrderDraft, type OrderFormShop, type OrderFormValues, parseOrderForm } from '@/lib/forms';
import { type Instructions, applyEdits } from '@/lib/instructions';
import { type Assessment, firstStop, isChangeable, searchKeyOf, stateWords } from '@/lib/orders';
import type { Finding } from '@/lib/rules';
import { assessStored, settleQuestions, signatureName } from './assess-stored';
import { momentWords } from './clock';
import { type Outcome, type Refusal, refuse, refuseFields } from './outcome';
import { shopSettings } from './shop-settings';
import { shopView } from './shop-view';

/** Thrown inside a transaction to undo it and answer with a refusal. */
class Refused extends Error {
  readonly refusal: Refusal;
  constructor(refusal: Refusal) {
    super(refusal.message);
    this.refusal = refusal;
  }
}

/** Undoes the transaction and answers with a sentence. */
export function refuseWithin(message: string): never {
  throw new Refused(refuse(message));
}

/** The same where somebody else was quicker. */
function refuseStaleWithin(message: string): never {
  throw new Refused({ ...refuse(message), isStale: true });
}

/** Undoes the transaction and answers with what is wrong at which field. */
export function refuseFieldsWithin(fieldErrors: FieldErrors): never {
  throw new Refused(refuseFields(fieldErrors));
}

/** Runs one change of one order in a transaction; a refusal inside undoes all of it. */
export async function changing<Value>(
  body: (transaction: DatabaseTransaction) => Promise<Value>,
): Promise<{ readonly ok: true; readonly value: Value } | Refusal> {
  try {
    return { ok: true, value: await withTransaction(body) };
  } catch (error) {
    if (error instanceof Refused) return error.refusal;
    throw error;
  }
}

/**
 * Loads an order for changing, at the version its page was read at. Refuses when somebody changed it in between and
 * says who.
 */
export async function orderForChange(
  transaction: DatabaseTransaction,
  by: OrderKey,
  baseVersion: number,
): Promise<StoredOrder> {
  const order = await loadOrder(transaction, by);
  if (!order) return refuseWithin('That order is not here any more.');
  if (order.version !== baseVersion) {
    const last = (await listAudit(transaction, order.id)).at(-1);
    const settings = await shopSettings();
    const who = last ? ` ${last.actorName} did, ${momentWords(last.at, settings)}.` : '';
    return refuseStaleWithin(`This order was changed while you had it open.${who} Nothing was overwritten: look at it as it stands now, then change it again.`);
  }
  return order;
}

/** Moves an order's version on with a change, or refuses when somebody was quicker. */
export async function saveChange(transaction: DatabaseTransaction, order: StoredOrder, change: OrderChange = {}): Promise<void> {
  if (!(await changeOrderRow(transaction, order, change))) {
    refuseStaleWithin('This order was changed while you had it open. Look at it as it stands now, then change it again.');
  }
}

/** Saved, and whether anything was different. */
export type ChangeOutcome = { readonly ok: true; readonly isChanged: boolean } | Refusal;

/** Changes the animal, the instructions and the hunter's details of an order before the knife starts. */
export async function changeWholeOrder(
  actor: Actor,
  by: OrderKey,
  change: { readonly baseVersion: number; readonly values: OrderFormValues; readonly reason: string },
): Promise<ChangeOutcome> {
  const settings = await shopSettings();
  const shop = await shopView(settings);
  const parsed = parseOrderForm(change.values, shop);
  if (!parsed.ok) return refuseFields(parsed.fieldErrors);
  const draft = parsed.value;
  const done = await changing(async (transaction) => {
    const order = await orderForChange(transaction, by, change.baseVersion);
    if (!isChangeable(order.state)) refuseWithin(`This animal is ${stateWords(order.state)}: the knife has started, so the cuts can no longer be changed. Call the shop about what is still to be made.`);
    // Once it has come, what was found counts, not what was told.
    const animal = order.arrival ? order.animal : draft.animal;
    const before = { hunter: order.hunter, animal: order.animal };
    const after = { hunter: draft.hunter, animal };
    const isTold = !isDeepStrictEqual(before, after);
    if (!isTold && isDeepStrictEqual(order.instructions, draft.instructions)) return false;
    refuseStops(draft, order, shop);
    await saveChange(transaction, order, {
      ...after,
      searchKey: searchKeyOf({
        number: order.number,
        name: draft.hunter.name,
        phone: draft.hunter.phone,
        tag: order.arrival?.tag ?? '',
        licence: order.arrival?.licence ?? '',
      }),
    });
    if (isTold) await recordAudit(transaction, actor, 'details-changed', { orderId: order.id, before, after });
    await saveInstructions(transaction, order, draft.instructions, change.reason, actor);
    await settleQuestions(transaction, { ...order, animal, instructions: draft.instructions }, shop);
    return true;
  });
  return done.ok ? { ok: true, isChanged: done.value } : done;
}

/** Answers one question with one of its options: the option's edits become the next version of the instructions. */
export async function answerWithOption(
  actor: Actor,
  by: OrderKey,
  answer: { readonly questionId: number; readonly optionIndex: number },
): Promise<Outcome> {
  const shop = await shopView(await shopSettings());
  const done = await changing(async (transaction) => {
    const order = (await loadOrder(transaction, by)) ?? refuseWithin('That order is not here any more.');
    const question = order.questions.find((one) => one.id === answer.questionId);
    const option = question?.options[answer.optionIndex];
    if (!question || !option) return refuseWithin('That question is not open any more.');
    if (question.answeredAt) return refuseWithin(`That question is answered already: ${question.answer ?? ''}.`);
    if (!isChangeable(order.state)) return refuseWithin(`This animal is ${stateWords(order.state)}: the knife has started.`);
    const instructions = applyEdits(order.instructions, option.edits);
    await answerOpenQuestion(transaction, question.id, option.label, now());
    await saveChange(transaction, order);
    await saveInstructions(transaction, order, instructions, `answer: ${option.label}`, actor);
    await recordAudit(transaction, actor, 'question-answered', {
      orderId: order.id,
      before: { question: question.message },
      after: { answer: option.label },
    });
    const questions = order.questions.map((one) => (one.id === question.id ? { ...one, answeredAt: now(), answer: option.label } : one));
    await settleQuestions(transaction, { ...order, instructions, questions }, shop);
  });
  return done.ok ? { ok: true } : done;
}

async function saveInstructions(
  transaction: DatabaseTransaction,
  order: StoredOrder,
  instructions: Instructions,
  reason: string,
  actor: Actor,
): Promise<void> {
  if (isDeepStrictEqual(instructions, order.instructions)) return;
  const number = order.instructionVersion + 1;
  await addInstructionVersion(transaction, { orderId: order.id, number, instructions, reason, by: signatureName(actor) });
  await recordAudit(transaction, actor, 'instructions-changed', {
    orderId: order.id,
    before: { version: order.instructionVersion },
    after: { version: number, reason },
  });
}

/** A stop that stood before may stand on (it is a question by then); a new one is refused. */
function refuseStops(draft: OrderDraft, order: StoredOrder, shop: OrderFormShop): void {
  const before = assessStored(order, shop).findings.map((finding) => finding.key);
  const changed = { ...order, animal: order.arrival ? order.animal : draft.animal, instructions: draft.instructions, hunter: draft.hunter };
  const stop = firstStop(assessStored(changed, shop).findings, before);
  if (stop) refuseWithin(withWaysOut(stop));
}

/** Undoes the transaction where a stop stands against a step; what does not happen is said before its sentence. */
export function refuseStop({ findings }: Pick<Assessment, 'findings'>, notDone: string): void {
  const stop = firstStop(findings);
  if (stop) refuseWithin(`${notDone} ${stop.message}`);
}

/** A stop against sending a form: its sentence, and that the form shows what clears it, where anything does. */
export function withWaysOut({ message, suggestions }: Pick<Finding, 'message' | 'suggestions'>): string {
  return suggestions.length > 0 ? `${message} Choose one of the ways out shown there, then send again.` : message;
}
