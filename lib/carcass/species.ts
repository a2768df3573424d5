import type { BoneId, CoverId, MuscleId, PartId } from './anatomy';
import type { SourceKey } from './sources';

export const SPECIES_IDS = ['white-tailed-deer', 'mule-deer', 'roe-deer', 'red-deer', 'elk'] as const;
export type SpeciesId = (typeof SPECIES_IDS)[number];

export const SEXES = ['male', 'female', 'unknown'] as const;
export type Sex = (typeof SEXES)[number];

export const AGE_CLASSES = ['young', 'yearling', 'adult', 'unknown'] as const;
export type AgeClass = (typeof AGE_CLASSES)[number];

/**
 * The five weights people quote, of which four are used here. Live: as it stood. Field-dressed: gutted, hide and
 * head on. Hanging: hide, head and lower legs off. Boneless: clean meat off the bone.
 */
export const WEIGHT_BASES = ['live', 'field-dressed', 'hanging', 'boneless'] as const;
export type WeightBasis = (typeof WEIGHT_BASES)[number];

/** A measured or judged number: mean and standard deviation, how many animals stand behind it, and why it is so. */
export type Coefficient = {
  readonly mean: number;
  readonly sd: number;
  /** Animals weighed; 0 where it is judgement. */
  readonly n: number;
  readonly source: SourceKey;
  readonly why: string;
};

/** What an animal of one sex and age weighs when nobody has weighed it. Grams on the basis named. */
export type TypicalWeight = {
  readonly sex: Exclude<Sex, 'unknown'>;
  readonly ageClass: Exclude<AgeClass, 'unknown'>;
  readonly basis: WeightBasis;
  readonly grams: Coefficient;
};

/** Shares in ten-thousandths of the node above, which sum to 10000, and how firmly they are known. */
export type Shares<Name extends string> = {
  readonly per10k: Readonly<Record<Name, number>>;
  /** Dirichlet concentration: share m has variance m(1-m)/(concentration+1). */
  readonly concentration: number;
  readonly source: SourceKey;
  readonly why: string;
};

/** How a hanging carcass divides, from the whole down to the muscle. */
export type Composition = {
  readonly carcass: Shares<'meat' | 'bone' | 'cover' | 'drying'>;
  readonly meat: Shares<PartId>;
  readonly haunch: Shares<Extract<MuscleId, 'hind-shank' | 'rump' | 'topside' | 'thick-flank' | 'silverside' | 'salmon-cut'>>;
  readonly shoulder: Shares<Extract<MuscleId, 'fore-shank' | 'blade'>>;
  readonly ribs: Shares<Extract<MuscleId, 'rib-meat' | 'flank'>>;
  readonly bone: Shares<BoneId>;
  readonly cover: Shares<CoverId>;
  /** Concentration of the split of a pair into left and right. */
  readonly sideConcentration: number;
};

/** A species is data: one file, every number with its source. */
export type Species = {
  readonly id: SpeciesId;
  /** Words for people: 'white-tailed deer'; of an age or sex: 'buck', 'doe', 'fawn'. */
  readonly name: string;
  readonly maleName: string;
  readonly femaleName: string;
  readonly youngName: string;
  /** Which sex carries antlers. */
  readonly antlered: 'male';
  /** Live weight outside which a figure is a slip of the pen. Grams. */
  readonly plausibleLiveGrams: { readonly from: number; readonly to: number; readonly source: SourceKey };
  readonly fieldDressedPerLive: Coefficient;
  readonly hangingPerFieldDressed: Coefficient;
  readonly typicalWeights: readonly TypicalWeight[];
  readonly composition: Composition;
};
