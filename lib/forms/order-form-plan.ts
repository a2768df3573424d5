import { type ArrivalDetails, type OrderFacts, type PlannedAnimal, type ShopView, planAnimal } from '@/lib/orders';
import { describedAnimal, describedInstructions } from './order-form-described';
import type { FormShop, OrderFormValues } from './order-form-values';

/** Everything the form must know of the shop to forecast and to find fault; of an order that came in, also what was found. */
export type OrderFormShop = FormShop &
  ShopView & { readonly found?: { readonly arrival: ArrivalDetails; readonly hangingGrams: number | null } | undefined };

/**
 * The order a form stands for so far, or null until a species is chosen. An animal that came in is forecast by what was
 * found, not by what was told. Never throws on what people type.
 */
export function formFacts(values: OrderFormValues, shop: OrderFormShop): OrderFacts | null {
  const animal = describedAnimal(values, shop);
  if (!animal) return null;
  const { arrival, hangingGrams } = shop.found ?? { arrival: null, hangingGrams: null };
  return { stage: arrival ? 'receiving' : 'order', animal, arrival, hangingGrams, instructions: describedInstructions(values, shop), hunterName: values.hunter.name };
}

/** Forecast and plan of the form as it stands, or null until a species is chosen. Needs no rules. */
export function planForm(values: OrderFormValues, shop: OrderFormShop): PlannedAnimal | null {
  const order = formFacts(values, shop);
  return order && planAnimal(order, shop);
}
