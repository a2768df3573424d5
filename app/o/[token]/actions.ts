'use server';

import { redirect } from 'next/navigation';
import { checkOrderForm, openedForm, readOrderForm, refusedForm, stepOrderForm, type OrderFormState } from '@/lib/forms';
import { answerQuestion, changeOrder, readHunterOrder } from '@/lib/workflows/hunter-orders';

/** One tap on an answer. Refused: the sentence why. */
export async function answerOrderQuestion(_before: { readonly message: string }, data: FormData): Promise<{ readonly message: string }> {
  const token = text(data, 'token');
  const answered = await answerQuestion(token, wholeNumber(data, 'questionId'), wholeNumber(data, 'option'));
  if (!answered.ok) return { message: answered.message };
  redirect(`/o/${encodeURIComponent(token)}?done=answered#questions`);
}

/** Every button of the form that changes a sent order. */
export async function stepOrderChange(_before: OrderFormState, data: FormData): Promise<OrderFormState> {
  const values = readOrderForm(data.entries());
  const token = text(data, 'token');
  const intent = text(data, 'intent');
  if (intent !== 'send') {
    const order = await readHunterOrder(token);
    if (order && intent === 'check') return checkOrderForm(values, order.shop);
    return order ? stepOrderForm(values, intent, text(data, 'step') === 'check' ? 'check' : 'edit', order.shop) : refusedForm(values, { '': 'That link does not open an order any more.' });
  }
  const changed = await changeOrder(token, wholeNumber(data, 'baseVersion'), values);
  if (!changed.ok) {
    const isAtFields = Object.keys(changed.fieldErrors).length > 0;
    return refusedForm(values, isAtFields ? changed.fieldErrors : { '': changed.message });
  }
  const sentTo = `/o/${encodeURIComponent(token)}?done=${changed.isChanged ? 'changed' : 'unchanged'}`;
  if (data.has('scripted')) return { ...openedForm(values), sentTo };
  redirect(sentTo);
}

function text(data: FormData, name: string): string {
  const value = data.get(name);
  return typeof value === 'string' ? value : '';
}

/** -1 where it is not a whole number: no question and no version has it. */
function wholeNumber(data: FormData, name: string): number {
  const digits = text(data, name);
  return /^\d{1,9}$/.test(digits) ? Number(digits) : -1;
}
