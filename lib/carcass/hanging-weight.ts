import type { AnimalFacts } from './animal-facts';
import type { Species, TypicalWeight, WeightBasis } from './species';

/** A weight of the whole skinned carcass and its relative spread (coefficient of variation). */
export type UncertainWeight = { readonly grams: number; readonly cv: number };

/** A scale reads to about half a percent. Judgement; a Class III scale is better. */
export const WEIGHED_CV = 0.005;

/** Carries a weight on any basis to the hanging weight of the whole carcass. Grams; relative variances add. */
export function toHanging(species: Species, grams: number, basis: WeightBasis, cv: number): UncertainWeight {
  const dressed = species.fieldDressedPerLive;
  const hung = species.hangingPerFieldDressed;
  switch (basis) {
    case 'hanging':
      return { grams, cv };
    case 'field-dressed':
      return { grams: grams * hung.mean, cv: Math.hypot(cv, hung.sd / hung.mean) };
    case 'live':
      return {
        grams: grams * dressed.mean * hung.mean,
        cv: Math.hypot(cv, dressed.sd / dressed.mean, hung.sd / hung.mean),
      };
    case 'boneless': {
      const { per10k, concentration } = species.composition.carcass;
      const meat = per10k.meat / 10_000;
      return { grams: grams / meat, cv: Math.hypot(cv, Math.sqrt((1 - meat) / meat / (concentration + 1))) };
    }
  }
}

/** Hanging weight from species, sex and age alone: the mixture of every class that fits what is known. */
export function typicalHanging(species: Species, sex: AnimalFacts['sex'], ageClass: AnimalFacts['ageClass']): UncertainWeight {
  const fits = (row: TypicalWeight): boolean =>
    (sex === 'unknown' || row.sex === sex) && (ageClass === 'unknown' || row.ageClass === ageClass);
  const classes = species.typicalWeights
    .filter(fits)
    .map((row) => toHanging(species, row.grams.mean, row.basis, row.grams.sd / row.grams.mean));
  if (classes.length === 0) throw new Error(`No typical weight for ${species.id}, ${sex}, ${ageClass}`);
  const mean = classes.reduce((sum, one) => sum + one.grams, 0) / classes.length;
  const meanSquare = classes.reduce((sum, one) => sum + one.grams ** 2 * (1 + one.cv ** 2), 0) / classes.length;
  return { grams: mean, cv: Math.sqrt(Math.max(0, meanSquare / mean ** 2 - 1)) };
}

/** Hanging weight of the whole carcass from whatever is known of the animal. */
export function wholeHanging(species: Species, facts: AnimalFacts): UncertainWeight {
  return facts.weight
    ? toHanging(species, facts.weight.grams, facts.weight.basis, WEIGHED_CV)
    : typicalHanging(species, facts.sex, facts.ageClass);
}

/** The live weight that a weight on another basis stands for, in whole grams: to tell a roe of 900 lb from a roe. */
export function impliedLiveGrams(species: Species, grams: number, basis: WeightBasis): number {
  const hanging = toHanging(species, grams, basis, 0).grams;
  return Math.round(hanging / species.hangingPerFieldDressed.mean / species.fieldDressedPerLive.mean);
}
