import { isDeepStrictEqual } from 'node:util';
import type { Actor } from '@/lib/access';
import { now } from '@/lib/db/clock';
import type { DatabaseTransaction } from '@/lib/db/client';
import { type StoredOrder, addQuestions, withdrawQuestions } from '@/lib/db/orders';
import type { OrderFormShop, QuestionOption } from '@/lib/forms';
import type { Edit } from '@/lib/instructions';
import { type Assessment, answersTo, balanceOf, findingsOn, newQuestions, packRows, planAnimal } from '@/lib/orders';
import type { Finding, Stage } from '@/lib/rules';

/** The stage at which an order's rules run while it stands where it does: what is next is what they are asked about. */
export function stageOf({ arrival, state }: Pick<StoredOrder, 'arrival' | 'state'>): Stage {
  switch (state) {
    case 'booked':
    case 'cancelled':
      return arrival ? 'receiving' : 'order';
    case 'received':
    case 'hanging':
    case 'on-hold':
      return 'receiving';
    case 'on-the-bench':
      return 'cutting';
    case 'packed':
      return 'packing';
    case 'ready':
    case 'collected':
      return 'release';
  }
}

/** Forecast, plan and findings of a stored order with its weighings, at its own stage or a named one. */
export function assessStored(order: StoredOrder, shop: OrderFormShop, stage: Stage = stageOf(order)): Assessment {
  const { animal, arrival, hangingGrams, instructions, weighings } = order;
  const planned = planAnimal({ animal, arrival, hangingGrams, instructions }, shop);
  const { ownGrams } = balanceOf(packRows(instructions, planned.plan, shop.country), weighings);
  const facts = { stage, animal, arrival, hangingGrams, instructions, hunterName: order.hunter.name, ownPackedGrams: weighings.length > 0 ? ownGrams : null };
  return { ...planned, findings: findingsOn(facts, planned, shop) };
}

/**
 * Brings the questions of an order that has arrived into line with its findings: asks what is new, takes back what no
 * longer stands. Returns how many are open afterwards.
 */
export async function settleQuestions(
  transaction: DatabaseTransaction,
  order: StoredOrder,
  shop: OrderFormShop,
): Promise<number> {
  if (!order.arrival) return 0;
  const { findings } = assessStored(order, shop);
  const whenSent = assessStored({ ...order, arrival: null, hangingGrams: null }, shop, 'order').findings;
  const open = order.questions.filter((question) => question.answeredAt === null);
  const gone = open.filter((question) => !isAskedRight(question.options, findings.find(({ key }) => key === question.findingKey)));
  const fresh = newQuestions({
    now: findings,
    whenSent,
    open: open.filter((question) => !gone.includes(question)).map((question) => question.findingKey),
    answered: order.questions.filter((question) => question.answeredAt).map((question) => question.findingKey),
  });
  await withdrawQuestions(transaction, gone.map((question) => question.id), now());
  await addQuestions(
    transaction,
    order.id,
    fresh.map((finding) => ({
      findingKey: finding.key,
      ruleId: finding.ruleId,
      message: finding.message,
      options: answersTo(finding),
    })),
  );
  return open.length - gone.length + fresh.length;
}

/** Whether a question still stands as it was asked. An answer that rewrites the note holds the note of its day: on another it would undo what came since. */
function isAskedRight(options: readonly QuestionOption[], finding: Finding | undefined): boolean {
  if (!finding) return false;
  const notes = (of: readonly Pick<QuestionOption, 'edits'>[]): readonly Edit[] => of.flatMap(({ edits }) => edits.filter(({ kind }) => kind === 'set-note'));
  return isDeepStrictEqual(notes(options), notes(finding.suggestions));
}

/** The name an actor signs with in rows that hold only a name. */
export function signatureName(actor: Actor): string {
  switch (actor.kind) {
    case 'staff':
      return actor.name;
    case 'hunter':
      return 'The hunter';
    case 'system':
      return 'Gambrel';
  }
}
