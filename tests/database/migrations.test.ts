import { appendFileSync, cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import BetterSqlite3 from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { openDatabase } from '@/lib/db/client';
import { databaseFile } from '@/lib/db/data-folder';
import { applyMigrations, stateOf } from '@/lib/db/migrate/apply';
import { findDrift, keepTriggers, writeMigration } from '@/lib/db/migrate/author';
import { type SchemaFolders, sqliteFolders } from '@/lib/db/migrate/engine';
import { readCommittedMigrations } from '@/lib/db/migrate/history';

const committed = readCommittedMigrations(sqliteFolders.migrations).map((migration) => migration.name);

let scratch: string;
let data: string;
let folders: SchemaFolders;

beforeEach(() => {
  scratch = mkdtempSync(join(tmpdir(), 'gambrel-migrations-'));
  data = join(scratch, 'data');
  cpSync(join(process.cwd(), 'prisma'), join(scratch, 'prisma'), { recursive: true });
  folders = {
    schemaFiles: sqliteFolders.schemaFiles.map((file) => file.replace(process.cwd(), scratch)),
    migrations: sqliteFolders.migrations.replace(process.cwd(), scratch),
  };
});

afterEach(() => rmSync(scratch, { recursive: true, force: true }));

function commit(name: string, sql: string): void {
  mkdirSync(join(folders.migrations, name));
  writeFileSync(join(folders.migrations, name, 'migration.sql'), sql);
}

function query(sql: string): unknown {
  const connection = new BetterSqlite3(databaseFile(data));
  try {
    return connection.prepare(sql).pluck().all();
  } finally {
    connection.close();
  }
}

async function applyAll(): Promise<void> {
  expect(await applyMigrations(data, folders)).toMatchObject({ ok: true });
}

describe('applying', () => {
  test('a new database gets every migration, and a second run does nothing', async () => {
    expect(await applyMigrations(data, folders)).toEqual({ ok: true, applied: committed, backup: null });
    expect(await applyMigrations(data, folders)).toEqual({ ok: true, applied: [], backup: null });
    expect(query(`SELECT count(*) FROM "Order"`)).toEqual([0]);
  });

  test('a database with data is copied to the backups before a new migration', async () => {
    await applyAll();
    const client = openDatabase(databaseFile(data));
    await client.counter.create({ data: { name: 'a', value: 7 } });
    await client.$disconnect();
    commit('20990101000000_more', `ALTER TABLE "Counter" ADD COLUMN "note" TEXT;`);

    const backup = join(data, 'backups', 'before-20990101000000_more.db');
    expect(await applyMigrations(data, folders)).toEqual({ ok: true, applied: ['20990101000000_more'], backup });
    expect(query(`SELECT value FROM "Counter" WHERE note IS NULL`)).toEqual([7]);
    const copy = new BetterSqlite3(backup, { readonly: true });
    expect(copy.prepare(`SELECT * FROM "Counter"`).all()).toEqual([{ name: 'a', value: 7 }]);
    copy.close();
  });

  test('a migration that fails half-way leaves the database as it was', async () => {
    await applyAll();
    commit('20990101000000_broken', `CREATE TABLE "Half" (id INTEGER); INSERT INTO "Nowhere" VALUES (1);`);
    expect(await applyMigrations(data, folders)).toMatchObject({
      ok: false,
      message: expect.stringMatching(
        /^The database could not be brought up to date \(20990101000000_broken\) and is as it was before\. .*Nowhere/,
      ),
    });
    expect(query("SELECT name FROM sqlite_master WHERE name = 'Half'")).toEqual([]);
    expect(stateOf(databaseFile(data), folders)).toEqual({ state: 'behind', pending: ['20990101000000_broken'] });
  });

  test('a database that a program has open is not touched', async () => {
    await applyAll();
    const client = openDatabase(databaseFile(data));
    await client.counter.create({ data: { name: 'a', value: 7 } });
    commit('20990101000000_more', `ALTER TABLE "Counter" ADD COLUMN "note" TEXT;`);
    expect(await applyMigrations(data, folders)).toEqual({
      ok: false,
      message: 'The database is in use by another program: stop it, then start Gambrel again.',
    });
    expect(await client.counter.count()).toBe(1);
    await client.$disconnect();
    await applyAll();
  });

  test('an edited history is refused', async () => {
    await applyAll();
    appendFileSync(join(folders.migrations, String(committed[0]), 'migration.sql'), '-- an afterthought\n');
    expect(await applyMigrations(data, folders)).toEqual({
      ok: false,
      message: `The migration ${committed[0]} was edited after it was applied: restore the committed file and write a new migration instead.`,
    });
  });

  test('a database of a newer version is refused', async () => {
    commit('20990101000000_more', `ALTER TABLE "Counter" ADD COLUMN "note" TEXT;`);
    await applyAll();
    rmSync(join(folders.migrations, '20990101000000_more'), { recursive: true });
    expect(await applyMigrations(data, folders)).toEqual({
      ok: false,
      message:
        'The database belongs to a newer version of Gambrel (it has 20990101000000_more): update the program, or put back an older backup.',
    });
  });
});

describe('writing', () => {
  test('the committed migrations lead to the schema, so there is nothing to write', async () => {
    expect(await findDrift(folders)).toBeNull();
    expect(await writeMigration('nothing', { now: new Date('2099-01-01T00:00:00Z'), folders })).toBeNull();
  });

  test('a changed schema is drift, and the migration written for it ends the drift', async () => {
    appendFileSync(String(folders.schemaFiles[1]), '\nmodel Knife {\n  id Int @id\n}\n');
    expect(await findDrift(folders)).toContain('Knife');
    const folder = await writeMigration('knife', { now: new Date('2099-01-01T00:00:00Z'), folders });
    expect(folder).toBe(join(folders.migrations, '20990101000000_knife'));
    expect(await findDrift(folders)).toBeNull();
    await applyAll();
    expect(query(`SELECT count(*) FROM "Knife"`)).toEqual([0]);
  });

  test('a table that is made anew keeps the triggers that guard it', async () => {
    await applyAll();
    const triggers = query("SELECT sql FROM sqlite_master WHERE type = 'trigger' ORDER BY name");
    const redefinition = `CREATE TABLE "new_Payment" ("id" INTEGER PRIMARY KEY);\nDROP TABLE "Payment";\nALTER TABLE "new_Payment" RENAME TO "Payment";\n`;
    const connection = new BetterSqlite3(databaseFile(data));
    const stored = connection.prepare<[], { name: string; sql: string }>("SELECT name, sql FROM sqlite_master WHERE type = 'trigger'").all();
    connection.close();
    commit('20990101000000_redefine', keepTriggers(redefinition, stored));
    await applyAll();
    expect(query("SELECT sql FROM sqlite_master WHERE type = 'trigger' ORDER BY name")).toEqual(triggers);
    expect(keepTriggers(`CREATE INDEX "i" ON "Payment"("id");`, stored)).toBe(`CREATE INDEX "i" ON "Payment"("id");`);
  });
});

test('no unfinished file is left behind', async () => {
  await applyAll();
  expect(readdirSync(data).filter((name) => !['gambrel.db', 'migration.lock'].includes(name))).toEqual([]);
  expect(existsSync(databaseFile(data))).toBe(true);
});
