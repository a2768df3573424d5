import type { Species } from '../species';
import { BIRD_SEAMS } from './bird-composition';
import { judged, pounds, typical } from './typical-weight';

export const wildTurkey: Species = {
  id: 'wild-turkey',
  plan: 'bird',
  name: 'wild turkey',
  maleName: 'gobbler',
  femaleName: 'hen',
  youngName: 'poult',
  trophy: null,
  cooking: 'birds-bear-boar',
  plausibleLiveGrams: { from: 1_200, to: 16_000, source: 'MEMORY' },
  fieldDressedPerLive: { mean: 0.845, sd: 0.025, n: 0, source: 'JUDGEMENT', why: 'As the pheasant.' },
  fieldDressed: {
    per10k: { 'lower-legs': 450, head: 450, hide: 1050, hanging: 8050 },
    concentration: 173,
    n: 10,
    source: 'BRNOFOWL',
    why: 'Plucked and drawn is 68.0% of live; feathers, head, feet and the spread of 3 points are judgement.',
  },
  girth: [],
  typicalWeights: [
    typical('male', 'adult', 'live', pounds(19, 2.5), { n: 0, source: 'MEMORY', why: 'A gobbler of two years and more.' }),
    typical('female', 'adult', 'live', pounds(9.5, 1.2), { n: 0, source: 'MEMORY', why: 'Half of a gobbler.' }),
    typical('male', 'yearling', 'live', pounds(14.5, 2), { n: 0, source: 'MEMORY', why: 'A jake in its first spring.' }),
    typical('female', 'yearling', 'live', pounds(9, 1.2), judged('Nearly grown.')),
    typical('male', 'young', 'live', pounds(9, 2), judged('A bird of the year in autumn.')),
    typical('female', 'young', 'live', pounds(6.5, 1.5), judged('A bird of the year in autumn.')),
  ],
  composition: {
    ...BIRD_SEAMS,
    carcass: {
      per10k: { meat: 5500, bone: 3450, cover: 1000, drying: 50 },
      concentration: 120,
      n: 0,
      source: 'JUDGEMENT',
      why: 'A little more breast than the pheasant of KOKO2008 and a thin skin; bone holds back and neck and the meat on them. Spread of 4.5 points.',
    },
    meat: {
      per10k: { 'bird-breast': 5090, 'bird-leg': 3820, 'bird-wing': 1090 },
      concentration: 600,
      n: 0,
      source: 'JUDGEMENT',
      why: 'As the pheasant of KOKO2008, with larger wings.',
    },
  },
};
