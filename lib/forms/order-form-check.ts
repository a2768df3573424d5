import { parseOrderForm } from './order-form-schema';
import { type OrderFormState, openedForm, refusedForm } from './order-form-state';
import type { FormShop, OrderFormValues } from './order-form-values';

/** Reading the answers over where nothing is missing, else the form with what is. Apart from the steps: it alone needs the schema. */
export function checkOrderForm(values: OrderFormValues, shop: FormShop): OrderFormState {
  const parsed = parseOrderForm(values, shop);
  return parsed.ok ? { ...openedForm(values), step: 'check' } : refusedForm(values, parsed.fieldErrors);
}
