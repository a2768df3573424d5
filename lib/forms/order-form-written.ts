import type { Instructions, ProductId } from '@/lib/instructions';
import type { DescribedAnimal } from '@/lib/orders';
import { formatThickness, parseLength } from '@/lib/units';
import { describedInstructions, girthUnit, servedOrder } from './order-form-described';
import { type FormShop, type OrderFormValues, blankOrderForm, perAllergen, perProduct, shareRows } from './order-form-values';
import { packCode, sizeCode } from './size-choices';
import { typedWeight } from './typed-weight';

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

/** A girth as its input shows it; the millimetre is kept where sixteenths of an inch would lose it. */
function typedGirth(mm: number, shop: FormShop): string {
  const words = formatThickness(mm, girthUnit(shop).unit);
  const read = parseLength(words, girthUnit(shop));
  return read.ok && read.value === mm ? words : `${mm} mm`;
}
