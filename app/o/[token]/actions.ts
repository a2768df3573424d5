'use server';

import { refresh } from 'next/cache';
import { redirect } from 'next/navigation';
import { AS_IT_STANDS } from '@/app/order/as-it-stands';
import { checkOrderForm, formAsItStands, openedForm, readBase, readOrderForm, refusedForm, stepOrderForm, withFindings, type OrderFormState } from '@/lib/forms';
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
  const baseVersion = wholeNumber(data, 'baseVersion');
  const base = readBase(baseVersion, data.get('baseValues'));
  if (intent !== 'send') {
    const order = await readHunterOrder(token);
    if (!order) return refusedForm(values, { '': 'That link does not open an order any more.' });
    if (intent === AS_IT_STANDS) {
      // The rest of the page is drawn anew as well.
      refresh();
      return withFindings(formAsItStands(values, base, { version: order.version, values: order.values }, order.shop), order.shop);
    }
    const next = intent === 'check' ? checkOrderForm(values, order.shop) : stepOrderForm(values, intent, text(data, 'step') === 'check' ? 'check' : 'edit', order.shop);
    return { ...withFindings(next, order.shop), base };
  }
  const changed = await changeOrder(token, baseVersion, values);
  if (!changed.ok) {
    const isAtFields = Object.keys(changed.fieldErrors).length > 0;
    const refused = refusedForm(values, isAtFields ? changed.fieldErrors : { '': changed.message });
    const order = await readHunterOrder(token);
    return { ...(order ? withFindings(refused, order.shop) : refused), base, isStale: changed.isStale ?? false };
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
