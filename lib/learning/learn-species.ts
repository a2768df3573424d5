import { type Figure, type PartId, type SpeciesFigures, convertWeight, partsOf } from '@/lib/carcass';
import type { ArrivalBasis, Observation } from './observation';

/**
 * How many of the shop's own animals the published figures count as. Judgement: they are means of a few dozen animals of another
 * place and another knife, so ten of one's own weigh as much.
 */
export const PRIOR_ANIMALS = 10;

/** No animal is field-dressed without losing at least this much of its live weight. */
const MOST_FIELD_DRESSED = 0.97;

/** One share before and after the shop's own animals: mean and standard deviation. */
export type LearnedShare = {
  readonly of: 'field-dressed' | 'hanging' | 'meat' | PartId;
  readonly prior: Figure;
  /** The spread of one animal alone is not known: null below two. */
  readonly own: { readonly animals: number; readonly mean: number | null; readonly sd: number | null };
  readonly result: Figure;
};

export type Learned = {
  readonly figures: SpeciesFigures;
  readonly shares: readonly LearnedShare[];
};

/**
 * Sharpens the published figures of a species by the shop's own animals: each mean is that of the prior's animals and the own ones
 * together, and each spread likewise of both about that mean, a little wider for not knowing the mean exactly. An animal far from
 * all others pulls no further than one of four hundred would. Deterministic; the order of observations does not matter. Without
 * observations the figures come back as they are.
 */
export function learnSpecies(prior: SpeciesFigures, observations: readonly Observation[], priorAnimals = PRIOR_ANIMALS): Learned {
  const { fieldDressed, composition } = prior;
  const { carcass, meat } = composition;
  const learn = (of: LearnedShare['of'], per10k: number, concentration: number, read: (one: Observation) => number | null): LearnedShare =>
    learnShare(of, dirichletShare(per10k, concentration), told(observations, read), priorAnimals);
  const hung = learnShare('hanging', dirichletShare(fieldDressed.per10k.hanging, fieldDressed.concentration), hangingOfGutted(prior, observations), priorAnimals);
  const clean = learn('meat', carcass.per10k.meat, carcass.concentration, (one) => one.meatOfHanging);
  const parts = partsOf(prior.plan).flatMap((part) => {
    const share = meat.per10k[part];
    return share === undefined ? [] : [learn(part, share, meat.concentration, (one) => one.partOfMeat[part] ?? null)];
  });
  const gutted = learnGutted(prior.fieldDressedPerLive, hung.result, told(observations, ({ hanging }) => (hanging?.basis === 'live' ? hanging.share : null)), priorAnimals);
  const shares = [gutted, hung, clean, ...parts];
  const figures: SpeciesFigures = {
    ...prior,
    fieldDressedPerLive: gutted.own.animals === 0 ? prior.fieldDressedPerLive : gutted.result,
    fieldDressed:
      hung.own.animals === 0
        ? fieldDressed
        : { per10k: withShare(fieldDressed.per10k, 'hanging', hung.result.mean), concentration: concentrationOf(hung.result) },
    composition: {
      ...composition,
      carcass:
        clean.own.animals === 0
          ? carcass
          : { per10k: withShare(carcass.per10k, 'meat', clean.result.mean), concentration: concentrationOf(clean.result) },
      meat: parts.every(({ own }) => own.animals === 0)
        ? meat
        : { per10k: sharesOfMeat(meat.per10k, parts), concentration: concentrationOfMeat(parts, priorAnimals) },
    },
  };
  return { figures, shares };
}

function told(observations: readonly Observation[], read: (one: Observation) => number | null): readonly number[] {
  return observations.map(read).filter((share): share is number => share !== null && share > 0 && share < 1);
}

/** What hangs, of what came in with this still on. */
export function hangingShare(species: SpeciesFigures, basis: ArrivalBasis): Figure {
  const { grams, cv } = convertWeight(species, { grams: 1, cv: 0 }, basis, 'hanging');
  return { mean: grams, sd: grams * cv };
}

/**
 * What hangs of field-dressed animals. One that came with less on it is carried to that: head, legs and hide keep their proportion
 * to each other. Carrying spreads a share more than the animals do, so those are drawn together again by as much.
 */
function hangingOfGutted(prior: SpeciesFigures, observations: readonly Observation[]): readonly number[] {
  const whole = hangingShare(prior, 'field-dressed');
  const carried = observations.flatMap(({ hanging }) => {
    if (!hanging || hanging.basis === 'live' || hanging.share <= 0 || hanging.share >= 1) return [];
    const { mean, sd } = hangingShare(prior, hanging.basis);
    // Of all that comes off a field-dressed animal, what was still on this one.
    const stillOn = (whole.mean * (1 - mean)) / mean / (1 - whole.mean);
    const carriedSd = (sd * stillOn) / (1 - mean + mean * stillOn) ** 2;
    return [{ share: (hanging.share * stillOn) / (1 - hanging.share + hanging.share * stillOn), drawn: whole.sd / carriedSd }];
  });
  const middle = carried.map(({ share }) => share).toSorted((a, b) => a - b).reduce((sum, share) => sum + share, 0) / carried.length;
  return carried.map(({ share, drawn }) => middle + (share - middle) * drawn);
}

/**
 * What an animal weighs field-dressed of what it weighed live, told by what hung of it: the step from field-dressed to the rail is
 * taken as learned, and its spread is taken out again.
 */
function learnGutted(prior: Figure, hung: Figure, ofLive: readonly number[], priorAnimals: number): LearnedShare {
  const hungCv = hung.sd / hung.mean;
  const seen = { mean: prior.mean, sd: prior.mean * Math.hypot(prior.sd / prior.mean, hungCv) };
  const { own, result } = learnShare('field-dressed', seen, ofLive.map((share) => share / hung.mean), priorAnimals);
  if (own.animals === 0) return { of: 'field-dressed', prior, own, result: prior };
  const mean = Math.min(MOST_FIELD_DRESSED, result.mean);
  const variance = Math.max((prior.sd / 2) ** 2, result.sd ** 2 - (mean * hungCv) ** 2);
  return { of: 'field-dressed', prior, own, result: { mean, sd: Math.sqrt(variance) } };
}

/** Mean and spread of one member of a Dirichlet. */
export function dirichletShare(per10k: number, concentration: number): Figure {
  const mean = per10k / 10_000;
  return { mean, sd: Math.sqrt((mean * (1 - mean)) / (concentration + 1)) };
}

function learnShare(of: LearnedShare['of'], prior: Figure, own: readonly number[], priorAnimals: number): LearnedShare {
  const { mean, sd } = prior;
  if (own.length === 0) return { of, prior, own: { animals: 0, mean: null, sd: null }, result: prior };
  const animals = priorAnimals + own.length;
  // Sorted, so that no sum depends on the order of the animals.
  const sorted = heldBack(own.toSorted((a, b) => a - b), sd, priorAnimals);
  const sum = sorted.reduce((total, share) => total + share, 0);
  const together = (priorAnimals * mean + sum) / animals;
  const ownMean = sum / own.length;
  const scatter = sorted.reduce((total, share) => total + (share - ownMean) ** 2, 0);
  // One animal's worth of scatter goes into the own mean.
  const spread = (priorAnimals * sd ** 2 + scatter) / (animals - 1);
  // The distance between the two means, beyond the two standard errors that chance makes of it, is doubt about the mean, not
  // scatter among this shop's animals: it fades as they grow.
  const byChance = 4 * spread * (1 / own.length + 1 / priorAnimals);
  const apart = Math.max(0, (ownMean - mean) ** 2 - byChance) * (priorAnimals / animals) ** 2;
  const predictive = (spread + apart) * (1 + 1 / animals);
  return {
    of,
    prior,
    own: { animals: own.length, mean: ownMean, sd: own.length < 2 ? null : Math.sqrt(scatter / (own.length - 1)) },
    result: { mean: together, sd: Math.sqrt(predictive) },
  };
}

/** Deviations from the middle beyond which an animal pulls no further: one of a hundred, or a mistake nobody saw. */
const MOST_PULL = 3;
/** Standard deviation of a normal quantity whose median distance from its median is one. */
const SD_PER_MEDIAN_DISTANCE = 1.4826;

/** Brings shares far from all others nearer: a lug of another animal counts, but does not widen the range of every other. Sorted in and out. */
function heldBack(sorted: readonly number[], priorSd: number, priorAnimals: number): readonly number[] {
  const middle = medianOf(sorted);
  const ownSd = SD_PER_MEDIAN_DISTANCE * medianOf(sorted.map((share) => Math.abs(share - middle)).toSorted((a, b) => a - b));
  const sd = Math.sqrt((priorAnimals * priorSd ** 2 + sorted.length * ownSd ** 2) / (priorAnimals + sorted.length));
  return sorted.map((share) => Math.min(middle + MOST_PULL * sd, Math.max(middle - MOST_PULL * sd, share)));
}

function medianOf(sorted: readonly number[]): number {
  const half = Math.floor((sorted.length - 1) / 2);
  return ((sorted[half] ?? 0) + (sorted[sorted.length - 1 - half] ?? 0)) / 2;
}

/** Concentration at which a share of this mean has this spread. */
function concentrationOf({ mean, sd }: Figure): number {
  return Math.max(2, (mean * (1 - mean)) / (sd * sd) - 1);
}

/** One share set, the others kept in proportion. Ten-thousandths that sum to 10000. */
function withShare<Name extends string>(per10k: Readonly<Record<Name, number>>, name: NoInfer<Name>, share: number): Readonly<Record<Name, number>> {
  const others = (1 - share) / (1 - per10k[name] / 10_000);
  // Object.entries forgets the keys that the record guarantees.
  const entries = Object.entries(per10k) as [Name, number][];
  return Object.fromEntries(entries.map(([id, old]) => [id, id === name ? share * 10_000 : old * others])) as Record<Name, number>;
}

/** Parts as learned, all brought to sum to 10000: those nobody told keep their proportion among themselves. */
function sharesOfMeat(per10k: SpeciesFigures['composition']['meat']['per10k'], parts: readonly LearnedShare[]): SpeciesFigures['composition']['meat']['per10k'] {
  const learned = new Map(parts.filter(({ own }) => own.animals > 0).map(({ of, result }) => [of as PartId, result.mean]));
  const toldSum = [...learned.values()].reduce((sum, share) => sum + share, 0);
  const untold = Object.entries(per10k).filter(([part]) => !learned.has(part as PartId));
  const untoldSum = untold.reduce((sum, [, share]) => sum + (share ?? 0), 0) / 10_000;
  // Where every part was told their sum is brought to one; else what is left is for those that were not.
  const left = untoldSum === 0 ? 0 : Math.max(untoldSum * 0.2, 1 - toldSum);
  const scale = (1 - left) / toldSum;
  return Object.fromEntries(
    Object.entries(per10k).map(([part, share]) => {
      const own = learned.get(part as PartId);
      return [part, own === undefined ? ((share ?? 0) / untoldSum) * left : own * scale * 10_000];
    }),
  );
}

/** One concentration for all parts: the mean of 1 / (c + 1) over the prior's animals and the own ones of each part. */
function concentrationOfMeat(parts: readonly LearnedShare[], priorAnimals: number): number {
  const toldParts = parts.filter(({ own }) => own.animals > 0);
  const weight = toldParts.reduce((sum, { own }) => sum + own.animals + priorAnimals, 0);
  const looseness = toldParts.reduce((sum, { own, result }) => sum + ((own.animals + priorAnimals) * result.sd ** 2) / (result.mean * (1 - result.mean)), 0) / weight;
  return Math.max(2, 1 / looseness - 1);
}
