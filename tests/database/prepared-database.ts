import { copyFileSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, inject } from 'vitest';
import { closeDatabase, type Database, openDatabase } from '@/lib/db/client';
import { databaseFile } from '@/lib/db/data-folder';

/** A new data folder with a migrated, empty database in it. The caller removes it. */
export function preparedDataFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'gambrel-test-'));
  copyFileSync(inject('templateDatabase'), databaseFile(folder));
  return folder;
}

/** Gives each test of the file an empty database of its own, which `database()` and `withTransaction` then use. */
export function usePreparedDatabase(): void {
  const before = process.env['GAMBREL_DATA'];
  let folder: string;
  beforeEach(() => {
    folder = preparedDataFolder();
    process.env['GAMBREL_DATA'] = folder;
  });
  afterEach(async () => {
    await closeDatabase();
    if (before === undefined) delete process.env['GAMBREL_DATA'];
    else process.env['GAMBREL_DATA'] = before;
    rmSync(folder, { recursive: true, force: true });
  });
}

/** Runs `work` on a client of its own over an empty database. */
export async function onPreparedDatabase<T>(work: (database: Database, file: string) => Promise<T>): Promise<T> {
  const folder = preparedDataFolder();
  const client = openDatabase(databaseFile(folder));
  try {
    return await work(client, databaseFile(folder));
  } finally {
    await client.$disconnect();
    rmSync(folder, { recursive: true, force: true });
  }
}
