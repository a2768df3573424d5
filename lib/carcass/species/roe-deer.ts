import type { Species } from '../species';
import { DEER_SEAMS, meatShares } from './deer-composition';
import { judged, kilos, typical } from './typical-weight';

export const roeDeer: Species = {
  id: 'roe-deer',
  plan: 'four-legged',
  name: 'roe deer',
  maleName: 'buck',
  femaleName: 'doe',
  youngName: 'kid',
  trophy: { name: 'antlers', on: 'male' },
  cooking: 'game',
  plausibleLiveGrams: { from: 6_000, to: 45_000, source: 'MEMORY' },
  fieldDressedPerLive: { mean: 0.75, sd: 0.03, n: 0, source: 'JUDGEMENT', why: 'Small ruminants lose about a quarter at the gralloch.' },
  fieldDressed: {
    per10k: { 'lower-legs': 300, head: 550, hide: 1144, hanging: 8006 },
    concentration: 176,
    n: 1,
    source: 'PAREY',
    why: 'Skin, head and legs 3.19 kg of 16.00 kg gutted; the spread of 3 points is judgement, one animal has none. The division of what comes off is judgement.',
  },
  girth: [],
  typicalWeights: [
    typical('male', 'adult', 'hanging', kilos(15, 1.5), { n: 0, source: 'WVP_ROE', why: '14 to 16 kg, a UK buck; agrees with 26.4 kg live in ROEGROW.' }),
    typical('female', 'adult', 'hanging', kilos(14, 1.5), judged('Does run a little lighter than bucks.')),
    typical('male', 'yearling', 'live', kilos(21, 2.5), judged('Between the fawn of one year and the buck of two to three in ROEGROW.')),
    typical('female', 'yearling', 'live', kilos(20, 2.5), judged('As the male, a little lighter.')),
    typical('male', 'young', 'live', kilos(16.6, 2.5), { n: 0, source: 'ROEGROW', why: 'Fawn in its first year.' }),
    typical('female', 'young', 'live', kilos(15.8, 2.5), judged('As the male, a little lighter.')),
  ],
  composition: {
    ...DEER_SEAMS,
    carcass: {
      per10k: { meat: 6214, bone: 2716, cover: 781, drying: 289 },
      concentration: 260,
      n: 1,
      source: 'PAREY',
      why: '7.96 boneless, 3.48 bone, 1.00 trim and 0.37 drying of 12.81 kg skinned; spread of 3 points for meat is judgement.',
    },
    meat: {
      per10k: meatShares({ haunch: 4622, saddle: 1660, shoulder: 1870, neck: 514, ribs: 1334 }),
      concentration: 1000,
      n: 1,
      source: 'PAREY',
      why: '44.0, 15.8, 17.8, 4.9 and 12.7% of boneless, carried up to the whole.',
    },
  },
};
