import { type AnimalFacts, type SpeciesBook, forecastCarcass } from '@/lib/carcass';
import type { Instructions } from '@/lib/instructions';
import { type Plan, planOrder } from '@/lib/plan';
import { type ArrivalDetails, type DescribedAnimal, type ShopWays, factsOf } from './animal';

/** What is known of an animal and what is wished of it: all a forecast and a plan need. */
export type AnimalAndWish = {
  readonly animal: DescribedAnimal;
  readonly arrival: ArrivalDetails | null;
  readonly hangingGrams: number | null;
  readonly instructions: Instructions;
};

/** Facts, forecast and plan, before any rule has looked at them. */
export type PlannedAnimal = { readonly facts: AnimalFacts; readonly plan: Plan };

/** Forecasts and plans one animal. Apart from the rules, so that a phone can show a forecast before it has them. */
export function planAnimal(order: AnimalAndWish, shop: { readonly species: SpeciesBook; readonly ways?: ShopWays }): PlannedAnimal {
  const facts = factsOf(order.animal, order.arrival, order.hangingGrams, shop.ways);
  return { facts, plan: planOrder(order.instructions, forecastCarcass(facts, shop.species)) };
}
