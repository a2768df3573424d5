import { type InstructionLine, PLAIN_INSTRUCTIONS } from '@/lib/instructions';
import { exampleLine, exampleOrder } from '../example-order';
import { mend } from '../mend';
import { type RuleExamples, type RuleReason, type RuledOrder, defineRule } from '../rule';
import { lineWords, sentence } from '../wording';

const CAPE = { ...PLAIN_INSTRUCTIONS.keep, cape: true, taxidermist: 'Nyberg' };

/** A neck in one piece, from an animal whose head and neck skin go to a taxidermist. */
function shortened({ instructions: { keep, lines } }: RuledOrder): readonly InstructionLine[] {
  return keep.cape ? lines.filter(({ target, cut }) => target === 'neck' && (cut === 'on-the-bone' || cut === 'boned-and-rolled')) : [];
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const capeShortensTheNeckReason: RuleReason = {
  topic: 'trophy',
  why: 'Where the head goes to a taxidermist on its cape, the neck is cut through below it and a piece of neck stays with the head. What is left makes a shorter joint, sometimes only enough to dice.',
  source: 'common practice, no source',
};

export const capeShortensTheNeck = defineRule<InstructionLine>({
  id: 'cape-shortens-the-neck',
  severity: 'ask',
  title: 'A neck joint and a cape',
  ground: 'trade',
  stages: ['order', 'receiving', 'cutting'],
  check: shortened,
  keyOf: (line) => line.id,
  place: (line) => ({ kind: 'line', lineId: line.id }),
  part: () => 'neck',
  message: (line, { words }) => `A cape is to be kept, so part of the neck stays with the head and ${lineWords(line, words)} comes out shorter.`,
  suggestions: (line, order) => [
    ...mend(order, {
      label: 'A shorter piece is fine',
      consequence: 'The cape comes first; the neck is cut from what is left.',
      edits: [{ kind: 'agree', key: `cape-shortens-the-neck|${line.id}` }],
    }),
    ...mend(order, {
      label: sentence(lineWords({ ...line, cut: 'diced' }, order.words)),
      consequence: 'In pieces it does not matter how long the neck is.',
      edits: [{ kind: 'set-cut', lineId: line.id, cut: 'diced' }],
    }),
  ],
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const capeShortensTheNeckExamples = (): RuleExamples => ({
  valid: [
    exampleOrder({ lines: [exampleLine('a', 'neck', 'boned-and-rolled')] }),
    exampleOrder({ lines: [exampleLine('a', 'neck', 'diced')], instructions: { keep: CAPE } }),
  ],
  invalid: [
    {
      order: exampleOrder({ lines: [exampleLine('a', 'neck', 'boned-and-rolled')], instructions: { keep: CAPE } }),
      messages: ['A cape is to be kept, so part of the neck stays with the head and neck boned, rolled and tied comes out shorter.'],
    },
  ],
});
