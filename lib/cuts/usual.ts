import type { PartId } from '@/lib/carcass';
import type { CutId } from './cuts';
import type { TargetId } from './targets';

/**
 * What a shop does with each part when nobody says otherwise. The cutting sheet prints these lightly and
 * everything else as a departure. Common practice, no source; shops will set their own.
 */
export const USUAL_CUTS: Readonly<Record<PartId, readonly { readonly target: TargetId; readonly cut: CutId }[]>> = {
  fillet: [{ target: 'fillet', cut: 'whole' }],
  loin: [{ target: 'loin', cut: 'medallions' }],
  haunch: [
    { target: 'topside', cut: 'joint' },
    { target: 'thick-flank', cut: 'joint' },
    { target: 'silverside', cut: 'steaks' },
    { target: 'rump', cut: 'steaks' },
  ],
  shoulder: [
    { target: 'shoulder', cut: 'mince' },
    { target: 'blade', cut: 'mince' },
    { target: 'fore-shank', cut: 'mince' },
  ],
  neck: [{ target: 'neck', cut: 'mince' }],
  ribs: [
    { target: 'ribs', cut: 'mince' },
    { target: 'flank', cut: 'mince' },
  ],
  'bird-breast': [{ target: 'bird-breast', cut: 'whole' }],
  'bird-leg': [{ target: 'bird-leg', cut: 'on-the-bone' }],
  'bird-wing': [{ target: 'bird-wing', cut: 'leave-out' }],
  'bird-frame': [],
};

/** Whether a cut is what the shop does anyway. */
export function isUsual(part: PartId, target: TargetId, cut: CutId): boolean {
  return USUAL_CUTS[part].some((usual) => usual.target === target && usual.cut === cut);
}
