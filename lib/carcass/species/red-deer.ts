import type { Species } from '../species';
import { DEER_SEAMS, meatShares } from './deer-composition';
import { judged, kilos, typical } from './typical-weight';

export const redDeer: Species = {
  id: 'red-deer',
  plan: 'four-legged',
  name: 'red deer',
  maleName: 'stag',
  femaleName: 'hind',
  youngName: 'calf',
  trophy: { name: 'antlers', on: 'male' },
  cooking: 'game',
  plausibleLiveGrams: { from: 30_000, to: 350_000, source: 'MEMORY' },
  fieldDressedPerLive: { mean: 0.68, sd: 0.03, n: 0, source: 'JUDGEMENT', why: 'With the next figure it brings live to hanging near the 49 to 52% of KAY1981.' },
  fieldDressed: {
    per10k: { 'lower-legs': 300, head: 750, hide: 1450, hanging: 7500 },
    concentration: 207,
    n: 0,
    source: 'JUDGEMENT',
    why: 'A heavy hide and head; hanging chosen with the figure above to agree with KAY1981, spread 3 points.',
  },
  girth: [],
  typicalWeights: [
    typical('male', 'adult', 'hanging', kilos(90, 25), { n: 98, source: 'JANKOL2006', why: 'Polish stags of three to eight years hang 82 to 122 kg and a typical UK stag 75 (WVP_RED); taken between, with a spread as wide as stags are.' }),
    typical('female', 'adult', 'hanging', kilos(50, 7), { n: 0, source: 'WVP_RED', why: 'A typical UK hind.' }),
    typical('male', 'yearling', 'hanging', kilos(58, 10), judged('Between two thirds of a UK stag and the 67.6 kg of two-year-olds in JANKOL2006.')),
    typical('female', 'yearling', 'hanging', kilos(40, 6), judged('Four fifths of a hind.')),
    typical('male', 'young', 'hanging', kilos(29, 5), judged('A calf of its first winter.')),
    typical('female', 'young', 'hanging', kilos(26, 5), judged('A calf of its first winter.')),
  ],
  composition: {
    ...DEER_SEAMS,
    carcass: {
      per10k: { meat: 6400, bone: 2250, cover: 1100, drying: 250 },
      concentration: 250,
      n: 30,
      source: 'PJFNS2009',
      why: 'Dissected meat is 74.7% of the carcass with its fat and membrane; of that about 11% goes as trim, as in PAREY. Bone and cover are judgement.',
    },
    meat: {
      per10k: meatShares({ haunch: 4238, saddle: 1523, shoulder: 2000, neck: 900, ribs: 1339 }),
      concentration: 1000,
      n: 30,
      source: 'PJFNS2009',
      why: 'Leg 42.38% and saddle 15.23% of the meat; the rest divided by judgement.',
    },
  },
};
