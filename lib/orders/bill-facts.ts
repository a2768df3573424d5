import { CUTS, type CutId, type NameCountry, cutName, minceName, sidedName, targetName } from '@/lib/cuts';
import type { Instructions } from '@/lib/instructions';
import { PRODUCTS, type Plan, addedFatGrams, addedToFinished, isProductId } from '@/lib/plan';
import type { BillFacts } from '@/lib/pricing';
import { roundHalfUp } from '@/lib/units';
import type { ArrivalDetails } from './animal';

/** One weighing at the packing table, by the key of its line, pool or product. */
export type Weighing = { readonly lineKey: string; readonly grams: number; readonly packages: number };

/** A row to weigh: what it is called, which cut it is priced as, and what the forecast expects. Grams. */
export type PackRow = {
  readonly lineKey: string;
  readonly label: string;
  readonly cutId: string;
  readonly expected: { readonly low: number; readonly likely: number; readonly high: number };
  /** Meat of this row that is not the hunter's own: added pork or fat. */
  readonly addedGrams: number;
};

/** The rows of the packing table: every line that packs something, the pools, the products, what is kept. */
export function packRows(instructions: Instructions, plan: Plan, country: NameCountry): readonly PackRow[] {
  const none = { low: 0, likely: 0, high: 0 };
  const lines = plan.lines
    .filter(({ line, packed }) => CUTS[line.cut].split.packed > 0 && packed.likely > 0)
    .map(({ line, packed }): PackRow => ({
      lineKey: line.id,
      label: `${capital(sidedName(targetName(line.target, country), line.target === 'saddle' ? 'middle' : line.side))}, ${cutName(line.cut, country)}`,
      cutId: line.cut,
      // The forecast is of the game; what is wrapped round it is weighed with it.
      expected: { low: packed.low + wrapping(line.cut, packed.low), likely: packed.likely + wrapping(line.cut, packed.likely), high: packed.high + wrapping(line.cut, packed.high) },
      addedGrams: wrapping(line.cut, packed.likely),
    }));
  const stew: PackRow[] =
    plan.pools.stewing.likely > 0
      ? [{ lineKey: 'pool:stew', label: capital(cutName('diced', country)), cutId: 'diced', expected: plan.pools.stewing, addedGrams: 0 }]
      : [];
  const fat = instructions.mince.addedFat === 'none' ? 0 : instructions.mince.fatPercent;
  const withFat = (grams: number): number => grams + addedFatGrams(grams, fat);
  const mince: PackRow[] =
    plan.mince.likely > 0
      ? [
          {
            lineKey: 'pool:mince',
            label: fat > 0 ? `${capital(minceName(country))}, ${fat}% ${instructions.mince.addedFat} fat added` : capital(minceName(country)),
            cutId: 'mince',
            expected: { low: withFat(plan.mince.low), likely: withFat(plan.mince.likely), high: withFat(plan.mince.high) },
            addedGrams: addedFatGrams(plan.mince.likely, fat),
          },
        ]
      : [];
  const products = plan.products.map((product): PackRow => ({
    lineKey: `product:${product.productId}`,
    label: capital(PRODUCTS[product.productId].name),
    cutId: 'product',
    expected: product.finished,
    addedGrams: product.addedGrams,
  }));
  const kept = (['heart', 'liver', 'bones'] as const)
    .filter((item) => instructions.keep[item])
    .map((item): PackRow => ({ lineKey: `keep:${item}`, label: item === 'bones' ? 'Bones' : capital(item), cutId: 'kept', expected: none, addedGrams: 0 }));
  return [...lines, ...stew, ...mince, ...products, ...kept];
}

/**
 * What the bill is worked out from: weighings where there are any, else the forecast's grams at one of its three
 * levels. Extras come from what was asked (cape, antlers) and found (dirty, hide on).
 */
export function billFacts(input: {
  readonly speciesId: string;
  readonly instructions: Instructions;
  readonly arrival: Pick<ArrivalDetails, 'form' | 'conditions'> | null;
  readonly form: ArrivalDetails['form'];
  readonly hangingGrams: number;
  readonly rows: readonly PackRow[];
  readonly weighings: readonly Weighing[] | null;
  readonly level: 'low' | 'likely' | 'high';
  readonly payments: readonly { readonly amountMinor: number }[];
}): BillFacts {
  const weighed = new Map((input.weighings ?? []).map((one) => [one.lineKey, one]));
  const gramsOf = (row: PackRow): number => (input.weighings ? (weighed.get(row.lineKey)?.grams ?? 0) : row.expected[input.level]);
  const form = input.arrival?.form ?? input.form;
  const extras = [
    ...(form === 'hide-on' ? [{ extraId: 'skinning', count: 1 }] : []),
    ...(input.instructions.keep.cape ? [{ extraId: 'cape', count: 1 }] : []),
    ...(input.instructions.keep.antlers === 'none' ? [] : [{ extraId: 'antlers', count: 1 }]),
    ...(input.arrival?.conditions.includes('dirty') ? [{ extraId: 'cleaning', count: 1 }] : []),
  ];
  const packed = input.rows
    .filter((row) => row.cutId !== 'product' && row.cutId !== 'kept')
    .map((row) => ({ label: row.label, cutId: row.cutId, grams: gramsOf(row), packages: weighed.get(row.lineKey)?.packages ?? 0 }));
  const products = input.rows.flatMap((row) => {
    const productId = row.lineKey.slice('product:'.length);
    if (row.cutId !== 'product' || !isProductId(productId)) return [];
    const finishedGrams = gramsOf(row);
    return finishedGrams > 0
      ? [{ productId, finishedGrams, addedGrams: addedToFinished(productId, finishedGrams) }]
      : [];
  });
  return {
    speciesId: input.speciesId,
    hangingGrams: input.hangingGrams,
    arrivedSkinned: form !== 'hide-on',
    packed: packed.filter((row) => row.grams > 0),
    extras,
    products,
    depositMinor: 0,
    payments: input.payments,
  };
}

/** What a cut puts round so many grams of game: game x share / (1 - share), half up. */
function wrapping(cut: CutId, gameGrams: number): number {
  const share = CUTS[cut].adds?.per10k ?? 0;
  return share === 0 ? 0 : roundHalfUp(gameGrams * share, 10_000 - share);
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
