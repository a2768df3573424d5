import type { Species, SpeciesId } from '../species';
import { elk } from './elk';
import { muleDeer } from './mule-deer';
import { redDeer } from './red-deer';
import { roeDeer } from './roe-deer';
import { whiteTailedDeer } from './white-tailed-deer';

/** Every species the shop's menu can offer, by id. */
export const SPECIES: Readonly<Record<SpeciesId, Species>> = {
  'white-tailed-deer': whiteTailedDeer,
  'mule-deer': muleDeer,
  'roe-deer': roeDeer,
  'red-deer': redDeer,
  elk,
};
