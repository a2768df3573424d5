import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { SpeciesBook, SpeciesFigures } from '@/lib/carcass';
import { dataFolder } from '@/lib/db/data-folder';
import { parseSpeciesFile } from '@/lib/forms';

/** Where a shop puts species of its own, one JSON file each. */
export function speciesFolder(folder: string = dataFolder()): string {
  return join(folder, 'species');
}

/**
 * The shop's own species by id. A file that is not sound is left out, and the console says why: a slip in one must not keep the
 * shop from opening.
 */
export function ownSpecies(folder: string = speciesFolder(), say: (sentence: string) => void = console.warn): SpeciesBook {
  const files = namesIn(folder);
  return Object.fromEntries(
    files.flatMap((name): [string, SpeciesFigures][] => {
      const read = readSpecies(join(folder, name));
      if (read.ok) return [[read.value.id, read.value]];
      for (const { path, message } of read.problems) say(`species/${name} is left out. ${path === '' ? '' : `${path}: `}${message}`);
      return [];
    }),
  );
}

function namesIn(folder: string): readonly string[] {
  try {
    return readdirSync(folder).filter((name) => name.endsWith('.json')).toSorted();
  } catch {
    // Most shops have none.
    return [];
  }
}

function readSpecies(file: string): ReturnType<typeof parseSpeciesFile> {
  try {
    return parseSpeciesFile(JSON.parse(readFileSync(file, 'utf8')));
  } catch (error) {
    return { ok: false, problems: [{ path: '', message: `It cannot be read as JSON (${error instanceof Error ? error.message : 'unknown'}).` }] };
  }
}
