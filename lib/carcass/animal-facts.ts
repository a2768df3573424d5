import type { PartId, Place } from './anatomy';
import type { AgeClass, Sex, SpeciesId, WeightBasis } from './species';

/** How it comes through the door. Quartered: two hind legs, two shoulders and the backstraps (Texas 42.001(8)). */
export const DELIVERY_FORMS = ['hide-on', 'skinned', 'quartered', 'boned-out'] as const;
export type DeliveryForm = (typeof DELIVERY_FORMS)[number];

export const WOUND_SEVERITIES = ['light', 'heavy', 'lost'] as const;
export type WoundSeverity = (typeof WOUND_SEVERITIES)[number];

/** Where a part lies: `{ part: 'haunch', place: 'left' }`. */
export type PartPlace = { readonly part: PartId; readonly place: Place };

export type Wound = PartPlace & { readonly severity: WoundSeverity };

export const FLESHES = ['lean', 'usual', 'fat'] as const;
/** How much fat it carries, for its kind and season. */
export type Flesh = (typeof FLESHES)[number];

export const CONDITIONS = ['clean', 'dirty', 'wet', 'warm', 'frozen', 'gut-shot', 'rutting', 'sour'] as const;
/** What the counter may find of an animal. Sour: sour, green or fly-blown. Rutting: a male that smells of the rut. */
export type Condition = (typeof CONDITIONS)[number];

export const SHOT_WITH = ['bullet', 'pellets', 'arrow', 'unknown'] as const;
/** What it was killed with. Pellets: shot or buckshot, of which some may be anywhere. */
export type ShotWith = (typeof SHOT_WITH)[number];

/** What is known of one animal: as the hunter tells it, or as the counter found it. What is left out is as usual. */
export type AnimalFacts = {
  readonly speciesId: SpeciesId;
  readonly sex: Sex;
  readonly ageClass: AgeClass;
  readonly weight: { readonly grams: number; readonly basis: WeightBasis } | null;
  /** Round the chest behind the forelegs; read only where no weight is known. */
  readonly girthMm?: number | null;
  readonly form: DeliveryForm;
  /** Parts that did not come, such as fillets taken out in the field. */
  readonly missing: readonly PartPlace[];
  readonly wounds: readonly Wound[];
  /** Belly contents reached the meat. */
  readonly gutShot?: boolean;
  readonly flesh?: Flesh;
  /** Days it hangs, from the weighing to the knife, and whether the hide is on meanwhile. */
  readonly hung?: { readonly days: number; readonly hide: 'on' | 'off' } | null;
  /** The shop trims to clean muscle: what others leave on goes to waste. */
  readonly closeTrim?: boolean;
};
