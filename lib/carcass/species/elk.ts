import type { Species } from '../species';
import { DEER_SEAMS, meatShares } from './deer-composition';
import { judged, pounds, typical } from './typical-weight';

export const elk: Species = {
  id: 'elk',
  plan: 'four-legged',
  name: 'elk',
  maleName: 'bull',
  femaleName: 'cow',
  youngName: 'calf',
  trophy: { name: 'antlers', on: 'male' },
  cooking: 'game',
  plausibleLiveGrams: { from: 60_000, to: 550_000, source: 'MEMORY' },
  fieldDressedPerLive: { mean: 0.7, sd: 0.03, n: 0, source: 'JUDGEMENT', why: 'As the mule deer of B589R.' },
  fieldDressed: {
    per10k: { 'lower-legs': 200, head: 520, hide: 950, hanging: 8330 },
    concentration: 222,
    n: 6,
    source: 'HUNTCONS',
    why: 'Bulls of 437 lb field-dressed with 73 lb of head and hide; spread of 2.5 points and the division of what comes off are judgement.',
  },
  girth: [],
  typicalWeights: [
    typical('male', 'adult', 'field-dressed', pounds(437, 60), { n: 6, source: 'HUNTCONS', why: 'Mean of six bulls; spread is judgement.' }),
    typical('female', 'adult', 'field-dressed', pounds(340, 40), judged('Cows run about three quarters of a bull.')),
    typical('male', 'yearling', 'field-dressed', pounds(290, 40), judged('Two thirds of a bull.')),
    typical('female', 'yearling', 'field-dressed', pounds(265, 35), judged('Four fifths of a cow.')),
    typical('male', 'young', 'field-dressed', pounds(180, 30), judged('A calf of its first autumn.')),
    typical('female', 'young', 'field-dressed', pounds(170, 30), judged('A calf of its first autumn.')),
  ],
  composition: {
    ...DEER_SEAMS,
    carcass: {
      per10k: { meat: 6000, bone: 2350, cover: 1400, drying: 250 },
      concentration: 250,
      n: 12,
      source: 'HUNTCONS',
      why: 'Boneless 60% of the skinned, headless carcass, n = 12. How the rest divides is judgement.',
    },
    meat: {
      per10k: meatShares({ haunch: 4238, saddle: 1523, shoulder: 2000, neck: 900, ribs: 1339 }),
      concentration: 1000,
      n: 0,
      source: 'PJFNS2009',
      why: 'Leg and saddle of red deer hinds, the nearest relative measured; the rest divided by judgement.',
    },
  },
};
