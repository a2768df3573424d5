import type { Figure, SpeciesFigures } from '@/lib/carcass';
import type { Plan } from '@/lib/plan';
import { PRIOR_ANIMALS, dirichletShare, hangingShare } from './learn-species';
import type { Observation, Weighed } from './observation';

/**
 * What makes an animal too odd to learn from until somebody says that it is right: shares of what came in or of what hung, or one
 * line of it in grams.
 */
export type Doubt =
  | { readonly of: 'hanging' | 'meat'; readonly expected: number; readonly found: number }
  | { readonly of: 'line'; readonly lineId: string; readonly expectedGrams: number; readonly foundGrams: number };

/** Standard deviations beyond which a share or a line is doubted: one animal in two thousand. */
const MOST_DEVIATIONS = 3.5;
/** Relative distance that is never doubted while the shop is unknown: its knife may differ by a third. Fades as its animals tell. */
const STRANGER_DISTANCE = 0.3;

/**
 * A wrong unit of the scale (a factor of 2.2), a lug of another animal, a weight left out: a share that no animal of the kind has.
 * Null where the animal may be learned from. A share above one is always doubted. `ownAnimals` is how many of the shop's own the
 * figures have learned from.
 */
export function doubtOf(observation: Observation, figures: SpeciesFigures, ownAnimals: number): Doubt | null {
  const { hanging, meatOfHanging } = observation;
  const { per10k, concentration } = figures.composition.carcass;
  return (
    (hanging && doubted('hanging', hanging.share, hangingShare(figures, hanging.basis), ownAnimals)) ??
    (meatOfHanging === null ? null : doubted('meat', meatOfHanging, dirichletShare(per10k.meat, concentration), ownAnimals))
  );
}

/** Factor either way within which no line is doubted: half as much again is another hand, twice is another unit. */
const LEAST_FACTOR = 1.6;
/** Lines below this are not doubted by themselves: what they tell is little. Grams. */
const LEAST_DOUBTED_GRAMS = 300;
/** Deviations between the 10th and the 90th percentile. */
const DEVIATIONS_ACROSS = 2.563;

/**
 * The line whose weight is furthest from what was planned of it, where that is too far to be the animal's: one lug typed in the
 * wrong unit, or two lugs mixed up, which hardly show in the sum. Null where every line may be learned from.
 */
export function lineDoubtOf(plan: Plan, { lines }: Pick<Weighed, 'lines'>): Doubt | null {
  const odd = plan.lines.flatMap(({ line, packed }) => {
    const foundGrams = lines.get(line.id);
    if (foundGrams === undefined || packed.likely < LEAST_DOUBTED_GRAMS || packed.low <= 0) return [];
    const sd = Math.log(packed.high / packed.low) / DEVIATIONS_ACROSS;
    const distance = foundGrams > 0 ? Math.abs(Math.log(foundGrams / packed.likely)) : Infinity;
    const allowed = Math.max(MOST_DEVIATIONS * sd, Math.log(LEAST_FACTOR));
    return distance > allowed ? [{ lineId: line.id, expectedGrams: packed.likely, foundGrams: Math.round(foundGrams), distance: distance / allowed }] : [];
  });
  const [worst] = odd.toSorted((a, b) => b.distance - a.distance);
  return worst ? { of: 'line', lineId: worst.lineId, expectedGrams: worst.expectedGrams, foundGrams: worst.foundGrams } : null;
}

function doubted(
  of: 'hanging' | 'meat',
  found: number,
  { mean: expected, sd }: Figure,
  ownAnimals: number,
): Doubt | null {
  const allowed = Math.max(MOST_DEVIATIONS * sd, (STRANGER_DISTANCE * expected * PRIOR_ANIMALS) / (PRIOR_ANIMALS + ownAnimals));
  return found >= 1 || found <= 0 || Math.abs(found - expected) > allowed ? { of, expected, found } : null;
}
