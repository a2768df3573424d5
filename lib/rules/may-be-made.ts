import type { ProductId } from '@/lib/instructions';
import { PRODUCTS } from '@/lib/plan';
import { mayCarryTrichinella } from './mixing';
import type { RuledOrder } from './rule';

/** Whether a made thing can be offered to this hunter at all: no other rule would take it off the list again. */
export function mayBeMade(productId: ProductId, { instructions, circumstances, plan }: RuledOrder): boolean {
  const { shop, today } = circumstances;
  const isOver = today !== null && shop.madeUntil !== null && today > shop.madeUntil;
  const isPork = instructions.noPork && PRODUCTS[productId].contains.includes('pork');
  const told = shop.allergens[productId];
  const isAvoided = instructions.avoid.length > 0 && (!told || instructions.avoid.some((id) => told.includes(id)));
  const isOnlyMixed = shop.mixedOnly.includes(productId) && instructions.mixing === 'own-meat-only';
  const isWormy = productId === 'jerky' && mayCarryTrichinella(plan.forecast.species);
  return !isOver && !isPork && !isAvoided && !isOnlyMixed && !isWormy;
}
