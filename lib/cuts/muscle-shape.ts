import type { MuscleId } from '@/lib/carcass';

/** Grams in a cubic millimetre of muscle: 1.06 g/cm3. From memory (Mendez and Keys 1960 give 1.0597). */
const GRAMS_PER_CUBIC_MM = 0.001_06;

/**
 * How many times as long as it is thick a muscle is, taken as a cylinder across the grain. The same seams on every deer
 * whatever its size, so one figure serves all; a big animal's muscle is larger each way. The loin by common practice: the
 * strap of a small deer is about 2 ft. The others by judgement.
 */
const LENGTH_OVER_THICKNESS: Readonly<Record<MuscleId, number>> = {
  fillet: 8,
  loin: 13.5,
  'hind-shank': 2,
  rump: 1.2,
  topside: 1.3,
  'thick-flank': 1.4,
  silverside: 2.2,
  'salmon-cut': 3.5,
  'fore-shank': 2.2,
  blade: 1.8,
  neck: 1.5,
  'rib-meat': 3,
  flank: 3,
  'bird-breast': 1.6,
  'bird-inner-fillet': 4,
  'bird-thigh': 1.3,
  'bird-drumstick': 2,
  'bird-wing': 2,
};

/**
 * Length of so much of a muscle along the way it is sliced, in millimetres: a cylinder of mass m whose length is e times its
 * thickness has length (4 m e^2 / (pi density))^(1/3).
 *
 * @example muscleLengthMm('loin', 1040) // about 610 mm, 2 ft
 */
export function muscleLengthMm(muscle: MuscleId, grams: number): number {
  return Math.cbrt((4 * grams * LENGTH_OVER_THICKNESS[muscle] ** 2) / (Math.PI * GRAMS_PER_CUBIC_MM));
}

/** Thickness of so much of a muscle in the middle, in millimetres. */
export function muscleThicknessMm(muscle: MuscleId, grams: number): number {
  return muscleLengthMm(muscle, grams) / LENGTH_OVER_THICKNESS[muscle];
}
