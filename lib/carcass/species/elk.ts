import type { Species } from '../species';
import { DEER_SEAMS, meatShares } from './deer-composition';

const LB = 453.59237;

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
    { sex: 'male', ageClass: 'adult', basis: 'field-dressed', grams: { mean: Math.round(437 * LB), sd: Math.round(60 * LB), n: 6, source: 'HUNTCONS', why: 'Mean of six bulls; spread is judgement.' } },
    { sex: 'female', ageClass: 'adult', basis: 'field-dressed', grams: { mean: Math.round(340 * LB), sd: Math.round(40 * LB), n: 0, source: 'JUDGEMENT', why: 'Cows run about three quarters of a bull.' } },
    { sex: 'male', ageClass: 'yearling', basis: 'field-dressed', grams: { mean: Math.round(290 * LB), sd: Math.round(40 * LB), n: 0, source: 'JUDGEMENT', why: 'Two thirds of a bull.' } },
    { sex: 'female', ageClass: 'yearling', basis: 'field-dressed', grams: { mean: Math.round(265 * LB), sd: Math.round(35 * LB), n: 0, source: 'JUDGEMENT', why: 'Four fifths of a cow.' } },
    { sex: 'male', ageClass: 'young', basis: 'field-dressed', grams: { mean: Math.round(180 * LB), sd: Math.round(30 * LB), n: 0, source: 'JUDGEMENT', why: 'A calf of its first autumn.' } },
    { sex: 'female', ageClass: 'young', basis: 'field-dressed', grams: { mean: Math.round(170 * LB), sd: Math.round(30 * LB), n: 0, source: 'JUDGEMENT', why: 'A calf of its first autumn.' } },
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
