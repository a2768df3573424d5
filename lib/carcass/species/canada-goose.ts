import type { Species } from '../species';
import { BIRD_SEAMS } from './bird-composition';
import { judged, kilos, typical } from './typical-weight';

export const canadaGoose: Species = {
  id: 'canada-goose',
  plan: 'bird',
  name: 'Canada goose',
  maleName: 'gander',
  femaleName: 'goose',
  youngName: 'gosling',
  trophy: null,
  cooking: 'birds-bear-boar',
  plausibleLiveGrams: { from: 1_200, to: 9_500, source: 'MEMORY' },
  fieldDressedPerLive: { mean: 0.86, sd: 0.025, n: 0, source: 'JUDGEMENT', why: 'As the mallard.' },
  fieldDressed: {
    per10k: { 'lower-legs': 400, head: 650, hide: 1100, hanging: 7850 },
    concentration: 187,
    n: 0,
    source: 'JUDGEMENT',
    why: 'As the mallard, with more down; spread of 3 points.',
  },
  girth: [],
  typicalWeights: [
    typical('male', 'adult', 'live', kilos(4.4, 0.7), { n: 0, source: 'MEMORY', why: 'A gander of the large races; small ones weigh half.' }),
    typical('female', 'adult', 'live', kilos(3.8, 0.6), { n: 0, source: 'MEMORY', why: 'A goose of the large races.' }),
    typical('male', 'yearling', 'live', kilos(4.1, 0.7), judged('Nearly grown.')),
    typical('female', 'yearling', 'live', kilos(3.5, 0.6), judged('Nearly grown.')),
    typical('male', 'young', 'live', kilos(3.6, 0.7), judged('A bird of the year.')),
    typical('female', 'young', 'live', kilos(3.1, 0.6), judged('A bird of the year.')),
  ],
  composition: {
    ...BIRD_SEAMS,
    carcass: {
      per10k: { meat: 3800, bone: 3950, cover: 2200, drying: 50 },
      concentration: 120,
      n: 0,
      source: 'JUDGEMENT',
      why: 'As the mallard of SZASZ2006, less fat; spread of 4.4 points.',
    },
    meat: {
      per10k: { 'bird-breast': 5800, 'bird-leg': 2900, 'bird-wing': 1300 },
      concentration: 600,
      n: 0,
      source: 'JUDGEMENT',
      why: 'As the mallard of SZASZ2006, which is the nearest bird weighed.',
    },
  },
};
