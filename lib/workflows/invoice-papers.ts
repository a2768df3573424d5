import type { StoredOrder } from '@/lib/db/orders';
import type { InvoiceDocument } from '@/lib/documents';
import { type ShopSettings, paymentWord } from '@/lib/forms';
import { formatMoney } from '@/lib/units';
import { momentWords } from './clock';

/** An issued invoice as it is drawn: the document frozen at issue, and the payments made since. */
export type InvoicePapers = {
  readonly paper: ShopSettings['paper'];
  readonly document: InvoiceDocument;
  readonly payments: readonly { readonly label: string; readonly amount: string }[];
  readonly due: string;
  readonly dueMinor: number;
};

/** The papers of an order's invoice, or null while none is issued. */
export function invoicePapersOf(order: StoredOrder, settings: ShopSettings): InvoicePapers | null {
  const { invoice } = order;
  if (!invoice) return null;
  const money = (minor: number): string => formatMoney(minor, order.tariff.currency, settings.locale);
  const dueMinor = invoice.totalMinor - paidMinor(order);
  return {
    paper: settings.paper,
    // Written by issueInvoice from this very type, and never changed since.
    document: invoice.document as InvoiceDocument,
    payments: invoice.payments.map((payment) => ({
      label: `Paid ${paymentWord(payment.method, settings.nameCountry)}, ${momentWords(payment.paidAt, settings)}`,
      amount: money(payment.amountMinor),
    })),
    due: money(dueMinor),
    dueMinor,
  };
}

/** What has been paid of an order's invoice, in minor units; 0 while none is issued. */
export function paidMinor(order: Pick<StoredOrder, 'invoice'>): number {
  return (order.invoice?.payments ?? []).reduce((sum, payment) => sum + payment.amountMinor, 0);
}
