import { findSpecies } from '@/lib/carcass';
import { type NameCountry, cutName, minceName, partName, pluralOf, sidedName, targetName } from '@/lib/cuts';
import { type Share, allergenName } from '@/lib/instructions';
import { PRODUCTS } from '@/lib/plan';
import type { Tariff } from '@/lib/pricing';
import { formatDay, formatWeight, parseWeight } from '@/lib/units';
import {
  ageChoices,
  antlerChoices,
  basisChoices,
  capital,
  chosenLabel,
  fatChoices,
  formChoices,
  poolPackMenu,
  restChoices,
  sexChoices,
  speciesChoices,
  squaredOffChoices,
  zoneChoices,
} from './order-form-words';
import { describedInstructions } from './order-form-described';
import type { FormShop, LineValues, OrderFormValues } from './order-form-values';
import type { OrderSection } from './order-sections';
import { packWords, sizeWords } from './size-choices';

export type Answer = { readonly label: string; readonly answer: string; /** Whom it is from, which no page behind a link repeats. */ readonly isPrivate?: true };
export type AnswerGroup = { readonly section: OrderSection; readonly title: string; readonly answers: readonly Answer[] };

/** What the words of the answers take from the shop. */
export type AnswerShop = FormShop & { readonly country: NameCountry; readonly tariff: Tariff };

/** The filled-in form as questions and answers, for reading over. */
export function orderAnswers(values: OrderFormValues, shop: AnswerShop): readonly AnswerGroup[] {
  return [
    { section: 'animal', title: 'The animal', answers: animalAnswers(values, shop) },
    { section: 'cuts', title: 'How it is cut', answers: cutAnswers(values, shop) },
    { section: 'rest', title: `The rest and the ${minceName(shop.country)}`, answers: restAnswers(values, shop) },
    { section: 'keep', title: 'Keep and return', answers: keepAnswers(values) },
    { section: 'who', title: 'Who you are', answers: whoAnswers(values, shop) },
  ];
}

function animalAnswers({ animal }: OrderFormValues, { tariff, unit, locale, species, country }: AnswerShop): readonly Answer[] {
  const plan = findSpecies(species, animal.speciesId)?.plan;
  const weight = parseWeight(animal.weight, { unit, locale });
  const weightWords = weight.ok && animal.weight.trim() !== '' ? `${formatWeight(weight.value, unit, locale)}, ${chosenLabel(basisChoices(plan), animal.weightBasis)}` : 'not told';
  return [
    { label: 'Animal', answer: chosenLabel(speciesChoices(tariff, species), animal.speciesId) },
    { label: 'Sex', answer: chosenLabel(sexChoices(findSpecies(species, animal.speciesId)), animal.sex) },
    { label: 'Age', answer: chosenLabel(ageChoices(), animal.ageClass) },
    { label: 'Weight', answer: weightWords },
    ...(animal.girth.trim() === '' ? [] : [{ label: 'Chest girth', answer: animal.girth.trim() }]),
    { label: 'How it comes in', answer: chosenLabel(formChoices(plan, country), animal.form) + (animal.filletsOut ? `, ${pluralOf(partName('fillet', country))} already out` : '') },
    { label: 'Where it was taken', answer: animal.takenWhere.trim() || 'not told' },
    { label: 'From a disease zone', answer: chosenLabel(zoneChoices(), animal.diseaseZone) },
  ];
}

function cutAnswers(values: OrderFormValues, shop: AnswerShop): readonly Answer[] {
  if (values.lines.length === 0) return [{ label: 'Cuts', answer: 'none named' }];
  const { lines } = describedInstructions(values, shop);
  return lines.map((line) => {
    const size = line.size.kind === 'as-seen-fit' ? [] : [sizeWords(line.size, shop.unit)];
    const pack = line.pack.kind === 'as-seen-fit' ? [] : [packWords(line.pack, shop.unit)];
    const asked = line.askedGrams === null ? [] : [`${formatWeight(line.askedGrams, shop.unit, shop.locale)} wanted`];
    return { label: lineLabel(line, shop.country), answer: [cutName(line.cut, shop.country), ...size, ...pack, ...asked].join(', ') };
  });
}

/** A line by what it is cut from: 'Both top rounds', 'Left haunch', 'Saddle'. */
export function lineLabel(line: Pick<LineValues, 'target' | 'side'>, country: NameCountry): string {
  const name = targetName(line.target, country);
  return capital(line.target === 'saddle' ? name : sidedName(name, line.side));
}

function restAnswers(values: OrderFormValues, shop: AnswerShop): readonly Answer[] {
  const { mince, products, boneless, avoid, mixing, isPriorityStated } = describedInstructions(values, shop);
  const fat = mince.addedFat === 'none' ? chosenLabel(fatChoices(), 'none') : `${mince.fatPercent}% ${chosenLabel(fatChoices(), mince.addedFat)}`;
  const made = products.map(({ productId, gameGrams }) => `${PRODUCTS[productId].name} from ${formatWeight(gameGrams, shop.unit, shop.locale)} of your own meat`);
  const usual = (text: string): string => chosenLabel(poolPackMenu(shop, text), text);
  return [
    { label: 'Everything you have not named', answer: chosenLabel(restChoices(shop.country), values.rest) },
    ...(boneless ? [{ label: 'Bone', answer: 'nothing on the bone' }] : []),
    { label: 'Pieces squared off joints and steaks', answer: chosenLabel(squaredOffChoices(shop.country), values.squaredOff) },
    { label: `Fat in the ${minceName(shop.country)}`, answer: fat },
    { label: `Packs of ${minceName(shop.country)}`, answer: [usual(values.mince.pack), ...(mince.shape === 'patties' ? ['in patties'] : [])].join(', ') },
    { label: 'Packs of stewing meat', answer: usual(values.stewPack) },
    { label: 'Made things', answer: made.join(', ') || 'none' },
    ...(isPriorityStated && products.length > 1 ? [{ label: 'If meat runs short', answer: `${products.map(({ productId }) => PRODUCTS[productId].name).join(', then ')}` }] : []),
    ...(made.length > 0 && mixing === 'may-be-mixed' ? [{ label: 'Batches', answer: 'may be mixed with other hunters’ meat' }] : []),
    { label: 'Pork', answer: values.noPork ? 'nothing of pork may touch this order' : 'pork is no trouble' },
    ...(avoid.length > 0 ? [{ label: 'Allergies', answer: `nobody eats ${avoid.map(allergenName).join(', ')}` }] : []),
  ];
}

function keepAnswers({ keep }: OrderFormValues): readonly Answer[] {
  const kept = (['heart', 'liver', 'bones', 'hide'] as const).filter((item) => keep[item]);
  return [
    { label: 'Besides the meat', answer: kept.length > 0 ? kept.join(', ') : 'nothing' },
    { label: 'Antlers', answer: chosenLabel(antlerChoices(), keep.antlers) },
    { label: 'Cape for a mount', answer: keep.cape ? ['yes', ...(keep.taxidermist.trim() === '' ? [] : [keep.taxidermist.trim()])].join(', ') : 'no' },
  ];
}

function whoAnswers(values: OrderFormValues, shop: AnswerShop): readonly Answer[] {
  const { hunter, note } = values;
  const { wantedBy, overBorder, shares } = describedInstructions(values, shop);
  return [
    { label: 'Name', answer: hunter.name.trim(), isPrivate: true },
    { label: 'Phone', answer: hunter.phone.trim(), isPrivate: true },
    { label: 'E-mail', answer: hunter.email.trim() || 'none', isPrivate: true },
    ...(wantedBy ? [{ label: 'Needed by', answer: formatDay(wantedBy, shop.locale) }] : []),
    ...(overBorder ? [{ label: 'Over a border', answer: 'yes' }] : []),
    ...(shares.length > 0 ? [{ label: 'Shared', answer: shares.map(shareWords).join(', ') }] : []),
    { label: 'Note to the shop', answer: note.trim() || 'none' },
  ];
}

/** 'Edda 50%', 'the food bank 50%, given'. */
function shareWords({ name, percent, isGiven }: Share): string {
  return `${name || 'no name'} ${percent}%${isGiven ? ', given' : ''}`;
}
