import { join, relative, resolve, sep } from 'node:path';

/**
 * The folder that holds everything the shop must not lose: `GAMBREL_DATA`, or `data` in the checkout.
 * Throws when it lies inside `.next`, which every build empties.
 */
export function dataFolder(): string {
  // Not a path of the program's own, so the build is told not to look for files there.
  const folder = resolve(/* turbopackIgnore: true */ process.env['GAMBREL_DATA'] || 'data');
  if (relative(process.cwd(), folder).split(sep).includes('.next')) {
    throw new Error(`GAMBREL_DATA is ${folder}: a build empties .next, choose a folder outside it.`);
  }
  return folder;
}

/** The SQLite file inside a data folder. */
export function databaseFile(folder: string = dataFolder()): string {
  return join(folder, 'gambrel.db');
}

/** Where copies of the database go, inside a data folder. */
export function backupFolder(folder: string = dataFolder()): string {
  return join(folder, 'backups');
}
