import { closeSync, fsyncSync, mkdirSync, openSync, renameSync, rmSync } from 'node:fs';
import { dirname } from 'node:path';
import BetterSqlite3 from 'better-sqlite3';

/**
 * Copies a SQLite file, also while it is being written to, and keeps the copy only if it is sound and on the disk.
 * Takes about a second for 100 MB and blocks the thread meanwhile: run it in a process or worker of its own.
 * Throws when the copy does not pass `integrity_check` or breaks a foreign key; `target` is then not written.
 */
export function copyDatabase(file: string, target: string): void {
  const source = new BetterSqlite3(file, { readonly: true, fileMustExist: true, timeout: 10_000 });
  try {
    copyFromConnection(source, target);
  } finally {
    source.close();
  }
}

/** `copyDatabase` through a connection that already holds the file. */
export function copyFromConnection(source: BetterSqlite3.Database, target: string): void {
  mkdirSync(dirname(target), { recursive: true, mode: 0o700 });
  const unfinished = `${target}.tmp`;
  rmSync(unfinished, { force: true });
  try {
    source.prepare('VACUUM INTO ?').run(unfinished);
    assertSound(unfinished);
    syncToDisk(unfinished);
    renameSync(unfinished, target);
    syncToDisk(dirname(target));
  } catch (error) {
    rmSync(unfinished, { force: true });
    throw error;
  }
}

/** Throws when the SQLite file is damaged or a row points at one that is missing. */
export function assertSound(file: string): void {
  const connection = new BetterSqlite3(file, { fileMustExist: true });
  try {
    const integrity: unknown = connection.pragma('integrity_check', { simple: true });
    if (integrity !== 'ok') throw new Error(`${file} is damaged: ${String(integrity)}`);
    // integrity_check does not look at foreign keys.
    const orphans = connection.pragma('foreign_key_check') as readonly unknown[];
    if (orphans.length > 0) throw new Error(`${file} has ${orphans.length} rows that point at a missing one.`);
  } finally {
    connection.close();
  }
}

/** Returns once the file or folder is on the disk, not only in the system's memory. */
export function syncToDisk(path: string): void {
  const handle = openSync(path, 'r');
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}
