import { cache } from 'react';
import { PUBLISHED_SPECIES, type SpeciesBook, type SpeciesFigures, figuresOf } from '@/lib/carcass';
import { database } from '@/lib/db/client';
import { learnedFrom, learningSwitches, packedSpecies, yieldsVersion } from '@/lib/db/yields';
import { learnSpecies } from '@/lib/learning';
import { ownSpecies } from './own-species';

/** The species as published, without their evidence. */
const PUBLISHED: SpeciesBook = Object.fromEntries(Object.entries(PUBLISHED_SPECIES).map(([id, species]) => [id, figuresOf(species)]));

let whole: { readonly folder: string | undefined; readonly book: SpeciesBook } | null = null;

/** Every species before the shop's animals have taught it anything: as published, and the shop's own, read once. */
export function priorBook(): SpeciesBook {
  const folder = process.env['GAMBREL_DATA'];
  if (whole?.folder !== folder || whole === null) whole = { folder, book: { ...PUBLISHED, ...ownSpecies() } };
  return whole.book;
}

/** The book as last made, and of which state of the yields: made anew only when one has changed. */
let made: { readonly version: number; readonly folder: string | undefined; readonly book: SpeciesBook } | null = null;

/** The species this shop works with, by id: as published, sharpened by its own packed animals where it learns from them. */
export const speciesBook = cache(async (): Promise<SpeciesBook> => {
  const folder = process.env['GAMBREL_DATA'];
  const version = await yieldsVersion(database());
  if (made?.version === version && made.folder === folder) return made.book;
  const switches = await learningSwitches(database());
  const ids = (await packedSpecies(database())).filter((id) => switches.get(id)?.isOn !== false);
  const learned = await Promise.all(
    ids.map(async (id): Promise<readonly [string, SpeciesFigures][]> => {
      const prior = priorBook()[id];
      if (!prior) return [];
      return [[id, learnSpecies(prior, await learnedFrom(database(), id, switches.get(id)?.since ?? null)).figures]];
    }),
  );
  const book = { ...priorBook(), ...Object.fromEntries(learned.flat()) };
  made = { version, folder, book };
  return book;
});
