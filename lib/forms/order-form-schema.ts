import { z } from 'zod';
import { AGE_CLASSES, DELIVERY_FORMS, SEXES, WEIGHT_BASES, impliedLiveGrams, speciesOf } from '@/lib/carcass';
import type { Instructions } from '@/lib/instructions';
import { ALLERGENS, PRODUCT_IDS, REST_CHOICES } from '@/lib/instructions';
import type { DescribedAnimal } from '@/lib/orders';
import { formatWeight, isCalendarDay, parseLength, parseWeight } from '@/lib/units';
import { describedAnimal, describedInstructions, girthUnit } from './order-form-described';
import type { FormShop, OrderFormValues } from './order-form-values';
import { tidyLine, tidyLines } from './tidy-text';

z.config({ jitless: true });

const NARROWEST_GIRTH_MM = 300;
const WIDEST_GIRTH_MM = 2_500;

/** Errors keyed by the dotted path of the field they belong to. */
export type FieldErrors = Readonly<Record<string, string>>;

export type OrderDraft = {
  readonly formKey: string;
  readonly animal: DescribedAnimal;
  readonly instructions: Instructions;
  readonly hunter: { readonly name: string; readonly phone: string; readonly email: string };
};

const oneOf = (values: readonly string[], message: string): z.ZodType<string> =>
  z.string().refine((text) => values.includes(text), message);
const short = (most: number, what: string): z.ZodString =>
  z.string().overwrite(tidyLine).max(most, `${what} has room for ${most} characters.`);

const percentField = z
  .string()
  .refine((text) => text.trim() === '' || (/^\s*\d{1,3}\s*$/.test(text) && Number(text) <= 100), 'Write a whole number of percent, from 1 to 100.');

/** A weight in the shop's unit, or nothing. */
function weightField(shop: FormShop): z.ZodType<string> {
  return z.string().superRefine((text, context) => {
    if (text.trim() === '') return;
    const weight = parseWeight(text, shop);
    if (!weight.ok) context.addIssue({ code: 'custom', message: weight.message });
    else if (weight.value === 0) context.addIssue({ code: 'custom', message: 'Write a weight above nothing, or leave it empty.' });
  });
}

/** Dressed means gutted to one hunter and skinned to the next: the word alone is asked back. */
function animalWeightField(shop: FormShop): z.ZodType<string> {
  return z.string().superRefine((text, context) => {
    if (/dress|gralloch/i.test(text)) {
      context.addIssue({
        code: 'custom',
        message: '“Dressed” is used for three different weights. Write the number alone, and choose beside it which weight it is: gutted with the hide on, head and legs off, or skinned.',
      });
      return;
    }
    const checked = weightField(shop).safeParse(text);
    for (const issue of checked.error?.issues ?? []) context.addIssue({ code: 'custom', message: issue.message });
  });
}

/** A chest girth between that of a hare and that of a moose, or nothing. */
function girthField(shop: FormShop): z.ZodType<string> {
  return z.string().superRefine((text, context) => {
    if (text.trim() === '') return;
    const girth = parseLength(text, girthUnit(shop));
    if (!girth.ok) context.addIssue({ code: 'custom', message: girth.message });
    else if (girth.value < NARROWEST_GIRTH_MM || girth.value > WIDEST_GIRTH_MM) {
      context.addIssue({ code: 'custom', message: 'That is no chest of a deer or bear. Measure round it, just behind the forelegs.' });
    }
  });
}

/** The schema of the hunter's form, for a shop's unit and locale. Shared by browser and server; the server's check decides. */
export function orderFormSchema(shop: FormShop): z.ZodType<OrderFormValues> {
  const line = z.object({
    id: z.string(),
    target: z.string(),
    side: z.string(),
    cut: z.string(),
    size: z.string(),
    pack: z.string(),
    asked: weightField(shop),
  });
  const schema = z
    .object({
      formKey: z.string().min(8, 'This page has lost its place. Load it again; what you typed is kept on this phone.'),
      animal: z.object({
        speciesId: oneOf(Object.keys(shop.species), 'Choose which animal it is.'),
        sex: oneOf(SEXES, 'Choose male, female or not known.'),
        ageClass: oneOf(AGE_CLASSES, 'Choose its age, or not known.'),
        weight: animalWeightField(shop),
        weightBasis: z.string(),
        girth: girthField(shop),
        takenWhere: short(80, 'The place'),
        diseaseZone: oneOf(['yes', 'no', 'unsure'], 'Say whether it is from a disease zone, or that you are not sure.'),
        form: oneOf(DELIVERY_FORMS, 'Choose how you will bring it in.'),
        filletsOut: z.boolean(),
      }),
      lines: z.array(line).max(40, 'One animal has room for 40 lines.'),
      rest: oneOf([...REST_CHOICES], 'Choose what becomes of everything you have not named.'),
      squaredOff: z.string(),
      mince: z.object({ addedFat: z.string(), fatPercent: z.string(), pack: z.string(), shape: z.string() }),
      stewPack: z.string(),
      products: z.object(Object.fromEntries(PRODUCT_IDS.map((id) => [id, weightField(shop)]))),
      served: z.string(),
      mixing: z.string(),
      keep: z.object({
        heart: z.boolean(),
        liver: z.boolean(),
        bones: z.boolean(),
        antlers: z.string(),
        cape: z.boolean(),
        hide: z.boolean(),
        taxidermist: short(80, 'The name'),
      }),
      noPork: z.boolean(),
      avoid: z.object(Object.fromEntries(ALLERGENS.map((id) => [id, z.boolean()]))),
      boneless: z.boolean(),
      shares: z.array(z.object({ name: short(40, 'The name'), percent: percentField, isGiven: z.boolean() })),
      wantedBy: z.string().refine((text) => text === '' || isCalendarDay(text), 'Choose a day, or leave it empty.'),
      overBorder: z.boolean(),
      agreed: z.string(),
      note: z.string().overwrite(tidyLines).max(1_000, 'The note has room for 1000 characters.'),
      hunter: z.object({
        name: short(80, 'The name').min(1, 'Write your name, so that the shop can find your animal.'),
        phone: short(30, 'The phone number').regex(
          /^(?=(?:\D*\d){6})[\d\s()+./-]*$/,
          'Write a phone number the shop can call, such as 555 010 0147.',
        ),
        email: short(120, 'The e-mail address').refine(
          (text) => text === '' || /^[^\s@]+@[^\s@]+\.[^\s@]+$/.test(text),
          'Write an e-mail address like name@example.org, or leave it empty.',
        ),
      }),
    })
    .superRefine(({ animal }, context) => {
      const basisKnown = (WEIGHT_BASES as readonly string[]).includes(animal.weightBasis);
      if (animal.weight.trim() !== '' && !basisKnown) {
        context.addIssue({
          code: 'custom',
          path: ['animal', 'weightBasis'],
          message: 'Say which weight that is: alive, gutted with the hide on, hanging without hide, or boned.',
        });
      }
      const tooOdd = implausibleWeight({ animal }, shop);
      if (tooOdd) context.addIssue({ code: 'custom', path: ['animal', 'weight'], message: tooOdd });
    });
  // The object's fields are the values' own fields; zod infers plain strings where the values name unions.
  return schema as unknown as z.ZodType<OrderFormValues>;
}

/** A sentence where a weight cannot be that species, such as a roe deer of 900 lb; null where it can. */
export function implausibleWeight(values: Pick<OrderFormValues, 'animal'>, shop: FormShop): string | null {
  const animal = describedAnimal(values, shop);
  if (!animal?.weight) return null;
  const species = speciesOf(shop.species, animal.speciesId);
  const live = impliedLiveGrams(species, animal.weight.grams, animal.weight.basis);
  const { from, to } = species.plausibleLiveGrams;
  if (live >= from && live <= to) return null;
  const words = (grams: number): string => formatWeight(grams, shop.unit, shop.locale);
  return `That would be ${withArticle(species.name)} of ${words(live)} alive; they run from ${words(from)} to ${words(to)}. Check the number, the kind of weight and the species.`;
}

/** A name after 'a' or 'an': 'a roe deer', 'an elk'. */
export function withArticle(name: string): string {
  return `${/^[aeiou]/i.test(name) ? 'an' : 'a'} ${name}`;
}

/**
 * Checks the whole form. Either the order it stands for, or every error with its path; the first error's field
 * comes first.
 */
export function parseOrderForm(
  values: OrderFormValues,
  shop: FormShop,
): { readonly ok: true; readonly value: OrderDraft } | { readonly ok: false; readonly fieldErrors: FieldErrors } {
  const checked = orderFormSchema(shop).safeParse(values);
  if (!checked.success) return { ok: false, fieldErrors: fieldErrorsOf(checked.error) };
  const animal = describedAnimal(values, shop);
  if (!animal) throw new Error(`A checked form has no species: ${values.animal.speciesId}`);
  return {
    ok: true,
    value: {
      formKey: values.formKey,
      animal,
      instructions: describedInstructions(values, shop),
      hunter: {
        name: tidyLine(values.hunter.name),
        phone: tidyLine(values.hunter.phone),
        email: tidyLine(values.hunter.email),
      },
    },
  };
}

/** The first message for each path of a zod error, paths dotted. */
export function fieldErrorsOf(error: z.ZodError): FieldErrors {
  const errors: Record<string, string> = {};
  for (const issue of error.issues) {
    const path = issue.path.map(String).join('.');
    errors[path] ??= issue.message;
  }
  return errors;
}
