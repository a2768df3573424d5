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

/** What is known of one animal: as the hunter tells it, or as the counter found it. */
export type AnimalFacts = {
  readonly speciesId: SpeciesId;
  readonly sex: Sex;
  readonly ageClass: AgeClass;
  readonly weight: { readonly grams: number; readonly basis: WeightBasis } | null;
  readonly form: DeliveryForm;
  /** Parts that did not come, such as fillets taken out in the field. */
  readonly missing: readonly PartPlace[];
  readonly wounds: readonly Wound[];
};

/** Muscle of a part that a wound costs, in ten-thousandths. Judgement: no source splits losses by severity. */
export const WOUND_LOSS_PER_10K: Readonly<Record<WoundSeverity, number>> = { light: 1_500, heavy: 5_000, lost: 10_000 };
