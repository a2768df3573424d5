import { z } from 'zod';
import {
  AGE_CLASSES,
  type BodyPlan,
  CONDITIONS,
  DELIVERY_FORMS,
  FLESHES,
  PARTS,
  type PartPlace,
  SEXES,
  SHOT_WITH,
  type SpeciesId,
  WEIGHT_BASES,
  WOUND_SEVERITIES,
  type Wound,
  impliedLiveGrams,
  isSidedPart,
  partsOf,
  placesOf,
  speciesOf,
} from '@/lib/carcass';
import type { NameCountry } from '@/lib/cuts';
import { type ArrivalDetails, type DescribedAnimal, tagKey } from '@/lib/orders';
import { TEST_STATES } from '@/lib/rules';
import { type TemperatureUnit, formatTemperature, formatWeight, isCalendarDay, parseTemperature, parseWeight } from '@/lib/units';
import { type FormEntries, nestEntries, textAt } from './form-entries';
import { type FieldErrors, fieldErrorsOf, withArticle } from './order-form-schema';
import type { FormShop } from './order-form-values';
import { licenceWord } from './licence-word';
import { tidyLine, tidyLines } from './tidy-text';
import { typedWeight } from './typed-weight';

/** A part at a place as the form names it: 'left-haunch', 'middle-neck'. */
export type SpotId = string;

/** The counter's form as its inputs hold it. */
export type ArrivalFormValues = {
  licence: string;
  tag: string;
  killedOn: string;
  killedWhere: string;
  /** 'yes', 'no', or '' where the hunter was not sure: then the counter has to say. */
  diseaseZone: string;
  test: string;
  sampleNumber: string;
  sex: string;
  ageClass: string;
  form: string;
  weight: string;
  weightBasis: string;
  temperature: string;
  flesh: string;
  /** Severity by spot; '' where it is sound. */
  wounds: Record<SpotId, string>;
  /** Spots that did not come. */
  missing: Record<SpotId, boolean>;
  conditions: Record<string, boolean>;
  shotWith: string;
  killedBy: string;
  hasTransferNote: boolean;
  note: string;
};

/** Every part at every place, as the form names them, in knife order. */
export const SPOTS: readonly (PartPlace & { readonly id: SpotId })[] = PARTS.flatMap((part) =>
  placesOf(isSidedPart(part)).map((place) => ({ id: `${place}-${part}`, part, place })),
);

/** The spots of a body, for the form of an animal built so. */
export function spotsOf(plan: BodyPlan): readonly (PartPlace & { readonly id: SpotId })[] {
  return SPOTS.filter(({ part }) => partsOf(plan).includes(part));
}

/** Reads what the browser sent; anything unknown is left out, nothing typed is changed. */
export function readArrivalForm(entries: FormEntries): ArrivalFormValues {
  const tree = nestEntries(entries);
  const text = (path: string): string => textAt(tree, path);
  return {
    licence: text('licence'),
    tag: text('tag'),
    killedOn: text('killedOn'),
    killedWhere: text('killedWhere'),
    diseaseZone: text('diseaseZone'),
    test: text('test'),
    sampleNumber: text('sampleNumber'),
    sex: text('sex'),
    ageClass: text('ageClass'),
    form: text('form'),
    weight: text('weight'),
    weightBasis: text('weightBasis'),
    temperature: text('temperature'),
    flesh: text('flesh'),
    wounds: Object.fromEntries(SPOTS.map(({ id }) => [id, text(`wounds.${id}`)])),
    missing: Object.fromEntries(SPOTS.map(({ id }) => [id, text(`missing.${id}`) !== ''])),
    conditions: Object.fromEntries(CONDITIONS.map((id) => [id, text(`conditions.${id}`) !== ''])),
    shotWith: text('shotWith'),
    killedBy: text('killedBy'),
    hasTransferNote: text('hasTransferNote') !== '',
    note: text('note'),
  };
}

/** The form as it opens: what was found before, else what the hunter said, for the counter to confirm. */
export function arrivalValuesOf(animal: DescribedAnimal, arrival: ArrivalDetails | null, shop: Pick<FormShop, 'unit' | 'locale'>): ArrivalFormValues {
  const known = arrival ?? animal;
  const gone = (part: string, place: string): boolean => known.missing.some((one) => one.part === part && one.place === place);
  const hurt = (part: string, place: string): string => arrival?.wounds.find((one) => one.part === part && one.place === place)?.severity ?? '';
  return {
    licence: arrival?.licence ?? '',
    tag: arrival?.tag ?? '',
    killedOn: arrival?.killedOn ?? '',
    killedWhere: arrival?.killedWhere ?? animal.takenWhere,
    diseaseZone: arrival ? (arrival.diseaseZone ? 'yes' : 'no') : animal.diseaseZone === 'unsure' ? '' : animal.diseaseZone,
    test: arrival?.test ?? '',
    sampleNumber: arrival?.sampleNumber ?? '',
    sex: known.sex,
    ageClass: known.ageClass,
    form: known.form,
    // The counter weighs: a guess made on a phone is not put into the scale's box.
    weight: arrival ? typedWeight(arrival.weight.grams, shop) : '',
    weightBasis: arrival?.weight.basis ?? '',
    temperature:
      arrival?.celsiusTenths === null || arrival === null
        ? ''
        : formatTemperature(arrival.celsiusTenths, shop.unit === 'lb' ? 'F' : 'C', shop.locale),
    flesh: arrival?.flesh ?? 'usual',
    wounds: Object.fromEntries(SPOTS.map(({ id, part, place }) => [id, hurt(part, place)])),
    missing: Object.fromEntries(SPOTS.map(({ id, part, place }) => [id, gone(part, place)])),
    conditions: Object.fromEntries(CONDITIONS.map((id) => [id, arrival?.conditions.includes(id) ?? false])),
    shotWith: arrival?.shotWith ?? '',
    killedBy: arrival?.killedBy ?? '',
    hasTransferNote: arrival?.hasTransferNote ?? false,
    note: arrival?.note ?? '',
  };
}

type ArrivalShop = FormShop & { readonly country: NameCountry };

/** Checks the counter's form for a species, on the shop's day. Either what was found, or every error with its path. */
export function parseArrivalForm(
  values: ArrivalFormValues,
  { speciesId, shop, today }: { readonly speciesId: SpeciesId; readonly shop: ArrivalShop; readonly today: string },
): { readonly ok: true; readonly value: ArrivalDetails } | { readonly ok: false; readonly fieldErrors: FieldErrors } {
  const checked = arrivalSchema(speciesId, shop, today).safeParse(values);
  if (!checked.success) return { ok: false, fieldErrors: fieldErrorsOf(checked.error) };
  const { temperature, weight, weightBasis, wounds, missing, conditions, ...rest } = checked.data;
  return {
    ok: true,
    value: {
      ...rest,
      weight: { grams: weight, basis: weightBasis },
      celsiusTenths: temperature,
      wounds: SPOTS.flatMap(({ id, part, place }): Wound[] => {
        const severity = WOUND_SEVERITIES.find((one) => one === wounds[id]);
        return severity ? [{ part, place, severity }] : [];
      }),
      missing: SPOTS.filter(({ id }) => missing[id]).map(({ part, place }) => ({ part, place })),
      conditions: CONDITIONS.filter((id) => conditions[id]),
    },
  };
}

function arrivalSchema(speciesId: SpeciesId, shop: ArrivalShop, today: string) {
  const licence = licenceWord(shop.country);
  const temperatureUnit: TemperatureUnit = shop.unit === 'lb' ? 'F' : 'C';
  const words = (most: number, what: string) => z.string().overwrite(tidyLine).max(most, `${what} has room for ${most} characters.`);
  const species = speciesOf(shop.species, speciesId);
  const tooHeavy = `That is more than any ${species.name} weighs. Weigh it again, or check the number.`;
  const grams = z.string().transform((text, context): number => {
    const weight = parseWeight(text, { unit: shop.unit, locale: shop.locale, tooHeavy });
    if (weight.ok && weight.value > 0) return weight.value;
    context.addIssue({ code: 'custom', message: weight.ok ? 'Write what the scale shows; it reads more than nothing.' : weight.message });
    return z.NEVER;
  });
  const celsius = z.string().transform((text, context): number | null => {
    if (text.trim() === '') return null;
    const read = parseTemperature(text, { unit: temperatureUnit, locale: shop.locale });
    if (read.ok) return read.value;
    context.addIssue({ code: 'custom', message: read.message });
    return z.NEVER;
  });
  return z
    .object({
      licence: words(40, `The ${licence} number`).min(1, `Write the ${licence} number. Without it the animal may not be taken in.`),
      tag: words(40, 'The tag number').refine(
        (tag) => tagKey(tag) !== '',
        'Write the tag, seal or confirmation number. Without it the animal may not be taken in.',
      ),
      killedOn: z
        .string()
        .refine(isCalendarDay, 'Write the day it was killed.')
        .refine((day) => !isCalendarDay(day) || day <= today, 'That day has not come yet. Check the date it was killed.'),
      killedWhere: words(80, 'The place').min(1, 'Write where it was killed: county, unit or estate.'),
      diseaseZone: z.enum(['yes', 'no'], 'Say whether it was killed in a disease zone; the hunter was not sure.').transform((answer) => answer === 'yes'),
      test: z.enum(TEST_STATES, 'Say whether a disease sample was taken.'),
      sampleNumber: words(40, 'The sample number'),
      sex: z.enum(SEXES, 'Choose male, female or not known.'),
      ageClass: z.enum(AGE_CLASSES, 'Choose its age, or not known.'),
      form: z.enum(DELIVERY_FORMS, 'Choose how it came in.'),
      weight: grams,
      weightBasis: z.enum(WEIGHT_BASES, 'Say which weight that is: alive, gutted with the hide on, hanging without hide, or boned.'),
      temperature: celsius,
      // Left out by a page that was open before there was such a question.
      flesh: z.enum(FLESHES).or(z.literal('').transform(() => 'usual' as const)),
      wounds: z.record(z.string(), z.string()),
      missing: z.record(z.string(), z.boolean()),
      conditions: z.record(z.string(), z.boolean()),
      // Left out by a page that was open before there was such a question.
      shotWith: z.enum(SHOT_WITH).or(z.literal('').transform(() => 'unknown' as const)),
      killedBy: words(80, 'The name'),
      hasTransferNote: z.boolean(),
      note: z.string().overwrite(tidyLines).max(500, 'The note has room for 500 characters.'),
    })
    .superRefine((found, context) => {
      if (found.test !== 'none' && found.sampleNumber === '') {
        context.addIssue({ code: 'custom', path: ['sampleNumber'], message: 'Write the sample number, so that the result can be matched to this animal.' });
      }
      const live = impliedLiveGrams(species, found.weight, found.weightBasis);
      if (live < species.plausibleLiveGrams.from || live > species.plausibleLiveGrams.to) {
        context.addIssue({
          code: 'custom',
          path: ['weight'],
          message: `That would be ${withArticle(species.name)} of ${formatWeight(live, shop.unit, shop.locale)} alive. Weigh it again, or check the kind of weight.`,
        });
      }
    });
}
