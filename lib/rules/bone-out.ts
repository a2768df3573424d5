import { type CutId, cutsOf } from '@/lib/cuts';
import type { InstructionLine } from '@/lib/instructions';
import { mend } from './mend';
import type { RuledOrder, Suggestion } from './rule';
import { lineWords, sentence } from './wording';

/** The cut that keeps a wish closest without any bone, where its target has one. */
const BONE_OUT: Partial<Readonly<Record<CutId, CutId>>> = {
  chops: 'medallions',
  'on-the-bone': 'boned-and-rolled',
  'shank-on-bone': 'diced',
  'shank-slices': 'diced',
};

/** The nearest wish without its bone: the same meat boned, the rib meat of a rack, or nothing where no such cut is left. */
export function withoutItsBone(line: InstructionLine, order: RuledOrder): readonly Suggestion[] {
  const { words } = order;
  const instead = BONE_OUT[line.cut];
  if (instead && cutsOf(line.target).includes(instead)) {
    return mend(order, {
      label: `${sentence(lineWords({ ...line, cut: instead }, words))} instead`,
      consequence: 'The same meat, taken off the bone with the knife.',
      edits: [{ kind: 'set-cut', lineId: line.id, cut: instead }],
    });
  }
  if (line.cut === 'rack') {
    return mend(order, {
      label: words.country === 'us' ? 'Grind the rib meat' : 'Rib meat to mince',
      consequence: 'The meat is cut from between the ribs; the bones stay here.',
      edits: [
        { kind: 'remove-line', lineId: line.id },
        { kind: 'add-line', target: 'ribs', side: line.side, cut: 'mince' },
      ],
    });
  }
  return takenOff(line, order);
}

/** The line goes, and its meat with what nobody has named. */
export function takenOff(line: InstructionLine, order: RuledOrder): readonly Suggestion[] {
  return mend(order, {
    label: 'Take it off the list',
    consequence: `Taken off: ${lineWords(line, order.words)}; the meat goes with what you have not named.`,
    edits: [{ kind: 'remove-line', lineId: line.id }],
  });
}
