import type { Species } from '../species';
import { DEER_SEAMS, meatShares } from './deer-composition';
import { judged, pounds, typical } from './typical-weight';

export const pronghorn: Species = {
  id: 'pronghorn',
  plan: 'four-legged',
  name: 'pronghorn',
  maleName: 'buck',
  femaleName: 'doe',
  youngName: 'fawn',
  trophy: { name: 'horns', on: 'both' },
  cooking: 'game',
  plausibleLiveGrams: { from: 10_000, to: 85_000, source: 'MEMORY' },
  fieldDressedPerLive: { mean: 0.725, sd: 0.022, n: 1210, source: 'PRONG_AB', why: 'Field-dressed is 66 to 75% of live, and 73.5% of a mature buck; spread from that range.' },
  fieldDressed: {
    per10k: { 'lower-legs': 280, head: 750, hide: 1400, hanging: 7570 },
    concentration: 293,
    n: 40,
    source: 'PRONG_AB',
    why: 'Hanging is 51 to 57% of live, and live 1.78 times hanging in bucks; spread of 2.5 points and legs, head and hide are judgement.',
  },
  girth: [],
  typicalWeights: [
    typical('male', 'adult', 'hanging', pounds(65, 5), { n: 0, source: 'TEDBAKER', why: 'Bucks hang 60 to 70 lb.' }),
    typical('female', 'adult', 'hanging', pounds(56, 5), judged('Six sevenths of a buck.')),
    typical('male', 'yearling', 'hanging', pounds(57, 5), judged('Seven eighths of a buck.')),
    typical('female', 'yearling', 'hanging', pounds(51, 5), judged('Nine tenths of a doe.')),
    typical('male', 'young', 'hanging', pounds(26, 4), { n: 0, source: 'TEDBAKER', why: 'Fawns hang 20 to 30 lb.' }),
    typical('female', 'young', 'hanging', pounds(24, 4), { n: 0, source: 'TEDBAKER', why: 'Fawns hang 20 to 30 lb.' }),
  ],
  composition: {
    ...DEER_SEAMS,
    carcass: {
      per10k: { meat: 5200, bone: 2800, cover: 1700, drying: 300 },
      concentration: 120,
      n: 0,
      source: 'TEDBAKER',
      why: 'A plant gives 45 to 55% boneless of hanging; taken in the upper half, since its animals came with their wounds, which are reckoned apart here. Spread of 4.5 points.',
    },
    meat: {
      per10k: meatShares({ haunch: 4500, saddle: 1600, shoulder: 2000, neck: 650, ribs: 1250 }),
      concentration: 1000,
      n: 0,
      source: 'JUDGEMENT',
      why: 'As a deer of its size: an antelope is cut along the same seams.',
    },
  },
};
