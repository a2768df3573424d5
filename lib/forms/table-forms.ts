import { z } from 'zod';
import type { NameCountry } from '@/lib/cuts';
import { type Currency, type WeightUnit, parseMoney, parseWeight } from '@/lib/units';
import { type FormEntries, nestEntries, textAt } from './form-entries';
import type { FieldErrors } from './order-form-schema';
import { tidyLine } from './tidy-text';

/** What was weighed of one row, and in how many packages. */
export type PackEntry = { readonly lineKey: string; readonly grams: number; readonly packages: number };

/** The tick that weights which look odd are right all the same. */
export const WEIGHTS_ARE_RIGHT = 'weightsAreRight';

export function saysRight(entries: FormEntries): boolean {
  return [...entries].some(([name, value]) => name === WEIGHTS_ARE_RIGHT && value !== '');
}

/**
 * Reads the packing table: fields `weight.<key>` and `packages.<key>`. An empty weight, or one of nothing, is a row not
 * packed. Errors carry the field's name.
 */
export function parsePackForm(
  entries: FormEntries,
  lineKeys: readonly string[],
  shop: { readonly unit: WeightUnit; readonly locale: string },
): { readonly ok: true; readonly value: readonly PackEntry[] } | { readonly ok: false; readonly fieldErrors: FieldErrors } {
  const typed = new Map<string, string>();
  for (const [name, value] of entries) if (typeof value === 'string') typed.set(name, value);
  const fieldErrors: Record<string, string> = {};
  const value = lineKeys.flatMap((lineKey): PackEntry[] => {
    const weightText = (typed.get(`weight.${lineKey}`) ?? '').trim();
    const packagesText = (typed.get(`packages.${lineKey}`) ?? '').trim();
    if (weightText === '' && (packagesText === '' || packagesText === '0')) return [];
    const weight = parseWeight(weightText, shop);
    if (weight.ok && weight.value === 0) return [];
    if (!weight.ok) fieldErrors[`weight.${lineKey}`] = weight.message;
    const packages = wholeNumber(packagesText);
    if (!Number.isInteger(packages) || packages < 1 || packages > 999) {
      fieldErrors[`packages.${lineKey}`] = 'Write how many packages, as a whole number.';
    }
    return weight.ok ? [{ lineKey, grams: weight.value, packages }] : [];
  });
  return Object.keys(fieldErrors).length > 0 ? { ok: false, fieldErrors } : { ok: true, value };
}

export const PAYMENT_METHODS = ['cash', 'card', 'cheque', 'transfer'] as const;
export type PaymentMethod = (typeof PAYMENT_METHODS)[number];

/** The word for a way of paying in a country: a cheque is a check in the United States. */
export function paymentWord(method: string, country: NameCountry): string {
  return method === 'cheque' && country === 'us' ? 'check' : method;
}

/** Reads a payment: an amount above nothing and at most what is due, and how it was paid. */
export function parsePaymentForm(
  entries: FormEntries,
  { currency, locale, dueMinor }: { readonly currency: Currency; readonly locale: string; readonly dueMinor: number },
):
  | { readonly ok: true; readonly value: { readonly amountMinor: number; readonly method: PaymentMethod; readonly formKey: string } }
  | { readonly ok: false; readonly fieldErrors: FieldErrors } {
  const tree = nestEntries(entries);
  const fieldErrors: Record<string, string> = {};
  const amount = parseMoney(textAt(tree, 'amount'), currency, locale);
  if (!amount.ok) fieldErrors.amount = amount.message;
  else if (amount.value <= 0) fieldErrors.amount = 'Write an amount above nothing.';
  else if (amount.value > dueMinor) fieldErrors.amount = 'That is more than is due. Write what goes towards this invoice and give the rest back.';
  const method = z.enum(PAYMENT_METHODS).safeParse(textAt(tree, 'method'));
  if (!method.success) fieldErrors.method = 'Choose how it was paid.';
  const formKey = textAt(tree, 'formKey');
  if (formKey.length < 8) fieldErrors.amount ??= 'This page has lost its place. Load it again.';
  if (!amount.ok || !method.success || Object.keys(fieldErrors).length > 0) return { ok: false, fieldErrors };
  return { ok: true, value: { amountMinor: amount.value, method: method.data, formKey } };
}

/** Reads who collects: a name, perhaps an address, and that the legal tag went back. */
export function parseHandoverForm(
  entries: FormEntries,
):
  | { readonly ok: true; readonly value: { readonly collectedBy: string; readonly address: string; readonly tagReturned: boolean; readonly boxes: number } }
  | { readonly ok: false; readonly fieldErrors: FieldErrors } {
  const tree = nestEntries(entries);
  const fieldErrors: Record<string, string> = {};
  const collectedBy = tidyLine(textAt(tree, 'collectedBy'));
  const address = tidyLine(textAt(tree, 'address'));
  const boxes = wholeNumber(textAt(tree, 'boxes').trim());
  if (collectedBy === '' || collectedBy.length > 80) fieldErrors.collectedBy = 'Write the name of who takes it away, up to 80 characters.';
  if (address.length > 200) fieldErrors.address = 'The address has room for 200 characters.';
  if (!Number.isInteger(boxes) || boxes < 1 || boxes > 200) fieldErrors.boxes = 'Count the boxes and write how many.';
  const tagReturned = textAt(tree, 'tagReturned') !== '';
  if (!tagReturned) fieldErrors.tagReturned = 'The legal tag or its number goes back with the meat. Tick it when it is in the box.';
  return Object.keys(fieldErrors).length > 0 ? { ok: false, fieldErrors } : { ok: true, value: { collectedBy, address, tagReturned, boxes } };
}

/** A count as people write one, in digits; anything else is no number. */
function wholeNumber(text: string): number {
  return /^\d{1,4}$/.test(text) ? Number(text) : Number.NaN;
}
