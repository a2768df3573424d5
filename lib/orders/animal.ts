import {
  type AgeClass,
  type AnimalFacts,
  type Condition,
  type DeliveryForm,
  type Flesh,
  type PartPlace,
  type Sex,
  type ShotWith,
  type SpeciesBook,
  type SpeciesId,
  type WeightBasis,
  type Wound,
  speciesOf,
} from '@/lib/carcass';
import type { TestState } from '@/lib/rules';

/** The animal as the hunter tells of it. */
export type DescribedAnimal = {
  readonly speciesId: SpeciesId;
  readonly sex: Sex;
  readonly ageClass: AgeClass;
  readonly weight: { readonly grams: number; readonly basis: WeightBasis } | null;
  /** Round the chest behind the forelegs, where there was no scale. */
  readonly girthMm?: number | null;
  readonly form: DeliveryForm;
  /** Where it was or will be taken: a county, a unit, an estate. */
  readonly takenWhere: string;
  readonly diseaseZone: 'yes' | 'no' | 'unsure';
  readonly missing: readonly PartPlace[];
};

/** What the counter found when the animal came in. */
export type ArrivalDetails = {
  readonly licence: string;
  /** Legal tag, seal or confirmation number. */
  readonly tag: string;
  /** 'YYYY-MM-DD'. */
  readonly killedOn: string;
  readonly killedWhere: string;
  readonly diseaseZone: boolean;
  readonly test: TestState;
  readonly sampleNumber: string;
  readonly sex: Sex;
  readonly ageClass: AgeClass;
  readonly form: DeliveryForm;
  readonly weight: { readonly grams: number; readonly basis: WeightBasis };
  readonly missing: readonly PartPlace[];
  readonly wounds: readonly Wound[];
  readonly conditions: readonly Condition[];
  /** Tenths of a degree Celsius; null where it was not taken. */
  readonly celsiusTenths: number | null;
  readonly flesh?: Flesh;
  readonly shotWith: ShotWith;
  /** Who killed it, where that is not the hunter of the order; '' otherwise. */
  readonly killedBy: string;
  /** Whether a paper of the one who killed it came with it, where that is somebody else. */
  readonly hasTransferNote: boolean;
  readonly note: string;
};

/** Whether a place is one of the shop's disease zones, by name, whatever the case. */
export function isInDiseaseZone(place: string, zones: readonly string[]): boolean {
  const folded = place.toLocaleLowerCase('en');
  return zones.some((zone) => zone.trim() !== '' && folded.includes(zone.trim().toLocaleLowerCase('en')));
}

/** How a shop hangs and trims when nothing else is said: what of its ways a forecast must know. */
export type ShopWays = Pick<AnimalFacts, 'hung' | 'closeTrim'>;

/** What the forecast needs to know, from what the hunter said and, once it has come, from what was found. */
export function factsOf(
  animal: DescribedAnimal,
  arrival: ArrivalDetails | null,
  hangingGrams: number | null,
  ways: ShopWays = {},
): AnimalFacts {
  const found = arrival ?? animal;
  return {
    speciesId: animal.speciesId,
    sex: found.sex,
    ageClass: found.ageClass,
    weight: hangingGrams === null ? found.weight : { grams: hangingGrams, basis: 'hanging' },
    girthMm: animal.girthMm ?? null,
    form: found.form,
    missing: found.missing,
    wounds: arrival?.wounds ?? [],
    gutShot: arrival?.conditions.includes('gut-shot') ?? false,
    flesh: arrival?.flesh ?? 'usual',
    ...ways,
  };
}

/** The animal as people say it: 'white-tailed deer, doe', 'roe deer, kid'. */
export function animalWords(animal: Pick<DescribedAnimal, 'speciesId' | 'sex' | 'ageClass'>, book: SpeciesBook): string {
  const species = speciesOf(book, animal.speciesId);
  if (animal.ageClass === 'young') return `${species.name}, ${species.youngName}`;
  if (animal.sex === 'unknown') return species.name;
  return `${species.name}, ${animal.sex === 'male' ? species.maleName : species.femaleName}`;
}
