import { keepsBone } from '@/lib/cuts';
import type { InstructionLine } from '@/lib/instructions';
import { withoutItsBone } from '../bone-out';
import { isBoneMissing, missingPlaces } from '../delivered';
import { exampleLine, exampleOrder } from '../example-order';
import { mend } from '../mend';
import { type RuleExamples, type RuleReason, type RuledOrder, defineRule } from '../rule';
import { lineWords, partOfLine } from '../wording';

function boneIn(order: RuledOrder): readonly InstructionLine[] {
  const { boneless, lines } = order.instructions;
  if (!boneless) return [];
  return lines.filter((line) => keepsBone(line.cut) && missingPlaces(line, order).length === 0 && !isBoneMissing(line, order));
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const boneInABonelessOrderReason: RuleReason = {
  topic: 'cutting',
  why: 'Chops, racks, shank slices and anything called whole on the bone hold bone, and ribs are nothing but. An order that is to hold no bone cannot have them; the same muscle can nearly always be had off the bone instead.',
  source: 'common practice, no source',
};

export const boneInABonelessOrder = defineRule<InstructionLine>({
  id: 'bone-in-a-boneless-order',
  severity: 'stop',
  title: 'A bone in an order without bone',
  ground: 'trade',
  stages: ['order', 'receiving', 'cutting'],
  check: boneIn,
  keyOf: (line) => line.id,
  place: (line) => ({ kind: 'line', lineId: line.id }),
  part: partOfLine,
  cause: (line) => `bone of ${line.id}`,
  message: (line, { words }) => `You asked for no bone in any packet: ${lineWords(line, words)} would hold one.`,
  suggestions: (line, order) => [
    ...withoutItsBone(line, order),
    ...mend(order, {
      label: 'Bone is fine after all',
      consequence: 'Cuts on the bone stay as you wrote them; “no bone” is taken off.',
      edits: [{ kind: 'set-boneless', boneless: false }],
    }),
  ],
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const boneInABonelessOrderExamples = (): RuleExamples => ({
  valid: [
    exampleOrder({ lines: [exampleLine('a', 'loin', 'chops')] }),
    exampleOrder({ lines: [exampleLine('a', 'loin', 'medallions'), exampleLine('b', 'shoulder', 'boned-and-rolled')], instructions: { boneless: true } }),
  ],
  invalid: [
    {
      order: exampleOrder({
        lines: [exampleLine('a', 'loin', 'chops'), exampleLine('b', 'hind-shank', 'shank-slices', { side: 'left' }), exampleLine('c', 'rib-rack', 'rack')],
        instructions: { boneless: true },
        words: { country: 'us', unit: 'lb' },
      }),
      messages: [
        'You asked for no bone in any packet: backstrap bone-in chops would hold one.',
        'You asked for no bone in any packet: left hind shank in sawn slices would hold one.',
        'You asked for no bone in any packet: rib rack on the bone would hold one.',
      ],
    },
  ],
});
