import type { Species } from '../species';
import { elk } from './elk';
import { muleDeer } from './mule-deer';
import { redDeer } from './red-deer';
import { roeDeer } from './roe-deer';
import { whiteTailedDeer } from './white-tailed-deer';

const FILES = [whiteTailedDeer, muleDeer, roeDeer, redDeer, elk] as const;

/** Every species with published or judged figures of its own file, by id. */
export const PUBLISHED_SPECIES: Readonly<Record<string, Species>> = Object.fromEntries(FILES.map((species) => [species.id, species]));

/** Ids of the published species, in menu order. */
export const PUBLISHED_IDS: readonly string[] = FILES.map(({ id }) => id);

/** A published species with its evidence. Throws on an id that has no file. */
export function publishedSpecies(id: string): Species {
  const species = PUBLISHED_SPECIES[id];
  if (!species) throw new Error(`No such species: ${id}`);
  return species;
}
