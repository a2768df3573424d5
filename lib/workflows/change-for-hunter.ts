import { type StaffActor, requirePermission } from '@/lib/access';
import type { OrderFormValues } from '@/lib/forms';
import { type ChangeOutcome, answerWithOption, changeWholeOrder } from './change-order';
import { type Outcome, refuseFields } from './outcome';

/** Answers a question for a hunter who is on the phone. */
export async function answerForHunter(actor: StaffActor, number: string, questionId: number, optionIndex: number): Promise<Outcome> {
  requirePermission(actor, 'order.answer');
  return answerWithOption(actor, { number }, { questionId, optionIndex });
}

/** Changes the instructions for a hunter, with a reason. */
export async function changeInstructions(
  actor: StaffActor,
  number: string,
  baseVersion: number,
  values: OrderFormValues,
  reason: string,
): Promise<ChangeOutcome> {
  requirePermission(actor, 'order.write');
  const why = reason.trim().slice(0, 200);
  if (why === '') return refuseFields({ reason: 'Write why it is changed, for example "called, wants mince instead".' });
  return changeWholeOrder(actor, { number }, { baseVersion, values, reason: why });
}
