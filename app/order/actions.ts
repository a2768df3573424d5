'use server';

import { headers } from 'next/headers';
import { redirect } from 'next/navigation';
import { clientAddress } from '@/lib/auth/client-address';
import { currentStaff } from '@/lib/auth/current-staff';
import { checkOrderForm, openedForm, readOrderForm, refusedForm, stepOrderForm, withFindings, type OrderFormState } from '@/lib/forms';
import { openOrderForm, placeOrder } from '@/lib/workflows/hunter-orders';

/** Every button of the new order. Without script each comes here; with script only the sending does. */
export async function stepNewOrder(_before: OrderFormState, data: FormData): Promise<OrderFormState> {
  const values = readOrderForm(data.entries());
  const intent = data.get('intent');
  if (intent !== 'send') {
    const shop = await openOrderForm();
    if (!shop) return refusedForm(values, { '': 'This shop is not open for orders yet.' });
    if (intent === 'check') return withFindings(checkOrderForm(values, shop), shop);
    const next = stepOrderForm(values, typeof intent === 'string' ? intent : '', data.get('step') === 'check' ? 'check' : 'edit', shop);
    return withFindings(next, shop);
  }
  // Whoever takes orders at the counter may take many.
  const address = (await currentStaff()) ? null : clientAddress(await headers());
  const placed = await placeOrder(values, address);
  if (!placed.ok) {
    const refused = refusedForm(values, hasFields(placed.fieldErrors) ? placed.fieldErrors : { '': placed.message });
    const shop = await openOrderForm();
    return shop ? withFindings(refused, shop) : refused;
  }
  const sentTo = `/o/${placed.token}?sent=1`;
  // The phone clears its draft before it follows.
  if (data.has('scripted')) return { ...openedForm(values), sentTo };
  redirect(sentTo);
}

function hasFields(fieldErrors: OrderFormState['fieldErrors']): boolean {
  return Object.keys(fieldErrors).length > 0;
}
