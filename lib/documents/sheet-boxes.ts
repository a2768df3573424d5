import { allergenName, type Instructions } from '@/lib/instructions';
import { PRODUCTS } from '@/lib/plan';
import { formatDay, formatWeight } from '@/lib/units';
import type { CuttingSheet, SheetInput, SheetStop } from './cutting-sheet';

/** Short bars across the sheet, the worst first. */
export function stopBars({ arrival, fromZone, instructions, openQuestions }: SheetInput): readonly SheetStop[] {
  const { keep } = instructions;
  const bar = (shows: boolean | undefined, kind: SheetStop['kind'], text: string): readonly SheetStop[] => (shows ? [{ text, kind }] : []);
  return [
    ...bar(arrival?.test === 'positive', 'hold', 'HOLD - TEST POSITIVE'),
    ...bar(arrival?.test === 'pending', 'hold', 'HOLD - TEST PENDING'),
    ...bar(openQuestions > 0, 'hold', 'HOLD - QUESTION OPEN'),
    ...bar(fromZone, 'hazard', 'DISEASE ZONE - NO SAWN BONE'),
    ...bar(arrival?.conditions.includes('gut-shot'), 'hazard', 'GUT SHOT'),
    ...bar(instructions.noPork, 'never', 'NO PORK'),
    ...bar(instructions.avoid.length > 0, 'never', `ALLERGY: ${instructions.avoid.map(allergenName).join(', ').toUpperCase()}`),
    ...bar(instructions.boneless, 'never', 'NO BONE'),
    ...bar(instructions.overBorder, 'never', 'GOES OVER A BORDER'),
    ...bar(keep.cape, 'save', 'CAPE KEPT'),
  ];
}

/** Made things in the order they are served, numbered where the hunter chose that order. */
export function productBoxes({ plan, instructions, shop }: SheetInput): CuttingSheet['products'] {
  const words = (grams: number): string => formatWeight(grams, shop.unit, shop.locale);
  const isOrdered = instructions.isPriorityStated && plan.products.length > 1;
  return plan.products.map((product, at) => ({
    name: `${isOrdered ? `${at + 1}. ` : ''}${PRODUCTS[product.productId].name.toUpperCase()}`,
    setAside: `set aside ${words(product.askedGrams)} own meat${instructions.mixing === 'may-be-mixed' ? ', to the mixed batch' : ''}`,
    added: product.addedGrams > 0 ? `+ ${words(product.addedGrams)} pork` : '',
  }));
}

/** What else the cutter has to know: whose the packets are, by when, and the hunter's own words. */
export function noteOf({ instructions, shop }: SheetInput): string {
  const { shares, wantedBy, note } = instructions;
  const shared = shares.map(({ name, percent, isGiven }) => `${name || 'no name'} ${percent}%${isGiven ? ' (given)' : ''}`);
  return [
    ...(shared.length > 0 ? [`SHARED: ${shared.join(', ')}.`] : []),
    ...(wantedBy === null ? [] : [`WANTED BY ${formatDay(wantedBy, shop.locale)}.`]),
    ...(note === '' ? [] : [note]),
  ].join(' ');
}

/** What becomes of ground meat. */
export function grindBox({ instructions, plan, shop }: SheetInput): CuttingSheet['grind'] {
  const { mince } = instructions;
  const words = (grams: number): string => formatWeight(grams, shop.unit, shop.locale);
  return [
    { label: 'Expect', value: words(plan.mince.likely) },
    { label: 'Fat', value: mince.addedFat === 'none' ? 'NONE' : `${mince.fatPercent}% ${mince.addedFat.toUpperCase()}` },
    { label: 'Pack', value: words(mince.packGrams) },
    ...(mince.shape === 'patties' ? [{ label: 'Form', value: 'PATTIES' }] : []),
    ...(plan.pools.stewing.likely > 0 ? [{ label: 'Stew pack', value: words(instructions.stewPackGrams) }] : []),
  ];
}

/** What goes home besides meat. */
export function keepList({ keep }: Instructions): readonly string[] {
  return [
    ...(keep.heart ? ['HEART'] : []),
    ...(keep.liver ? ['LIVER'] : []),
    ...(keep.bones ? ['LIMB BONES'] : []),
    ...(keep.antlers === 'none' ? [] : [keep.antlers === 'skull-plate' ? 'SKULL PLATE' : 'WHOLE HEAD']),
    ...(keep.cape ? [keep.taxidermist === '' ? 'CAPE' : `CAPE (${keep.taxidermist})`] : []),
    ...(keep.hide ? ['WHOLE HIDE'] : []),
  ];
}

/** 'GRIND' or 'MINCE'. */
export function grindWord({ country }: Pick<SheetInput['shop'], 'country'>): string {
  return country === 'us' ? 'GRIND' : 'MINCE';
}
