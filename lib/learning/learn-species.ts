import { type PartId, type SpeciesFigures, partsOf } from '@/lib/carcass';
import type { Observation } from './observation';

/**
 * How many of the shop's own animals the published figures count as. Judgement: they are means of a few dozen animals of another
 * place and another knife, so ten of one's own weigh as much.
 */
export const PRIOR_ANIMALS = 10;

/** One share before and after the shop's own animals: mean and standard deviation. */
export type LearnedShare = {
  readonly of: 'hanging' | 'meat' | PartId;
  readonly prior: { readonly mean: number; readonly sd: number };
  readonly own: { readonly animals: number; readonly mean: number | null };
  readonly result: { readonly mean: number; readonly sd: number };
};

export type Learned = {
  readonly figures: SpeciesFigures;
  readonly shares: readonly LearnedShare[];
};

/**
 * Sharpens the published figures of a species by the shop's own animals: each mean is that of the prior's animals and the own ones
 * together, and each spread likewise of both about that mean, a little wider for not knowing the mean exactly. Deterministic; the
 * order of observations does not matter. Without observations the figures come back as they are.
 */
export function learnSpecies(prior: SpeciesFigures, observations: readonly Observation[], priorAnimals = PRIOR_ANIMALS): Learned {
  const { fieldDressed, composition } = prior;
  const { carcass, meat } = composition;
  const learn = (of: LearnedShare['of'], per10k: number, concentration: number, read: (one: Observation) => number | null): LearnedShare =>
    learnShare(of, { mean: per10k / 10_000, concentration }, told(observations, read), priorAnimals);
  const hung = learn('hanging', fieldDressed.per10k.hanging, fieldDressed.concentration, (one) => one.hangingOfFieldDressed);
  const clean = learn('meat', carcass.per10k.meat, carcass.concentration, (one) => one.meatOfHanging);
  const parts = partsOf(prior.plan).flatMap((part) => {
    const share = meat.per10k[part];
    return share === undefined ? [] : [learn(part, share, meat.concentration, (one) => one.partOfMeat[part] ?? null)];
  });
  const shares = [hung, clean, ...parts];
  const figures: SpeciesFigures = {
    ...prior,
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

function learnShare(
  of: LearnedShare['of'],
  { mean, concentration }: { readonly mean: number; readonly concentration: number },
  own: readonly number[],
  priorAnimals: number,
): LearnedShare {
  const variance = (mean * (1 - mean)) / (concentration + 1);
  const prior = { mean, sd: Math.sqrt(variance) };
  if (own.length === 0) return { of, prior, own: { animals: 0, mean: null }, result: prior };
  const animals = priorAnimals + own.length;
  // Sorted, so that no sum depends on the order of the animals.
  const sorted = own.toSorted((a, b) => a - b);
  const sum = sorted.reduce((total, share) => total + share, 0);
  const together = (priorAnimals * mean + sum) / animals;
  const ownMean = sum / own.length;
  const scatter = sorted.reduce((total, share) => total + (share - ownMean) ** 2, 0);
  // The distance between the two means is doubt about the mean, not scatter among this shop's animals: it fades as they grow.
  const apart = (ownMean - mean) ** 2 * (priorAnimals / animals) ** 2;
  const spread = (priorAnimals * variance + scatter) / animals;
  const predictive = (spread + apart) * (1 + 1 / animals);
  return { of, prior, own: { animals: own.length, mean: ownMean }, result: { mean: together, sd: Math.sqrt(predictive) } };
}

/** Concentration at which a share of this mean has this spread. */
function concentrationOf({ mean, sd }: { readonly mean: number; readonly sd: number }): number {
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
