import { type AgeClass, type BodyPlan, type DeliveryForm, type Sex, type SpeciesBook, type SpeciesFigures, type WeightBasis } from '@/lib/carcass';
import { type NameCountry, cutName, minceName, partName, pluralOf } from '@/lib/cuts';
import { type AddedFat, type AntlerChoice, type LineSide, PRODUCT_IDS, type ProductId, type RestChoice } from '@/lib/instructions';
import { PRODUCTS, leastOwnGrams } from '@/lib/plan';
import type { Tariff } from '@/lib/pricing';
import { formatWeight, roundedUp } from '@/lib/units';
import { type Choice, poolPackChoices } from './size-choices';
import type { FormShop, OrderFormValues } from './order-form-values';

/** A choice with a line of help under it. */
export type HintedChoice = Choice & { readonly hint?: string };

const FORM_WORDS: Readonly<Record<DeliveryForm, readonly [string, string]>> = {
  'hide-on': ['Whole, gutted, hide on', 'The shop takes the hide off.'],
  skinned: ['Whole, gutted and skinned', 'Nothing but the carcass.'],
  quartered: ['In quarters', 'Two hind legs, two shoulders and the loins. No neck, ribs or fillets.'],
  'boned-out': ['Boned out', 'Meat only, no bone in it.'],
};

const BASIS_WORDS: Readonly<Record<WeightBasis, string>> = {
  live: 'alive, as it stood',
  'field-dressed': 'field-dressed: gutted, with hide, head and legs',
  'legs-off': 'gutted, lower legs off, with hide and head',
  'hide-on': 'gutted, head and lower legs off, with hide',
  hanging: 'hanging: skinned, no head',
  quarters: 'the quarters, with their bone',
  boneless: 'meat only, off the bone',
};

const BIRD_FORM_WORDS = {
  'hide-on': ['Whole, in its feathers', 'The shop plucks and draws it.'],
  skinned: ['Plucked or skinned, and drawn', 'Nothing but the carcass.'],
  'boned-out': ['Meat only', 'Breasts and legs off the bone.'],
} as const;

const BIRD_BASIS_WORDS = {
  live: 'as it was shot, in its feathers',
  'field-dressed': 'drawn, in its feathers',
  hanging: 'plucked and drawn',
  boneless: 'meat only, off the bone',
} as const;

const AGE_WORDS: Readonly<Record<AgeClass, string>> = {
  young: 'In its first year',
  yearling: 'In its second year',
  adult: 'Older',
  unknown: 'Not known',
};

const ANTLER_WORDS: Readonly<Record<AntlerChoice, string>> = {
  none: 'no antlers back',
  'skull-plate': 'antlers on the skull plate',
  'whole-head': 'the whole head',
};

const FAT_WORDS: Readonly<Record<AddedFat, string>> = { none: 'no fat added', pork: 'pork fat', beef: 'beef fat' };

const ZONE_WORDS = { yes: 'Yes', no: 'No', unsure: 'I am not sure' } as const;

/** Animals the shop has a price for; every animal where the list names none. */
export function speciesChoices(tariff: Tariff, book: SpeciesBook): readonly Choice[] {
  return Object.values(pricedSpecies(tariff, book)).map(({ id, name }) => ({ value: id, label: capital(name) }));
}

/** The same, with their figures: what a phone needs of the book. */
export function pricedSpecies(tariff: Tariff, book: SpeciesBook): SpeciesBook {
  const priced = Object.entries(book).filter(([id]) => tariff.base.some((base) => base.speciesIds.includes(id)));
  return priced.length > 0 ? Object.fromEntries(priced) : book;
}

/** Male and female by the hunters' own words for the species, once it is known: 'Buck (male)'. */
export function sexChoices(species: SpeciesFigures | null): readonly Choice[] {
  const word = (name: string | undefined, sex: string): string => (name ? `${capital(name)} (${sex})` : capital(sex));
  const values: Readonly<Record<Sex, string>> = {
    male: word(species?.maleName, 'male'),
    female: word(species?.femaleName, 'female'),
    unknown: 'Not known',
  };
  return (['male', 'female', 'unknown'] as const).map((value) => ({ value, label: values[value] }));
}

export function ageChoices(): readonly Choice[] {
  return (['young', 'yearling', 'adult', 'unknown'] as const).map((value) => ({ value, label: AGE_WORDS[value] }));
}

export function basisChoices(plan: BodyPlan = 'four-legged'): readonly Choice[] {
  if (plan === 'bird') return (['live', 'field-dressed', 'hanging', 'boneless'] as const).map((value) => ({ value, label: BIRD_BASIS_WORDS[value] }));
  return (['field-dressed', 'legs-off', 'hide-on', 'hanging', 'live', 'quarters', 'boneless'] as const).map((value) => ({ value, label: BASIS_WORDS[value] }));
}

export function formChoices(plan: BodyPlan = 'four-legged', country: NameCountry = 'uk'): readonly HintedChoice[] {
  if (plan === 'bird') {
    return (['hide-on', 'skinned', 'boned-out'] as const).map((value) => {
      const [label, hint] = BIRD_FORM_WORDS[value];
      return { value, label, hint };
    });
  }
  return (['hide-on', 'skinned', 'quartered', 'boned-out'] as const).map((value) => {
    const [label, hint] = FORM_WORDS[value];
    return { value, label, hint: hint.replace('fillets', pluralOf(partName('fillet', country))) };
  });
}

export function zoneChoices(): readonly Choice[] {
  return (['no', 'yes', 'unsure'] as const).map((value) => ({ value, label: ZONE_WORDS[value] }));
}

export function restChoices(country: NameCountry): readonly HintedChoice[] {
  const words: Readonly<Record<RestChoice, readonly [string, string]>> = {
    mince: [`All of it to ${minceName(country)}`, 'The usual choice: one kind of packet, and nothing is wasted.'],
    stew: [
      country === 'us' ? 'To stew meat, as far as it will dice' : 'Diced for stewing, as far as it will dice',
      `Trim too small to dice still becomes ${minceName(country)}.`,
    ],
    undecided: ['I do not know yet', 'The shop will ask you before the knife starts.'],
  };
  return (['mince', 'stew', 'undecided'] as const).map((value) => ({ value, label: words[value][0], hint: words[value][1] }));
}

export function squaredOffChoices(country: NameCountry): readonly Choice[] {
  return [
    { value: 'stew', label: `to ${cutName('diced', 'us')}` },
    { value: 'mince', label: `to ${minceName(country)}` },
  ];
}

export function fatChoices(): readonly Choice[] {
  return (['none', 'pork', 'beef'] as const).map((value) => ({ value, label: FAT_WORDS[value] }));
}

/** Shares of added fat; a current one off the list is kept on it. */
export function fatPercentChoices(current: string): readonly Choice[] {
  const usual = ['5', '10', '15', '20', '30'];
  const listed = usual.includes(current) || !/^\d{1,2}$/.test(current) ? usual : [...usual, current];
  return listed.map((value) => ({ value, label: `${value}%` }));
}

/** Made things the shop has a price for, and any that was typed before its price was taken off. */
export function productChoices(tariff: Tariff, values: Pick<OrderFormValues, 'products'>): readonly ProductId[] {
  return PRODUCT_IDS.filter((id) => tariff.products.some((product) => product.id === id) || values.products[id].trim() !== '');
}

/** What goes in besides, the smallest batch, and what is left of it when it is done. */
export function productHint(id: ProductId, { unit, locale }: FormShop): string {
  const { addedPorkPer10k, leastBlockGrams, finishedPer10k, from } = PRODUCTS[id];
  const least = leastOwnGrams({ blockGrams: leastBlockGrams, addedPer10k: addedPorkPer10k });
  return [
    ...(from.includes('grinding') ? [] : ['Sliced from whole muscle: choose “whole, for jerky” for a leg or loin above.']),
    ...(addedPorkPer10k > 0 ? [`The shop adds pork, ${Math.round(addedPorkPer10k / 100)}% of the mix.`] : []),
    ...(least > 0 ? [`A batch takes ${formatWeight(roundedUp(least, unit), unit, locale)} of yours or more.`] : []),
    ...(finishedPer10k < 10_000 ? [`It loses weight in making: ${Math.round(finishedPer10k / 100)}% of the mix is left.`] : []),
  ].join(' ');
}

/** Packs of mince and stewing meat, what the shop does anyway first; a current one off the list is kept on it. */
export function poolPackMenu(shop: FormShop, current: string): readonly Choice[] {
  const listed = poolPackChoices(shop.unit);
  const known = current === '' || listed.some(({ value }) => value === current) || !/^\d{2,5}$/.test(current);
  const kept = known ? [] : [{ value: current, label: formatWeight(Number(current), shop.unit, shop.locale) }];
  return [{ value: '', label: `the usual, ${formatWeight(shop.unit === 'lb' ? 454 : 500, shop.unit, shop.locale)}` }, ...listed, ...kept];
}

/** Ground meat loose in its packet, or pressed into patties. */
export function shapeChoices(): readonly Choice[] {
  return [
    { value: 'bulk', label: 'loose' },
    { value: 'patties', label: 'patties' },
  ];
}

/** Whether made things may come from a batch with other hunters' meat. */
export function mixingChoices(): readonly HintedChoice[] {
  return [
    { value: 'own-meat-only', label: 'Only my own animal', hint: 'A batch by itself; it takes a certain amount.' },
    { value: 'may-be-mixed', label: 'Other hunters’ as well', hint: 'You get your part of a larger batch, by weight.' },
  ];
}

/** What becomes of antlers, or of the horns or tusks of what has those instead. */
export function antlerChoices(trophy = 'antlers'): readonly Choice[] {
  return (['none', 'skull-plate', 'whole-head'] as const).map((value) => ({ value, label: ANTLER_WORDS[value].replace('antlers', trophy) }));
}

export function sideChoices(): readonly Choice[] {
  const words: Readonly<Record<Exclude<LineSide, 'middle'>, string>> = { both: 'both sides', left: 'left only', right: 'right only' };
  return (['both', 'left', 'right'] as const).map((value) => ({ value, label: words[value] }));
}

/** The label of what is chosen, or '' where nothing on the list is. */
export function chosenLabel(choices: readonly Choice[], value: string): string {
  return choices.find((choice) => choice.value === value)?.label ?? '';
}

export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
