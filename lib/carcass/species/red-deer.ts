import type { Species } from '../species';
import { DEER_SEAMS, meatShares } from './deer-composition';

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
    { sex: 'male', ageClass: 'adult', basis: 'hanging', grams: { mean: 75_000, sd: 14_000, n: 0, source: 'WVP_RED', why: 'A typical UK stag; continental stags are far heavier.' } },
    { sex: 'female', ageClass: 'adult', basis: 'hanging', grams: { mean: 50_000, sd: 7_000, n: 0, source: 'WVP_RED', why: 'A typical UK hind.' } },
    { sex: 'male', ageClass: 'yearling', basis: 'hanging', grams: { mean: 50_000, sd: 8_000, n: 0, source: 'JUDGEMENT', why: 'Two thirds of a stag.' } },
    { sex: 'female', ageClass: 'yearling', basis: 'hanging', grams: { mean: 40_000, sd: 6_000, n: 0, source: 'JUDGEMENT', why: 'Four fifths of a hind.' } },
    { sex: 'male', ageClass: 'young', basis: 'hanging', grams: { mean: 29_000, sd: 5_000, n: 0, source: 'JUDGEMENT', why: 'A calf of its first winter.' } },
    { sex: 'female', ageClass: 'young', basis: 'hanging', grams: { mean: 26_000, sd: 5_000, n: 0, source: 'JUDGEMENT', why: 'A calf of its first winter.' } },
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
