import { accessSync, constants, copyFileSync, existsSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import BetterSqlite3 from 'better-sqlite3';
import { assertSound, copyFromConnection, syncToDisk } from '../copy-database';
import { backupFolder, databaseFile } from '../data-folder';
import { makeFolder } from '../make-folder.mjs';
import { migrationList, noFilters, type SchemaFolders, sqliteFolders, withEngine } from './engine';
import { compareHistory, type HistoryState, readAppliedMigrations, readCommittedMigrations } from './history';

/** What became of a run: the names applied and the copy made before, or one sentence for the operator. */
export type ApplyOutcome =
  | { readonly ok: true; readonly applied: readonly string[]; readonly backup: string | null }
  | { readonly ok: false; readonly message: string };

/**
 * Brings the database of a data folder up to the committed migrations, or says why it will not.
 *
 * SQLite keeps the first half of a migration that fails in the second. So the work is done on a copy, which takes the
 * place of the database once it is complete and sound; until then the database is as it was, whatever stops the run.
 */
export async function applyMigrations(folder: string, folders: SchemaFolders = sqliteFolders): Promise<ApplyOutcome> {
  const file = databaseFile(folder);
  try {
    makeFolder(folder);
    for (const path of [folder, file]) if (existsSync(path)) accessSync(path, constants.R_OK | constants.W_OK);
  } catch {
    return refuse(`Gambrel cannot write to ${file}: give the user who runs it the right to change this folder and its files.`);
  }

  const lock = lockAlone(join(folder, 'migration.lock'), 60_000);
  if (lock === null) return refuse('Another start has been changing the database for a minute: wait for it, then try again.');
  try {
    const state = stateOf(file, folders);
    return state.state === 'behind' ? await migrateCopy(folder, state.pending, folders) : answerFor(state);
  } finally {
    lock.close();
  }
}

/** How the database of a data folder stands to the committed migrations. */
export function stateOf(file: string, folders: SchemaFolders = sqliteFolders): HistoryState {
  return compareHistory(readCommittedMigrations(folders.migrations), readAppliedMigrations(file));
}

async function migrateCopy(
  folder: string,
  pending: readonly string[],
  folders: SchemaFolders,
): Promise<ApplyOutcome> {
  const file = databaseFile(folder);
  const working = `${file}.migrating`;
  for (const suffix of ['', '-wal', '-shm', '-journal']) rmSync(working + suffix, { force: true });

  const hold = existsSync(file) ? lockAlone(file, 2_000) : undefined;
  if (hold === null) return refuse('The database is in use by another program: stop it, then start Gambrel again.');
  try {
    const backup = hold === undefined ? null : join(backupFolder(folder), `before-${pending[0]}.db`);
    if (hold !== undefined && backup !== null) {
      copyFromConnection(hold, backup);
      copyFileSync(backup, working);
    }
    await withEngine(working, folders, (engine) =>
      engine.applyMigrations({ migrationsList: migrationList(folders), filters: noFilters }),
    );
    assertSound(working);
    syncToDisk(working);
    // A log left beside the new file would be played into it.
    hold?.pragma('journal_mode = DELETE');
    hold?.close();
    renameSync(working, file);
    syncToDisk(folder);
    return { ok: true, applied: pending, backup };
  } catch (error) {
    return refuse(
      `The database could not be brought up to date (${pending.join(', ')}) and is as it was before. ${(error as Error).message}`,
    );
  } finally {
    hold?.close();
  }
}

function answerFor(state: Exclude<HistoryState, { readonly state: 'behind' }>): ApplyOutcome {
  switch (state.state) {
    case 'current':
      return { ok: true, applied: [], backup: null };
    case 'newer':
      return refuse(
        `The database belongs to a newer version of Gambrel (it has ${state.unknown.join(', ')}): update the program, or put back an older backup.`,
      );
    case 'edited':
      return refuse(
        `The migration ${state.edited.join(', ')} was edited after it was applied: restore the committed file and write a new migration instead.`,
      );
    case 'failed':
      return refuse(`The migration ${state.failed.join(', ')} stopped half-way in this database: put back the backup made before it.`);
  }
}

/** Holds a SQLite file so that no other process can open it; null when one has it open. */
function lockAlone(file: string, waitMs: number): BetterSqlite3.Database | null {
  const connection = new BetterSqlite3(file, { timeout: waitMs });
  try {
    connection.pragma('locking_mode = EXCLUSIVE');
    connection.exec('BEGIN EXCLUSIVE; COMMIT');
    return connection;
  } catch (error) {
    connection.close();
    if (error instanceof BetterSqlite3.SqliteError && error.code.startsWith('SQLITE_BUSY')) return null;
    throw error;
  }
}

function refuse(message: string): ApplyOutcome {
  return { ok: false, message };
}
