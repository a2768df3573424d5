import type { Database, DatabaseTransaction } from '@/lib/db/client';

/** Saves a price list and an order on it, with fixed values but for `id`, which its unique fields follow. */
export async function saveOrder(client: Database | DatabaseTransaction, id = 'order-1'): Promise<void> {
  const tariff = await client.tariffVersion.create({ data: { tariff: {}, createdBy: 'Ada' } });
  await client.order.create({
    data: {
      id,
      number: id,
      state: 'booked',
      speciesId: 'white-tailed-deer',
      hunterName: 'Bo Brandt',
      hunterPhone: '555 0100',
      searchKey: 'bo brandt',
      animal: {},
      linkHash: id,
      linkExpiresAt: new Date('2027-01-01T00:00:00Z'),
      formKey: id,
      formDigest: 'digest',
      tariffId: tariff.id,
    },
  });
}

/** Saves an invoice of 120.00 with one line on an order that is there. */
export async function saveInvoice(client: Database | DatabaseTransaction, orderId = 'order-1'): Promise<{ id: number }> {
  return client.invoice.create({
    select: { id: true },
    data: {
      series: '2026',
      number: 1,
      orderId,
      document: {},
      currency: 'USD',
      totalMinor: 12_000,
      issuedBy: 'Ada',
      lines: { create: [{ position: 1, label: 'Cutting', amountMinor: 12_000 }] },
    },
  });
}
