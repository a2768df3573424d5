'use server';

import { refresh } from 'next/cache';
import { redirect } from 'next/navigation';
import type { FormAnswer } from '@/app/_components/kept-form';
import { fieldNumber, fieldText, orderOf, refusedAnswer } from '@/app/staff/_components/form-answer';
import { requireStaff } from '@/lib/auth/current-staff';
import { ORDER_STEPS } from '@/lib/orders';
import { answerForHunter } from '@/lib/workflows/change-for-hunter';
import { takeStep } from '@/lib/workflows/take-step';

/** Every button of the order's own page: a step to take, or a question answered for a hunter who is on the phone. */
export async function orderAction(_before: FormAnswer, data: FormData): Promise<FormAnswer> {
  const refused = await (data.has('question') ? answer(data) : take(data));
  // Somebody else may have been quicker: the page shows the order as it stands now.
  refresh();
  return refused;
}

async function take(data: FormData): Promise<FormAnswer> {
  const staff = await requireStaff('order.read');
  const { number, baseVersion } = orderOf(data);
  const step = ORDER_STEPS.find((one) => one === fieldText(data, 'step'));
  if (!step) return refusedAnswer({ ok: false, message: 'Press the button of the step to take.', fieldErrors: {} }, data);
  const outcome = await takeStep(staff, number, baseVersion, step, fieldText(data, 'reason'));
  if (!outcome.ok) return refusedAnswer(outcome, data);
  redirect(`/staff/orders/${number}?done=${step}`);
}

async function answer(data: FormData): Promise<FormAnswer> {
  const staff = await requireStaff('order.answer');
  const { number } = orderOf(data);
  const questionId = fieldNumber(data, 'question');
  const option = fieldNumber(data, 'option');
  if (option < 0) {
    const message = 'Choose what the hunter said.';
    return refusedAnswer({ ok: false, message, fieldErrors: { [`question-${questionId}`]: message } }, data);
  }
  const outcome = await answerForHunter(staff, number, questionId, option);
  if (!outcome.ok) return refusedAnswer(outcome, data);
  redirect(`/staff/orders/${number}?done=answered`);
}
