import type { Species } from '../species';
import { meatShares } from './deer-composition';
import { judged, kilos, typical } from './typical-weight';

export const wildBoar: Species = {
  id: 'wild-boar',
  plan: 'four-legged',
  name: 'wild boar',
  maleName: 'boar',
  femaleName: 'sow',
  youngName: 'piglet',
  trophy: { name: 'tusks', on: 'male' },
  cooking: 'birds-bear-boar',
  plausibleLiveGrams: { from: 5_000, to: 350_000, source: 'MEMORY' },
  fieldDressedPerLive: { mean: 0.79, sd: 0.03, n: 0, source: 'JUDGEMENT', why: 'A pig has no rumen, so it loses less than a deer; feral hogs are the same animal.' },
  fieldDressed: {
    per10k: { 'lower-legs': 250, head: 900, hide: 1150, hanging: 7700 },
    concentration: 196,
    n: 0,
    source: 'JUDGEMENT',
    why: 'A large head and a thick hide with what fat sticks to it, spread 3 points.',
  },
  girth: [],
  typicalWeights: [
    typical('male', 'adult', 'field-dressed', kilos(80, 22), judged('Differs widely by place; the 94.7 kg of the one boar in WEIDBOAR1 lies within.')),
    typical('female', 'adult', 'field-dressed', kilos(58, 13), judged('Seven tenths of a boar.')),
    typical('male', 'yearling', 'field-dressed', kilos(42, 10), judged('Half a boar.')),
    typical('female', 'yearling', 'field-dressed', kilos(39, 9), judged('Two thirds of a sow.')),
    typical('male', 'young', 'field-dressed', kilos(17, 6), judged('Piglets come at every time of the year.')),
    typical('female', 'young', 'field-dressed', kilos(16, 6), judged('Piglets come at every time of the year.')),
  ],
  composition: {
    carcass: {
      per10k: { meat: 6100, bone: 1950, cover: 1700, drying: 250 },
      concentration: 148,
      n: 0,
      source: 'JUDGEMENT',
      why: 'More fat and rind than a deer and finer bone; spread of 4 points, since fat differs with the year of acorns.',
    },
    meat: {
      per10k: meatShares({ haunch: 3650, saddle: 1650, shoulder: 2350, neck: 950, ribs: 1400 }),
      concentration: 600,
      n: 0,
      source: 'JUDGEMENT',
      why: 'Shorter hind legs, heavier shoulders and belly than a deer, as in a lean pig. No ratio of a deer was taken over but fillet to loin.',
    },
    muscles: {
      haunch: {
        per10k: { 'hind-shank': 900, rump: 1400, topside: 2700, 'thick-flank': 1900, silverside: 2200, 'salmon-cut': 900 },
        concentration: 300,
        n: 0,
        source: 'JUDGEMENT',
        why: 'The seams of a lean ham, not those of a deer: a short shank and a larger silverside and salmon cut.',
      },
      shoulder: {
        per10k: { 'fore-shank': 1600, blade: 8400 },
        concentration: 300,
        n: 0,
        source: 'JUDGEMENT',
        why: 'A short fore shank under a broad shoulder.',
      },
      ribs: {
        per10k: { 'rib-meat': 5000, flank: 5000 },
        concentration: 300,
        n: 0,
        source: 'JUDGEMENT',
        why: 'A thick belly: as much as lies on the ribs.',
      },
    },
    bone: {
      per10k: { 'haunch-bone': 1500, 'hind-shank-bone': 600, spine: 2800, 'shoulder-bone': 1500, 'fore-shank-bone': 700, 'neck-bone': 1100, 'rib-bone': 1800 },
      concentration: 400,
      n: 0,
      source: 'JUDGEMENT',
      why: 'Near a deer, with stouter fore legs and a shorter neck.',
    },
    cover: {
      per10k: { 'haunch-cover': 2500, 'loin-cover': 2200, 'shoulder-cover': 1900, 'neck-cover': 900, 'ribs-cover': 2500 },
      concentration: 150,
      n: 0,
      source: 'JUDGEMENT',
      why: 'Back fat over the whole loin, and the belly.',
    },
    sideConcentration: 2500,
  },
};
