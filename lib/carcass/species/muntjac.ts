import type { Species } from '../species';
import { DEER_SEAMS, meatShares } from './deer-composition';
import { judged, kilos, typical } from './typical-weight';

export const muntjac: Species = {
  id: 'muntjac',
  plan: 'four-legged',
  name: 'muntjac',
  maleName: 'buck',
  femaleName: 'doe',
  youngName: 'fawn',
  trophy: { name: 'antlers', on: 'male' },
  cooking: 'game',
  plausibleLiveGrams: { from: 3_500, to: 25_000, source: 'MEMORY' },
  fieldDressedPerLive: { mean: 0.76, sd: 0.03, n: 0, source: 'JUDGEMENT', why: 'A small animal loses about a quarter at the gralloch, as the roe deer.' },
  fieldDressed: {
    per10k: { 'lower-legs': 280, head: 620, hide: 1050, hanging: 8050 },
    concentration: 173,
    n: 0,
    source: 'JUDGEMENT',
    why: 'As the roe-size deer of PAREY, spread 3 points.',
  },
  girth: [],
  typicalWeights: [
    typical('male', 'adult', 'hanging', kilos(9.7, 1.2), { n: 0, source: 'WVP_MUN', why: '8 to 11 kg without regard to sex; bucks taken in the upper half, spread is judgement.' }),
    typical('female', 'adult', 'hanging', kilos(8.8, 1.1), { n: 0, source: 'WVP_MUN', why: '8 to 11 kg without regard to sex; does taken in the lower half, spread is judgement.' }),
    typical('male', 'yearling', 'hanging', kilos(8.6, 1.1), judged('Nearly grown at a year.')),
    typical('female', 'yearling', 'hanging', kilos(7.9, 1), judged('Nearly grown at a year.')),
    typical('male', 'young', 'hanging', kilos(5, 1), judged('Half grown; fawns are born in every month.')),
    typical('female', 'young', 'hanging', kilos(4.7, 1), judged('Half grown; fawns are born in every month.')),
  ],
  composition: {
    ...DEER_SEAMS,
    carcass: {
      per10k: { meat: 6150, bone: 2650, cover: 950, drying: 250 },
      concentration: 200,
      n: 0,
      source: 'JUDGEMENT',
      why: 'Near the roe-size deer of PAREY, a little fatter; spread of 3.4 points.',
    },
    meat: {
      per10k: meatShares({ haunch: 4550, saddle: 1600, shoulder: 1900, neck: 600, ribs: 1350 }),
      concentration: 1000,
      n: 0,
      source: 'PAREY',
      why: 'Near the roe-size deer, with a thicker neck: judgement.',
    },
  },
};
