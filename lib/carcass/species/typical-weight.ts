import type { Evidence, Figure, TypicalWeight } from '../species';

const GRAMS_PER_POUND = 453.59237;

/** A mean and spread in pounds, as whole grams. `pounds(105, 10)` is 47 627 and 4 536 g. */
export function pounds(mean: number, sd: number): Figure {
  return { mean: Math.round(mean * GRAMS_PER_POUND), sd: Math.round(sd * GRAMS_PER_POUND) };
}

/** A mean and spread in kilograms, as whole grams. */
export function kilos(mean: number, sd: number): Figure {
  return { mean: Math.round(mean * 1_000), sd: Math.round(sd * 1_000) };
}

/** Evidence that there is none but our own judgement, with its reason. */
export function judged(why: string): Evidence {
  return { n: 0, source: 'JUDGEMENT', why };
}

/** What an animal of one sex and age weighs on a basis when nobody has weighed it: one row of a species file. */
export function typical(
  sex: TypicalWeight['sex'],
  ageClass: TypicalWeight['ageClass'],
  basis: TypicalWeight['basis'],
  grams: Figure,
  evidence: Evidence,
): TypicalWeight {
  return { sex, ageClass, basis, grams: { ...grams, ...evidence } };
}
