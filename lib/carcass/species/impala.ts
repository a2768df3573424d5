import type { Species } from '../species';
import { DEER_SEAMS, meatShares } from './deer-composition';
import { judged, kilos, typical } from './typical-weight';

export const impala: Species = {
  id: 'impala',
  plan: 'four-legged',
  name: 'impala',
  maleName: 'ram',
  femaleName: 'ewe',
  youngName: 'lamb',
  trophy: { name: 'horns', on: 'male' },
  cooking: 'game',
  plausibleLiveGrams: { from: 8_000, to: 95_000, source: 'MEMORY' },
  fieldDressedPerLive: { mean: 0.73, sd: 0.025, n: 0, source: 'JUDGEMENT', why: 'With the next figure it brings live to hanging to the 58% of HOFF2000.' },
  fieldDressed: {
    per10k: { 'lower-legs': 280, head: 720, hide: 1050, hanging: 7950 },
    concentration: 180,
    n: 16,
    source: 'HOFF2000',
    why: 'A dressed carcass is 58% of live; the division of what comes off and the spread of 3 points are judgement.',
  },
  girth: [],
  typicalWeights: [
    typical('male', 'adult', 'live', kilos(55, 6), { n: 0, source: 'MEMORY', why: 'Rams of 45 to 65 kg.' }),
    typical('female', 'adult', 'live', kilos(42, 4.5), { n: 0, source: 'MEMORY', why: 'Ewes of 35 to 50 kg.' }),
    typical('male', 'yearling', 'live', kilos(42, 5), judged('Three quarters of a ram.')),
    typical('female', 'yearling', 'live', kilos(36, 4), judged('Six sevenths of a ewe.')),
    typical('male', 'young', 'live', kilos(22, 4), judged('A lamb of half a year.')),
    typical('female', 'young', 'live', kilos(20, 4), judged('A lamb of half a year.')),
  ],
  composition: {
    ...DEER_SEAMS,
    carcass: {
      per10k: { meat: 6500, bone: 2300, cover: 950, drying: 250 },
      concentration: 252,
      n: 0,
      source: 'JUDGEMENT',
      why: 'A lean antelope that carries hardly any fat; spread of 3 points.',
    },
    meat: {
      per10k: meatShares({ haunch: 4500, saddle: 1600, shoulder: 2050, neck: 350, ribs: 1500 }),
      concentration: 1000,
      n: 16,
      source: 'HOFF2000',
      why: 'A neck on the bone of 6.9% of the cold carcass in rams and 5.1% in ewes, taken between; the rest as a deer of its size, by judgement.',
    },
  },
};
