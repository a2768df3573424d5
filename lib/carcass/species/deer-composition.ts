import type { Composition } from '../species';

/**
 * What all deer have in common: the same seams in the same places, whatever the size. A species overrides
 * what has been weighed for it.
 */
export const DEER_SEAMS: Omit<Composition, 'carcass' | 'meat'> = {
  muscles: {
    haunch: {
      per10k: { 'hind-shank': 1200, rump: 1550, topside: 2700, 'thick-flank': 2000, silverside: 1900, 'salmon-cut': 650 },
      concentration: 500,
      n: 0,
      source: 'AHDBLAMB14',
      why: 'Ratios of a lamb leg, as the nearest published seams: topside to silverside with salmon cut 1.06, topside to thick flank 1.35. Rump and shank, which that table cuts otherwise, are judgement.',
    },
    shoulder: {
      per10k: { 'fore-shank': 2200, blade: 7800 },
      concentration: 500,
      n: 0,
      source: 'JUDGEMENT',
      why: 'A fore shank is about a fifth of the boned shoulder.',
    },
    ribs: {
      per10k: { 'rib-meat': 6000, flank: 4000 },
      concentration: 300,
      n: 0,
      source: 'JUDGEMENT',
      why: 'Rib and breast meat is more than the belly flap; how much depends on where the knife goes.',
    },
  },
  bone: {
    per10k: {
      'haunch-bone': 1400,
      'hind-shank-bone': 600,
      spine: 2930,
      'shoulder-bone': 1410,
      'fore-shank-bone': 600,
      'neck-bone': 1270,
      'rib-bone': 1790,
    },
    concentration: 600,
    n: 0,
    source: 'PAREY',
    why: 'Joint weights times their bone share: haunch 16.5%, saddle 44.7%, shoulder 33%, ribs with flank 38%, neck 53%. Shank bones taken as three tenths of the limb: judgement.',
  },
  cover: {
    per10k: { 'haunch-cover': 3000, 'loin-cover': 1500, 'shoulder-cover': 2000, 'neck-cover': 1000, 'ribs-cover': 2500 },
    concentration: 200,
    n: 0,
    source: 'JUDGEMENT',
    why: 'Follows the surface of each part, more over ribs and rump where fat lies.',
  },
  sideConcentration: 2500,
};

/** Saddle meat is loin and fillet in about 86 to 14: a fillet pair of 1 to 1 1/4 lb on a deer of 50 lb boneless (common practice). */
export function meatShares(
  per10k: Readonly<{ haunch: number; saddle: number; shoulder: number; neck: number; ribs: number }>,
): Composition['meat']['per10k'] {
  const fillet = Math.round(per10k.saddle * 0.14);
  return {
    haunch: per10k.haunch,
    loin: per10k.saddle - fillet,
    fillet,
    shoulder: per10k.shoulder,
    neck: per10k.neck,
    ribs: per10k.ribs,
  };
}
