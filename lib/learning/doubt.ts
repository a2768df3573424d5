import type { SpeciesFigures } from '@/lib/carcass';
import type { Observation } from './observation';

/** What makes an animal too odd to learn from until somebody says that it is right. */
export type Doubt = { readonly of: 'hanging' | 'meat'; readonly expected: number; readonly found: number };

/** Standard deviations of the share beyond which it is doubted, and the least relative distance: a knife may differ by a third. */
const MOST_DEVIATIONS = 3.5;
const LEAST_DISTANCE = 0.3;

/**
 * A wrong unit of the scale (a factor of 2.2), a lug of another animal, a weight left out: a share that no animal of the kind has.
 * Null where the animal may be learned from. A share above one is always doubted.
 */
export function doubtOf(observation: Observation, figures: SpeciesFigures): Doubt | null {
  const { fieldDressed, composition } = figures;
  return (
    doubted('hanging', observation.hangingOfFieldDressed, fieldDressed.per10k.hanging / 10_000, fieldDressed.concentration) ??
    doubted('meat', observation.meatOfHanging, composition.carcass.per10k.meat / 10_000, composition.carcass.concentration)
  );
}

function doubted(of: Doubt['of'], found: number | null, expected: number, concentration: number): Doubt | null {
  if (found === null) return null;
  const sd = Math.sqrt((expected * (1 - expected)) / (concentration + 1));
  const allowed = Math.max(MOST_DEVIATIONS * sd, LEAST_DISTANCE * expected);
  return found >= 1 || found <= 0 || Math.abs(found - expected) > allowed ? { of, expected, found } : null;
}
