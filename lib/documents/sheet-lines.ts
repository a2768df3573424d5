import { ANATOMY, MUSCLES, type PartId, type Place, isSidedPart, placesOf, readTissueKey } from '@/lib/carcass';
import { CUTS, type CutId, TARGETS, isUsual, knifeOrder, partName, sidedName, targetName } from '@/lib/cuts';
import { type Instructions, type InstructionLine, placesOfLine } from '@/lib/instructions';
import type { Plan } from '@/lib/plan';
import { formatThickness, formatWeight } from '@/lib/units';
import type { SheetInput, SheetLine } from './cutting-sheet';

/** The lines of one part, what is left of it, then what of it is thrown away. Where a part did not come, there is no line. */
export function linesOfPart(part: PartId, input: SheetInput): readonly SheetLine[] {
  const { instructions, plan, shop } = input;
  const came = placesOf(isSidedPart(part)).filter((place) => hasCome(part, place, plan));
  const lost = came.filter((place) => plan.forecast.facts.wounds.some((wound) => wound.part === part && wound.place === place && wound.severity === 'lost'));
  const sound = came.filter((place) => !lost.includes(place));
  const asked = instructions.lines
    .filter((line) => TARGETS[line.target].part === part && placesToCut(line, sound).length > 0)
    .sort((a, b) => knifeOrder(a.target) - knifeOrder(b.target));
  const lines = asked.map((line) => instructionLine(line, placesToCut(line, sound), input));
  const open = sound.filter((place) =>
    plan.ledger.some((row) => {
      const tissue = readTissueKey(row.key);
      return tissue.part === part && tissue.place === place && tissue.kind === 'muscle' && row.lineId === null;
    }),
  );
  // A side that no line speaks of is named whole; on the others it is what is left over.
  const spokenOf = new Set(asked.flatMap(placesOfLine));
  const restOf = (places: readonly Place[], isWhole: boolean): readonly SheetLine[] => {
    if (places.length === 0) return [];
    const name = isWhole ? partName(part, shop.country) : `rest of ${partName(part, shop.country)}`;
    return [
      {
        part: sidesSuffix(name, places, isSidedPart(part)),
        name: !isWhole && part === 'haunch' ? 'THE REST' : shortName(name),
        side: sideOf(places, isSidedPart(part)),
        ...restWords(instructions, shop),
        size: '',
        pack: '',
        isDeparture: instructions.rest !== 'mince',
        note: woundNote(part, places, plan),
      },
    ];
  };
  return [
    ...lines,
    ...restOf(open.filter((place) => spokenOf.has(place)), false),
    ...restOf(open.filter((place) => !spokenOf.has(place)), true),
    ...(lost.length > 0 ? [discardLine(part, lost, shop)] : []),
  ];
}

/** Where a line is cut: its places without those that did not come or are lost. What is cut across both sides is not parted. */
function placesToCut(line: InstructionLine, sound: readonly Place[]): readonly Place[] {
  const places = placesOfLine(line);
  const left = places.filter((place) => sound.includes(place));
  return left.length > 0 && TARGETS[line.target].reach === 'both-as-one' ? places : left;
}

/** A part that a wound has spoiled altogether: nobody is to grind it, whatever was ordered. */
function discardLine(part: PartId, places: readonly Place[], shop: SheetInput['shop']): SheetLine {
  const name = partName(part, shop.country);
  return {
    part: sidesSuffix(name, places, isSidedPart(part)),
    name: shortName(name),
    side: sideOf(places, isSidedPart(part)),
    action: 'DISCARD',
    make: 'DISCARD',
    manner: '',
    size: '',
    pack: '',
    isDeparture: true,
    note: 'LOST',
  };
}

function instructionLine(line: InstructionLine, places: readonly Place[], { plan, shop }: SheetInput): SheetLine {
  const target = TARGETS[line.target];
  return {
    part: target.reach === 'both-as-one' ? targetName(line.target, shop.country).toUpperCase() : sidesSuffix(targetName(line.target, shop.country), places, target.reach === 'sided'),
    name: shortName(targetName(line.target, shop.country)),
    side: sideOf(places, target.reach !== 'middle'),
    ...cutWords(line.cut, shop),
    size: sizeOf(line, shop),
    pack: packOf(line, shop),
    isDeparture: !isUsual(target.part, line.target, line.cut),
    note: woundNote(target.part, places, plan),
  };
}

function shortName(name: string): string {
  return name.replace(' and ', ' & ').toUpperCase();
}

function sideOf(places: readonly Place[], sided: boolean): SheetLine['side'] {
  if (!sided) return 'middle';
  return places.length > 1 ? 'both' : (places[0] ?? 'middle');
}

/** A cut as the cutter reads it across the table: what to make, and in small letters how. */
const MAKE_WORDS: Readonly<Record<CutId, readonly [make: string, manner: string]>> = {
  'on-the-bone': ['WHOLE ON BONE', ''],
  'boned-and-rolled': ['ROLL & TIE', 'bone out'],
  joint: ['SEAM & TIE', 'square off'],
  whole: ['WHOLE', 'silverskin off'],
  portions: ['PORTIONS', ''],
  steaks: ['STEAKS', ''],
  'tenderised-steaks': ['STEAKS', 'TENDERISE'],
  medallions: ['MEDALLIONS', ''],
  'bacon-wrapped': ['MEDALLIONS', 'IN BACON'],
  butterfly: ['BUTTERFLY', 'cut double'],
  chops: ['CHOPS', 'saw'],
  rack: ['RACK', 'saw'],
  'shank-on-bone': ['WHOLE ON BONE', ''],
  'shank-slices': ['SLICES', 'saw'],
  diced: ['DICE', 'for stew'],
  mince: ['TO MINCE', ''],
  'set-aside-whole': ['KEEP WHOLE', 'for jerky'],
  'leave-out': ['LEAVE OUT', ''],
};

function cutWords(cut: CutId, { country }: SheetInput['shop']): Pick<SheetLine, 'action' | 'make' | 'manner'> {
  const { action } = CUTS[cut];
  const [make, manner] = MAKE_WORDS[cut];
  if (country === 'uk') return { action, make, manner };
  if (cut === 'mince') return { action: 'TO GRIND', make: 'TO GRIND', manner };
  return { action: action.replace('TENDERISE', 'TENDERIZE'), make, manner: manner.replace('TENDERISE', 'TENDERIZE') };
}

/** 'LEFT HAUNCH', 'HAUNCH L + R', 'NECK'. */
function sidesSuffix(name: string, places: readonly Place[], sided: boolean): string {
  if (!sided) return name.toUpperCase();
  return places.length > 1 ? `${name.toUpperCase()} L + R` : sidedName(name, places[0] ?? 'middle').toUpperCase();
}

function sizeOf({ size, askedGrams, cut }: InstructionLine, { unit, locale }: SheetInput['shop']): string {
  const asked = askedGrams === null ? '' : `${formatWeight(askedGrams, unit, locale)} in all`;
  const inUnit = unit === 'lb' ? 'in' : 'mm';
  const piece = (() => {
    switch (size.kind) {
      case 'as-seen-fit':
        return CUTS[cut].sizing === 'none' ? '' : 'as you see fit';
      case 'thickness':
        return cut === 'butterfly'
          ? `${formatThickness(size.thicknessMm, inUnit)} open`
          : formatThickness(size.thicknessMm, inUnit);
      case 'weight':
        return `${formatWeight(size.grams, unit, locale)} each`;
      case 'people':
        return `for ${size.people}`;
    }
  })();
  return [piece, asked].filter((text) => text !== '').join(', ');
}

function packOf({ pack, cut }: InstructionLine, { unit, locale }: SheetInput['shop']): string {
  switch (pack.kind) {
    case 'as-seen-fit':
      return CUTS[cut].packing === 'each' || CUTS[cut].split.packed === 0 ? '' : 'as you see fit';
    case 'pieces':
      return `${pack.pieces}/pack`;
    case 'weight':
      return `${formatWeight(pack.grams, unit, locale)} packs`;
  }
}

function woundNote(part: PartId, places: readonly Place[], plan: Plan): string {
  return plan.forecast.facts.wounds
    .filter((wound) => wound.part === part && places.includes(wound.place))
    .map((wound) => `${places.length > 1 ? `${wound.place.toUpperCase()} ` : ''}${wound.severity === 'lost' ? 'LOST: DISCARD' : 'HIT: CUT WIDE'}`)
    .join(', ');
}

function restWords({ rest }: Instructions, shop: SheetInput['shop']): Pick<SheetLine, 'action' | 'make' | 'manner'> {
  if (rest === 'undecided') return { action: 'ASK - NOT DECIDED', make: 'ASK', manner: 'NOT DECIDED' };
  return cutWords(rest === 'stew' ? 'diced' : 'mince', shop);
}

/** Whether a part is here at a place: its meat, or its bones where it has no meat, as the frame of a bird. */
export function hasCome(part: PartId, place: Place, plan: Plan): boolean {
  const kind = MUSCLES.some((muscle) => ANATOMY[muscle].part === part) ? 'muscle' : 'bone';
  return plan.ledger.some((row) => {
    const tissue = readTissueKey(row.key);
    return tissue.part === part && tissue.place === place && tissue.kind === kind;
  });
}
