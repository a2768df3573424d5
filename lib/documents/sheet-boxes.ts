import { allergenName, type Instructions, type Share } from '@/lib/instructions';
import { PRODUCTS } from '@/lib/plan';
import { formatNearDay, formatWeight } from '@/lib/units';
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
    ...bar(instructions.avoid.length > 0, 'never', `ALLERGY: ${instructions.avoid.map(allergenName).join(', ').toUpperCase()}`),
    ...bar(instructions.noPork, 'never', 'NO PORK'),
    ...bar(instructions.boneless, 'never', 'NO BONE'),
    ...bar(instructions.overBorder, 'hazard', 'OVER THE BORDER'),
    ...bar(keep.cape, 'save', 'CAPE KEPT'),
  ];
}

/** Made things in the order they are served. */
export function productBoxes({ plan, instructions, shop }: SheetInput): CuttingSheet['products'] {
  const words = (grams: number): string => formatWeight(grams, shop.unit, shop.locale);
  return plan.products.map((product) => ({
    name: PRODUCTS[product.productId].name.toUpperCase(),
    batch: instructions.mixing === 'may-be-mixed' ? 'MIXED BATCH' : 'OWN MEAT',
    setAside: `set aside ${words(product.askedGrams)} own meat`,
    added: product.addedGrams > 0 ? `+ ${words(product.addedGrams)} pork` : '',
  }));
}

/** 'IF SHORT: 1 jerky, 2 snack sticks' where the hunter chose the order, else ''. */
export function ifShort({ plan, instructions }: SheetInput): string {
  if (!instructions.isPriorityStated || plan.products.length < 2) return '';
  return `IF SHORT: ${plan.products.map(({ productId }, at) => `${at + 1} ${PRODUCTS[productId].name}`).join(', ')}`;
}

/** By when it is wanted, and whose the packets are: 'WANTED BY', 'Tue, Dec 1'. */
export function factsBeside({ instructions, shop }: SheetInput): CuttingSheet['facts'] {
  const { shares, wantedBy } = instructions;
  return [
    ...(wantedBy === null ? [] : [{ tag: 'WANTED BY', words: formatNearDay(wantedBy, shop.locale) }]),
    ...(shares.length === 0 ? [] : [{ tag: 'SHARED', words: shares.map(sharedWords).join(', ') }]),
  ];
}

/** 'Edda 50%', 'GIVEN 50%', 'County food bank GIVEN 50%'. */
function sharedWords({ name, percent, isGiven }: Share): string {
  const who = [...(name === '' ? [] : [name]), ...(isGiven ? ['GIVEN'] : [])].join(' ');
  return `${who || 'no name'} ${percent}%`;
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
