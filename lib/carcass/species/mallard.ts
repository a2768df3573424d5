import type { Species } from '../species';
import { BIRD_SEAMS } from './bird-composition';
import { judged, kilos, typical } from './typical-weight';

export const mallard: Species = {
  id: 'mallard',
  plan: 'bird',
  name: 'mallard',
  maleName: 'drake',
  femaleName: 'hen',
  youngName: 'young mallard',
  trophy: null,
  cooking: 'birds-bear-boar',
  plausibleLiveGrams: { from: 550, to: 2_000, source: 'MEMORY' },
  fieldDressedPerLive: { mean: 0.86, sd: 0.02, n: 0, source: 'JUDGEMENT', why: 'As the pheasant.' },
  fieldDressed: {
    per10k: { 'lower-legs': 400, head: 600, hide: 1050, hanging: 7950 },
    concentration: 180,
    n: 0,
    source: 'JUDGEMENT',
    why: 'Brings live to plucked and drawn to 68%, spread of 3 points: more down and a larger head than a pheasant.',
  },
  girth: [],
  typicalWeights: [
    typical('male', 'adult', 'live', kilos(1.228, 0.16), { n: 24, source: 'SZASZ2006', why: 'Drakes, mean and spread.' }),
    typical('female', 'adult', 'live', kilos(1.058, 0.098), { n: 24, source: 'SZASZ2006', why: 'Hens, mean and spread.' }),
    typical('male', 'yearling', 'live', kilos(1.2, 0.15), judged('Grown within its first year.')),
    typical('female', 'yearling', 'live', kilos(1.04, 0.1), judged('Grown within its first year.')),
    typical('male', 'young', 'live', kilos(1.12, 0.14), judged('A drake of the year.')),
    typical('female', 'young', 'live', kilos(0.98, 0.11), judged('A hen of the year.')),
  ],
  composition: {
    ...BIRD_SEAMS,
    carcass: {
      per10k: { meat: 3450, bone: 3900, cover: 2600, drying: 50 },
      concentration: 140,
      n: 24,
      source: 'SZASZ2006',
      why: 'Breast fillet is 14.0% of live over both sexes and thigh fillet 6.5%, which with 4.5% of wing are 34.5% of plucked and drawn. Skin by breast with and without it; bone holds back and neck and the meat on them: judgement, spread of 4 points.',
    },
    meat: {
      per10k: { 'bird-breast': 5928, 'bird-leg': 2759, 'bird-wing': 1313 },
      concentration: 600,
      n: 24,
      source: 'SZASZ2006',
      why: 'Breast fillet 167 g and thigh fillet 80 g of a drake, read as the boned leg: twice as much breast as leg is what a wild duck has. The wing is judgement.',
    },
    cover: {
      per10k: { 'bird-breast-skin': 4100, 'bird-leg-skin': 2300, 'bird-wing-skin': 900, 'bird-frame-skin': 2700 },
      concentration: 150,
      n: 24,
      source: 'SZASZ2006',
      why: 'Breast of a drake is 256 g with its skin and 167 g without; the rest is judgement.',
    },
  },
};
