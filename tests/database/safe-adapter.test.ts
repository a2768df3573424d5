import { describe, expect, test } from 'vitest';
import { type Database, openDatabase, withTransaction } from '@/lib/db/client';
import { onPreparedDatabase } from './prepared-database';
import { saveOrder } from './rows';

const counterValue = async (client: Database): Promise<number | undefined> =>
  (await client.counter.findUnique({ where: { name: 'a' } }))?.value;

async function addOne(client: Database): Promise<void> {
  await withTransaction(async (transaction) => {
    const row = await transaction.counter.findUniqueOrThrow({ where: { name: 'a' } });
    await transaction.counter.update({ where: { name: 'a' }, data: { value: row.value + 1 } });
  }, client);
}

/** A promise and the function that settles it. */
function gate(): { readonly opened: Promise<void>; readonly open: () => void } {
  let open = (): void => {};
  const opened = new Promise<void>((resolve) => {
    open = resolve;
  });
  return { opened, open };
}

describe('transactions', () => {
  test('50 at once that each read and add one lose none', () =>
    onPreparedDatabase(async (client) => {
      await client.counter.create({ data: { name: 'a', value: 0 } });
      await Promise.all(Array.from({ length: 50 }, () => addOne(client)));
      expect(await counterValue(client)).toBe(50);
    }));

  test('two programs on one file lose none, and neither is told it is busy', () =>
    onPreparedDatabase(async (client, file) => {
      const other = openDatabase(file);
      await client.counter.create({ data: { name: 'a', value: 0 } });
      await Promise.all(Array.from({ length: 40 }, (_, turn) => addOne(turn % 2 === 0 ? client : other)));
      expect(await counterValue(client)).toBe(40);
      await other.$disconnect();
    }));

  test('a write beside one that is rolled back stays, and a read beside it sees committed rows only', () =>
    onPreparedDatabase(async (client) => {
      const written = gate();
      const looked = gate();
      const rolledBack = withTransaction(async (transaction) => {
        await transaction.counter.create({ data: { name: 'a', value: 1 } });
        written.open();
        await looked.opened;
        throw new Error('changed my mind');
      }, client);
      await written.opened;
      const beside = client.counter.create({ data: { name: 'b', value: 2 } });
      expect(await client.counter.findMany()).toEqual([]);
      looked.open();
      await expect(rolledBack).rejects.toThrow('changed my mind');
      await beside;
      expect(await client.counter.findMany()).toEqual([{ name: 'b', value: 2 }]);
    }));

  test('a failed one leaves nothing and the next one works', () =>
    onPreparedDatabase(async (client) => {
      const twice = withTransaction(async (transaction) => {
        await transaction.counter.create({ data: { name: 'a', value: 1 } });
        await transaction.counter.create({ data: { name: 'a', value: 2 } });
      }, client);
      await expect(twice).rejects.toMatchObject({ code: 'P2002' });
      expect(await client.counter.count()).toBe(0);
      await withTransaction((transaction) => transaction.counter.create({ data: { name: 'a', value: 3 } }), client);
      expect(await counterValue(client)).toBe(3);
    }));

  test('one that SQLite itself rolled back saves nothing of what follows', () =>
    onPreparedDatabase(async (client) => {
      await client.$executeRawUnsafe(
        `CREATE TRIGGER full_disk BEFORE INSERT ON "Counter" WHEN NEW.name = 'b' BEGIN SELECT RAISE(ROLLBACK, 'full'); END`,
      );
      const caughtInside = withTransaction(async (transaction) => {
        await transaction.counter.create({ data: { name: 'a', value: 1 } });
        await transaction.counter.create({ data: { name: 'b', value: 1 } }).catch(() => {});
        await transaction.counter.create({ data: { name: 'c', value: 1 } });
      }, client);
      await expect(caughtInside).rejects.toThrow();
      expect(await client.counter.count()).toBe(0);
    }));

  test('a write on the root client inside one is refused at once', () =>
    onPreparedDatabase(async (client) => {
      const mixedUp = withTransaction(() => client.counter.create({ data: { name: 'a', value: 1 } }), client);
      await expect(mixedUp).rejects.toThrow("use the transaction's client");
      const nested = withTransaction(() => addOne(client), client);
      await expect(nested).rejects.toThrow("use the transaction's client");
      expect(await client.counter.count()).toBe(0);
    }));
});

describe('every connection', () => {
  test('syncs fully, logs ahead and holds foreign keys', () =>
    onPreparedDatabase(async (client) => {
      const ask = async (pragma: string): Promise<unknown> => {
        const [row] = await client.$queryRawUnsafe<readonly Record<string, unknown>[]>(`PRAGMA ${pragma}`);
        return String(Object.values(row ?? {})[0]);
      };
      expect(await ask('synchronous')).toBe('2');
      expect(await ask('journal_mode')).toBe('wal');
      expect(await ask('foreign_keys')).toBe('1');
      const orphan = client.question.create({
        data: { orderId: 'nobody', findingKey: 'f', ruleId: 'r', message: 'm', options: [] },
      });
      await expect(orphan).rejects.toMatchObject({ code: 'P2003' });
    }));

  test('that only reads cannot write', () =>
    onPreparedDatabase(async (client) => {
      await saveOrder(client);
      // Begins like a read, so it goes to the reading connection.
      const disguised = client.$queryRawUnsafe('SELECT 1; DELETE FROM "Counter"');
      await expect(disguised).rejects.toThrow();
      expect(await client.order.count()).toBe(1);
    }));
});
