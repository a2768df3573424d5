import type { Finding } from '@/lib/rules';
import type { Answer } from './order-answers';
import { orderFormEntries } from './order-form-entries';
import type { FieldErrors } from './order-form-schema';
import type { OrderFormValues } from './order-form-values';

/** Where the hunter is: filling in, or reading the answers over before sending. */
export type OrderFormStep = 'edit' | 'check';

/** All a page needs to draw the form: the same on the phone and on the server. */
export type OrderFormState = {
  readonly step: OrderFormStep;
  readonly values: OrderFormValues;
  /** Sentences by the dotted path of their field; '' for the form as a whole. */
  readonly fieldErrors: FieldErrors;
  /** Id of the element the hunter should stand at next, or null to stay. */
  readonly focus: string | null;
  /** What the rules say, as the server worked it out: what is shown until the phone has the rules itself. */
  readonly findings?: readonly Finding[];
  /** Where the sent order is to be seen; null until it has been sent. */
  readonly sentTo: string | null;
  /** Of a form that changes an order: what it was opened on. */
  readonly base?: FormBase | undefined;
  /** Refused because the order is not any more what the form was opened on. */
  readonly isStale?: boolean;
  /** What others changed, once the form was brought to the order as it stands. */
  readonly changedMeanwhile?: readonly Answer[];
};

/** An order's version, and the form as it was filled in from it. */
export type FormBase = { readonly version: number; readonly values: OrderFormValues };

/** The form as it is opened: nothing wrong, nothing sent. */
export function openedForm(values: OrderFormValues): OrderFormState {
  return { step: 'edit', values, fieldErrors: {}, focus: null, sentTo: null };
}

/** The form refused, with its sentences in the order of its fields; those of the whole form come first. */
export function refusedForm(values: OrderFormValues, fieldErrors: FieldErrors): OrderFormState {
  const order = orderFormEntries(values).map(([name]) => name);
  const sorted = Object.entries(fieldErrors).sort(([a], [b]) => order.indexOf(a) - order.indexOf(b));
  return { ...openedForm(values), fieldErrors: Object.fromEntries(sorted) };
}
