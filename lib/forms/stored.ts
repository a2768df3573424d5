import { z } from 'zod';
import { AGE_CLASSES, CONDITIONS, DELIVERY_FORMS, FLESHES, PARTS, SEXES, SHOT_WITH, WEIGHT_BASES, WOUND_SEVERITIES } from '@/lib/carcass';
import { CUT_IDS, TARGET_IDS, type TargetId } from '@/lib/cuts';
import { ADDED_FATS, ALLERGENS, ANTLER_CHOICES, type Edit, type Instructions, LINE_SIDES, MINCE_SHAPES, MIXINGS, PRODUCT_IDS, REST_CHOICES } from '@/lib/instructions';
import { type ArrivalDetails, type DescribedAnimal } from '@/lib/orders';
import { TEST_STATES } from '@/lib/rules';

// What the database holds as Json, checked when it is read: a row that does not fit is a fault of ours, and throws.

const grams = z.int().min(0).max(2_000_000);
const weight = z.object({ grams, basis: z.enum(WEIGHT_BASES) });
const place = z.enum(['left', 'right', 'middle']);
const partPlace = z.object({ part: z.enum(PARTS), place });

const size = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('as-seen-fit') }),
  z.object({ kind: z.literal('thickness'), thicknessMm: z.int().positive() }),
  z.object({ kind: z.literal('weight'), grams }),
  z.object({ kind: z.literal('people'), people: z.int().positive() }),
]);
const pack = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('as-seen-fit') }),
  z.object({ kind: z.literal('pieces'), pieces: z.int().positive() }),
  z.object({ kind: z.literal('weight'), grams }),
]);

export const storedInstructions: z.ZodType<Instructions> = z.object({
  lines: z.array(
    z.object({
      id: z.string(),
      target: z.enum(TARGET_IDS),
      side: z.enum(LINE_SIDES),
      cut: z.enum(CUT_IDS),
      size,
      pack,
      askedGrams: grams.nullable(),
    }),
  ),
  rest: z.enum(REST_CHOICES),
  squaredOff: z.enum(['stew', 'mince']),
  mince: z.object({
    addedFat: z.enum(ADDED_FATS),
    fatPercent: z.int().min(0).max(50),
    packGrams: grams,
    shape: z.enum(MINCE_SHAPES).default('bulk'),
  }),
  stewPackGrams: grams,
  products: z.array(z.object({ productId: z.enum(PRODUCT_IDS), gameGrams: grams })),
  keep: z.object({
    heart: z.boolean(),
    liver: z.boolean(),
    bones: z.boolean(),
    antlers: z.enum(ANTLER_CHOICES),
    cape: z.boolean(),
    hide: z.boolean().default(false),
    taxidermist: z.string().default(''),
  }),
  noPork: z.boolean(),
  avoid: z.array(z.enum(ALLERGENS)).default([]),
  boneless: z.boolean().default(false),
  mixing: z.enum(MIXINGS).default('own-meat-only'),
  isPriorityStated: z.boolean().default(false),
  shares: z.array(z.object({ name: z.string(), percent: z.int().min(0).max(100), isGiven: z.boolean() })).default([]),
  wantedBy: z.string().nullable().default(null),
  overBorder: z.boolean().default(false),
  agreed: z.array(z.string()).default([]),
  note: z.string(),
});

export const storedAnimal: z.ZodType<DescribedAnimal> = z.object({
  speciesId: z.string().min(1).max(60),
  sex: z.enum(SEXES),
  ageClass: z.enum(AGE_CLASSES),
  weight: weight.nullable(),
  girthMm: z.int().positive().nullish(),
  form: z.enum(DELIVERY_FORMS),
  takenWhere: z.string(),
  diseaseZone: z.enum(['yes', 'no', 'unsure']),
  missing: z.array(partPlace),
});

export const storedArrival: z.ZodType<ArrivalDetails> = z.object({
  licence: z.string(),
  tag: z.string(),
  killedOn: z.string(),
  killedWhere: z.string(),
  diseaseZone: z.boolean(),
  test: z.enum(TEST_STATES),
  sampleNumber: z.string(),
  sex: z.enum(SEXES),
  ageClass: z.enum(AGE_CLASSES),
  form: z.enum(DELIVERY_FORMS),
  weight,
  missing: z.array(partPlace),
  wounds: z.array(partPlace.extend({ severity: z.enum(WOUND_SEVERITIES) })),
  conditions: z.array(z.enum(CONDITIONS)),
  celsiusTenths: z.int().nullable(),
  flesh: z.enum(FLESHES).default('usual'),
  shotWith: z.enum(SHOT_WITH).default('unknown'),
  killedBy: z.string().default(''),
  hasTransferNote: z.boolean().default(false),
  note: z.string(),
});

/** An edit as a question's option stores it. Its kind is checked; applying an edit of a line that is gone does nothing. */
const storedEdit = z.looseObject({ kind: z.string() }) as unknown as z.ZodType<Edit>;

export type QuestionOption = {
  readonly label: string;
  readonly consequence: string;
  readonly edits: readonly Edit[];
  /** What it speaks of, to be shown on a drawing. */
  readonly target?: TargetId | undefined;
};

export const storedOptions: z.ZodType<readonly QuestionOption[]> = z.array(
  z.object({ label: z.string(), consequence: z.string(), edits: z.array(storedEdit), target: z.enum(TARGET_IDS).optional() }),
);
