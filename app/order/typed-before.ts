import { readOrderForm, type OrderFormValues } from '@/lib/forms';

/** What was typed, or put back by the browser, before the script ran; null where the page has no such form yet. */
export function typedIn(formId: string): OrderFormValues | null {
  if (typeof document === 'undefined') return null;
  const form = document.getElementById(formId);
  if (!(form instanceof HTMLFormElement)) return null;
  const values = readOrderForm(new FormData(form).entries());
  return values.formKey === '' ? null : values;
}
