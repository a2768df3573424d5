import { CUT_IDS, type CutId, TARGETS, TARGET_IDS, type TargetId, cutsOf } from '@/lib/cuts';
import {
  ADDED_FATS,
  ALLERGENS,
  ANTLER_CHOICES,
  type Allergen,
  type InstructionLine,
  type Instructions,
  LINE_SIDES,
  type LineSide,
  MINCE_SHAPES,
  MIXINGS,
  PRODUCT_IDS,
  type ProductId,
  REST_CHOICES,
  usualSide,
} from '@/lib/instructions';
import { AGE_CLASSES, type BodyPlan, DELIVERY_FORMS, SEXES, WEIGHT_BASES, type PartPlace, type SpeciesBook, findSpecies } from '@/lib/carcass';
import type { DescribedAnimal } from '@/lib/orders';
import { type LengthUnit, type WeightUnit, formatThickness, isCalendarDay, parseLength, parseWeight } from '@/lib/units';
import { type FormEntries, nestEntries, rowsAt, textAt } from './form-entries';
import { packCode, readPack, readSize, sizeCode } from './size-choices';
import { tidyLine, tidyLines } from './tidy-text';
import { typedWeight } from './typed-weight';

/** One line as its inputs hold it. `size` and `pack` are codes of size-choices. */
export type LineValues = {
  id: string;
  target: TargetId;
  side: LineSide;
  cut: CutId;
  size: string;
  pack: string;
  asked: string;
};

/** The hunter's form as its inputs hold it: text as typed, '' where nothing is chosen. Shared by browser and server. */
export type OrderFormValues = {
  /** Made when the form was opened: the same form sent twice is one order. */
  formKey: string;
  animal: {
    speciesId: string;
    sex: string;
    ageClass: string;
    weight: string;
    weightBasis: string;
    girth: string;
    takenWhere: string;
    diseaseZone: string;
    form: string;
    filletsOut: boolean;
  };
  lines: LineValues[];
  rest: string;
  squaredOff: string;
  mince: { addedFat: string; fatPercent: string; pack: string; shape: string };
  stewPack: string;
  /** Own meat that goes into each made thing, as typed. */
  products: Record<ProductId, string>;
  /** Made things in the order they are served, ids with a space between; '' for the order of the menu. */
  served: string;
  mixing: string;
  keep: { heart: boolean; liver: boolean; bones: boolean; antlers: string; cape: boolean; hide: boolean; taxidermist: string };
  noPork: boolean;
  avoid: Record<Allergen, boolean>;
  boneless: boolean;
  /** Always `SHARE_ROWS` of them; empty ones share nothing. */
  shares: { name: string; percent: string; isGiven: boolean }[];
  /** 'YYYY-MM-DD', or ''. */
  wantedBy: string;
  overBorder: boolean;
  /** Keys of findings agreed to, with a space between. */
  agreed: string;
  note: string;
  hunter: { name: string; phone: string; email: string };
};

/** More findings than anyone agrees to; more than that is made up. */
const MOST_AGREED = 60;

/** What the form must know of the shop. */
export type FormShop = { readonly unit: WeightUnit; readonly locale: string; readonly species: SpeciesBook };

/** How many can share one animal on the form. */
export const SHARE_ROWS = 4;
const NO_SHARE = { name: '', percent: '', isGiven: false };

function perAllergen(isAvoided: (id: Allergen) => boolean): Record<Allergen, boolean> {
  // As for products: every key is there.
  return Object.fromEntries(ALLERGENS.map((id) => [id, isAvoided(id)])) as Record<Allergen, boolean>;
}

function shareRows(rows: readonly OrderFormValues['shares'][number][]): OrderFormValues['shares'] {
  return Array.from({ length: SHARE_ROWS }, (_, at) => rows[at] ?? { ...NO_SHARE });
}

function perProduct(textOf: (id: ProductId) => string): Record<ProductId, string> {
  // Object.fromEntries forgets the keys that PRODUCT_IDS guarantees.
  return Object.fromEntries(PRODUCT_IDS.map((id) => [id, textOf(id)])) as Record<ProductId, string>;
}

/** An empty form: nothing chosen for the hunter. */
export function blankOrderForm(formKey: string): OrderFormValues {
  return {
    formKey,
    animal: { speciesId: '', sex: '', ageClass: '', weight: '', weightBasis: '', girth: '', takenWhere: '', diseaseZone: '', form: '', filletsOut: false },
    lines: [],
    rest: '',
    squaredOff: 'stew',
    mince: { addedFat: 'none', fatPercent: '10', pack: '', shape: 'bulk' },
    stewPack: '',
    products: perProduct(() => ''),
    served: '',
    mixing: 'own-meat-only',
    keep: { heart: false, liver: false, bones: false, antlers: 'none', cape: false, hide: false, taxidermist: '' },
    noPork: false,
    avoid: perAllergen(() => false),
    boneless: false,
    shares: shareRows([]),
    wantedBy: '',
    overBorder: false,
    agreed: '',
    note: '',
    hunter: { name: '', phone: '', email: '' },
  };
}

/** Reads what a browser sent; anything unknown is left out, nothing typed is changed. */
export function readOrderForm(entries: FormEntries): OrderFormValues {
  const tree = nestEntries(entries);
  const text = (path: string): string => textAt(tree, path);
  const ticked = (path: string): boolean => text(path) !== '';
  // A line is known by its id: of two with the same one the first is kept.
  const ids = new Set<string>();
  return {
    formKey: text('formKey').slice(0, 64),
    animal: {
      speciesId: text('animal.speciesId'),
      sex: text('animal.sex'),
      ageClass: text('animal.ageClass'),
      weight: text('animal.weight'),
      weightBasis: text('animal.weightBasis'),
      girth: text('animal.girth'),
      takenWhere: text('animal.takenWhere'),
      diseaseZone: text('animal.diseaseZone'),
      form: text('animal.form'),
      filletsOut: ticked('animal.filletsOut'),
    },
    lines: rowsAt(tree, 'lines').flatMap((row): LineValues[] => {
      const target = oneOf(textAt(row, 'target'), TARGET_IDS);
      const cut = oneOf(textAt(row, 'cut'), CUT_IDS);
      const id = textAt(row, 'id');
      if (!target || !cut || !/^line-\d{1,4}$/.test(id) || ids.has(id)) return [];
      ids.add(id);
      return [
        {
          id,
          target,
          cut,
          side: oneOf(textAt(row, 'side'), LINE_SIDES) ?? usualSide(target),
          size: textAt(row, 'size'),
          pack: textAt(row, 'pack'),
          asked: textAt(row, 'asked'),
        },
      ];
    }),
    rest: text('rest'),
    squaredOff: text('squaredOff'),
    mince: { addedFat: text('mince.addedFat'), fatPercent: text('mince.fatPercent'), pack: text('mince.pack'), shape: text('mince.shape') },
    stewPack: text('stewPack'),
    products: perProduct((id) => text(`products.${id}`)),
    served: text('served'),
    mixing: text('mixing'),
    keep: {
      heart: ticked('keep.heart'),
      liver: ticked('keep.liver'),
      bones: ticked('keep.bones'),
      antlers: text('keep.antlers'),
      cape: ticked('keep.cape'),
      hide: ticked('keep.hide'),
      taxidermist: text('keep.taxidermist'),
    },
    noPork: ticked('noPork'),
    avoid: perAllergen((id) => ticked(`avoid.${id}`)),
    boneless: ticked('boneless'),
    shares: shareRows(
      rowsAt(tree, 'shares').map((row) => ({ name: textAt(row, 'name'), percent: textAt(row, 'percent'), isGiven: textAt(row, 'isGiven') !== '' })),
    ),
    wantedBy: text('wantedBy'),
    overBorder: ticked('overBorder'),
    agreed: text('agreed'),
    note: text('note'),
    hunter: { name: text('hunter.name'), phone: text('hunter.phone'), email: text('hunter.email') },
  };
}

/**
 * The animal as far as it has been told, or null until a species is chosen. Never fails: a weight that cannot be
 * read counts as none, so that the forecast can run while people type.
 */
export function describedAnimal(values: Pick<OrderFormValues, 'animal'>, shop: FormShop): DescribedAnimal | null {
  const { animal } = values;
  const { speciesId } = animal;
  if (!findSpecies(shop.species, speciesId)) return null;
  const basis = oneOf(animal.weightBasis, WEIGHT_BASES);
  const weight = basis && animal.weight.trim() !== '' ? parseWeight(animal.weight, shop) : null;
  const girth = animal.girth.trim() === '' ? null : parseLength(animal.girth, girthUnit(shop));
  const missing: readonly PartPlace[] = animal.filletsOut
    ? [
        { part: 'fillet', place: 'left' },
        { part: 'fillet', place: 'right' },
      ]
    : [];
  return {
    speciesId,
    sex: oneOf(animal.sex, SEXES) ?? 'unknown',
    ageClass: oneOf(animal.ageClass, AGE_CLASSES) ?? 'unknown',
    weight: basis && weight?.ok && weight.value > 0 ? { grams: weight.value, basis } : null,
    girthMm: girth?.ok ? girth.value : null,
    form: oneOf(animal.form, DELIVERY_FORMS) ?? 'hide-on',
    takenWhere: tidyLine(animal.takenWhere),
    diseaseZone: oneOf(animal.diseaseZone, ['yes', 'no', 'unsure'] as const) ?? 'unsure',
    missing,
  };
}

/** A girth is taken with a tape in inches where meat is weighed in pounds, else in centimetres. */
export function girthUnit({ unit, locale }: Pick<FormShop, 'unit' | 'locale'>): { readonly unit: LengthUnit; readonly locale: string } {
  return { unit: unit === 'lb' ? 'in' : 'mm', locale };
}

/** A girth as its input shows it; the millimetre is kept where sixteenths of an inch would lose it. */
function typedGirth(mm: number, shop: FormShop): string {
  const words = formatThickness(mm, girthUnit(shop).unit);
  const read = parseLength(words, girthUnit(shop));
  return read.ok && read.value === mm ? words : `${mm} mm`;
}

/** How the chosen animal is built; four-legged until one is chosen. */
export function planOf({ animal }: Pick<OrderFormValues, 'animal'>, { species }: FormShop): BodyPlan {
  return findSpecies(species, animal.speciesId)?.plan ?? 'four-legged';
}

/** The cutting instructions as far as they have been told. Never fails; see `describedAnimal`. */
export function describedInstructions(values: Omit<OrderFormValues, 'animal' | 'hunter' | 'formKey'>, shop: FormShop): Instructions {
  const addedFat = oneOf(values.mince.addedFat, ADDED_FATS) ?? 'none';
  const fatPercent = /^\d{1,2}$/.test(values.mince.fatPercent) ? Math.min(50, Number(values.mince.fatPercent)) : 0;
  return {
    lines: values.lines.map((line) => describedLine(line, shop)),
    rest: oneOf(values.rest, REST_CHOICES) ?? 'undecided',
    squaredOff: values.squaredOff === 'mince' ? 'mince' : 'stew',
    mince: { addedFat, fatPercent: addedFat === 'none' ? 0 : fatPercent, packGrams: packGrams(values.mince.pack, shop), shape: oneOf(values.mince.shape, MINCE_SHAPES) ?? 'bulk' },
    stewPackGrams: packGrams(values.stewPack, shop),
    products: servedOrder(values.served).flatMap((productId) => {
      const typed = values.products[productId];
      const own = typed.trim() === '' ? null : parseWeight(typed, shop);
      return own?.ok && own.value > 0 ? [{ productId, gameGrams: own.value }] : [];
    }),
    isPriorityStated: values.served.trim() !== '',
    mixing: oneOf(values.mixing, MIXINGS) ?? 'own-meat-only',
    keep: {
      ...values.keep,
      antlers: oneOf(values.keep.antlers, ANTLER_CHOICES) ?? 'none',
      taxidermist: values.keep.cape ? tidyLine(values.keep.taxidermist) : '',
    },
    noPork: values.noPork,
    avoid: ALLERGENS.filter((id) => values.avoid[id]),
    boneless: values.boneless,
    shares: values.shares.flatMap(({ name, percent, isGiven }) => {
      const part = /^\d{1,3}$/.test(percent.trim()) ? Math.min(100, Number(percent)) : 0;
      return name.trim() === '' && part === 0 ? [] : [{ name: tidyLine(name), percent: part, isGiven }];
    }),
    wantedBy: isCalendarDay(values.wantedBy) ? values.wantedBy : null,
    overBorder: values.overBorder,
    agreed: values.agreed.split(/\s+/).filter((key) => key !== '').slice(0, MOST_AGREED),
    note: tidyLines(values.note),
  };
}

/** Every product, those named first in the order they are named. */
function servedOrder(served: string): readonly ProductId[] {
  const named = served.split(/\s+/).flatMap((id) => oneOf(id, PRODUCT_IDS) ?? []);
  return [...new Set([...named, ...PRODUCT_IDS])];
}

/** Puts changed instructions back into the form's inputs. An amount that has not changed keeps the words it was typed in. */
export function withInstructions(values: OrderFormValues, instructions: Instructions, shop: FormShop): OrderFormValues {
  const before = describedInstructions(values, shop);
  const typed = new Map(values.lines.map((line) => [line.id, line]));
  const known = new Map(before.lines.map((line) => [line.id, line]));
  const game = (of: Instructions, id: ProductId): number => of.products.find(({ productId }) => productId === id)?.gameGrams ?? 0;
  return {
    ...values,
    lines: instructions.lines.map((line) => ({
      id: line.id,
      target: line.target,
      side: line.side,
      cut: line.cut,
      size: sizeCode(line.size),
      pack: packCode(line.pack),
      asked:
        known.get(line.id)?.askedGrams === line.askedGrams
          ? (typed.get(line.id)?.asked ?? '')
          : line.askedGrams === null
            ? ''
            : typedWeight(line.askedGrams, shop),
    })),
    rest: instructions.rest === 'undecided' && values.rest === '' ? '' : instructions.rest,
    squaredOff: instructions.squaredOff,
    mince: {
      ...values.mince,
      addedFat: instructions.mince.addedFat,
      // Without fat the percentage means nothing, and what was typed stays for when some is chosen.
      fatPercent: instructions.mince.addedFat === 'none' ? values.mince.fatPercent : String(instructions.mince.fatPercent),
      pack: before.mince.packGrams === instructions.mince.packGrams ? values.mince.pack : String(instructions.mince.packGrams),
      shape: instructions.mince.shape,
    },
    stewPack: before.stewPackGrams === instructions.stewPackGrams ? values.stewPack : String(instructions.stewPackGrams),
    products: perProduct((id) => {
      const own = game(instructions, id);
      if (game(before, id) === own) return values.products[id];
      return own > 0 ? typedWeight(own, shop) : '';
    }),
    served: instructions.isPriorityStated ? servedText(values.served, instructions) : '',
    mixing: instructions.mixing,
    keep: {
      ...instructions.keep,
      // Without a cape the name means nothing, and stays for when one is wanted.
      taxidermist: instructions.keep.taxidermist === before.keep.taxidermist ? values.keep.taxidermist : instructions.keep.taxidermist,
    },
    noPork: instructions.noPork,
    avoid: perAllergen((id) => instructions.avoid.includes(id)),
    boneless: instructions.boneless,
    shares: JSON.stringify(before.shares) === JSON.stringify(instructions.shares) ? values.shares : sharesAsTyped(instructions.shares),
    wantedBy: before.wantedBy === instructions.wantedBy ? values.wantedBy : (instructions.wantedBy ?? ''),
    overBorder: instructions.overBorder,
    agreed: instructions.agreed.join(' '),
    note: instructions.note === before.note ? values.note : instructions.note,
  };
}

/** The order of serving as its field holds it: kept where it says the same already. */
function servedText(typed: string, { products }: Instructions): string {
  const wanted = products.map(({ productId }) => productId);
  const now = servedOrder(typed).filter((id) => wanted.includes(id));
  return typed.trim() !== '' && now.join() === wanted.join() ? typed : [...new Set([...wanted, ...servedOrder(typed)])].join(' ');
}

function sharesAsTyped(shares: Instructions['shares']): OrderFormValues['shares'] {
  return shareRows(shares.map(({ name, percent, isGiven }) => ({ name, percent: String(percent), isGiven })));
}

/** The form as it would stand had the hunter just typed this order: for changing one that was sent. */
export function formValuesOf(
  order: {
    readonly formKey: string;
    readonly animal: DescribedAnimal;
    readonly instructions: Instructions;
    readonly hunter: OrderFormValues['hunter'];
  },
  shop: FormShop,
): OrderFormValues {
  const { animal, instructions } = order;
  const blank = blankOrderForm(order.formKey);
  const told: OrderFormValues = {
    ...blank,
    animal: {
      speciesId: animal.speciesId,
      sex: animal.sex,
      ageClass: animal.ageClass,
      weight: animal.weight ? typedWeight(animal.weight.grams, shop) : '',
      weightBasis: animal.weight?.basis ?? '',
      girth: animal.girthMm ? typedGirth(animal.girthMm, shop) : '',
      takenWhere: animal.takenWhere,
      diseaseZone: animal.diseaseZone,
      form: animal.form,
      filletsOut: animal.missing.some((gone) => gone.part === 'fillet'),
    },
    rest: instructions.rest,
    mince: { ...blank.mince, pack: String(instructions.mince.packGrams) },
    stewPack: String(instructions.stewPackGrams),
    hunter: { ...order.hunter },
  };
  return withInstructions(told, instructions, shop);
}

function describedLine(line: LineValues, shop: FormShop): InstructionLine {
  const cut = cutsOf(line.target).includes(line.cut) ? line.cut : (cutsOf(line.target)[0] ?? line.cut);
  const asked = line.asked.trim() === '' ? null : parseWeight(line.asked, shop);
  const fixed = TARGETS[line.target].reach === 'middle' ? 'middle' : TARGETS[line.target].reach === 'both-as-one' ? 'both' : null;
  return {
    id: line.id,
    target: line.target,
    side: fixed ?? (line.side === 'middle' ? 'both' : line.side),
    cut,
    size: readSize(line.size, cut),
    pack: readPack(line.pack, cut),
    askedGrams: asked?.ok && asked.value > 0 ? asked.value : null,
  };
}

/** One pound or half a kilo, where nothing else is chosen. */
function packGrams(text: string, shop: FormShop): number {
  const grams = /^\d{2,5}$/.test(text) ? Number(text) : 0;
  return grams >= 50 && grams <= 20_000 ? grams : shop.unit === 'lb' ? 454 : 500;
}

function oneOf<const Value extends string>(text: string, values: readonly Value[]): Value | null {
  return values.find((value) => value === text) ?? null;
}
