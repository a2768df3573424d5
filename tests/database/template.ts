import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';
import { databaseFile } from '@/lib/db/data-folder';
import { applyMigrations } from '@/lib/db/migrate/apply';

declare module 'vitest' {
  interface ProvidedContext {
    /** A migrated, empty database that every test copies. */
    templateDatabase: string;
  }
}

/** Migrates one database for the whole run: copying it takes a thousandth of the time. */
export default async function prepareTemplate(project: TestProject): Promise<() => void> {
  const folder = mkdtempSync(join(tmpdir(), 'gambrel-template-'));
  const outcome = await applyMigrations(folder);
  if (!outcome.ok) throw new Error(outcome.message);
  project.provide('templateDatabase', databaseFile(folder));
  return () => rmSync(folder, { recursive: true, force: true });
}
