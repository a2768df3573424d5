import { type AnimalFacts, type SpeciesBook, forecastCarcass } from '@/lib/carcass';
import type { NameCountry } from '@/lib/cuts';
import type { Instructions } from '@/lib/instructions';
import type { LawPoints } from '@/lib/law';
import { planOrder } from '@/lib/plan';
import { type Circumstances, type Finding, PLAIN_CIRCUMSTANCES, PLAIN_TERMS, type RuleChanges, type ShopTerms, type Stage, type TestState, findAll } from '@/lib/rules';
import { type CalendarDay, type WeightUnit, daysBetween, isCalendarDay } from '@/lib/units';
import { type ShopWays, isInDiseaseZone } from './animal';
import { type AnimalAndWish, type PlannedAnimal, planAnimal } from './order-plan';

/** What the shop's settings contribute to an assessment. */
export type ShopView = {
  readonly unit: WeightUnit;
  readonly country: NameCountry;
  readonly diseaseZones: readonly string[];
  readonly law: LawPoints;
  readonly species: SpeciesBook;
  readonly ways?: ShopWays;
  readonly terms?: ShopTerms;
  /** The day it is in the shop. */
  readonly today?: CalendarDay;
  /** The rules it has softened; none where left out. */
  readonly ruleChanges?: RuleChanges;
};

/** One order as far as it is known. */
export type OrderFacts = AnimalAndWish & {
  readonly stage: Stage;
  readonly hunterName?: string;
  /** The hunter's own meat as weighed at the packing table; null until then. */
  readonly ownPackedGrams?: number | null;
};

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
    circumstances: circumstancesOf(order, facts, shop),
    words: { country: shop.country, unit: shop.unit },
  }, shop.ruleChanges);
}

function circumstancesOf(order: OrderFacts, facts: AnimalFacts, shop: ShopView): Circumstances {
  const { arrival } = order;
  const today = shop.today ?? null;
  return {
    diseaseZone: isFromZone(order, shop),
    test: arrival?.test ?? 'none',
    sex: facts.sex,
    form: facts.form,
    conditions: arrival?.conditions ?? [],
    shotWith: arrival?.shotWith ?? 'unknown',
    killedDaysAgo: arrival && today && isCalendarDay(arrival.killedOn) ? daysBetween(arrival.killedOn, today) : null,
    celsiusTenths: arrival?.celsiusTenths ?? null,
    hunterName: order.hunterName ?? '',
    killedBy: arrival?.killedBy ?? '',
    hasTransferNote: arrival?.hasTransferNote ?? false,
    weights: { brought: arrival?.weight ?? null, hangingGrams: order.hangingGrams, ownPackedGrams: order.ownPackedGrams ?? null },
    today,
    shop: shop.terms ?? PLAIN_TERMS,
    law: shop.law,
  };
}

/** The same for an animal that is no order of the shop's book: what another program asks about. */
export function assessAnimal(
  { stage, facts, instructions, diseaseZone, test }: AnimalCase,
  shop: Pick<ShopView, 'country' | 'unit' | 'species' | 'terms' | 'ruleChanges'> & Partial<Pick<ShopView, 'law'>>,
): Assessment {
  const plan = planOrder(instructions, forecastCarcass(facts, shop.species));
  const findings = findAll({
    stage,
    instructions,
    plan,
    circumstances: { ...PLAIN_CIRCUMSTANCES, ...(shop.law && { law: shop.law }), ...(shop.terms && { shop: shop.terms }), diseaseZone, test, sex: facts.sex, form: facts.form },
    words: { country: shop.country, unit: shop.unit },
  }, shop.ruleChanges);
  return { facts, plan, findings };
}

/** Whether the animal counts as from a disease zone: by what was found, or said, or by the name of the place. */
export function isFromZone(order: Pick<OrderFacts, 'animal' | 'arrival'>, shop: Pick<ShopView, 'diseaseZones'>): boolean {
  if (order.arrival) return order.arrival.diseaseZone || isInDiseaseZone(order.arrival.killedWhere, shop.diseaseZones);
  return order.animal.diseaseZone === 'yes' || isInDiseaseZone(order.animal.takenWhere, shop.diseaseZones);
}
