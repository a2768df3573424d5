import { type AnimalFacts, type SpeciesBook, forecastCarcass } from '@/lib/carcass';
import type { NameCountry } from '@/lib/cuts';
import type { Instructions } from '@/lib/instructions';
import { planOrder } from '@/lib/plan';
import { type Finding, type Stage, type TestState, findAll } from '@/lib/rules';
import type { WeightUnit } from '@/lib/units';
import { type ShopWays, isInDiseaseZone } from './animal';
import { type AnimalAndWish, type PlannedAnimal, planAnimal } from './order-plan';

/** What the shop's settings contribute to an assessment. */
export type ShopView = {
  readonly unit: WeightUnit;
  readonly country: NameCountry;
  readonly diseaseZones: readonly string[];
  readonly species: SpeciesBook;
  readonly ways?: ShopWays;
};

/** One order as far as it is known. */
export type OrderFacts = AnimalAndWish & { readonly stage: Stage };

export type Assessment = PlannedAnimal & { readonly findings: readonly Finding[] };

/** One animal whose facts are settled, and the wish for it. */
export type AnimalCase = {
  readonly stage: Stage;
  readonly facts: AnimalFacts;
  readonly instructions: Instructions;
  readonly diseaseZone: boolean;
  readonly test: TestState;
};

/**
 * Forecast, plan and findings of one order: the one computation behind the form, the counter, the sheet and the
 * status page. Pure and deterministic.
 */
export function assessOrder(order: OrderFacts, shop: ShopView): Assessment {
  const planned = planAnimal(order, shop);
  return { ...planned, findings: findingsOn(order, planned, shop) };
}

/** What the rules say of an order that has been planned. */
export function findingsOn(order: OrderFacts, { facts, plan }: PlannedAnimal, shop: ShopView): readonly Finding[] {
  return findAll({
    stage: order.stage,
    instructions: order.instructions,
    plan,
    circumstances: { diseaseZone: isFromZone(order, shop), test: order.arrival?.test ?? 'none', sex: facts.sex, form: facts.form },
    words: { country: shop.country, unit: shop.unit },
  });
}

/** The same for an animal that is no order of the shop's book: what another program asks about. */
export function assessAnimal(
  { stage, facts, instructions, diseaseZone, test }: AnimalCase,
  shop: Pick<ShopView, 'country' | 'unit' | 'species'>,
): Assessment {
  const plan = planOrder(instructions, forecastCarcass(facts, shop.species));
  const findings = findAll({
    stage,
    instructions,
    plan,
    circumstances: { diseaseZone, test, sex: facts.sex, form: facts.form },
    words: { country: shop.country, unit: shop.unit },
  });
  return { facts, plan, findings };
}

/** Whether the animal counts as from a disease zone: by what was found, or said, or by the name of the place. */
export function isFromZone(order: Pick<OrderFacts, 'animal' | 'arrival'>, shop: Pick<ShopView, 'diseaseZones'>): boolean {
  if (order.arrival) return order.arrival.diseaseZone || isInDiseaseZone(order.arrival.killedWhere, shop.diseaseZones);
  return order.animal.diseaseZone === 'yes' || isInDiseaseZone(order.animal.takenWhere, shop.diseaseZones);
}
