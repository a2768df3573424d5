import type { Species } from '../species';
import { DEER_SEAMS, meatShares } from './deer-composition';
import { judged, kilos, typical } from './typical-weight';

export const caribou: Species = {
  id: 'caribou',
  plan: 'four-legged',
  name: 'caribou',
  maleName: 'bull',
  femaleName: 'cow',
  youngName: 'calf',
  trophy: { name: 'antlers', on: 'both' },
  cooking: 'game',
  plausibleLiveGrams: { from: 25_000, to: 320_000, source: 'MEMORY' },
  fieldDressedPerLive: { mean: 0.69, sd: 0.03, n: 0, source: 'JUDGEMENT', why: 'A little under the elk: a small body behind a large rumen.' },
  fieldDressed: {
    per10k: { 'lower-legs': 280, head: 720, hide: 1200, hanging: 7800 },
    concentration: 190,
    n: 0,
    source: 'JUDGEMENT',
    why: 'Between the elk and the red deer, spread 3 points; reindeer are the same animal and smaller.',
  },
  girth: [],
  typicalWeights: [
    typical('male', 'adult', 'live', kilos(140, 30), { n: 0, source: 'MEMORY', why: 'Barren-ground bulls of 110 to 160 kg; woodland bulls are heavier and reindeer lighter.' }),
    typical('female', 'adult', 'live', kilos(90, 15), { n: 0, source: 'MEMORY', why: 'Cows of 75 to 110 kg.' }),
    typical('male', 'yearling', 'live', kilos(85, 15), judged('Three fifths of a bull.')),
    typical('female', 'yearling', 'live', kilos(72, 12), judged('Four fifths of a cow.')),
    typical('male', 'young', 'live', kilos(50, 9), judged('A calf of its first autumn.')),
    typical('female', 'young', 'live', kilos(46, 8), judged('A calf of its first autumn.')),
  ],
  composition: {
    ...DEER_SEAMS,
    carcass: {
      per10k: { meat: 6000, bone: 2250, cover: 1500, drying: 250 },
      concentration: 150,
      n: 0,
      source: 'JUDGEMENT',
      why: 'As the elk, with the back fat of an autumn bull counted in the cover; COATS1987 tells muscle, bone and fat only from a muscle, a bone and a depth weighed or measured one by one. Spread of 4 points.',
    },
    meat: {
      per10k: meatShares({ haunch: 4150, saddle: 1500, shoulder: 2050, neck: 950, ribs: 1350 }),
      concentration: 1000,
      n: 0,
      source: 'JUDGEMENT',
      why: 'Near the red deer of PJFNS2009.',
    },
  },
};
