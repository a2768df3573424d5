import { AGE_CLASSES, DELIVERY_FORMS, SEXES, WEIGHT_BASES, type PartPlace, findSpecies } from '@/lib/carcass';
import { TARGETS, cutsOf } from '@/lib/cuts';
import { ADDED_FATS, ALLERGENS, ANTLER_CHOICES, type InstructionLine, type Instructions, MINCE_SHAPES, MIXINGS, PRODUCT_IDS, type ProductId, REST_CHOICES } from '@/lib/instructions';
import type { DescribedAnimal } from '@/lib/orders';
import { type LengthUnit, isCalendarDay, parseLength, parseWeight } from '@/lib/units';
import { oneOf } from './form-entries';
import type { FormShop, LineValues, OrderFormValues } from './order-form-values';
import { readPack, readSize } from './size-choices';
import { tidyLine, tidyLines } from './tidy-text';

/** More findings than anyone agrees to; more than that is made up. */
const MOST_AGREED = 60;

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
export function servedOrder(served: string): readonly ProductId[] {
  const named = served.split(/\s+/).flatMap((id) => oneOf(id, PRODUCT_IDS) ?? []);
  return [...new Set([...named, ...PRODUCT_IDS])];
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
