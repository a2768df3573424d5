import { formatOrderNumber } from '@/lib/orders';
import type { Plan } from '@/lib/plan';
import { type Bill, formatBasis } from '@/lib/pricing';
import { CAUTIONS, DEFERENCE } from '@/lib/rules';
import { type WeightUnit, formatMoney, formatWeight, formatWeightRange } from '@/lib/units';
import { cookingCaution } from './cooking-caution';
import { type GoesDrawing, goesDrawing } from './goes-drawing';
import type { WhereItGoes } from './where-it-goes';

/** One row of the invoice as it is read: what, from which figures, how much. */
export type InvoiceRow = { readonly label: string; readonly basis: string; readonly amount: string };

/** The invoice as ready words. What is stored at issue and drawn ever after; nothing recomputes it. */
export type InvoiceDocument = {
  /** 'Invoice 2026-0042', or 'Estimate, not an invoice'. */
  readonly title: string;
  readonly isEstimate: boolean;
  readonly issued: string;
  readonly shop: { readonly name: string; readonly address: string; readonly phone: string };
  readonly order: string;
  readonly hunter: string;
  readonly animal: string;
  /** Tag or confirmation number and place, as a refund programme asks for. */
  readonly origin: string;
  readonly rows: readonly InvoiceRow[];
  readonly subtotal: string;
  readonly taxes: readonly { readonly label: string; readonly amount: string }[];
  readonly total: string;
  /** What was packed, weighed row by row. */
  readonly packed: readonly { readonly label: string; readonly packages: string; readonly weight: string }[];
  /** Where the rest of the animal is, in three sentences. */
  readonly yieldLine: string;
  /** The same drawn; null where the figures make no picture. Invoices issued before there was one have none. */
  readonly goes?: GoesDrawing | null;
  readonly cautions: readonly string[];
};

export type InvoiceInput = {
  readonly title: string;
  readonly isEstimate: boolean;
  readonly issued: string;
  readonly shop: { readonly name: string; readonly address: string; readonly phone: string; readonly unit: WeightUnit; readonly locale: string; readonly cookGameTo: string; readonly storageCaution: string };
  readonly number: string;
  readonly hunter: string;
  readonly animal: string;
  readonly origin: string;
  readonly bill: Bill;
  readonly packed: readonly { readonly label: string; readonly grams: number; readonly packages: number }[];
  readonly plan: Plan;
  /** Where the animal went, and the sentences of it; null where the figures make no picture. */
  readonly went: { readonly goes: WhereItGoes; readonly sentences: readonly string[] } | null;
  /** Of what was packed, how much was added pork or fat. Grams. */
  readonly addedGrams: number;
};

/** Writes a bill as an invoice: every amount with the weight and rate it came from. */
export function buildInvoice(input: InvoiceInput): InvoiceDocument {
  const { bill, shop } = input;
  const money = (minor: number): string => formatMoney(minor, bill.currency, shop.locale);
  return {
    title: input.title,
    isEstimate: input.isEstimate,
    issued: input.issued,
    shop: { name: shop.name, address: shop.address, phone: shop.phone },
    order: formatOrderNumber(input.number),
    hunter: input.hunter,
    animal: input.animal,
    origin: input.origin,
    rows: bill.lines.map((line) => ({
      label: line.label,
      basis: formatBasis(line.basis, bill.currency, shop.locale),
      amount: money(line.amountMinor),
    })),
    subtotal: money(bill.subtotalMinor),
    taxes: bill.taxes.map((tax) => ({
      label: `${tax.name} ${tax.ratePer100k / 1_000}% on ${money(tax.taxableMinor)}`,
      amount: money(tax.amountMinor),
    })),
    total: money(bill.totalMinor),
    packed: input.packed.map((row) => ({
      label: row.label,
      packages: row.packages > 0 ? String(row.packages) : '',
      weight: formatWeight(row.grams, shop.unit, shop.locale),
    })),
    yieldLine: input.went ? input.went.sentences.join(' ') : yieldLine(input),
    goes: input.went && goesDrawing(input.went.goes, shop),
    cautions: [
      cookingCaution(shop.cookGameTo, input.plan.forecast.species),
      CAUTIONS['keep-cold'].text,
      ...(shop.storageCaution.trim() === '' ? [] : [shop.storageCaution.trim().replace(/\s*\n\s*/g, ' ')]),
      DEFERENCE,
    ],
  };
}

/** What is said where three sentences cannot be: own meat out of hanging weight, against the forecast. */
export function yieldLine({ packed, plan, addedGrams, shop }: Pick<InvoiceInput, 'packed' | 'plan' | 'addedGrams' | 'shop'>): string {
  const words = (grams: number): string => formatWeight(grams, shop.unit, shop.locale);
  const own = Math.max(0, packed.reduce((sum, row) => sum + row.grams, 0) - addedGrams);
  const hanging = plan.forecast.hanging.likely;
  const percent = hanging > 0 ? Math.round((own * 100) / hanging) : 0;
  const added = addedGrams > 0 ? ` ${words(addedGrams)} of pork or fat was added.` : '';
  return `${words(hanging)} hanging gave ${words(own)} of your own meat, ${percent}%; the forecast was ${formatWeightRange(plan.packedTotal, shop.unit, shop.locale)}. The rest is bone, trim and drying.${added}`;
}
