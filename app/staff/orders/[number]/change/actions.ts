'use server';

import { refresh } from 'next/cache';
import { redirect } from 'next/navigation';
import { AS_IT_STANDS } from '@/app/order/as-it-stands';
import { fieldText, orderOf } from '@/app/staff/_components/form-answer';
import { requireStaff } from '@/lib/auth/current-staff';
import { type OrderFormState, checkOrderForm, formAsItStands, openedForm, readBase, readOrderForm, refusedForm, stepOrderForm, withFindings } from '@/lib/forms';
import { openOrderForm } from '@/lib/workflows/hunter-orders';
import { changeInstructions } from '@/lib/workflows/change-for-hunter';
import { foundOf, readOrder } from '@/lib/workflows/read-order';

/** The form and, beside it, why it is changed. */
export type ChangeState = OrderFormState & { readonly reason?: string };

/** Every button of the form. Without script each comes here; with script only the sending does. */
export async function changeAction(_before: OrderFormState, data: FormData): Promise<ChangeState> {
  const staff = await requireStaff('order.write');
  const { number, baseVersion } = orderOf(data);
  const reason = fieldText(data, 'reason');
  const values = readOrderForm(data.entries());
  const intent = fieldText(data, 'intent');
  const base = readBase(baseVersion, data.get('baseValues'));
  const along = { reason, base };
  if (intent !== 'send') {
    const [opened, order] = await Promise.all([openOrderForm(), readOrder(staff, number)]);
    if (!opened || !order) return { ...refusedForm(values, { '': 'That order is not here any more.' }), ...along };
    const shop = { ...opened, found: foundOf(order) };
    if (intent === AS_IT_STANDS) {
      // The rest of the page is drawn anew as well.
      refresh();
      return { ...withFindings(formAsItStands(values, base, { version: order.version, values: order.formValues }, shop), shop), reason };
    }
    const next = intent === 'check' ? checkOrderForm(values, shop) : stepOrderForm(values, intent, fieldText(data, 'step') === 'check' ? 'check' : 'edit', shop);
    return { ...withFindings(next, shop), ...along };
  }
  const outcome = await changeInstructions(staff, number, baseVersion, values, reason);
  if (!outcome.ok) {
    const hasFields = Object.keys(outcome.fieldErrors).length > 0;
    const refused = refusedForm(values, hasFields ? outcome.fieldErrors : { '': outcome.message });
    const [opened, order] = await Promise.all([openOrderForm(), readOrder(staff, number)]);
    const shown = opened && order ? withFindings(refused, { ...opened, found: foundOf(order) }) : refused;
    return { ...shown, ...along, isStale: outcome.isStale ?? false };
  }
  const sentTo = `/staff/orders/${number}?done=${outcome.isChanged ? 'changed' : 'unchanged'}`;
  // The page drops its draft before it follows.
  if (data.has('scripted')) return { ...openedForm(values), sentTo };
  redirect(sentTo);
}
