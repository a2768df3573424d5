import type { Species } from '../species';
import { DEER_SEAMS, meatShares } from './deer-composition';

const LB = 453.59237;

export const whiteTailedDeer: Species = {
  id: 'white-tailed-deer',
  plan: 'four-legged',
  name: 'white-tailed deer',
  maleName: 'buck',
  femaleName: 'doe',
  youngName: 'fawn',
  trophy: { name: 'antlers', on: 'male' },
  cooking: 'game',
  plausibleLiveGrams: { from: 15_000, to: 190_000, source: 'MEMORY' },
  fieldDressedPerLive: { mean: 0.784, sd: 0.023, n: 200, source: 'NOBLE2012', why: '105 lb field-dressed is 134 lb live, 95% limits 126 to 141.' },
  fieldDressed: {
    per10k: { 'lower-legs': 250, head: 550, hide: 1100, hanging: 8100 },
    concentration: 170,
    n: 0,
    source: 'JUDGEMENT',
    why: 'Hanging between 0.80 for a roe-size animal (PAREY) and 0.84 for a mule deer buck (HUNTCONS), spread 3 points. Legs, head and hide by judgement.',
  },
  girth: [],
  typicalWeights: [
    { sex: 'male', ageClass: 'young', basis: 'field-dressed', grams: { mean: Math.round(65 * LB), sd: Math.round(8 * LB), n: 0, source: 'HILLBILLY', why: '55 to 75 lb.' } },
    { sex: 'female', ageClass: 'young', basis: 'field-dressed', grams: { mean: Math.round(58 * LB), sd: Math.round(8 * LB), n: 0, source: 'JUDGEMENT', why: 'A little under the buck fawn.' } },
    { sex: 'male', ageClass: 'yearling', basis: 'field-dressed', grams: { mean: Math.round(115 * LB), sd: Math.round(12 * LB), n: 0, source: 'HILLBILLY', why: '105 to 125 lb.' } },
    { sex: 'female', ageClass: 'yearling', basis: 'field-dressed', grams: { mean: Math.round(95 * LB), sd: Math.round(10 * LB), n: 0, source: 'JUDGEMENT', why: 'Between fawn and adult doe.' } },
    { sex: 'male', ageClass: 'adult', basis: 'field-dressed', grams: { mean: Math.round(145 * LB), sd: Math.round(25 * LB), n: 0, source: 'JUDGEMENT', why: 'Above the yearling; differs widely by place.' } },
    { sex: 'female', ageClass: 'adult', basis: 'field-dressed', grams: { mean: Math.round(112 * LB), sd: Math.round(12 * LB), n: 0, source: 'HILLBILLY', why: '105 to 120 lb.' } },
  ],
  composition: {
    ...DEER_SEAMS,
    carcass: {
      per10k: { meat: 5600, bone: 2500, cover: 1650, drying: 250 },
      concentration: 150,
      n: 0,
      source: 'PRACTICE',
      why: 'Boneless is 50 to 60% of hanging on a clean animal; autumn deer carry much fat. How the rest divides is judgement.',
    },
    meat: {
      per10k: meatShares({ haunch: 4400, saddle: 1600, shoulder: 2000, neck: 800, ribs: 1200 }),
      concentration: 1000,
      n: 0,
      source: 'PRACTICE',
      why: 'Hind legs just under half, the back a sixth; between the roe of PAREY and the red hinds of PJFNS2009.',
    },
  },
};
