import { type AnimalFacts, type SpeciesBook, forecastCarcass } from '@/lib/carcass';
import type { NameCountry } from '@/lib/cuts';
import type { Instructions } from '@/lib/instructions';
import { type Plan, planOrder } from '@/lib/plan';
import { type Finding, type Stage, findAll } from '@/lib/rules';
import type { WeightUnit } from '@/lib/units';
import { type ArrivalDetails, type DescribedAnimal, factsOf, isInDiseaseZone } from './animal';

/** What the shop's settings contribute to an assessment. */
export type ShopView = {
  readonly unit: WeightUnit;
  readonly country: NameCountry;
  readonly diseaseZones: readonly string[];
  readonly species: SpeciesBook;
};

/** One order as far as it is known. */
export type OrderFacts = {
  readonly stage: Stage;
  readonly animal: DescribedAnimal;
  readonly arrival: ArrivalDetails | null;
  readonly hangingGrams: number | null;
  readonly instructions: Instructions;
};

export type Assessment = {
  readonly facts: AnimalFacts;
  readonly plan: Plan;
  readonly findings: readonly Finding[];
};

/**
 * Forecast, plan and findings of one order: the one computation behind the form, the counter, the sheet and the
 * status page. Pure and deterministic.
 */
export function assessOrder(order: OrderFacts, shop: ShopView): Assessment {
  const facts = factsOf(order.animal, order.arrival, order.hangingGrams);
  const plan = planOrder(order.instructions, forecastCarcass(facts, shop.species));
  const findings = findAll({
    stage: order.stage,
    instructions: order.instructions,
    plan,
    circumstances: {
      diseaseZone: isFromZone(order, shop),
      test: order.arrival?.test ?? 'none',
      sex: facts.sex,
      form: facts.form,
    },
    words: { country: shop.country, unit: shop.unit },
  });
  return { facts, plan, findings };
}

/** Whether the animal counts as from a disease zone: by what was found, or said, or by the name of the place. */
export function isFromZone(order: Pick<OrderFacts, 'animal' | 'arrival'>, shop: Pick<ShopView, 'diseaseZones'>): boolean {
  if (order.arrival) return order.arrival.diseaseZone || isInDiseaseZone(order.arrival.killedWhere, shop.diseaseZones);
  return order.animal.diseaseZone === 'yes' || isInDiseaseZone(order.animal.takenWhere, shop.diseaseZones);
}
