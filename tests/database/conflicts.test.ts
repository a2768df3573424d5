import { expect, test } from 'vitest';
import { orConflict } from '@/lib/db/conflicts';
import { onPreparedDatabase } from './prepared-database';
import { saveInvoice, saveOrder } from './rows';

test('a known conflict is a value named by its field, or by all its fields in the order of the schema', () =>
  onPreparedDatabase(async (client) => {
    await saveOrder(client);
    await saveInvoice(client);
    await client.instructionVersion.create({ data: { orderId: 'order-1', number: 1, instructions: {}, reason: '', createdBy: 'Ada' } });
    const sameInvoice = await orConflict(() => saveInvoice(client), { orderId: 'already-issued', 'series,number': 'number-taken' });
    const sameVersion = await orConflict(
      () => client.instructionVersion.create({ data: { orderId: 'order-1', number: 1, instructions: {}, reason: '', createdBy: 'Ada' } }),
      { 'orderId,number': 'newer-version' },
    );
    expect(sameInvoice).toMatchObject({ ok: false });
    expect(sameVersion).toEqual({ ok: false, conflict: 'newer-version' });
  }));

test('a write that meets no conflict answers its value', () =>
  onPreparedDatabase(async (client) => {
    const written = await orConflict(() => client.counter.create({ data: { name: 'a', value: 1 } }), { name: 'taken' });
    expect(written).toEqual({ ok: true, value: { name: 'a', value: 1 } });
  }));

test('an unknown conflict and every other error are thrown on', () =>
  onPreparedDatabase(async (client) => {
    await client.counter.create({ data: { name: 'a', value: 1 } });
    const again = orConflict(() => client.counter.create({ data: { name: 'a', value: 1 } }), { number: 'taken' });
    await expect(again).rejects.toMatchObject({ code: 'P2002' });
    await expect(orConflict(() => Promise.reject(new Error('no disk')), { name: 'taken' })).rejects.toThrow('no disk');
  }));
