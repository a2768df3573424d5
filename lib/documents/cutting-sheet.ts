import { PARTS, type PartId, type Place, type Wound, type WoundSeverity, isSidedPart, placesOf, readTissueKey } from '@/lib/carcass';
import { CUTS, TARGETS, cutName, isUsual, knifeOrder, minceName, partName, sidedName, targetName } from '@/lib/cuts';
import { type Instructions, type InstructionLine, placesOfLine } from '@/lib/instructions';
import { type ArrivalDetails, type DescribedAnimal, type ShopView, animalWords, formatOrderNumber, scanCode } from '@/lib/orders';
import { type Plan, PRODUCTS } from '@/lib/plan';
import { CAUTIONS, DEFERENCE } from '@/lib/rules';
import { formatThickness, formatWeight } from '@/lib/units';

/** One line of the sheet: PART - ACTION - SIZE - PACK. */
export type SheetLine = {
  /** 'LEFT HAUNCH', 'TOPSIDE, BOTH'. */
  readonly part: string;
  readonly action: string;
  readonly size: string;
  readonly pack: string;
  /** Whether it is not what the shop does anyway: printed heavy. */
  readonly isDeparture: boolean;
  /** What the cutter must know of it: 'left hit: cut wide'. */
  readonly note: string;
};

/** A block of lines in knife order. */
export type SheetBlock = { readonly title: string; readonly seams: string; readonly lines: readonly SheetLine[] };

export type SheetMark = { readonly part: PartId; readonly place: Place; readonly kind: 'wound' | 'absent'; readonly severity: WoundSeverity | null };

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
  readonly shop: string;
  /** Short bars that stop the knife or the hand: 'HOLD - TEST PENDING'. Worst first. */
  readonly stops: readonly string[];
  /** 'Hanging 92.4 lb' or 'Forecast hanging about 92 lb'. */
  readonly weight: string;
  readonly marks: readonly SheetMark[];
  readonly blocks: readonly SheetBlock[];
  /** What becomes of everything else. */
  readonly rest: string;
  readonly grind: readonly { readonly label: string; readonly value: string }[];
  readonly products: readonly { readonly name: string; readonly setAside: string; readonly added: string }[];
  readonly keep: readonly string[];
  readonly note: string;
  /** Boxes to write in: weights, initials, time. */
  readonly writeIns: readonly string[];
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

const BLOCKS: readonly { readonly title: string; readonly parts: readonly PartId[] }[] = [
  { title: 'FILLET & BACK', parts: ['fillet', 'loin'] },
  { title: 'HAUNCH', parts: ['haunch'] },
  { title: 'SHOULDER', parts: ['shoulder'] },
  { title: 'NECK, RIBS, FLANK', parts: ['neck', 'ribs'] },
];

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
    animal: animalWords({ ...input.animal, ...(input.arrival ?? {}) }),
    hunter: input.hunterName,
    shop: shop.name,
    stops: stopBars(input),
    weight: hanging === null ? `Hanging, forecast: ${words(plan.forecast.hanging.likely)}` : `Hanging: ${words(hanging)}`,
    marks: sheetMarks(plan),
    blocks: BLOCKS.map(({ title, parts }) => ({
      title: title === 'HAUNCH' ? partName('haunch', shop.country).toUpperCase() : title,
      seams: title === 'HAUNCH' && seamed ? 'belly flap, hip bone, shank, rump, topside, thick flank, silverside & salmon cut, silverskin, square & tie' : '',
      lines: parts.flatMap((part) => linesOfPart(part, input)),
    })),
    rest: restLine(input),
    grind: grindBox(input),
    products: plan.products.map((product) => ({
      name: PRODUCTS[product.productId].name.toUpperCase(),
      setAside: `set aside ${words(product.askedGrams)} own meat`,
      added: product.addedGrams > 0 ? `+ ${words(product.addedGrams)} pork` : '',
    })),
    keep: keepList(instructions),
    note: instructions.note,
    writeIns: ['Hanging weight', 'Meat out', 'Trim lug', 'Cutter', 'Start', 'End'],
    strips: strips(input),
    cautions: cautions(input),
  };
}

function stopBars({ arrival, fromZone, instructions, openQuestions }: SheetInput): readonly string[] {
  const { keep } = instructions;
  return [
    ...(arrival?.test === 'pending' ? ['HOLD - TEST PENDING'] : []),
    ...(arrival?.test === 'positive' ? ['HOLD - TEST POSITIVE'] : []),
    ...(openQuestions > 0 ? ['HOLD - QUESTION OPEN'] : []),
    ...(fromZone ? ['DISEASE ZONE - NO SAWN BONE'] : []),
    ...(arrival?.conditions.includes('gut-shot') ? ['GUT SHOT'] : []),
    ...(instructions.noPork ? ['NO PORK'] : []),
    ...(keep.cape ? ['CAPE KEPT'] : []),
  ];
}

function sheetMarks(plan: Plan): readonly SheetMark[] {
  const { facts } = plan.forecast;
  const wounds = facts.wounds.map((wound: Wound): SheetMark => ({ part: wound.part, place: wound.place, kind: 'wound', severity: wound.severity }));
  const present = new Set(plan.ledger.map((row) => readTissueKey(row.key)).filter(({ kind }) => kind === 'muscle').map(({ part, place }) => `${place}-${part}`));
  const absent = PARTS.flatMap((part) =>
    placesOf(isSidedPart(part))
      .filter((place) => !present.has(`${place}-${part}`))
      .map((place): SheetMark => ({ part, place, kind: 'absent', severity: null })),
  );
  return [...wounds, ...absent];
}

/** The lines of one part, then what is left of it. */
function linesOfPart(part: PartId, input: SheetInput): readonly SheetLine[] {
  const { instructions, plan, shop } = input;
  const asked = instructions.lines
    .filter((line) => TARGETS[line.target].part === part)
    .sort((a, b) => knifeOrder(a.target) - knifeOrder(b.target));
  const lines = asked.map((line) => instructionLine(line, input));
  const open = placesOf(isSidedPart(part)).filter((place) =>
    plan.ledger.some((row) => {
      const tissue = readTissueKey(row.key);
      return tissue.part === part && tissue.place === place && tissue.kind === 'muscle' && row.lineId === null;
    }),
  );
  if (open.length === 0) return lines;
  const name = lines.length > 0 ? `REST OF ${partName(part, shop.country)}` : partName(part, shop.country);
  return [
    ...lines,
    {
      part: sidesSuffix(name, open, isSidedPart(part)),
      action: restAction(instructions, shop),
      size: '',
      pack: '',
      isDeparture: instructions.rest !== 'mince',
      note: woundNote(part, open, plan),
    },
  ];
}

function instructionLine(line: InstructionLine, { plan, shop }: SheetInput): SheetLine {
  const target = TARGETS[line.target];
  const places = placesOfLine(line);
  return {
    part: target.reach === 'both-as-one' ? targetName(line.target, shop.country).toUpperCase() : sidesSuffix(targetName(line.target, shop.country), places, target.reach === 'sided'),
    action: CUTS[line.cut].action,
    size: sizeOf(line, shop),
    pack: packOf(line, shop),
    isDeparture: !isUsual(target.part, line.target, line.cut),
    note: woundNote(target.part, places, plan),
  };
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
          ? `${formatThickness(size.thicknessMm, inUnit)} finished`
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
      return `${pack.pieces} / pack`;
    case 'weight':
      return `${formatWeight(pack.grams, unit, locale)} packs`;
  }
}

function woundNote(part: PartId, places: readonly Place[], plan: Plan): string {
  return plan.forecast.facts.wounds
    .filter((wound) => wound.part === part && places.includes(wound.place))
    .map((wound) => `${wound.place === 'middle' ? '' : `${wound.place} `}${wound.severity === 'lost' ? 'lost: discard' : 'hit: cut wide, not to mince'}`)
    .join('; ');
}

function restAction({ rest }: Instructions, { country }: SheetInput['shop']): string {
  if (rest === 'undecided') return 'ASK - NOT DECIDED';
  return rest === 'stew' ? CUTS.diced.action : country === 'us' ? 'TO GRIND' : CUTS.mince.action;
}

function restLine({ instructions, shop }: SheetInput): string {
  const squared = instructions.squaredOff === 'stew' ? cutName('diced', shop.country) : minceName(shop.country);
  const rest = instructions.rest === 'undecided' ? 'ASK' : instructions.rest === 'stew' ? cutName('diced', shop.country) : minceName(shop.country);
  return `Everything else: ${rest}. Squared-off pieces: ${squared}.`;
}

function grindBox({ instructions, plan, shop }: SheetInput): CuttingSheet['grind'] {
  const { mince } = instructions;
  const words = (grams: number): string => formatWeight(grams, shop.unit, shop.locale);
  return [
    { label: 'Expect', value: words(plan.mince.likely) },
    { label: 'Fat', value: mince.addedFat === 'none' ? 'NONE' : `${mince.fatPercent}% ${mince.addedFat.toUpperCase()}` },
    { label: 'Packs', value: words(mince.packGrams) },
    ...(plan.pools.stewing.likely > 0 ? [{ label: 'Stew packs', value: words(instructions.stewPackGrams) }] : []),
  ];
}

function keepList({ keep }: Instructions): readonly string[] {
  return [
    ...(keep.heart ? ['HEART'] : []),
    ...(keep.liver ? ['LIVER'] : []),
    ...(keep.bones ? ['LIMB BONES'] : []),
    ...(keep.antlers === 'none' ? [] : [keep.antlers === 'skull-plate' ? 'ANTLERS ON SKULL PLATE' : 'WHOLE HEAD']),
    ...(keep.cape ? ['CAPE'] : []),
  ];
}

function strips(input: SheetInput): CuttingSheet['strips'] {
  const { keep } = input.instructions;
  const titles = [
    ...(keep.antlers === 'none' ? [] : ['ANTLERS']),
    ...(keep.cape ? ['CAPE'] : []),
    'LUG: MINCE',
    ...(input.plan.products.length > 0 ? ['LUG: SAUSAGE'] : []),
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
