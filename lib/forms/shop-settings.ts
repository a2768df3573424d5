import { z } from 'zod';
import { NAME_COUNTRIES } from '@/lib/cuts';
import { NO_PLACE } from '@/lib/law';
import { isCurrency, type Currency } from '@/lib/units';
import { ruleChangesSchema } from './rule-changes';
import { shopLawSchema } from './shop-law';
import { FIRST_TERMS, shopTermsFields } from './shop-terms';
import { lineOf, optionalLine, optionalLines, wholeNumber } from './text-fields';

export const SHOP_UNITS = ['lb', 'kg'] as const;
export const PAPERS = ['letter', 'a4'] as const;

/** The temperatures a shop may tell its customers to cook game to. */
export const COOK_TEMPERATURES = ['160 F', '165 F'] as const;

/** Writing of numbers and dates a shop can choose, by language and country. */
export const SHOP_LOCALES = [
  'en-US', 'en-CA', 'en-GB', 'en-IE', 'en-AU', 'en-NZ', 'en-ZA', 'de-DE', 'de-AT', 'de-CH', 'fr-FR', 'fr-CA', 'es-ES', 'it-IT',
  'nl-NL', 'sv-SE', 'nb-NO', 'da-DK', 'fi-FI', 'pl-PL', 'cs-CZ', 'hu-HU', 'ro-RO', 'ja-JP',
] as const;

const currency = z
  .string('Choose a currency')
  .refine(isCurrency, 'Choose a currency')
  .transform((code) => code as Currency);

/** Zones found good before: asking costs about a millisecond, and the settings are read at every page. */
const KNOWN_ZONES = new Set<string>();

const timeZone = z.string('Choose a time zone').refine(isTimeZone, 'Choose a time zone from the list');

/** The fields of the settings that set-up asks for as well, in the order of both forms: errors are listed in it. */
export const placeFields = {
  unit: z.enum(SHOP_UNITS, 'Choose pounds or kilograms'),
  nameCountry: z.enum(NAME_COUNTRIES, 'Choose whose words you use for cuts'),
  paper: z.enum(PAPERS, 'Choose the paper in your printer'),
  currency,
  timeZone,
};

export const shopName = lineOf({ missing: 'Enter the name of the shop', longest: 80 });

const daysBetween = (least: number, most: number) => wholeNumber({ what: 'a number of days', example: '7', least, most, unit: 'days' });
const days = daysBetween(1, 365);

/** Counties or management units, one a line in a form, a list when stored. Each is kept once. */
const zones = z
  .union([z.string(), z.array(z.string())])
  .transform((typed) => {
    const lines = typeof typed === 'string' ? typed.split(/\r\n?|\n/) : typed;
    return [...new Set(lines.map((line) => line.replace(/\s+/g, ' ').trim()).filter((line) => line !== ''))];
  })
  .pipe(z.array(z.string().max(60, 'Shorten each place to 60 characters')).max(300, 'List at most 300 places'));

/** How a shop is called, what it measures in, what its place demands. The settings as they are stored. */
export const shopSettingsSchema = z.object({
  name: shopName,
  address: optionalLines(300),
  phone: optionalLine(40),
  ...placeFields,
  locale: z.enum(SHOP_LOCALES, 'Choose how numbers and dates are written'),
  /** Places from which animals need a disease test: counties or units, as hunters name them. */
  diseaseZones: zones,
  /** Whole cuts and ground game alike; the stricter local figure where one is in force. */
  cookGameTo: z.enum(COOK_TEMPERATURES, 'Choose a cooking temperature'),
  /** What the invoice says about keeping the meat. */
  storageCaution: optionalLines(300),
  collectWithinDays: days,
  /** Days a carcass hangs before the knife as a rule; null where it differs too much to say. */
  hangDays: z.preprocess((typed) => (typed === '' || typed === undefined ? null : typed), daysBetween(0, 60).nullable()),
  /** Whether it hangs in its hide as a rule. */
  hangHide: z.enum(['off', 'on'], 'Choose how carcasses hang').default('off'),
  /** Muscle is trimmed clean of all fat and membrane. */
  closeTrim: z.preprocess((typed) => typed === true || typed === 'on', z.boolean()),
  ...shopTermsFields,
  /** Whom a hunter asks: a name, a number, hours. */
  questionsContact: optionalLine(120),
  /** The place whose law the shop chose, and what it changed of it. */
  law: shopLawSchema,
  /** The rules it has softened. They have a page of their own. */
  ruleChanges: ruleChangesSchema.default({}),
});

/** What the settings' own form asks: law and softened rules have pages of their own, and a save here leaves them as they are. */
export const settingsFormSchema = shopSettingsSchema.omit({ law: true, ruleChanges: true });

export type ShopSettings = z.output<typeof shopSettingsSchema>;

/**
 * Completes what set-up asked with what most shops want at first. Numbers are written as in the currency's own
 * country, in English where the country is not among the choices.
 */
export function firstShopSettings(
  asked: Pick<ShopSettings, 'name' | 'unit' | 'currency' | 'paper' | 'nameCountry' | 'timeZone'>,
): ShopSettings {
  return {
    ...asked,
    address: '',
    phone: '',
    locale: usualLocale[asked.currency] ?? 'en-GB',
    diseaseZones: [],
    cookGameTo: '160 F',
    storageCaution: 'Keep frozen. Thaw in the refrigerator.',
    collectWithinDays: 7,
    hangDays: null,
    hangHide: 'off',
    closeTrim: false,
    ...FIRST_TERMS,
    questionsContact: '',
    law: NO_PLACE,
    ruleChanges: {},
  };
}

const usualLocale: Partial<Record<Currency, ShopSettings['locale']>> = {
  USD: 'en-US', CAD: 'en-CA', GBP: 'en-GB', EUR: 'en-IE', AUD: 'en-AU', NZD: 'en-NZ', ZAR: 'en-ZA',
};

/** Tells whether a text is the name of a time zone, as the program's own tables know it. */
export function isTimeZone(name: string): boolean {
  if (KNOWN_ZONES.has(name)) return true;
  try {
    const isKnown = name !== '' && new Intl.DateTimeFormat('en', { timeZone: name }).resolvedOptions().timeZone !== '';
    if (isKnown) KNOWN_ZONES.add(name);
    return isKnown;
  } catch {
    return false;
  }
}
