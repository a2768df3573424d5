import { type BodyPlan, PARTS, type PartId, type Place, type Wound, type WoundSeverity, isSidedPart, partsOf, placesOf } from '@/lib/carcass';
import { TARGETS, type TargetId, cutName, minceName, partName, sidedName, targetName } from '@/lib/cuts';
import type { Instructions } from '@/lib/instructions';
import { type ArrivalDetails, type DescribedAnimal, type ShopView, animalWords, formatOrderNumber, scanCode } from '@/lib/orders';
import { type Plan, PRODUCTS } from '@/lib/plan';
import { CAUTIONS, DEFERENCE } from '@/lib/rules';
import { formatWeight } from '@/lib/units';
import { factsBeside, grindBox, grindWord, ifShort, keepList, productBoxes, stopBars } from './sheet-boxes';
import { hasCome, linesOfPart } from './sheet-lines';

/** One line of the sheet: PART - ACTION - SIZE - PACK. */
export type SheetLine = {
  /** 'LEFT HAUNCH', 'TOPSIDE L + R'. */
  readonly part: string;
  /** The same without its side, and shorter: 'RIBS & FLANK', 'REST OF SHOULDER'; in the block of the haunch 'THE REST'. */
  readonly name: string;
  /** Which half it speaks of; 'middle' for what has none. */
  readonly side: Place | 'both';
  /** The whole order: 'WHOLE, SILVERSKIN OFF'. */
  readonly action: string;
  /** What to make, shorter: 'WHOLE'. */
  readonly make: string;
  /** How to make it, to stand smaller beside it: 'silverskin off'; often ''. */
  readonly manner: string;
  readonly size: string;
  readonly pack: string;
  /** Whether it is not what the shop does anyway: printed heavy. */
  readonly isDeparture: boolean;
  /** What the cutter must know of it: 'LEFT HIT: CUT WIDE'. */
  readonly note: string;
};

/** A block of lines in knife order. */
export type SheetBlock = { readonly title: string; readonly seams: string; readonly lines: readonly SheetLine[] };

/** A bar across the sheet. Its kind is drawn as a shape, so that it is told without reading and without colour. */
export type SheetStop = { readonly text: string; readonly kind: 'hold' | 'hazard' | 'never' | 'save' };

export type SheetMark = { readonly part: PartId; readonly place: Place; readonly kind: 'wound' | 'absent'; readonly severity: WoundSeverity | null };

/** A made thing: 'JERKY', whose meat is in it, how much is set aside for it, what is added. */
export type SheetProduct = { readonly name: string; readonly batch: 'OWN MEAT' | 'MIXED BATCH'; readonly setAside: string; readonly added: string };

/** The cutting sheet as ready words: what the PDF draws, and a test reads. */
export type CuttingSheet = {
  /** '10427-7'. */
  readonly number: string;
  readonly code: string;
  readonly version: number;
  /** 'replaces version 1', or ''. */
  readonly replaces: string;
  readonly printed: string;
  readonly animal: string;
  readonly hunter: string;
  readonly surname: string;
  readonly shop: string;
  /** Short bars that stop the knife or the hand: 'HOLD - TEST PENDING'. Worst first. */
  readonly stops: readonly SheetStop[];
  /** 'Hanging: 92.40 lb' or 'Hanging, forecast: 92.40 lb'. */
  readonly weight: string;
  readonly marks: readonly SheetMark[];
  /** The marks in words: 'Hit: left haunch (heavy). Wound trim out of the mince. Did not come: both fillets.', or ''. */
  readonly markWords: string;
  readonly blocks: readonly SheetBlock[];
  /** What becomes of everything else. */
  readonly rest: string;
  /** 'GRIND', 'MINCE'. */
  readonly grindTitle: string;
  readonly grind: readonly { readonly label: string; readonly value: string }[];
  readonly products: readonly SheetProduct[];
  /** 'IF SHORT: 1 jerky, 2 snack sticks' where the hunter chose an order, or ''. */
  readonly ifShort: string;
  readonly keep: readonly string[];
  /** What else is to be known, each under its tag: 'SHARED', 'Edda 50%, Jonas 50%'. */
  readonly facts: readonly { readonly tag: string; readonly words: string }[];
  readonly note: string;
  /** Boxes to write in: weights, initials, time. */
  readonly writeIns: readonly string[];
  /** The last line, to be signed. */
  readonly signOff: string;
  /** Strips to tear off, each with number and name. */
  readonly strips: readonly { readonly title: string; readonly number: string; readonly name: string }[];
  readonly cautions: readonly string[];
};

export type SheetInput = {
  readonly number: string;
  readonly version: number;
  readonly printed: string;
  readonly shop: ShopView & { readonly name: string; readonly locale: string };
  readonly hunterName: string;
  readonly animal: DescribedAnimal;
  readonly arrival: ArrivalDetails | null;
  readonly hangingGrams: number | null;
  readonly fromZone: boolean;
  readonly instructions: Instructions;
  readonly plan: Plan;
  readonly openQuestions: number;
};

type Block = { readonly title: string; readonly parts: readonly PartId[] };

const BLOCKS: Readonly<Record<BodyPlan, readonly Block[]>> = {
  'four-legged': [
    { title: 'FILLET & BACK', parts: ['fillet', 'loin'] },
    { title: 'HAUNCH', parts: ['haunch'] },
    { title: 'SHOULDER', parts: ['shoulder'] },
    { title: 'NECK, RIBS, FLANK', parts: ['neck', 'ribs'] },
  ],
  bird: [{ title: 'BIRD', parts: ['bird-frame', 'bird-breast', 'bird-leg', 'bird-wing'] }],
};

/** The muscles of a haunch as the knife frees them. */
const SEAMS: readonly TargetId[] = ['hind-shank', 'rump', 'topside', 'thick-flank', 'silverside', 'salmon-cut'];

/**
 * Builds the sheet of one animal: every part has a line, in knife order, so that nothing is left to guess. A haunch
 * cut by muscles is listed as its seams open: shank, rump, topside, thick flank, silverside, salmon cut.
 */
export function buildCuttingSheet(input: SheetInput): CuttingSheet {
  const { shop, instructions, plan } = input;
  const words = (grams: number): string => formatWeight(grams, shop.unit, shop.locale);
  const seamed = instructions.lines.some((line) => TARGETS[line.target].part === 'haunch' && line.target !== 'haunch');
  const hanging = input.hangingGrams;
  return {
    number: formatOrderNumber(input.number),
    code: scanCode(input.number, input.version),
    version: input.version,
    replaces: input.version > 1 ? `replaces version ${input.version - 1}` : '',
    printed: input.printed,
    animal: animalWords({ ...input.animal, ...input.arrival }, { [input.plan.forecast.species.id]: input.plan.forecast.species }),
    hunter: input.hunterName,
    surname: surname(input.hunterName),
    shop: shop.name,
    stops: stopBars(input),
    weight: hanging === null ? `Hanging, forecast: ${words(plan.forecast.hanging.likely)}` : `Hanging: ${words(hanging)}`,
    marks: sheetMarks(plan),
    markWords: markWords(sheetMarks(plan), shop),
    blocks: BLOCKS[plan.forecast.species.plan].map(({ title, parts }) => ({
      title: title === 'HAUNCH' ? partName('haunch', shop.country).toUpperCase() : title,
      seams: title === 'HAUNCH' && seamed ? `seams: ${SEAMS.map((target) => targetName(target, shop.country)).join(', ')}` : '',
      lines: parts.flatMap((part) => linesOfPart(part, input)),
    })),
    rest: restLine(input),
    grindTitle: grindWord(shop),
    grind: grindBox(input),
    products: productBoxes(input),
    ifShort: ifShort(input),
    keep: keepList(instructions),
    facts: factsBeside(input),
    note: instructions.note,
    writeIns: [...(hanging === null ? ['Hanging weight'] : []), 'Meat out', 'Trim lug', 'Boxes', 'Start', 'End'],
    signOff: 'Cut as written. Cutter:',
    strips: strips(input),
    cautions: cautions(input),
  };
}

function sheetMarks(plan: Plan): readonly SheetMark[] {
  const { facts } = plan.forecast;
  const wounds = facts.wounds.map((wound: Wound): SheetMark => ({ part: wound.part, place: wound.place, kind: 'wound', severity: wound.severity }));
  const absent = partsOf(plan.forecast.species.plan).flatMap((part) =>
    placesOf(isSidedPart(part))
      .filter((place) => !hasCome(part, place, plan))
      .map((place): SheetMark => ({ part, place, kind: 'absent', severity: null })),
  );
  return [...wounds, ...absent];
}

/** 'Hit: left haunch (heavy). Wound trim out of the mince. Did not come: both fillets.' Nothing where there is nothing to say. */
function markWords(marks: readonly SheetMark[], { country }: SheetInput['shop']): string {
  const named = (mark: SheetMark): string => sidedName(partName(mark.part, country), mark.place);
  const hit = marks
    .filter(({ kind }) => kind === 'wound')
    .map((mark) => `${named(mark)} ${mark.severity === 'lost' ? '(lost)' : `(${mark.severity})`}`);
  const gone = PARTS.flatMap((part) => {
    const places = marks.filter((mark) => mark.kind === 'absent' && mark.part === part);
    return places.length > 1 ? [sidedName(partName(part, country), 'both')] : places.map(named);
  });
  const apart = hit.length > 0 ? [`Hit: ${hit.join(', ')}. Wound trim out of the ${grindWord({ country }).toLowerCase()}.`] : [];
  return [...apart, ...(gone.length > 0 ? [`Did not come: ${gone.join(', ')}.`] : [])].join(' ');
}

function restLine({ instructions, shop }: SheetInput): string {
  const squared = instructions.squaredOff === 'stew' ? cutName('diced', shop.country) : minceName(shop.country);
  const rest = instructions.rest === 'undecided' ? 'ASK' : instructions.rest === 'stew' ? cutName('diced', shop.country) : minceName(shop.country);
  return `Everything else: ${rest}. Squared-off pieces: ${squared}.`;
}

function strips(input: SheetInput): CuttingSheet['strips'] {
  const { keep } = input.instructions;
  const titles = [
    ...(keep.antlers === 'none' ? [] : ['ANTLERS']),
    ...(keep.cape ? ['CAPE'] : []),
    `LUG: ${grindWord(input.shop)}`,
    ...input.plan.products.map(({ productId }) => `LUG: ${PRODUCTS[productId].tubName.toUpperCase()}`),
    'BOX 1',
    'BOX 2',
  ];
  return titles.map((title) => ({ title, number: formatOrderNumber(input.number), name: surname(input.hunterName) }));
}

function cautions({ arrival, fromZone, plan }: SheetInput): readonly string[] {
  return [
    ...(arrival?.test === 'pending' ? [CAUTIONS['test-pending'].text] : []),
    ...(fromZone ? [CAUTIONS['disease-zone'].text] : []),
    ...(plan.forecast.facts.wounds.length > 0 ? [CAUTIONS['wound-trim'].text] : []),
    CAUTIONS['keep-cold'].text,
    DEFERENCE,
  ];
}

/** Last word of a name, for a strip: 'Ada Thorn' -> 'Thorn'. */
function surname(name: string): string {
  return name.trim().split(/\s+/).at(-1) ?? '';
}
