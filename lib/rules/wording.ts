import { ANATOMY, BONES, MUSCLES, type MuscleId, type PartId, type PartPlace, type Place, type TissueKey, readTissueKey, tissueIn } from '@/lib/carcass';
import { type CutId, TARGETS, cutName, partName, pluralOf, sidedName, targetName } from '@/lib/cuts';
import type { InstructionLine, ProductId } from '@/lib/instructions';
import { PRODUCTS } from '@/lib/plan';
import { type CalendarDay, formatThickness } from '@/lib/units';
import type { RuledOrder } from './rule';

type Words = RuledOrder['words'];

/** What a sentence speaks of, with its article, and whether its verb is plural: 'both fillets' are. */
export type Noun = { readonly text: string; readonly many: boolean };

/** A line as a person would say it: 'left haunch whole on the bone', 'loin chops on the bone'. */
export function lineWords(line: Pick<InstructionLine, 'target' | 'side' | 'cut'>, words: Words): string {
  return `${targetWords(line, words)} ${cutWords(line.cut, words)}`;
}

/** Target of a line with its side, where it names one: 'left haunch', 'saddle'. */
export function targetWords(line: Pick<InstructionLine, 'target' | 'side'>, words: Words): string {
  const name = targetName(line.target, words.country);
  const sided = TARGETS[line.target].reach === 'sided' && (line.side === 'left' || line.side === 'right');
  return sided ? `${line.side} ${name}` : name;
}

/** A cut as it is said after what it is cut from: '(topside) joint', '(fillet) in one piece', '(shoulder) for mince'. */
export function cutWords(cut: CutId, words: Words): string {
  const us = words.country === 'us';
  switch (cut) {
    case 'whole':
      return 'in one piece';
    case 'rack':
      return 'on the bone';
    case 'shank-slices':
      return 'in sawn slices';
    case 'diced':
      return us ? 'for stew meat' : 'diced for stewing';
    case 'mince':
      return us ? 'to be ground' : 'for mince';
    case 'leave-out':
      return 'left out';
    default:
      return cutName(cut, words.country);
  }
}

/** A part with its side: 'left haunch', 'neck'. */
export function partWords(part: PartId, place: Place | 'both', words: Words): string {
  return sidedName(partName(part, words.country), place);
}

/** Name of a muscle: 'topside', 'rib meat'. */
export function muscleWords(muscle: MuscleId, words: Words): string {
  return muscle === 'rib-meat' ? 'rib meat' : targetName(muscle, words.country);
}

/**
 * What these tissues are together: a muscle where a part has only that one among them, otherwise the part.
 *
 * @example ['left:topside'] -> { text: 'the left topside', many: false }
 * @example ['left:fillet', 'right:fillet'] -> { text: 'both fillets', many: true }
 */
export function tissueNoun(keys: readonly TissueKey[], words: Words): Noun {
  const parts = new Map<PartId, { muscles: Set<MuscleId>; places: Set<Place> }>();
  for (const key of keys) {
    const { part, place, tissue, kind } = readTissueKey(key);
    if (!part) continue;
    const known = parts.get(part) ?? { muscles: new Set(), places: new Set() };
    known.places.add(place);
    // Kind tells what the type of a tissue does not: that it is a muscle.
    if (kind === 'muscle') known.muscles.add(tissue as MuscleId);
    parts.set(part, known);
  }
  const nouns = [...parts].map(([part, { muscles, places }]) => {
    const [only] = muscles;
    const name = muscles.size === 1 && only ? muscleWords(only, words) : partName(part, words.country);
    return nounAt(name, places);
  });
  return { text: joined(nouns.map((noun) => noun.text)), many: nouns.length > 1 || nouns.some((noun) => noun.many) };
}

/** Whole parts at their places, as one noun: 'the right shoulder and the ribs and flank on both sides'. */
export function partsNoun(places: readonly PartPlace[], words: Words): Noun {
  // A part without meat, such as the frame of a bird, is named by its bone.
  const keys = places.flatMap(({ part, place }) =>
    [...MUSCLES, ...BONES].filter((tissue) => ANATOMY[tissue].part === part).map((tissue) => tissueIn(place, tissue)),
  );
  return tissueNoun(keys.filter((key) => isMuscle(key) || !keys.some((other) => isMuscle(other) && samePart(other, key))), words);
}

function isMuscle(key: TissueKey): boolean {
  return readTissueKey(key).kind === 'muscle';
}

function samePart(a: TissueKey, b: TissueKey): boolean {
  return readTissueKey(a).part === readTissueKey(b).part;
}

function nounAt(name: string, places: ReadonlySet<Place>): Noun {
  const paired = places.has('left') && places.has('right');
  const plural = name.endsWith('and flank');
  if (paired && name === 'back') return { text: 'the back', many: false };
  if (paired && (plural || name === 'rib meat')) return { text: `the ${name} on both sides`, many: plural };
  if (paired) return { text: `both ${pluralOf(name)}`, many: true };
  const [only] = places;
  return { text: `the ${sidedName(name, only ?? 'middle')}`, many: plural };
}

/** 'a', 'a and b', 'a, b and c'. */
export function joined(items: readonly string[]): string {
  if (items.length <= 1) return items[0] ?? '';
  return `${items.slice(0, -1).join(', ')} and ${items.at(-1) ?? ''}`;
}

/** First letter large, as a sentence starts. */
export function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** A thickness in the inches of a shop that weighs in pounds, or in millimetres. */
export function thicknessWords(thicknessMm: number, words: Words): string {
  return formatThickness(thicknessMm, words.unit === 'lb' ? 'in' : 'mm');
}

/** The part of the carcass a line's card belongs to. */
export function partOfLine(line: Pick<InstructionLine, 'target'>): PartId {
  return TARGETS[line.target].part;
}

/** A day in the manner of the reader's country: 'December 2', '2 December'. */
export function dayWords(day: CalendarDay, words: Words): string {
  const locale = words.country === 'us' ? 'en-US' : 'en-GB';
  return new Date(`${day}T00:00:00Z`).toLocaleDateString(locale, { day: 'numeric', month: 'long', timeZone: 'UTC' });
}

/** A made thing with its verb: 'snack sticks are', 'jerky is'. */
export function madeWords(id: ProductId): string {
  const { name } = PRODUCTS[id];
  return `${name} ${name.endsWith('s') ? 'are' : 'is'}`;
}
