import { execFile } from 'node:child_process';
import { rmSync } from 'node:fs';
import { promisify } from 'node:util';
import BetterSqlite3 from 'better-sqlite3';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { databaseFile } from '@/lib/db/data-folder';
import { ORDER_STATES } from '@/lib/orders';
import { defaultTariff } from '@/seed/default-tariff';
import { preparedDataFolder } from '../prepared-database';

const run = promisify(execFile);
let folder: string;
let said: string;
let book: BetterSqlite3.Database;

const environment = (): NodeJS.ProcessEnv => ({ ...process.env, GAMBREL_DATA: folder, BETTER_AUTH_SECRET: 'a secret for the season that is long enough', PORT: '4321' });
const play = (): Promise<{ stdout: string }> => run(process.execPath, ['--import', 'tsx', 'seed/demo.ts'], { env: environment() });
const one = (sql: string): unknown => book.prepare(sql).pluck().get();
const all = (sql: string): unknown[] => book.prepare(sql).pluck().all();

beforeAll(async () => {
  folder = preparedDataFolder();
  said = (await play()).stdout;
  book = new BetterSqlite3(databaseFile(folder), { readonly: true });
}, 300_000);
afterAll(() => {
  book?.close();
  rmSync(folder, { recursive: true, force: true });
});

test('the invented season has animals of five species and more, under each kind of base price, in every state', () => {
  expect(one('SELECT count(*) FROM "Order"')).toBeGreaterThanOrEqual(60);
  expect(new Set(all('SELECT DISTINCT state FROM "Order"'))).toEqual(new Set(ORDER_STATES));
  const told = all('SELECT DISTINCT speciesId FROM "Order"').map(String);
  const basesOf = (speciesId: string) => defaultTariff.base.filter(({ speciesIds }) => speciesIds.includes(speciesId));
  expect(told.length).toBeGreaterThanOrEqual(5);
  expect(told.filter((speciesId) => basesOf(speciesId).length !== 1)).toEqual([]);
  expect(new Set(told.flatMap(basesOf).map(({ charge }) => charge.kind))).toEqual(new Set(['steps', 'flat', 'per-weight']));
});

test('questions stand open and answered, instructions have several versions, animals are unpaid, paid in part and paid', () => {
  expect(one('SELECT count(*) FROM Question WHERE answeredAt IS NULL AND withdrawnAt IS NULL')).toBeGreaterThanOrEqual(5);
  expect(one('SELECT count(*) FROM Question WHERE answeredAt IS NOT NULL')).toBeGreaterThanOrEqual(2);
  expect(one('SELECT max(number) FROM InstructionVersion')).toBeGreaterThanOrEqual(3);
  const due = all('SELECT totalMinor - (SELECT coalesce(sum(amountMinor), 0) FROM Payment WHERE invoiceId = Invoice.id) FROM Invoice JOIN "Order" o ON o.id = orderId WHERE o.state = \'ready\'');
  const paid = all('SELECT (SELECT count(*) FROM Payment WHERE invoiceId = Invoice.id) FROM Invoice JOIN "Order" o ON o.id = orderId WHERE o.state = \'ready\'');
  expect(due).toContain(0);
  expect(paid).toContain(0);
  expect(due.some((minor, at) => Number(minor) > 0 && Number(paid[at]) > 0)).toBe(true);
});

test('its book is whole: keys, numbers, sums, and no day in the future', () => {
  expect(one('PRAGMA integrity_check')).toBe('ok');
  expect(all('PRAGMA foreign_key_check')).toEqual([]);
  const numbers = all('SELECT number FROM Invoice ORDER BY issuedAt, id');
  expect(numbers).toEqual(numbers.map((_, at) => at + 1));
  expect(one('SELECT count(*) FROM "Order"')).toBe(one("SELECT value FROM Counter WHERE name = 'order'"));
  expect(all('SELECT number FROM "Order" ORDER BY createdAt, number')).toEqual(all('SELECT number FROM "Order" ORDER BY number'));
  expect(all(`SELECT o.number FROM "Order" o JOIN Invoice i ON i.orderId = o.id WHERE o.state = 'collected'
    AND i.totalMinor <> (SELECT coalesce(sum(amountMinor), 0) FROM Payment WHERE invoiceId = i.id)`)).toEqual([]);
  expect(all('SELECT id FROM AuditEntry ORDER BY at, id')).toEqual(all('SELECT id FROM AuditEntry ORDER BY id'));
  expect(all('SELECT at FROM AuditEntry').filter((at) => new Date(String(at)) > new Date())).toEqual([]);
});

test('what it prints opens the door: three names with passwords, and links', () => {
  for (const role of ['owner', 'counter', 'cutter']) expect(said).toMatch(new RegExp(`^ {2}[a-z]+ +\\S{15,} +${role}, `, 'm'));
  expect(said.match(/^ {2}http:\/\/localhost:4321\/o\/[A-Za-z0-9_-]{22} /gm)?.length).toBeGreaterThanOrEqual(1);
  expect(said).toContain(`${String(one('SELECT count(*) FROM "Order"'))} orders`);
});

test('a database in use is left alone', async () => {
  await expect(play()).rejects.toThrow('This database is in use');
}, 60_000);
