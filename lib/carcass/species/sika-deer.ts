import type { Species } from '../species';
import { DEER_SEAMS, meatShares } from './deer-composition';
import { judged, kilos, typical } from './typical-weight';

export const sikaDeer: Species = {
  id: 'sika-deer',
  plan: 'four-legged',
  name: 'sika deer',
  maleName: 'stag',
  femaleName: 'hind',
  youngName: 'calf',
  trophy: { name: 'antlers', on: 'male' },
  cooking: 'game',
  plausibleLiveGrams: { from: 10_000, to: 150_000, source: 'MEMORY' },
  fieldDressedPerLive: { mean: 0.71, sd: 0.03, n: 0, source: 'JUDGEMENT', why: 'Between the red and the fallow deer.' },
  fieldDressed: {
    per10k: { 'lower-legs': 280, head: 650, hide: 1220, hanging: 7850 },
    concentration: 187,
    n: 0,
    source: 'JUDGEMENT',
    why: 'Between the red and the fallow deer, spread 3 points.',
  },
  girth: [],
  typicalWeights: [
    typical('male', 'adult', 'hanging', kilos(36, 8), { n: 0, source: 'MEMORY', why: 'A stag stands at 50 to 80 kg; the large races of Asia are heavier.' }),
    typical('female', 'adult', 'hanging', kilos(25, 5), { n: 0, source: 'MEMORY', why: 'A hind stands at 35 to 55 kg.' }),
    typical('male', 'yearling', 'hanging', kilos(25, 5), judged('Seven tenths of a stag.')),
    typical('female', 'yearling', 'hanging', kilos(21, 4), judged('Five sixths of a hind.')),
    typical('male', 'young', 'hanging', kilos(14, 3), judged('A calf of its first winter.')),
    typical('female', 'young', 'hanging', kilos(13, 3), judged('A calf of its first winter.')),
  ],
  composition: {
    ...DEER_SEAMS,
    carcass: {
      per10k: { meat: 6300, bone: 2300, cover: 1150, drying: 250 },
      concentration: 200,
      n: 0,
      source: 'JUDGEMENT',
      why: 'Near the red deer, with a little more bone on a smaller animal; spread of 3.4 points.',
    },
    meat: {
      per10k: meatShares({ haunch: 4238, saddle: 1523, shoulder: 2000, neck: 900, ribs: 1339 }),
      concentration: 1000,
      n: 0,
      source: 'PJFNS2009',
      why: 'As the red deer, its nearest relative measured.',
    },
  },
};
