import { z } from 'zod';
import { ALLERGENS, type Allergen, PRODUCT_IDS, type ProductId } from '@/lib/instructions';
import { PLAIN_TERMS, type ShopTerms } from '@/lib/rules';
import { isCalendarDay } from '@/lib/units';
import { allergensText, readAllergens } from './allergen-words';
import { wholeNumber } from './text-fields';

const LONGEST_WAIT_DAYS = 365;

/** Ticks of a form by product, a list when stored. Products that are not made any more are passed over. */
const mixedOnly = z.preprocess((typed) => {
  const ticked: readonly unknown[] = Array.isArray(typed) ? typed : typeof typed === 'object' && typed !== null ? Object.keys(typed) : [];
  return PRODUCT_IDS.filter((id) => ticked.includes(id));
}, z.array(z.enum(PRODUCT_IDS)));

/** A line of words in a form, a list when stored; undefined where nothing is said. */
const allergensOf = z
  .union([z.string(), z.array(z.enum(ALLERGENS))])
  .optional()
  .transform((typed, context): readonly Allergen[] | undefined => {
    if (typeof typed !== 'string') return typed;
    const read = readAllergens(typed);
    if (read.ok) return read.value ?? undefined;
    context.addIssue({ code: 'custom', message: read.message });
    return z.NEVER;
  });

const allergens = z
  .object(Object.fromEntries(PRODUCT_IDS.map((id) => [id, allergensOf])) as Record<ProductId, typeof allergensOf>)
  .prefault({})
  .transform((read): Partial<Record<ProductId, readonly Allergen[]>> => Object.fromEntries(Object.entries(read).filter(([, said]) => said !== undefined)));

const days = { what: 'a number of days', example: '10', most: LONGEST_WAIT_DAYS, unit: 'days' } as const;
const daysOrNone = z.preprocess(orElse(null), wholeNumber({ ...days, least: 1 }).nullable());

/** The fields of the settings that say what the shop makes and how long it takes. Left out, they are as `FIRST_TERMS`. */
export const shopTermsFields = {
  /** Days from the arrival until plain cuts, and until made things, are ready; null where it differs too much to say. */
  plainDays: daysOrNone,
  madeDays: daysOrNone,
  /** The last day an animal may come in for made things; null where there is none. */
  madeUntil: z.preprocess(orElse(null), z.string().refine(isCalendarDay, 'Choose a day, or leave it empty').nullable()),
  /** The most fat in ground meat, of the whole. */
  mostFatPercent: z.preprocess(
    orElse(PLAIN_TERMS.mostFatPercent),
    wholeNumber({ what: 'a number from 1 to 50', example: '30', least: 1, most: 50, unit: 'percent' }),
  ),
  /** Made things that come only from batches with everybody's meat. */
  mixedOnly,
  /** What is in each made thing, as far as it is said. */
  allergens,
};

type SaidTerms = Omit<ShopTerms, 'hangDays'>;

/** What a shop that has said nothing holds. */
export const FIRST_TERMS = { plainDays: null, madeDays: null, madeUntil: null, mixedOnly: [] as ProductId[], allergens: {}, mostFatPercent: PLAIN_TERMS.mostFatPercent };

/** Of the settings, what rules ask. */
export function termsOf({ hangDays, mixedOnly: mixed, allergens: within, plainDays, madeDays, madeUntil, mostFatPercent }: SaidTerms & Pick<ShopTerms, 'hangDays'>): ShopTerms {
  return { hangDays, mixedOnly: mixed, allergens: within, plainDays, madeDays, madeUntil, mostFatPercent };
}

/** The terms as the inputs of the settings hold them, by name. */
export function termsEntries({ mixedOnly: mixed, allergens: within, plainDays, madeDays, madeUntil, mostFatPercent }: SaidTerms): Record<string, string> {
  return {
    plainDays: plainDays === null ? '' : String(plainDays),
    madeDays: madeDays === null ? '' : String(madeDays),
    madeUntil: madeUntil ?? '',
    mostFatPercent: String(mostFatPercent),
    ...Object.fromEntries(mixed.map((id) => [`mixedOnly.${id}`, 'on'])),
    ...Object.fromEntries(PRODUCT_IDS.map((id) => [`allergens.${id}`, allergensText(within[id])])),
  };
}

function orElse<Value>(value: Value): (typed: unknown) => unknown {
  return (typed) => (typed === undefined || (typeof typed === 'string' && typed.trim() === '') ? value : typed);
}
