import type { DatabaseTransaction } from './client';
import { now } from './clock';
import type { Prisma } from './generated/sqlite/client';

/** Saves an issued invoice with its lines. From then on triggers refuse every change of them. */
export async function insertInvoice(
  transaction: DatabaseTransaction,
  invoice: {
    readonly series: string;
    readonly number: number;
    readonly orderId: string;
    readonly document: unknown;
    readonly currency: string;
    readonly totalMinor: number;
    readonly lines: readonly { readonly label: string; readonly amountMinor: number }[];
    readonly by: string;
  },
): Promise<void> {
  const { lines, by, document, ...data } = invoice;
  await transaction.invoice.create({
    data: {
      ...data,
      // A view model of ready strings is Json as it stands.
      document: document as Prisma.InputJsonValue,
      issuedAt: now(),
      issuedBy: by,
      lines: { create: lines.map(({ label, amountMinor }, index) => ({ position: index + 1, label, amountMinor })) },
    },
  });
}

/** Saves money received. Throws on a form key that is there already. */
export async function insertPayment(
  transaction: DatabaseTransaction,
  payment: { readonly invoiceId: number; readonly amountMinor: number; readonly method: string; readonly formKey: string; readonly by: string },
): Promise<void> {
  const { by, ...data } = payment;
  await transaction.payment.create({ data: { ...data, paidAt: now(), takenBy: by } });
}
