import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import BetterSqlite3 from 'better-sqlite3';

/** A migration as this checkout holds it. */
export type CommittedMigration = { readonly name: string; readonly sql: string; readonly checksum: string };

/** A migration as a database remembers it. */
export type AppliedMigration = { readonly name: string; readonly checksum: string; readonly finished: boolean };

/** How a database stands to the checkout. */
export type HistoryState =
  | { readonly state: 'current' }
  | { readonly state: 'behind'; readonly pending: readonly string[] }
  | { readonly state: 'newer'; readonly unknown: readonly string[] }
  | { readonly state: 'edited'; readonly edited: readonly string[] }
  | { readonly state: 'failed'; readonly failed: readonly string[] };

/** Reads the migrations in `folder`, oldest first. */
export function readCommittedMigrations(folder: string): readonly CommittedMigration[] {
  return readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
    .sort()
    .map((name) => {
      const sql = readFileSync(join(folder, name, 'migration.sql'), 'utf8');
      return { name, sql, checksum: createHash('sha256').update(sql).digest('hex') };
    });
}

/** Reads what the database in `file` has been through; empty for a file that is not there or was never migrated. */
export function readAppliedMigrations(file: string): readonly AppliedMigration[] {
  if (!existsSync(file)) return [];
  const connection = new BetterSqlite3(file, { readonly: true });
  try {
    const table = connection.prepare("SELECT 1 FROM sqlite_master WHERE name = '_prisma_migrations'").get();
    if (table === undefined) return [];
    return connection
      .prepare<[], { name: string; checksum: string; finished: number }>(
        `SELECT migration_name AS name, checksum, finished_at IS NOT NULL AS finished
           FROM _prisma_migrations WHERE rolled_back_at IS NULL ORDER BY migration_name`,
      )
      .all()
      .map((row) => ({ name: row.name, checksum: row.checksum, finished: row.finished === 1 }));
  } finally {
    connection.close();
  }
}

/** Compares what is committed with what was applied. The worst finding is the answer: failed, newer, edited, behind. */
export function compareHistory(
  committed: readonly CommittedMigration[],
  applied: readonly AppliedMigration[],
): HistoryState {
  const checksums = new Map(committed.map((migration) => [migration.name, migration.checksum]));
  const names = (migrations: readonly { readonly name: string }[]): readonly string[] =>
    migrations.map((migration) => migration.name);

  const failed = applied.filter((migration) => !migration.finished);
  if (failed.length > 0) return { state: 'failed', failed: names(failed) };

  const unknown = applied.filter((migration) => !checksums.has(migration.name));
  if (unknown.length > 0) return { state: 'newer', unknown: names(unknown) };

  const edited = applied.filter((migration) => checksums.get(migration.name) !== migration.checksum);
  if (edited.length > 0) return { state: 'edited', edited: names(edited) };

  const done = new Set(names(applied));
  const pending = committed.filter((migration) => !done.has(migration.name));
  return pending.length > 0 ? { state: 'behind', pending: names(pending) } : { state: 'current' };
}
