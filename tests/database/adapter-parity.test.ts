import { PrismaBetterSqlite3 } from '@prisma/adapter-better-sqlite3';
import { expect, test } from 'vitest';
import type { Database } from '@/lib/db/client';
import { PrismaClient } from '@/lib/db/generated/sqlite/client';
import { onPreparedDatabase } from './prepared-database';
import { saveInvoice, saveOrder } from './rows';

const moment = new Date('2026-11-25T08:00:00.123Z');
const question = { findingKey: 'f', ruleId: 'r', message: '½ kg — œuf', options: [{ label: 'a' }], askedAt: moment };

const operations: Readonly<Record<string, (client: Database) => Promise<unknown>>> = {
  'create with nested rows': (client) => saveInvoice(client),
  'create in a relation': (client) =>
    client.question.create({ data: { ...question, order: { connect: { id: 'order-1' } } }, include: { order: { select: { number: true } } } }),
  createManyAndReturn: (client) =>
    client.counter.createManyAndReturn({ data: [{ name: 'a', value: 1 }, { name: 'b', value: 2_000_000_000 }] }),
  'updateMany by value': (client) => client.counter.updateMany({ where: { value: 1 }, data: { value: { increment: 4 } } }),
  updateManyAndReturn: (client) => client.counter.updateManyAndReturn({ data: { value: 7 } }),
  'upsert of a new row': (client) => client.counter.upsert({ where: { name: 'c' }, create: { name: 'c', value: 1 }, update: { value: 9 } }),
  'upsert of an old row': (client) => client.counter.upsert({ where: { name: 'c' }, create: { name: 'c', value: 1 }, update: { value: 9 } }),
  'find with dates, Json and null': (client) => client.question.findMany({ omit: { id: true } }),
  'find by nested rows': (client) =>
    client.order.findMany({ where: { questions: { some: { askedAt: { gte: moment } } } }, select: { id: true, animal: true, readyAt: true } }),
  'array transaction': (client) => client.$transaction([client.counter.count(), client.counter.delete({ where: { name: 'c' } })]),
  groupBy: (client) => client.counter.groupBy({ by: ['value'], _count: true, orderBy: { value: 'asc' } }),
  aggregate: (client) => client.counter.aggregate({ _sum: { value: true }, _max: { name: true } }),
  'raw query': (client) => client.$queryRaw`SELECT name, value, 1.5 AS half FROM "Counter" ORDER BY name`,
  'raw write': (client) => client.$executeRaw`UPDATE "Counter" SET value = ${3} WHERE name = ${'a'}`,
  'unique conflict': (client) => client.counter.create({ data: { name: 'a', value: 1 } }),
  'missing parent': (client) => client.question.create({ data: { ...question, orderId: 'nobody' } }),
  'missing row': (client) => client.counter.update({ where: { name: 'nobody' }, data: { value: 1 } }),
  'refused by a trigger': (client) => client.invoice.updateMany({ data: { totalMinor: 1 } }),
  deleteMany: (client) => client.counter.deleteMany({ where: { name: { in: ['a', 'b'] } } }),
};

/** What each operation answers in turn, errors by their code and meta; moments the database chose are left out. */
async function answers(client: Database): Promise<Readonly<Record<string, unknown>>> {
  await saveOrder(client);
  const answered: Record<string, unknown> = {};
  for (const [name, operate] of Object.entries(operations)) {
    answered[name] = await operate(client).catch(({ code, meta }: { code: unknown; meta: unknown }) => ({ code, meta }));
  }
  return answered;
}

test('the safe adapter answers as the stock one does', async () => {
  const ours = await onPreparedDatabase((client) => answers(client));
  const stock = await onPreparedDatabase(async (_, file) => {
    const client = new PrismaClient({ adapter: new PrismaBetterSqlite3({ url: file }) });
    return answers(client).finally(() => client.$disconnect());
  });
  expect(ours).toEqual(stock);
  expect(ours['refused by a trigger']).toMatchObject({ code: 'P2003' });
  expect(ours['upsert of an old row']).toEqual({ name: 'c', value: 9 });
});
