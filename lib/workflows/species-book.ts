import { PUBLISHED_SPECIES, type SpeciesBook, figuresOf } from '@/lib/carcass';

const PUBLISHED: SpeciesBook = Object.fromEntries(Object.entries(PUBLISHED_SPECIES).map(([id, species]) => [id, figuresOf(species)]));

/** The species this shop works with, by id. */
export async function speciesBook(): Promise<SpeciesBook> {
  return PUBLISHED;
}
