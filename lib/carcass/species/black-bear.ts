import type { Species } from '../species';
import { meatShares } from './deer-composition';
import { girthRule, girthTable } from './girth-line';
import { judged, pounds, typical } from './typical-weight';

export const blackBear: Species = {
  id: 'black-bear',
  plan: 'four-legged',
  name: 'black bear',
  maleName: 'boar',
  femaleName: 'sow',
  youngName: 'cub',
  trophy: null,
  cooking: 'birds-bear-boar',
  plausibleLiveGrams: { from: 12_000, to: 400_000, source: 'MEMORY' },
  fieldDressedPerLive: { mean: 0.84, sd: 0.03, n: 1, source: 'NJBEAR', why: 'Live over field-dressed is at least 1.152 in one bear, so at most 86.8%; mean and spread are judgement.' },
  fieldDressed: {
    per10k: { 'lower-legs': 450, head: 500, hide: 1400, hanging: 7650 },
    concentration: 111,
    n: 0,
    source: 'JUDGEMENT',
    why: 'Paws, head and a heavy hide with the fat that comes away with it, spread 4 points.',
  },
  girth: [
    girthRule(['yearling', 'adult', 'unknown'], 'live', girthTable([[30, 108], [40, 225], [50, 385], [60, 588]]), {
      cv: 0.14,
      n: 0,
      source: 'PABEAR',
      why: 'A chart of 108, 225, 385 and 588 lb live at 30, 40, 50 and 60 in; it does not tell ages, and no cub is taken from it; scatter by judgement, as autumn fat differs.',
    }),
  ],
  typicalWeights: [
    typical('male', 'adult', 'field-dressed', pounds(257, 80), { n: 592, source: 'NJBEAR', why: 'Mean of males in a season of 592 bears of both sexes; spread is judgement.' }),
    typical('female', 'adult', 'field-dressed', pounds(179, 45), { n: 592, source: 'NJBEAR', why: 'Mean of females in a season of 592 bears of both sexes; spread is judgement.' }),
    typical('male', 'yearling', 'field-dressed', pounds(95, 25), judged('Under half of a grown male.')),
    typical('female', 'yearling', 'field-dressed', pounds(85, 20), judged('Half of a grown female.')),
    typical('male', 'young', 'field-dressed', pounds(48, 12), judged('A cub of its first autumn.')),
    typical('female', 'young', 'field-dressed', pounds(44, 12), judged('A cub of its first autumn.')),
  ],
  composition: {
    carcass: {
      per10k: { meat: 4100, bone: 2150, cover: 3500, drying: 250 },
      concentration: 66,
      n: 0,
      source: 'BROCHU',
      why: 'A butcher gets 40 to 50 lb of a bear of 200 to 250 lb, 20% of live; his figure for deer is three quarters of what others weighed, so a bear is taken at 26%. A third of it is autumn fat: judgement, spread of 6 points.',
    },
    meat: {
      per10k: meatShares({ haunch: 3700, saddle: 1350, shoulder: 2600, neck: 850, ribs: 1500 }),
      concentration: 600,
      n: 0,
      source: 'JUDGEMENT',
      why: 'Strong fore legs and a flat loin; no joint of a bear has been weighed. No ratio of a deer was taken over but fillet to loin.',
    },
    muscles: {
      haunch: {
        per10k: { 'hind-shank': 1300, rump: 1500, topside: 2500, 'thick-flank': 1900, silverside: 2000, 'salmon-cut': 800 },
        concentration: 300,
        n: 0,
        source: 'JUDGEMENT',
        why: 'No seams of a bear have been published; a thick shank and the rest evenly.',
      },
      shoulder: {
        per10k: { 'fore-shank': 2400, blade: 7600 },
        concentration: 300,
        n: 0,
        source: 'JUDGEMENT',
        why: 'A strong forearm.',
      },
      ribs: {
        per10k: { 'rib-meat': 5500, flank: 4500 },
        concentration: 300,
        n: 0,
        source: 'JUDGEMENT',
        why: 'Between a deer and a boar.',
      },
    },
    bone: {
      per10k: { 'haunch-bone': 1500, 'hind-shank-bone': 800, spine: 2500, 'shoulder-bone': 1600, 'fore-shank-bone': 900, 'neck-bone': 900, 'rib-bone': 1800 },
      concentration: 400,
      n: 0,
      source: 'JUDGEMENT',
      why: 'Stout limbs and a short neck.',
    },
    cover: {
      per10k: { 'haunch-cover': 3200, 'loin-cover': 2300, 'shoulder-cover': 1500, 'neck-cover': 600, 'ribs-cover': 2400 },
      concentration: 150,
      n: 0,
      source: 'JUDGEMENT',
      why: 'Fat lies over rump, back and belly.',
    },
    sideConcentration: 2500,
  },
};
