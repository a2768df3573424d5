import type { Species } from '../species';
import { DEER_SEAMS, meatShares } from './deer-composition';
import { judged, kilos, typical } from './typical-weight';

export const chineseWaterDeer: Species = {
  id: 'chinese-water-deer',
  plan: 'four-legged',
  name: 'Chinese water deer',
  maleName: 'buck',
  femaleName: 'doe',
  youngName: 'fawn',
  trophy: { name: 'tusks', on: 'male' },
  cooking: 'game',
  plausibleLiveGrams: { from: 4_000, to: 25_000, source: 'MEMORY' },
  fieldDressedPerLive: { mean: 0.76, sd: 0.03, n: 0, source: 'JUDGEMENT', why: 'A small animal loses about a quarter at the gralloch, as the roe deer.' },
  fieldDressed: {
    per10k: { 'lower-legs': 280, head: 570, hide: 1150, hanging: 8000 },
    concentration: 177,
    n: 0,
    source: 'JUDGEMENT',
    why: 'As the roe-size deer of PAREY, spread 3 points.',
  },
  girth: [],
  typicalWeights: [
    typical('male', 'adult', 'live', kilos(13.5, 1.5), { n: 0, source: 'MEMORY', why: '11 to 15 kg and a little more.' }),
    typical('female', 'adult', 'live', kilos(13, 1.5), { n: 0, source: 'MEMORY', why: 'About as heavy as the buck.' }),
    typical('male', 'yearling', 'live', kilos(12, 1.5), judged('Nearly grown at a year.')),
    typical('female', 'yearling', 'live', kilos(11.5, 1.5), judged('Nearly grown at a year.')),
    typical('male', 'young', 'live', kilos(8.5, 1.5), judged('A fawn of its first winter.')),
    typical('female', 'young', 'live', kilos(8.2, 1.5), judged('A fawn of its first winter.')),
  ],
  composition: {
    ...DEER_SEAMS,
    carcass: {
      per10k: { meat: 6200, bone: 2600, cover: 950, drying: 250 },
      concentration: 200,
      n: 0,
      source: 'JUDGEMENT',
      why: 'Near the roe-size deer of PAREY; spread of 3.4 points.',
    },
    meat: {
      per10k: meatShares({ haunch: 4622, saddle: 1660, shoulder: 1870, neck: 514, ribs: 1334 }),
      concentration: 1000,
      n: 0,
      source: 'PAREY',
      why: 'As the roe-size deer.',
    },
  },
};
