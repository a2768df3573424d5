import type { AnimalFacts } from './animal-facts';
import type { TissueKey } from './anatomy';
import { isDelivered } from './delivery';
import { buildShareTree, shareMoments } from './share-tree';
import {
  DRESSING_PARTS,
  type DressingPart,
  type SpeciesFigures,
  type TypicalWeightWith,
  WEIGHT_BASES,
  type WeightBasis,
} from './species';

/** A weight and its relative spread (coefficient of variation). */
export type UncertainWeight = { readonly grams: number; readonly cv: number };

/** A scale reads to about half a percent. Judgement; a Class III scale is better. */
export const WEIGHED_CV = 0.005;

/** What is still on the animal at each basis between gutting and the rail. */
const STILL_ON: Readonly<Partial<Record<WeightBasis, readonly DressingPart[]>>> = {
  'field-dressed': DRESSING_PARTS,
  'legs-off': ['head', 'hide', 'hanging'],
  'hide-on': ['hide', 'hanging'],
  hanging: ['hanging'],
};

type Ratio = { readonly mean: number; readonly cv: number };

const SAME: Ratio = { mean: 1, cv: 0 };

/** Between two bases of a gutted animal: a member of a Dirichlet over some of its members is Beta. */
function stepBetween(species: SpeciesFigures, from: WeightBasis, to: WeightBasis): Ratio {
  const { per10k, concentration } = species.fieldDressed;
  const share = (basis: WeightBasis): number =>
    (STILL_ON[basis] ?? []).reduce((sum, part) => sum + per10k[part], 0) / 10_000;
  const mean = share(to) / share(from);
  return mean === 1 ? SAME : { mean, cv: Math.sqrt((1 - mean) / mean / (concentration * share(from) + 1)) };
}

/** Whether a weight at or below the rail is of this tissue too. */
function isWeighedOn(basis: WeightBasis, key: TissueKey): boolean {
  if (basis === 'hanging') return true;
  return isDelivered({ form: basis === 'quarters' ? 'quartered' : 'boned-out', missing: [] }, key);
}

/**
 * Between two bases at or below the rail, of one carcass: what both weigh brings no spread. With A and B what they weigh of it, the
 * relative spread of B / A is that of B / E B - A / E A, to the first order; exact from the rail.
 */
function cutBetween(species: SpeciesFigures, from: WeightBasis, to: WeightBasis): Ratio {
  if (from === to) return SAME;
  const tree = buildShareTree(species.composition);
  const counted = (basis: WeightBasis, key: TissueKey): number => (isWeighedOn(basis, key) ? 1 : 0);
  const meanOf = (basis: WeightBasis): number => shareMoments(tree, (key) => counted(basis, key)).mean;
  const [whole, part] = [meanOf(from), meanOf(to)];
  const { square } = shareMoments(tree, (key) => counted(to, key) / part - counted(from, key) / whole);
  return { mean: part / whole, cv: Math.sqrt(Math.max(0, square)) };
}

function times(a: Ratio, b: Ratio): Ratio {
  return { mean: a.mean * b.mean, cv: Math.hypot(a.cv, b.cv) };
}

/**
 * Carries a weight from one basis to another. Grams; `cv` is the spread of the weight that is given, and relative variances of
 * the steps add.
 *
 * @example convertWeight(whiteTailedDeer, { grams: 47_627, cv: 0 }, 'field-dressed', 'live').grams // 60 749, that is 105 lb to 134 lb
 */
export function convertWeight(species: SpeciesFigures, { grams, cv }: UncertainWeight, from: WeightBasis, to: WeightBasis): UncertainWeight {
  const ratio = ratioBetween(species, from, to);
  return { grams: grams * ratio.mean, cv: Math.hypot(cv, ratio.cv) };
}

function ratioBetween(species: SpeciesFigures, from: WeightBasis, to: WeightBasis): Ratio {
  if (from === to) return SAME;
  if (WEIGHT_BASES.indexOf(from) > WEIGHT_BASES.indexOf(to)) {
    const { mean, cv } = ratioBetween(species, to, from);
    return { mean: 1 / mean, cv };
  }
  if (from === 'live') {
    const { mean, sd } = species.fieldDressedPerLive;
    return times({ mean, cv: sd / mean }, ratioBetween(species, 'field-dressed', to));
  }
  if (from === 'quarters') return cutBetween(species, from, to);
  return to in STILL_ON ? stepBetween(species, from, to) : times(stepBetween(species, from, 'hanging'), cutBetween(species, 'hanging', to));
}

/** Carries a weight on any basis to the hanging weight of the whole carcass. */
export function toHanging(species: SpeciesFigures, grams: number, basis: WeightBasis, cv: number): UncertainWeight {
  return convertWeight(species, { grams, cv }, basis, 'hanging');
}

/** Hanging weight from species, sex and age alone: the mixture of every class that fits what is known. */
export function typicalHanging(
  species: SpeciesFigures,
  sex: AnimalFacts['sex'],
  ageClass: AnimalFacts['ageClass'],
): UncertainWeight {
  const fits = (row: TypicalWeightWith<unknown>): boolean =>
    (sex === 'unknown' || row.sex === sex) && (ageClass === 'unknown' || row.ageClass === ageClass);
  const classes = species.typicalWeights
    .filter(fits)
    .map((row) => toHanging(species, row.grams.mean, row.basis, row.grams.sd / row.grams.mean));
  if (classes.length === 0) throw new Error(`No typical weight for ${species.id}, ${sex}, ${ageClass}`);
  const mean = classes.reduce((sum, one) => sum + one.grams, 0) / classes.length;
  const meanSquare = classes.reduce((sum, one) => sum + one.grams ** 2 * (1 + one.cv ** 2), 0) / classes.length;
  return { grams: mean, cv: Math.sqrt(Math.max(0, meanSquare / mean ** 2 - 1)) };
}

/**
 * Weight from the girth of the chest, on the basis of the species' own rule; null where there is no rule for the age or the
 * line falls to nothing. Grams.
 */
export function weightFromGirth(
  species: SpeciesFigures,
  { ageClass, girthMm, basis }: { readonly ageClass: AnimalFacts['ageClass']; readonly girthMm: number; readonly basis?: 'live' | 'field-dressed' },
): (UncertainWeight & { readonly basis: 'live' | 'field-dressed' }) | null {
  const rule = species.girth.find((one) => one.ageClasses.includes(ageClass) && (basis === undefined || one.basis === basis));
  if (!rule) return null;
  const above = Math.max(1, rule.points.findIndex((point) => point.girthMm >= girthMm));
  const at = rule.points.some((point) => point.girthMm >= girthMm) ? above : rule.points.length - 1;
  const [from, to] = [rule.points[at - 1], rule.points[at]];
  if (!from || !to) return null;
  const grams = from.grams + ((girthMm - from.girthMm) / (to.girthMm - from.girthMm)) * (to.grams - from.grams);
  return grams > 0 ? { grams, cv: rule.cv, basis: rule.basis } : null;
}

/** Hanging weight of the whole carcass from whatever is known of the animal: a weight, else the girth, else its kind. */
export function wholeHanging(species: SpeciesFigures, facts: AnimalFacts): UncertainWeight {
  if (facts.weight) return toHanging(species, facts.weight.grams, facts.weight.basis, WEIGHED_CV);
  const girth = facts.girthMm ? weightFromGirth(species, { ageClass: facts.ageClass, girthMm: facts.girthMm }) : null;
  return girth ? toHanging(species, girth.grams, girth.basis, girth.cv) : typicalHanging(species, facts.sex, facts.ageClass);
}

/** The live weight that a weight on another basis stands for, in whole grams: to tell a roe of 900 lb from a roe. */
export function impliedLiveGrams(species: SpeciesFigures, grams: number, basis: WeightBasis): number {
  return Math.round(convertWeight(species, { grams, cv: 0 }, basis, 'live').grams);
}
