import type { Species } from '../species';
import { DEER_SEAMS, meatShares } from './deer-composition';

const LB = 453.59237;

export const muleDeer: Species = {
  id: 'mule-deer',
  plan: 'four-legged',
  name: 'mule deer',
  maleName: 'buck',
  femaleName: 'doe',
  youngName: 'fawn',
  trophy: { name: 'antlers', on: 'male' },
  cooking: 'game',
  plausibleLiveGrams: { from: 18_000, to: 220_000, source: 'MEMORY' },
  fieldDressedPerLive: { mean: 0.704, sd: 0.03, n: 0, source: 'B589R', why: 'Field-dressed is 70.4% of live; spread is judgement.' },
  fieldDressed: {
    per10k: { 'lower-legs': 200, head: 500, hide: 880, hanging: 8420 },
    concentration: 212,
    n: 0,
    source: 'HUNTCONS',
    why: 'Bucks of 114 lb field-dressed with 18 lb of head and hide; spread of 2.5 points and the division of what comes off are judgement.',
  },
  girth: [],
  typicalWeights: [
    { sex: 'male', ageClass: 'yearling', basis: 'field-dressed', grams: { mean: Math.round(102 * LB), sd: Math.round(12 * LB), n: 0, source: 'B589R', why: 'Bucks of 1.5 to 2.5 years.' } },
    { sex: 'male', ageClass: 'adult', basis: 'field-dressed', grams: { mean: Math.round(150 * LB), sd: Math.round(30 * LB), n: 0, source: 'B589R', why: 'Bucks of 3.5 to 4.5 years; older ones reach 192 to 207 lb.' } },
    { sex: 'male', ageClass: 'young', basis: 'field-dressed', grams: { mean: Math.round(60 * LB), sd: Math.round(8 * LB), n: 0, source: 'JUDGEMENT', why: 'About half a doe.' } },
    { sex: 'female', ageClass: 'young', basis: 'field-dressed', grams: { mean: Math.round(56 * LB), sd: Math.round(8 * LB), n: 0, source: 'JUDGEMENT', why: 'A little under the buck fawn.' } },
    { sex: 'female', ageClass: 'yearling', basis: 'field-dressed', grams: { mean: Math.round(90 * LB), sd: Math.round(10 * LB), n: 0, source: 'JUDGEMENT', why: 'Under the yearling buck.' } },
    { sex: 'female', ageClass: 'adult', basis: 'field-dressed', grams: { mean: Math.round(108 * LB), sd: Math.round(14 * LB), n: 0, source: 'JUDGEMENT', why: 'About the yearling buck.' } },
  ],
  composition: {
    ...DEER_SEAMS,
    carcass: {
      per10k: { meat: 5800, bone: 2500, cover: 1450, drying: 250 },
      concentration: 250,
      n: 0,
      source: 'HUNTCONS',
      why: '55 lb boneless of 96 lb hanging is 57%, and 59% is given for skinned, headless bucks. How the rest divides is judgement.',
    },
    meat: {
      per10k: meatShares({ haunch: 4400, saddle: 1600, shoulder: 2000, neck: 800, ribs: 1200 }),
      concentration: 1000,
      n: 0,
      source: 'PRACTICE',
      why: 'As for the white-tailed deer.',
    },
  },
};
