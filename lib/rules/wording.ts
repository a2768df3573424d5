import { type PartId, type Place, type TissueKey, readTissueKey } from '@/lib/carcass';
import { TARGETS, cutName, partName, sidedName, targetName } from '@/lib/cuts';
import type { InstructionLine } from '@/lib/instructions';
import type { RuledOrder } from './rule';

type Words = RuledOrder['words'];

/** A line as a person would say it: 'left haunch whole on the bone', 'loin chops on the bone'. */
export function lineWords(line: InstructionLine, words: Words): string {
  const name = targetName(line.target, words.country);
  const sided = line.side === 'left' || line.side === 'right' ? `${line.side} ${name}` : name;
  return `${sided} ${cutName(line.cut, words.country)}`;
}

/** A part with its side: 'left haunch', 'neck'. */
export function partWords(part: PartId, place: Place, words: Words): string {
  return sidedName(partName(part, words.country), place);
}

/** Parts that these tissues lie in, each named once with its side or as a pair. */
export function partsOfTissues(keys: readonly TissueKey[], words: Words): readonly string[] {
  const places = new Map<PartId, Set<Place>>();
  for (const key of keys) {
    const { part, place } = readTissueKey(key);
    if (part) places.set(part, (places.get(part) ?? new Set<Place>()).add(place));
  }
  return [...places].map(([part, at]) => {
    const name = partName(part, words.country);
    if (at.has('left') && at.has('right')) return sidedName(name, part === 'loin' ? 'middle' : 'both');
    const [only] = at;
    return sidedName(name, only ?? 'middle');
  });
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

/** The part of the carcass a line's card belongs to. */
export function partOfLine(line: InstructionLine): PartId {
  return TARGETS[line.target].part;
}
