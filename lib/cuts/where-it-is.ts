import type { TargetId } from './targets';

/** Where each target is on the animal, in the words of someone who points at it. Common practice, no source; birds are not asked about. */
const WHERE: Readonly<Partial<Record<TargetId, string>>> = {
  fillet: 'inside the body, under the spine',
  saddle: 'both sides of the back on the bone',
  loin: 'along the back, outside',
  haunch: 'the whole hind leg',
  'hind-shank': 'the hind leg below the knee',
  rump: 'top of the hind leg, behind the loin',
  topside: 'inner side of the thigh',
  'thick-flank': 'front of the thigh, above the knee',
  silverside: 'outer side of the thigh',
  'salmon-cut': 'back edge of the thigh, round and slim',
  shoulder: 'the whole foreleg with its blade',
  'fore-shank': 'the foreleg below the elbow',
  blade: 'upper foreleg, on and behind the blade bone',
  neck: 'between head and shoulders',
  ribs: 'the side of the body',
  'rib-rack': 'over the ribs',
  flank: 'belly wall, behind the ribs',
};

/** Targets of the four-legged, each of which can be shown on a drawing. */
export const PLACED_TARGETS: readonly TargetId[] = Object.keys(WHERE) as TargetId[];

/** Where a target is, in words: 'front of the thigh, above the knee'; null of a bird's. */
export function whereItIs(target: TargetId): string | null {
  return WHERE[target] ?? null;
}
