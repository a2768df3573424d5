import { scaleHalfUp, weighedQuantity } from '@/lib/units';
import { amountAtRate } from './amount-at-rate';
import type { Bill, BillFacts, BillLine, BillTax } from './bill';
import { findBasePrice, type BasePrice, type Tariff } from './tariff';

/**
 * Prices one order: the only place where an amount or a total is worked out, for the estimate, the
 * invoice and the credit alike.
 *
 * Rounding: the grams of one service are added up, rounded once to the hundredth the customer reads, and
 * that quantity times the price is rounded once to minor units, half up. Each tax is rounded once, half
 * up, on the sum of its lines, never line by line.
 *
 * Nothing is charged twice: a species has one base charge, a service the base price includes is left out,
 * work on the hide is left out when the animal arrived skinned, and work by the animal counts once.
 *
 * Throws a RangeError on a negative or fractional weight or count. What the tariff has no price for is
 * named in `unpriced`.
 */
export function priceOrder(facts: BillFacts, tariff: Tariff): Bill {
  assertFacts(facts);
  const base = findBasePrice(tariff, facts.speciesId);
  const lines = [
    ...(base === null ? [] : priceBase(base, facts, tariff)),
    ...priceWeightExtras(facts, tariff),
    ...pricePieceExtras(base, facts, tariff),
    ...priceProducts(facts, tariff),
  ];
  const taxes = priceTaxes(lines, tariff);
  const subtotalMinor = sum(lines.map((line) => line.amountMinor));
  const totalMinor = subtotalMinor + sum(taxes.map((tax) => tax.amountMinor));
  const paidMinor = facts.depositMinor + sum(facts.payments.map((payment) => payment.amountMinor));
  return {
    currency: tariff.currency,
    lines,
    subtotalMinor,
    taxes,
    totalMinor,
    paidMinor,
    dueMinor: totalMinor - paidMinor,
    unpriced: findUnpriced(base, facts, tariff),
  };
}

function priceBase(base: BasePrice, facts: BillFacts, tariff: Tariff): BillLine[] {
  const { charge, taxId } = base;
  const unit = tariff.weightUnit;
  const id = `base:${base.id}`;
  if (charge.kind === 'flat') {
    const basis = { kind: 'flat', upToHundredths: null, unit } as const;
    return [{ id, label: base.name, basis, amountMinor: charge.amountMinor, taxId }];
  }
  const quantityHundredths = weighedQuantity(facts.hangingGrams, unit);
  if (charge.kind === 'per-weight') {
    return [weightLine({ id, label: base.name, quantityHundredths, ratePer10k: charge.ratePer10k, taxId }, tariff)];
  }
  const last = charge.steps.at(-1);
  if (last === undefined) throw new RangeError(`A base price without steps: ${base.id}`);
  const step = charge.steps.find(({ upToHundredths }) => quantityHundredths <= upToHundredths) ?? last;
  const basis = { kind: 'flat', upToHundredths: step.upToHundredths, unit } as const;
  const flat: BillLine = { id, label: base.name, basis, amountMinor: step.amountMinor, taxId };
  const excess = quantityHundredths - last.upToHundredths;
  if (excess <= 0 || charge.excessRatePer10k === 0) return [flat];
  return [
    flat,
    weightLine({
      id: `${id}:excess`,
      label: `${base.name}, extra weight`,
      quantityHundredths: excess,
      aboveHundredths: last.upToHundredths,
      ratePer10k: charge.excessRatePer10k,
      taxId,
    }, tariff),
  ];
}

function priceWeightExtras(facts: BillFacts, tariff: Tariff): BillLine[] {
  return tariff.perWeight.flatMap(({ id, name, cutIds, ratePer10k, taxId }) => {
    const grams = sum(facts.packed.filter((item) => cutIds.includes(item.cutId)).map((item) => item.grams));
    if (grams === 0) return [];
    const quantityHundredths = weighedQuantity(grams, tariff.weightUnit);
    return [weightLine({ id: `cut:${id}`, label: name, quantityHundredths, ratePer10k, taxId }, tariff)];
  });
}

function pricePieceExtras(base: BasePrice | null, facts: BillFacts, tariff: Tariff): BillLine[] {
  return tariff.perPiece.flatMap(({ id, name, eachMinor, per, needsHide, taxId }) => {
    const asked = sum(facts.extras.filter((extra) => extra.extraId === id).map((extra) => extra.count));
    const alreadyPaidFor = base !== null && base.includes.includes(id);
    if (asked === 0 || alreadyPaidFor || (needsHide && facts.arrivedSkinned)) return [];
    const count = per === 'animal' ? 1 : asked;
    const basis = { kind: 'count', count, eachMinor } as const;
    return [{ id: `extra:${id}`, label: name, basis, amountMinor: count * eachMinor, taxId }];
  });
}

function priceProducts(facts: BillFacts, tariff: Tariff): BillLine[] {
  return tariff.products.flatMap(({ id, name, ratePer10k, addedRatePer10k, taxId }) => {
    const made = facts.products.filter((product) => product.productId === id);
    const finishedGrams = sum(made.map((product) => product.finishedGrams));
    const addedGrams = sum(made.map((product) => product.addedGrams));
    const lines: BillLine[] = [];
    if (finishedGrams > 0) {
      const quantityHundredths = weighedQuantity(finishedGrams, tariff.weightUnit);
      lines.push(weightLine({ id: `product:${id}`, label: name, quantityHundredths, ratePer10k, taxId }, tariff));
    }
    if (addedGrams > 0 && addedRatePer10k > 0) {
      const quantityHundredths = weighedQuantity(addedGrams, tariff.weightUnit);
      lines.push(weightLine({
        id: `product:${id}:added`,
        label: `${name}, added meat`,
        quantityHundredths,
        ratePer10k: addedRatePer10k,
        taxId,
      }, tariff));
    }
    return lines;
  });
}

function priceTaxes(lines: readonly BillLine[], tariff: Tariff): BillTax[] {
  return tariff.taxes.flatMap(({ id, name, ratePer100k }) => {
    const taxed = lines.filter((line) => line.taxId === id);
    if (taxed.length === 0) return [];
    const taxableMinor = sum(taxed.map((line) => line.amountMinor));
    const amountMinor = scaleHalfUp({ value: taxableMinor, times: ratePer100k, over: 100_000 });
    return [{ taxId: id, name, ratePer100k, taxableMinor, amountMinor }];
  });
}

function findUnpriced(base: BasePrice | null, facts: BillFacts, tariff: Tariff): Bill['unpriced'] {
  const extraIds = new Set(tariff.perPiece.map(({ id }) => id));
  const productIds = new Set(tariff.products.map(({ id }) => id));
  return [
    ...(base === null ? [{ kind: 'base' as const, id: facts.speciesId }] : []),
    ...facts.extras
      .filter(({ extraId, count }) => count > 0 && !extraIds.has(extraId))
      .map(({ extraId }) => ({ kind: 'extra' as const, id: extraId })),
    ...facts.products
      .filter(({ productId }) => !productIds.has(productId))
      .map(({ productId }) => ({ kind: 'product' as const, id: productId })),
  ];
}

function weightLine(
  { id, label, quantityHundredths, aboveHundredths = 0, ratePer10k, taxId }: {
    readonly id: string;
    readonly label: string;
    readonly quantityHundredths: number;
    readonly aboveHundredths?: number;
    readonly ratePer10k: number;
    readonly taxId: string | null;
  },
  { weightUnit, currency }: Tariff,
): BillLine {
  return {
    id,
    label,
    basis: { kind: 'weight', quantityHundredths, aboveHundredths, unit: weightUnit, ratePer10k },
    amountMinor: amountAtRate({ quantityHundredths, ratePer10k, currency }),
    taxId,
  };
}

function assertFacts({ hangingGrams, packed, extras, products, depositMinor, payments }: BillFacts): void {
  const counts = [
    hangingGrams,
    ...packed.map((item) => item.grams),
    ...extras.map((extra) => extra.count),
    ...products.flatMap((product) => [product.finishedGrams, product.addedGrams]),
    depositMinor,
  ];
  const wrong = counts.find((value) => !Number.isSafeInteger(value) || value < 0)
    ?? payments.map((payment) => payment.amountMinor).find((value) => !Number.isSafeInteger(value));
  if (wrong !== undefined) throw new RangeError(`Not a weight, count or amount to price: ${wrong}`);
}

function sum(values: readonly number[]): number {
  return values.reduce((running, value) => running + value, 0);
}
