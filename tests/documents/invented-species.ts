import type { SpeciesFigures } from '@/lib/carcass';

/** A deer of round figures, so that sentences worked by hand stay true whatever is learnt of real ones. */
export const inventedDeer: SpeciesFigures = {
  id: 'invented-deer',
  plan: 'four-legged',
  name: 'white-tailed deer',
  maleName: 'buck',
  femaleName: 'doe',
  youngName: 'fawn',
  trophy: { name: 'antlers', on: 'male' },
  cooking: 'game',
  plausibleLiveGrams: { from: 5_000, to: 400_000, source: 'MEMORY' },
  fieldDressedPerLive: { mean: 0.8, sd: 0.02 },
  fieldDressed: { per10k: { 'lower-legs': 300, head: 500, hide: 1_200, hanging: 8_000 }, concentration: 200 },
  girth: [],
  typicalWeights: [
    { sex: 'male', ageClass: 'adult', basis: 'field-dressed', grams: { mean: 68_000, sd: 9_000 } },
    { sex: 'female', ageClass: 'adult', basis: 'field-dressed', grams: { mean: 52_000, sd: 6_000 } },
  ],
  composition: {
    carcass: { per10k: { meat: 6_000, bone: 2_500, cover: 1_250, drying: 250 }, concentration: 200 },
    meat: { per10k: { haunch: 4_500, loin: 1_300, fillet: 200, shoulder: 2_000, neck: 800, ribs: 1_200 }, concentration: 1_000 },
    muscles: {
      haunch: { per10k: { 'hind-shank': 1_200, rump: 1_600, topside: 2_700, 'thick-flank': 2_000, silverside: 1_900, 'salmon-cut': 600 }, concentration: 500 },
      shoulder: { per10k: { 'fore-shank': 2_000, blade: 8_000 }, concentration: 500 },
      ribs: { per10k: { 'rib-meat': 6_000, flank: 4_000 }, concentration: 300 },
    },
    bone: {
      per10k: { 'haunch-bone': 1_500, 'hind-shank-bone': 500, spine: 3_000, 'shoulder-bone': 1_500, 'fore-shank-bone': 500, 'neck-bone': 1_000, 'rib-bone': 2_000 },
      concentration: 600,
    },
    cover: { per10k: { 'haunch-cover': 3_000, 'loin-cover': 1_500, 'shoulder-cover': 2_000, 'neck-cover': 1_000, 'ribs-cover': 2_500 }, concentration: 200 },
    sideConcentration: 2_500,
  },
};

/** A bird of round figures. */
export const inventedBird: SpeciesFigures = {
  ...inventedDeer,
  id: 'invented-bird',
  plan: 'bird',
  name: 'pheasant',
  maleName: 'cock',
  femaleName: 'hen',
  youngName: 'poult',
  trophy: null,
  cooking: 'birds-bear-boar',
  composition: {
    carcass: { per10k: { meat: 5_200, bone: 3_500, cover: 1_250, drying: 50 }, concentration: 150 },
    meat: { per10k: { 'bird-breast': 5_000, 'bird-leg': 4_000, 'bird-wing': 1_000 }, concentration: 600 },
    muscles: {
      'bird-breast': { per10k: { 'bird-breast': 8_000, 'bird-inner-fillet': 2_000 }, concentration: 400 },
      'bird-leg': { per10k: { 'bird-thigh': 6_000, 'bird-drumstick': 4_000 }, concentration: 400 },
    },
    bone: { per10k: { 'bird-breast-bone': 1_500, 'bird-leg-bone': 1_500, 'bird-wing-bone': 1_000, 'bird-frame-bone': 6_000 }, concentration: 300 },
    cover: { per10k: { 'bird-breast-skin': 3_000, 'bird-leg-skin': 3_000, 'bird-wing-skin': 1_000, 'bird-frame-skin': 3_000 }, concentration: 150 },
    sideConcentration: 2_500,
  },
};
