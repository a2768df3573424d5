import type { Species } from '../species';
import { DEER_SEAMS, meatShares } from './deer-composition';
import { judged, pounds, typical } from './typical-weight';

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
    typical('male', 'yearling', 'field-dressed', pounds(102, 12), { n: 0, source: 'B589R', why: 'Bucks of 1.5 to 2.5 years.' }),
    typical('male', 'adult', 'field-dressed', pounds(150, 30), { n: 0, source: 'B589R', why: 'Bucks of 3.5 to 4.5 years; older ones reach 192 to 207 lb.' }),
    typical('male', 'young', 'field-dressed', pounds(60, 8), judged('About half a doe.')),
    typical('female', 'young', 'field-dressed', pounds(56, 8), judged('A little under the buck fawn.')),
    typical('female', 'yearling', 'field-dressed', pounds(90, 10), judged('Under the yearling buck.')),
    typical('female', 'adult', 'field-dressed', pounds(108, 14), judged('About the yearling buck.')),
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
