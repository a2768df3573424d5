import type { Composition } from '../species';
import { judged } from './typical-weight';

/**
 * What birds have in common, plucked and drawn. Back and neck carry meat that nobody cuts out, so it counts as bone of the frame;
 * cover is the skin and the fat under it. A species overrides what has been weighed for it.
 */
export const BIRD_SEAMS: Omit<Composition, 'carcass' | 'meat'> = {
  muscles: {
    'bird-breast': {
      per10k: { 'bird-breast': 8200, 'bird-inner-fillet': 1800 },
      concentration: 400,
      ...judged('The inner fillet is under a fifth of the breast.'),
    },
    'bird-leg': {
      per10k: { 'bird-thigh': 6000, 'bird-drumstick': 4000 },
      concentration: 400,
      ...judged('A thigh is half as heavy again as a drumstick.'),
    },
  },
  bone: {
    per10k: { 'bird-breast-bone': 1600, 'bird-leg-bone': 1500, 'bird-wing-bone': 900, 'bird-frame-bone': 6000 },
    concentration: 300,
    ...judged('Back, ribs and neck with what stays on them outweigh the keel and the limbs.'),
  },
  cover: {
    per10k: { 'bird-breast-skin': 3200, 'bird-leg-skin': 2700, 'bird-wing-skin': 1200, 'bird-frame-skin': 2900 },
    concentration: 150,
    ...judged('Follows the surface of each part.'),
  },
  sideConcentration: 2500,
};
