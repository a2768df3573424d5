import type { Species } from '../species';
import { blackBear } from './black-bear';
import { canadaGoose } from './canada-goose';
import { caribou } from './caribou';
import { chineseWaterDeer } from './chinese-water-deer';
import { elk } from './elk';
import { fallowDeer } from './fallow-deer';
import { impala } from './impala';
import { mallard } from './mallard';
import { moose } from './moose';
import { muleDeer } from './mule-deer';
import { muntjac } from './muntjac';
import { pheasant } from './pheasant';
import { pronghorn } from './pronghorn';
import { redDeer } from './red-deer';
import { roeDeer } from './roe-deer';
import { sikaDeer } from './sika-deer';
import { whiteTailedDeer } from './white-tailed-deer';
import { wildBoar } from './wild-boar';
import { wildTurkey } from './wild-turkey';

/** In menu order: deer, the larger ones, antelopes, boar and bear, birds. */
const FILES: readonly Species[] = [
  whiteTailedDeer, muleDeer, roeDeer, redDeer, fallowDeer, sikaDeer, muntjac, chineseWaterDeer,
  elk, moose, caribou,
  pronghorn, impala,
  wildBoar, blackBear,
  pheasant, mallard, canadaGoose, wildTurkey,
];

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
