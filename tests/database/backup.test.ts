import { readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import BetterSqlite3 from 'better-sqlite3';
import { expect, test } from 'vitest';
import { openDatabase } from '@/lib/db/client';
import { copyDatabase } from '@/lib/db/copy-database';
import { backupFolder, databaseFile } from '@/lib/db/data-folder';
import { preparedDataFolder } from './prepared-database';

test('a backup taken while the shop writes holds every row acknowledged before it began', async () => {
  const folder = preparedDataFolder();
  const client = openDatabase(databaseFile(folder));
  await client.counter.create({ data: { name: 'before', value: 1 } });
  const meanwhile = client.counter.create({ data: { name: 'meanwhile', value: 1 } });
  const target = join(backupFolder(folder), 'copy.db');
  copyDatabase(databaseFile(folder), target);
  await meanwhile;
  await client.$disconnect();

  const copy = new BetterSqlite3(target, { readonly: true });
  expect(copy.prepare(`SELECT name FROM "Counter" WHERE name = 'before'`).pluck().all()).toEqual(['before']);
  copy.close();
  expect(readdirSync(backupFolder(folder))).toEqual(['copy.db']);
  rmSync(folder, { recursive: true, force: true });
});

test('what is no sound database gives no backup', () => {
  const folder = preparedDataFolder();
  writeFileSync(databaseFile(folder), 'not a database, though long enough to be looked at '.repeat(100));
  const target = join(backupFolder(folder), 'copy.db');
  expect(() => copyDatabase(databaseFile(folder), target)).toThrow('file is not a database');
  expect(readdirSync(backupFolder(folder))).toEqual([]);
  rmSync(folder, { recursive: true, force: true });
});
