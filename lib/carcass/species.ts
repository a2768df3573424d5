import type { BodyPlan, BoneId, CoverId, MuscleId, PartId } from './anatomy';
import type { SourceKey } from './sources';

/** A species of the shop's book: published ones have their own file, a shop can add its own. */
export type SpeciesId = string;

export const SEXES = ['male', 'female', 'unknown'] as const;
export type Sex = (typeof SEXES)[number];

export const AGE_CLASSES = ['young', 'yearling', 'adult', 'unknown'] as const;
export type AgeClass = (typeof AGE_CLASSES)[number];

/**
 * The weights people quote, from the heaviest down; "dressed" alone is none of them. Live: as it stood. Field-dressed:
 * gutted, with hide, head and lower legs. Legs-off: the same without lower legs. Hide-on: gutted, head and lower legs off, hide
 * on (a larder weight). Hanging: hide off too; of a bird, plucked and drawn. Quarters: the bone-in quarters as they came.
 * Boneless: clean meat off the bone.
 */
export const WEIGHT_BASES = ['live', 'field-dressed', 'legs-off', 'hide-on', 'hanging', 'quarters', 'boneless'] as const;
export type WeightBasis = (typeof WEIGHT_BASES)[number];

/** How many animals stand behind a number (0 where it is judgement), where it is from and why it is so. */
export type Evidence = { readonly n: number; readonly source: SourceKey; readonly why: string };

/** Mean and standard deviation. */
export type Figure = { readonly mean: number; readonly sd: number };

/** A measured or judged number with its evidence. */
export type Coefficient = Figure & Evidence;

/** Shares in ten-thousandths of the node above, which sum to 10000, and how firmly they are known. */
export type Shares<Name extends string> = {
  readonly per10k: Readonly<Record<Name, number>>;
  /** Dirichlet concentration: share m has variance m(1-m)/(concentration+1). */
  readonly concentration: number;
};

type PartialShares<Name extends string> = {
  readonly per10k: Readonly<Partial<Record<Name, number>>>;
  readonly concentration: number;
};

/** What an animal of one sex and age weighs when nobody has weighed it. Grams on the basis named. */
export type TypicalWeightWith<Known> = {
  readonly sex: Exclude<Sex, 'unknown'>;
  readonly ageClass: Exclude<AgeClass, 'unknown'>;
  readonly basis: WeightBasis;
  readonly grams: Figure & Known;
};
export type TypicalWeight = TypicalWeightWith<Evidence>;

/** What comes off a gutted animal before it hangs skinned. */
export const DRESSING_PARTS = ['lower-legs', 'head', 'hide', 'hanging'] as const;
export type DressingPart = (typeof DRESSING_PARTS)[number];

/** How a hanging carcass divides, from the whole down to the muscle; a bird leaves out what it has not. */
export type CompositionWith<Known> = {
  readonly carcass: Shares<'meat' | 'bone' | 'cover' | 'drying'> & Known;
  readonly meat: PartialShares<PartId> & Known;
  /** The muscles of every part that has more than one. */
  readonly muscles: Readonly<Partial<Record<PartId, PartialShares<MuscleId> & Known>>>;
  readonly bone: PartialShares<BoneId> & Known;
  readonly cover: PartialShares<CoverId> & Known;
  /** Concentration of the split of a pair into left and right. */
  readonly sideConcentration: number;
};
export type Composition = CompositionWith<Evidence>;

/** Weight from the girth of the chest behind the forelegs: straight lines between points, held level beyond none. */
export type GirthRuleWith<Known> = Known & {
  readonly ageClasses: readonly AgeClass[];
  readonly basis: 'live' | 'field-dressed';
  /** At least two, by girth; grams between and beyond them lie on the straight line through the nearest two. */
  readonly points: readonly { readonly girthMm: number; readonly grams: number }[];
  /** Relative spread of the weight at a girth. */
  readonly cv: number;
};
export type GirthRule = GirthRuleWith<Evidence>;

export type SpeciesWith<Known> = {
  readonly id: SpeciesId;
  readonly plan: BodyPlan;
  /** Words for people: 'white-tailed deer'; of an age or sex: 'buck', 'doe', 'fawn'. */
  readonly name: string;
  readonly maleName: string;
  readonly femaleName: string;
  readonly youngName: string;
  /** What grows on its head or jaw, and on which sex; null where there is none. */
  readonly trophy: { readonly name: 'antlers' | 'horns' | 'tusks'; readonly on: 'male' | 'both' } | null;
  /** Which cooking caution it comes under: birds, bear and boar carry what a pink middle does not kill. */
  readonly cooking: 'game' | 'birds-bear-boar';
  /** Live weight outside which a figure is a slip of the pen. Grams. */
  readonly plausibleLiveGrams: { readonly from: number; readonly to: number; readonly source: SourceKey };
  readonly fieldDressedPerLive: Figure & Known;
  /** A field-dressed animal: lower legs, head, hide and what hangs. */
  readonly fieldDressed: Shares<DressingPart> & Known;
  readonly girth: readonly GirthRuleWith<Known>[];
  readonly typicalWeights: readonly TypicalWeightWith<Known>[];
  readonly composition: CompositionWith<Known>;
};

/** A species is data: one file, every number with its evidence. */
export type Species = SpeciesWith<Evidence>;

/** The same without the evidence: all that a forecast reads, small enough to send to a phone. */
export type SpeciesFigures = SpeciesWith<unknown>;

/** The species a shop works with, by id: the published figures, or the shop's own. */
export type SpeciesBook = Readonly<Record<SpeciesId, SpeciesFigures>>;

/** The figures of a species, or null where the book does not have it. */
export function findSpecies(book: SpeciesBook, id: string): SpeciesFigures | null {
  return Object.hasOwn(book, id) ? (book[id] ?? null) : null;
}

/** The figures of a species. Throws on one the book does not have. */
export function speciesOf(book: SpeciesBook, id: string): SpeciesFigures {
  const species = findSpecies(book, id);
  if (!species) throw new Error(`No such species in the book: ${id}`);
  return species;
}

/** Strips the evidence. */
export function figuresOf(species: SpeciesFigures): SpeciesFigures {
  const shares = <Name extends string>({ per10k, concentration }: PartialShares<Name>): { per10k: Readonly<Partial<Record<Name, number>>>; concentration: number } => ({
    per10k,
    concentration,
  });
  const figure = ({ mean, sd }: Figure): Figure => ({ mean, sd });
  const { composition } = species;
  return {
    id: species.id,
    plan: species.plan,
    name: species.name,
    maleName: species.maleName,
    femaleName: species.femaleName,
    youngName: species.youngName,
    trophy: species.trophy,
    cooking: species.cooking,
    plausibleLiveGrams: species.plausibleLiveGrams,
    fieldDressedPerLive: figure(species.fieldDressedPerLive),
    fieldDressed: { per10k: species.fieldDressed.per10k, concentration: species.fieldDressed.concentration },
    girth: species.girth.map(({ ageClasses, basis, points, cv }) => ({ ageClasses, basis, points, cv })),
    typicalWeights: species.typicalWeights.map(({ sex, ageClass, basis, grams }) => ({ sex, ageClass, basis, grams: figure(grams) })),
    composition: {
      carcass: { per10k: composition.carcass.per10k, concentration: composition.carcass.concentration },
      meat: shares(composition.meat),
      muscles: Object.fromEntries(Object.entries(composition.muscles).map(([part, of]) => [part, shares(of)])),
      bone: shares(composition.bone),
      cover: shares(composition.cover),
      sideConcentration: composition.sideConcentration,
    },
  };
}
