import type { Species } from '../species';
import { DEER_SEAMS, meatShares } from './deer-composition';
import { girthLine, girthRule } from './girth-line';
import { judged, pounds, typical } from './typical-weight';

const ADULTS = {
  cv: 0.1,
  n: 316,
  source: 'SEAFWA1976',
  why: 'Line of 316 grown deer of South Carolina; that it serves yearlings and unknown age, and its scatter, are judgement.',
} as const;
const FAWNS = { cv: 0.12, n: 229, source: 'SEAFWA1976', why: 'Line of 229 fawns of South Carolina; scatter by judgement.' } as const;

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
  fieldDressedPerLive: {
    mean: 0.784,
    sd: 0.03,
    n: 200,
    source: 'NOBLE2012',
    why: '105 lb field-dressed is 134 lb live; its 95% limits of 126 to 141 are 2.3 points, taken as 3 since herds differ: 74.6% in COOKCO, 76.4% at a girth of 36 in by SEAFWA1976.',
  },
  fieldDressed: {
    per10k: { 'lower-legs': 250, head: 550, hide: 1100, hanging: 8100 },
    concentration: 170,
    n: 0,
    source: 'JUDGEMENT',
    why: 'Hanging between 0.80 for a roe-size animal (PAREY) and 0.84 for a mule deer buck (HUNTCONS), spread 3 points. Legs, head and hide by judgement.',
  },
  girth: [
    // Field-dressed before live: the first rule of an age is the one that is read.
    girthRule(['adult', 'yearling', 'unknown'], 'field-dressed', girthLine({ slopeLbPerIn: 5.6037, interceptLb: -94.0982, fromIn: 25, toIn: 45 }), ADULTS),
    girthRule(['young'], 'field-dressed', girthLine({ slopeLbPerIn: 3.9499, interceptLb: -55.6158, fromIn: 22, toIn: 35 }), FAWNS),
    girthRule(['adult', 'yearling', 'unknown'], 'live', girthLine({ slopeLbPerIn: 6.552, interceptLb: -95.0128, fromIn: 25, toIn: 45 }), ADULTS),
    girthRule(['young'], 'live', girthLine({ slopeLbPerIn: 5.3003, interceptLb: -74.1489, fromIn: 22, toIn: 35 }), FAWNS),
  ],
  typicalWeights: [
    typical('male', 'young', 'field-dressed', pounds(65, 8), { n: 0, source: 'HILLBILLY', why: '55 to 75 lb.' }),
    typical('female', 'young', 'field-dressed', pounds(58, 8), judged('A little under the buck fawn.')),
    typical('male', 'yearling', 'field-dressed', pounds(115, 12), { n: 0, source: 'HILLBILLY', why: '105 to 125 lb.' }),
    typical('female', 'yearling', 'field-dressed', pounds(95, 10), judged('Between fawn and adult doe.')),
    typical('male', 'adult', 'field-dressed', pounds(145, 25), judged('Above the yearling; differs widely by place.')),
    typical('female', 'adult', 'field-dressed', pounds(112, 12), { n: 0, source: 'HILLBILLY', why: '105 to 120 lb.' }),
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
