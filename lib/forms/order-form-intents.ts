import { TARGET_IDS, USUAL_CUTS, TARGETS, cutsOf } from '@/lib/cuts';
import { type Edit, PRODUCT_IDS, applyEdits, newLine, nextLineId } from '@/lib/instructions';
import { type Assessment, findingsOn } from '@/lib/orders';
import type { Finding } from '@/lib/rules';
import { type OrderFormShop, formFacts, planForm } from './order-form-plan';
import type { OrderFormState } from './order-form-state';
import { describedInstructions } from './order-form-described';
import type { FormShop, OrderFormValues } from './order-form-values';
import { withInstructions } from './order-form-written';
import { AS_SEEN_FIT } from './size-choices';

/**
 * What a button of the form asks for, as its `intent` value: 'add:topside', 'remove:line-3',
 * 'first:jerky' (is made before the others), 'mend:<finding key>#0' (its first suggestion). The same on the phone and
 * on the server, so the form works without script.
 */
export function applyIntent(values: OrderFormValues, intent: string, shop: OrderFormShop): OrderFormValues {
  const colon = intent.indexOf(':');
  const verb = colon < 0 ? intent : intent.slice(0, colon);
  const rest = colon < 0 ? '' : intent.slice(colon + 1);
  switch (verb) {
    case 'add':
      return addLine(values, rest);
    case 'remove':
      return { ...values, lines: values.lines.filter((line) => line.id !== rest) };
    case 'first': {
      const productId = PRODUCT_IDS.find((id) => id === rest);
      return productId ? mend(values, [{ kind: 'serve-first', productId }], shop) : values;
    }
    case 'mend': {
      const hash = rest.lastIndexOf('#');
      const finding = findingsOf(values, shop).find((one) => one.key === rest.slice(0, hash));
      const suggestion = finding?.suggestions[Number(rest.slice(hash + 1))];
      return suggestion ? mend(values, suggestion.edits, shop) : values;
    }
    default:
      return values;
  }
}

/** Applies a suggestion's edits to the form. */
export function mend(values: OrderFormValues, edits: readonly Edit[], shop: FormShop): OrderFormValues {
  return withInstructions(values, applyEdits(describedInstructions(values, shop), edits), shop);
}

/**
 * Findings of the form as it stands, as far as whoever writes it can settle them; none until a species is chosen. A plan
 * already made of it is taken as it is.
 */
export function findingsOf(values: OrderFormValues, shop: OrderFormShop, planned = planForm(values, shop)): readonly Finding[] {
  const order = formFacts(values, shop);
  return order && planned ? findingsOn(order, planned, shop).filter(({ whom }) => whom === 'hunter') : [];
}

/** Forecast, plan and findings of the form as it stands, or null until a species is chosen. Never throws on what people type. */
export function assessForm(values: OrderFormValues, shop: OrderFormShop): Assessment | null {
  const planned = planForm(values, shop);
  return planned && { ...planned, findings: findingsOf(values, shop, planned) };
}

/** A form with what the rules say of it, for a page drawn by the server. */
export function withFindings<State extends OrderFormState>(state: State, shop: OrderFormShop): State {
  return { ...state, findings: findingsOf(state.values, shop) };
}

function addLine(values: OrderFormValues, target: string): OrderFormValues {
  const known = TARGET_IDS.find((id) => id === target);
  if (!known) return values;
  const usual = USUAL_CUTS[TARGETS[known].part].find((one) => one.target === known)?.cut;
  const cut = usual ?? cutsOf(known)[0];
  if (!cut) return values;
  const line = newLine(nextLineId(values.lines), known, cut);
  return {
    ...values,
    lines: [...values.lines, { id: line.id, target: known, side: line.side, cut, size: AS_SEEN_FIT, pack: AS_SEEN_FIT, asked: '' }],
  };
}
