import { TARGETS, USUAL_CUTS } from '@/lib/cuts';
import { partsOf } from '@/lib/carcass';
import { applyIntent, findingsOf } from './order-form-intents';
import type { OrderFormShop } from './order-form-plan';
import { ORDER_SECTIONS, sectionId } from './order-sections';
import { type OrderFormState, type OrderFormStep, openedForm } from './order-form-state';
import { type OrderFormValues, planOf } from './order-form-values';

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
  if (intent.startsWith('change:')) {
    const section = ORDER_SECTIONS.find((one) => one === intent.slice('change:'.length));
    return { ...openedForm(values), focus: section ? sectionId(section) : null };
  }
  if (intent === 'usual') return { ...openedForm(addUsualCuts(values, shop)), focus: sectionId('cuts') };
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
    case 'first':
      return 'served-first';
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
