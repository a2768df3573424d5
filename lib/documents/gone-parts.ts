import { type ForecastTissue, rangeOf } from '@/lib/carcass';
import { type PackRow, type Weighing, addedGramsOf } from '@/lib/orders';
import { type LedgerRow, PRODUCTS, type Plan } from '@/lib/plan';
import { type Range, allocateByLargestRemainder } from '@/lib/units';

/** What leaves on the way, or what of the meat goes home how. */
export type GonePartId = 'innards' | 'outside' | 'bone' | 'trim' | 'wounds' | 'drying' | 'making' | 'cuts' | 'stew' | 'mince' | 'products' | 'undecided';

/** Grams of one part; `label` where it has a name of its own. */
export type PartGrams = { readonly id: GonePartId; readonly label?: string; readonly range: Range };

/** Own meat as forecast, raw: cuts, stew, mince, what products are made of, what nobody has decided. */
export function forecastHome(plan: Plan): readonly PartGrams[] {
  const { lines, pools, mince, products } = plan;
  const cuts = lines.reduce((sum, line) => sum + line.packed.likely, 0);
  return [
    { id: 'cuts', range: rangeOfRows(plan, (row) => row.packed, cuts) },
    { id: 'stew', range: pools.stewing },
    { id: 'mince', range: mince },
    ...products.map(({ productId, gameGrams }) => ({ id: 'products' as const, label: `for ${PRODUCTS[productId].name}`, range: gameGrams })),
    { id: 'undecided', range: pools.undecided },
  ];
}

/** Own meat as weighed: without the pork or fat that went in besides, and without what is kept of innards and bones. */
export type WeighedHome = {
  readonly parts: readonly PartGrams[];
  /** The pork or fat. */
  readonly addedGrams: number;
  /** A row that should give something was not weighed: it may stand elsewhere still. */
  readonly isShort: boolean;
};

/** Adds up what was weighed at the packing table. Grams. */
export function weighedHome(rows: readonly PackRow[], weighings: readonly Weighing[]): WeighedHome {
  const rowOf = new Map(rows.map((row) => [row.lineKey, row]));
  const own = weighings.flatMap(({ lineKey, grams }) => {
    const row = rowOf.get(lineKey);
    if (!row || row.cutId === 'kept') return [];
    const added = addedGramsOf(row, grams);
    return [{ id: partOf(row), label: row.label, grams: grams - added, added }];
  });
  const together = (id: GonePartId): PartGrams => ({ id, range: exactly(own.filter((one) => one.id === id).reduce((sum, { grams }) => sum + grams, 0)) });
  return {
    parts: [
      ...(['cuts', 'stew', 'mince'] as const).map(together),
      ...own.filter(({ id }) => id === 'products').map(({ id, label, grams }) => ({ id, label: label.toLocaleLowerCase('en'), range: exactly(grams) })),
    ],
    addedGrams: own.reduce((sum, { added }) => sum + added, 0),
    isShort: rows.some(({ lineKey, expected }) => expected.likely > 0 && !weighings.some((one) => one.lineKey === lineKey)),
  };
}

function partOf({ lineKey, cutId }: PackRow): GonePartId {
  if (lineKey === 'pool:stew') return 'stew';
  if (lineKey === 'pool:mince') return 'mince';
  return cutId === 'product' ? 'products' : 'cuts';
}

/** Bone, trim, wounds and drying as forecast; they and the meat are what hangs. */
export function forecastLosses(plan: Plan): readonly PartGrams[] {
  const { forecast, pools } = plan;
  const wounds = forecast.tissues.reduce((sum, { woundGrams }) => sum + woundGrams, 0);
  const trim = pools.waste.likely - wounds;
  const woundOf = woundsOf(forecast.tissues);
  return [
    { id: 'bone', range: pools.bone },
    { id: 'trim', range: wounds === 0 ? pools.waste : rangeOfRows(plan, (row) => row.pools.waste - (woundOf.get(row.key) ?? 0), trim) },
    { id: 'wounds', range: wounds === 0 ? exactly(0) : rangeOf(forecast, (_key, isLost) => (isLost ? 1 : 0), wounds) },
    { id: 'drying', range: pools.drying },
  ];
}

/** What was not packed, divided as the forecast divides it, with what products lose in the making. */
export function sharedRest(plan: Plan, restGrams: number): readonly PartGrams[] {
  const losses: readonly PartGrams[] = [...forecastLosses(plan), { id: 'making', range: exactly(makingGrams(plan)) }];
  const weights = losses.map(({ range }) => range.likely);
  // Nothing was to be lost, and yet something was: it was trimmed.
  const shares = allocateByLargestRemainder(restGrams, weights.some((grams) => grams > 0) ? weights : losses.map(({ id }) => (id === 'trim' ? 1 : 0)));
  return losses.map(({ id }, at) => ({ id, range: exactly(shares[at] ?? 0) }));
}

/** What sausages, sticks and jerky are to lose in the making. Grams. */
export function makingGrams({ products }: Plan): number {
  return Math.max(0, products.reduce((sum, { gameGrams, addedGrams, finished }) => sum + gameGrams.likely + addedGrams - finished.likely, 0));
}

/** All own meat, decided or not. */
export function meatRange(plan: Plan, likely: number): Range {
  return rangeOfRows(plan, ({ packed, pools }) => packed + pools.stewing + pools.grinding + pools['whole-muscle'] + pools.undecided, likely);
}

/** Range of a quantity that is so many grams of each row of the ledger. */
function rangeOfRows({ forecast, ledger }: Plan, gramsOf: (row: LedgerRow) => number, likely: number): Range {
  const woundOf = woundsOf(forecast.tissues);
  const shares = new Map(ledger.map((row) => {
    const sound = row.grams - (woundOf.get(row.key) ?? 0);
    return [row.key, sound > 0 ? gramsOf(row) / sound : 0];
  }));
  return rangeOf(forecast, (key, isLost) => (isLost ? 0 : (shares.get(key) ?? 0)), likely);
}

function woundsOf(tissues: readonly ForecastTissue[]): ReadonlyMap<string, number> {
  return new Map(tissues.map(({ key, woundGrams }) => [key, woundGrams]));
}

/** A weight that is known. */
export function exactly(grams: number): Range {
  return { low: grams, likely: grams, high: grams };
}
