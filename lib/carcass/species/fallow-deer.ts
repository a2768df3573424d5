import type { Species } from '../species';
import { DEER_SEAMS, meatShares } from './deer-composition';
import { judged, kilos, typical } from './typical-weight';

export const fallowDeer: Species = {
  id: 'fallow-deer',
  plan: 'four-legged',
  name: 'fallow deer',
  maleName: 'buck',
  femaleName: 'doe',
  youngName: 'fawn',
  trophy: { name: 'antlers', on: 'male' },
  cooking: 'game',
  plausibleLiveGrams: { from: 10_000, to: 130_000, source: 'MEMORY' },
  fieldDressedPerLive: { mean: 0.74, sd: 0.025, n: 0, source: 'JUDGEMENT', why: 'With the next figure it brings live to hanging to 61%: 58.6 to 61.8% in MASSEY1985, 61.5% of wild bucks in FITZ2019.' },
  fieldDressed: {
    per10k: { 'lower-legs': 250, head: 560, hide: 950, hanging: 8240 },
    concentration: 231,
    n: 0,
    source: 'JUDGEMENT',
    why: 'Hanging chosen with the figure above to agree with MASSEY1985 and FITZ2019, spread 2.5 points; legs, head and hide by judgement.',
  },
  girth: [],
  typicalWeights: [
    typical('male', 'adult', 'hanging', kilos(42, 8), { n: 0, source: 'WVP_FAL', why: 'A UK buck is 40 kg and more, and farmed bucks of 25 months hang 36 kg in MASSEY1985; spread is judgement. Whether the page counts the skin it does not say.' }),
    typical('female', 'adult', 'hanging', kilos(33, 5), { n: 0, source: 'WVP_FAL', why: 'A typical UK doe; spread is judgement.' }),
    typical('male', 'yearling', 'hanging', kilos(28, 4), { n: 8, source: 'MASSEY1985', why: 'Bucks of 17 months; spread is judgement.' }),
    typical('female', 'yearling', 'hanging', kilos(25, 4), judged('Nine tenths of the yearling buck.')),
    typical('male', 'young', 'hanging', kilos(16, 3), judged('A fawn of its first winter, well under the 25 kg of 13 months in MASSEY1985.')),
    typical('female', 'young', 'hanging', kilos(14.5, 3), judged('As the male, a little lighter.')),
  ],
  composition: {
    ...DEER_SEAMS,
    carcass: {
      per10k: { meat: 7150, bone: 1300, cover: 1300, drying: 250 },
      concentration: 200,
      n: 24,
      source: 'MASSEY1985',
      why: 'Muscle 70.1 to 74.3% of the carcass and 5.5 times its bone. This is dissected muscle, more than a knife gets clean: every cut loses its share of sinew, and a shop that trims close says so. Cover is what is left over, more than the 3.8 to 6.6% of fat in STAN2023; spread of 3 points is judgement.',
    },
    meat: {
      per10k: meatShares({ haunch: 4427, saddle: 1293, shoulder: 1681, neck: 1294, ribs: 1305 }),
      concentration: 1000,
      n: 24,
      source: 'MASSEY1985',
      why: 'Solved so that the joints on the bone come to its haunch 39.4, saddle 15.5, shoulder 17.8, flank 15.4 and neck 12.6% of the carcass, which sum to 100.7, with the bone and cover divided as in all deer.',
    },
  },
};
