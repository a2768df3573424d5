import { diseaseWords } from './disease';
import type { RuledOrder } from './rule';

/** What may not go into a shared batch, as the subject of a sentence, and whether it is the place that says so. */
export type Barred = { readonly what: string; readonly isByLaw: boolean };

/** Why meat of this animal may not go into a batch with other hunters' meat, the gravest reason first; null where it may. */
export function barredFromMixing(order: RuledOrder): Barred | null {
  const what = spoilsABatch(order);
  if (what) return { what, isByLaw: false };
  return order.circumstances.law.pooling === 'not-allowed' ? { what: 'the meat of different hunters', isByLaw: true } : null;
}

function spoilsABatch({ circumstances, plan }: RuledOrder): string | null {
  const disease = diseaseWords(circumstances);
  if (disease) return `meat of ${disease}`;
  const { conditions } = circumstances;
  if (conditions.includes('sour')) return 'meat that came in sour or fly-blown';
  if (plan.forecast.facts.gutShot) return 'meat of a gut-shot animal';
  if (conditions.includes('dirty')) return 'meat that came in with hair and dirt on it';
  return mayCarryTrichinella(plan.forecast.species) ? `meat of ${plan.forecast.species.name}` : null;
}

/** Bear, boar and the like: cooked as birds are, and not a bird. */
export function mayCarryTrichinella({ cooking, plan }: Pick<RuledOrder['plan']['forecast']['species'], 'cooking' | 'plan'>): boolean {
  return cooking === 'birds-bear-boar' && plan === 'four-legged';
}
