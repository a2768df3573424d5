import type { Species } from '../species';
import { BIRD_SEAMS } from './bird-composition';
import { judged, kilos, typical } from './typical-weight';

export const pheasant: Species = {
  id: 'pheasant',
  plan: 'bird',
  name: 'pheasant',
  maleName: 'cock',
  femaleName: 'hen',
  youngName: 'poult',
  trophy: null,
  cooking: 'birds-bear-boar',
  plausibleLiveGrams: { from: 500, to: 2_600, source: 'MEMORY' },
  fieldDressedPerLive: { mean: 0.855, sd: 0.02, n: 0, source: 'JUDGEMENT', why: 'With the next figure it brings live to plucked and drawn to 70%.' },
  fieldDressed: {
    per10k: { 'lower-legs': 370, head: 430, hide: 1000, hanging: 8200 },
    concentration: 145,
    n: 10,
    source: 'BRNOFOWL',
    why: 'Plucked and drawn is 69.7% of live, and 69.9 to 70.2% in KOKO2008; feathers, head and feet by judgement, spread of 3 points, since MARDI1993 has 74 to 78%.',
  },
  girth: [],
  typicalWeights: [
    typical('male', 'adult', 'live', kilos(1.4, 0.14), { n: 0, source: 'MEMORY', why: 'A cock.' }),
    typical('female', 'adult', 'live', kilos(1.05, 0.11), { n: 0, source: 'MEMORY', why: 'Three quarters of a cock.' }),
    typical('male', 'yearling', 'live', kilos(1.4, 0.14), judged('Grown within its first year.')),
    typical('female', 'yearling', 'live', kilos(1.05, 0.11), judged('Grown within its first year.')),
    typical('male', 'young', 'live', kilos(1.2, 0.15), judged('A cock of the year.')),
    typical('female', 'young', 'live', kilos(0.95, 0.12), judged('A hen of the year.')),
  ],
  composition: {
    ...BIRD_SEAMS,
    carcass: {
      per10k: { meat: 5160, bone: 3490, cover: 1300, drying: 50 },
      concentration: 155,
      n: 0,
      source: 'KOKO2008',
      why: 'Breast 251 g and leg 199 g of a bird, taken as 26.0 and 20.6% of plucked and drawn, with 5% of wing. Bone holds the back and neck and the meat on them, which nobody cuts; spread of 4 points.',
    },
    meat: {
      per10k: { 'bird-breast': 5039, 'bird-leg': 3992, 'bird-wing': 969 },
      concentration: 600,
      n: 0,
      source: 'KOKO2008',
      why: 'Breast to leg 251 to 199 g; the wing is judgement.',
    },
  },
};
