import { expect, test } from 'vitest';
import type { Database } from '@/lib/db/client';
import { onPreparedDatabase } from './prepared-database';
import { saveInvoice, saveOrder } from './rows';

async function fill(client: Database): Promise<void> {
  await saveOrder(client);
  const { id } = await saveInvoice(client);
  await client.payment.create({ data: { invoiceId: id, amountMinor: 5_000, method: 'cash', formKey: 'p', takenBy: 'Ada' } });
  await client.auditEntry.create({
    data: { actorKind: 'staff', actorId: '1', actorName: 'Ada', action: 'invoice.issue', orderId: 'order-1' },
  });
}

const refusals: Readonly<Record<string, (client: Database) => Promise<unknown>>> = {
  'change an issued invoice': (client) => client.invoice.updateMany({ data: { totalMinor: 1 } }),
  'remove an issued invoice': (client) => client.invoice.deleteMany(),
  'change a line of an issued invoice': (client) => client.invoiceLine.updateMany({ data: { amountMinor: 1 } }),
  'remove a line of an issued invoice': (client) => client.invoiceLine.deleteMany(),
  'change a payment': (client) => client.payment.updateMany({ data: { amountMinor: 1 } }),
  'remove a payment': (client) => client.payment.deleteMany(),
  'change the audit trail': (client) => client.auditEntry.updateMany({ data: { actorName: 'Eve' } }),
  'remove from the audit trail': (client) => client.auditEntry.deleteMany(),
  'remove an order that has a trail': (client) => client.order.deleteMany(),
};

test.each(Object.keys(refusals))('nobody can %s', (name) =>
  onPreparedDatabase(async (client) => {
    await fill(client);
    const rows = () =>
      Promise.all([client.invoice.findMany(), client.invoiceLine.findMany(), client.payment.findMany(), client.auditEntry.findMany()]);
    const before = await rows();
    await expect(refusals[name]?.(client)).rejects.toMatchObject({ code: 'P2003' });
    expect(await rows()).toEqual(before);
  }),
);

test('a second payment can be added to an issued invoice', () =>
  onPreparedDatabase(async (client) => {
    await fill(client);
    const invoice = await client.invoice.findFirstOrThrow();
    await client.payment.create({ data: { invoiceId: invoice.id, amountMinor: 7_000, method: 'card', formKey: 'q', takenBy: 'Ada' } });
    expect(await client.payment.count()).toBe(2);
  }));
