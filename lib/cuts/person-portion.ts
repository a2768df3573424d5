import { type CutId, keepsBone } from './cuts';

/**
 * Raw weight one person is given, in grams. Without bone 200 (MAGCUISINE: 200 g of roe deer a person; a butcher's
 * guide says 1/4 to 1/3 lb for light eaters, BUTCHSERV). On the bone half as much again: judgement, near the 1/3 to
 * 1/2 lb of the same guide.
 */
export function gramsPerPerson(cut: CutId): number {
  return keepsBone(cut) ? 300 : 200;
}
