import type { Species } from '../species';
import { DEER_SEAMS, meatShares } from './deer-composition';
import { judged, kilos, typical } from './typical-weight';

export const moose: Species = {
  id: 'moose',
  plan: 'four-legged',
  name: 'moose',
  maleName: 'bull',
  femaleName: 'cow',
  youngName: 'calf',
  trophy: { name: 'antlers', on: 'male' },
  cooking: 'game',
  plausibleLiveGrams: { from: 80_000, to: 800_000, source: 'MEMORY' },
  fieldDressedPerLive: { mean: 0.7, sd: 0.03, n: 0, source: 'JUDGEMENT', why: 'As the mule deer of B589R; a big rumen is a big loss.' },
  fieldDressed: {
    per10k: { 'lower-legs': 250, head: 650, hide: 1200, hanging: 7900 },
    concentration: 183,
    n: 0,
    source: 'JUDGEMENT',
    why: 'Brings live to hanging to 55%, spread 3 points; legs, head and hide by judgement.',
  },
  girth: [],
  typicalWeights: [
    typical('male', 'adult', 'hanging', kilos(249, 37), { n: 0, source: 'AITKEN2012', why: 'Adult bulls of British Columbia, mean and spread; 225 kg in Sweden lies within.' }),
    typical('female', 'adult', 'hanging', kilos(199, 29), { n: 0, source: 'AITKEN2012', why: 'Adult cows, mean and spread.' }),
    typical('male', 'yearling', 'hanging', kilos(162, 21), { n: 0, source: 'AITKEN2012', why: 'Juvenile bulls, mean and spread.' }),
    typical('female', 'yearling', 'hanging', kilos(150, 21), judged('A little under the juvenile bull.')),
    typical('male', 'young', 'hanging', kilos(82, 16), { n: 0, source: 'AITKEN2012', why: 'Bull calves, mean and spread.' }),
    typical('female', 'young', 'hanging', kilos(81, 13), { n: 0, source: 'AITKEN2012', why: 'Cow calves, mean and spread.' }),
  ],
  composition: {
    ...DEER_SEAMS,
    carcass: {
      per10k: { meat: 6500, bone: 2100, cover: 1150, drying: 250 },
      concentration: 252,
      n: 0,
      source: 'JUDGEMENT',
      why: 'A large animal has less bone for its meat than the elk at 60%; the 80% lean of HANSSON1978 is the most a dissection found, not what a knife gets clean; spread of 3 points.',
    },
    meat: {
      per10k: meatShares({ haunch: 4050, saddle: 1450, shoulder: 2150, neck: 950, ribs: 1400 }),
      concentration: 1000,
      n: 0,
      source: 'JUDGEMENT',
      why: 'Nearer the red deer of PJFNS2009 than the roe, with the heavy forehand of a moose.',
    },
  },
};
