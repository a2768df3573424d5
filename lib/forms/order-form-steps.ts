import { TARGETS, USUAL_CUTS } from '@/lib/cuts';
import { partsOf } from '@/lib/carcass';
import type { Answer } from './order-answers';
import { orderFormEntries } from './order-form-entries';
import { type OrderFormShop, applyIntent, findingsOf } from './order-form-intents';
import type { FieldErrors } from './order-form-schema';
import { type OrderFormValues, planOf } from './order-form-values';

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

/** Adds every cut the shop makes unless told otherwise; what is left is ground, unless the hunter has said something else. */
function addUsualCuts(values: OrderFormValues, shop: OrderFormShop): OrderFormValues {
  const begun = { ...values, rest: values.rest === '' ? 'mince' : values.rest };
  return partsOf(planOf(values, shop)).flatMap((part) => USUAL_CUTS[part])
    .filter(({ target, cut }) => cut !== 'mince' && !values.lines.some((line) => line.target === target))
    .reduce((now, { target }) => applyIntent(now, `add:${target}`, shop), begun);
}

/**
 * What a button leads to: 'change:<section>' goes back to one section, 'usual' adds the usual cuts, anything else is an intent of `applyIntent`. A finding mended while reading over leads back to reading over.
 * Checking is `checkOrderForm`; sending is the server's.
 */
export function stepOrderForm(values: OrderFormValues, intent: string, from: OrderFormStep, shop: OrderFormShop): OrderFormState {
  if (intent.startsWith('change:')) return { ...openedForm(values), focus: intent.slice('change:'.length) };
  if (intent === 'usual') return { ...openedForm(addUsualCuts(values, shop)), focus: 'cuts' };
  const next = applyIntent(values, intent, shop);
  if (from === 'check' && intent.startsWith('mend:')) return { ...openedForm(next), step: 'check' };
  return { ...openedForm(next), focus: placeAfter(intent, values, next, shop) };
}

/** Where to stand after a line was added, taken off, or a finding mended. */
function placeAfter(intent: string, before: OrderFormValues, after: OrderFormValues, shop: OrderFormShop): string | null {
  const [verb, rest = ''] = [intent.slice(0, intent.indexOf(':')), intent.slice(intent.indexOf(':') + 1)];
  const added = after.lines.find((line) => !before.lines.some((one) => one.id === line.id));
  switch (verb) {
    case 'add':
      return added?.id ?? null;
    case 'remove': {
      const gone = before.lines.find((line) => line.id === rest);
      return gone ? `part-${TARGETS[gone.target].part}` : null;
    }
    case 'mend': {
      const mended = findingsOf(before, shop).find((one) => one.key === rest.slice(0, rest.lastIndexOf('#')));
      if (!mended) return null;
      const { place } = mended;
      if (place.kind === 'field') return `at-${place.field}`;
      if (place.kind === 'part') return `part-${place.part}`;
      if (after.lines.some((line) => line.id === place.lineId)) return place.lineId;
      return mended.part ? `part-${mended.part}` : null;
    }
    default:
      return null;
  }
}
