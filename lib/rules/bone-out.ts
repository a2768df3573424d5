import { type CutId, cutsOf } from '@/lib/cuts';
import type { Edit, InstructionLine } from '@/lib/instructions';

/** The cut that keeps a wish closest without any bone, where its target has one. */
const BONE_OUT: Partial<Readonly<Record<CutId, CutId>>> = {
  chops: 'medallions',
  'on-the-bone': 'boned-and-rolled',
  'shank-on-bone': 'diced',
  'shank-slices': 'diced',
};

/** The same wish off the bone, or null where taking the bone out leaves nothing of it, as of a rack. */
export function boneOut({ cut, target }: Pick<InstructionLine, 'cut' | 'target'>): CutId | null {
  const instead = BONE_OUT[cut];
  return instead && cutsOf(target).includes(instead) ? instead : null;
}

/** Rib meat cut from between the ribs, in place of a rack. */
export function ribMeatInstead({ id, side }: Pick<InstructionLine, 'id' | 'side'>): readonly Edit[] {
  return [
    { kind: 'remove-line', lineId: id },
    { kind: 'add-line', target: 'ribs', side, cut: 'mince' },
  ];
}
