import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import BetterSqlite3 from 'better-sqlite3';
import { migrationList, noFilters, type SchemaFolders, schemaContainers, sqliteFolders, withEngine } from './engine';
import { readCommittedMigrations } from './history';

/** The difference between the committed migrations and the schema: null for none, else in words. */
export async function findDrift(folders: SchemaFolders = sqliteFolders): Promise<string | null> {
  const { exitCode, stdout } = await diff(folders, { script: false });
  return exitCode === 0 ? null : (stdout ?? 'The schema and the migrations differ.');
}

/** Writes a migration that takes the committed ones to the schema; its folder, or null when there is nothing to do. */
export async function writeMigration(
  name: string,
  { now, folders = sqliteFolders }: { readonly now: Date; readonly folders?: SchemaFolders },
): Promise<string | null> {
  if (!/^[a-z0-9_]+$/.test(name)) throw new Error(`"${name}" is no migration name: use small letters, digits and _.`);
  const { exitCode, stdout } = await diff(folders, { script: true });
  if (exitCode === 0 || stdout === null) return null;
  const sql = keepTriggers(stdout, committedTriggers(folders));
  const stamp = now.toISOString().replace(/\D/g, '').slice(0, 14);
  const folder = join(folders.migrations, `${stamp}_${name}`);
  mkdirSync(folder);
  writeFileSync(join(folder, 'migration.sql'), sql);
  return folder;
}

type Trigger = { readonly name: string; readonly sql: string };

/**
 * A change SQLite cannot make in place is written as a new table under the old name, and the old one's triggers go
 * with it unsaid. Such a script is framed so that every trigger is taken away before and made again after.
 */
export function keepTriggers(script: string, triggers: readonly Trigger[]): string {
  if (triggers.length === 0 || !/^DROP TABLE/m.test(script)) return script;
  const drops = triggers.map((trigger) => `DROP TRIGGER "${trigger.name}";`);
  const creates = triggers.map((trigger) => `${trigger.sql};`);
  return `${drops.join('\n')}\n\n${script.trimEnd()}\n\n${creates.join('\n\n')}\n`;
}

function committedTriggers(folders: SchemaFolders): readonly Trigger[] {
  const shadow = new BetterSqlite3(':memory:');
  try {
    for (const migration of readCommittedMigrations(folders.migrations)) shadow.exec(migration.sql);
    return shadow.prepare<[], Trigger>("SELECT name, sql FROM sqlite_master WHERE type = 'trigger' ORDER BY name").all();
  } finally {
    shadow.close();
  }
}

function diff(
  folders: SchemaFolders,
  { script }: { readonly script: boolean },
): Promise<{ readonly exitCode: number; readonly stdout: string | null }> {
  return withEngine(':memory:', folders, (engine) =>
    engine.diff({
      from: { tag: 'migrations', ...migrationList(folders) },
      to: { tag: 'schemaDatamodel', files: schemaContainers(folders) },
      script,
      exitCode: true,
      filters: noFilters,
    }),
  );
}
