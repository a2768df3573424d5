import { CUTS, cutsOf } from '@/lib/cuts';
import type { Edit, InstructionLine } from '@/lib/instructions';
import { exampleLine, exampleOrder } from '../example-order';
import { mend } from '../mend';
import { type RuleExamples, type RuleReason, type RuledOrder, defineRule } from '../rule';

type Frozen = { readonly lines: readonly InstructionLine[] };

/** Cuts that are sawn or stay whole as they came need no seams. */
function seamed({ cut }: InstructionLine): boolean {
  return CUTS[cut].bone === 'out' && cut !== 'mince' && cut !== 'diced' && cut !== 'leave-out';
}

function frozen({ instructions, circumstances: { conditions } }: RuledOrder): readonly Frozen[] {
  const lines = conditions.includes('frozen') ? instructions.lines.filter(seamed) : [];
  return lines.length > 0 ? [{ lines }] : [];
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const frozenCannotBeSeamedReason: RuleReason = {
  topic: 'cutting',
  why: 'A carcass frozen through has no seams a knife can find: it has to thaw slowly in the cold, which takes days and room, before it can be boned. Meat that was frozen once is soft and wet, and packets frozen a second time lose juice. Ground or stewed, nobody notices.',
  source: 'common practice, no source',
};

export const frozenCannotBeSeamed = defineRule<Frozen>({
  id: 'frozen-cannot-be-seamed',
  severity: 'ask',
  title: 'Frozen through',
  ground: 'trade',
  stages: ['receiving', 'cutting'],
  check: frozen,
  keyOf: () => 'frozen',
  place: () => ({ kind: 'field', field: 'animal' }),
  part: () => null,
  message: () => 'It came in frozen through, and steaks and joints can be cut only once it has thawed, which takes days and costs juice.',
  suggestions: ({ lines }, order) => [
    ...mend(order, {
      label: 'Thaw it, then cut as I asked',
      consequence: 'It waits in the cooler until it has thawed; packets are frozen a second time.',
      edits: [{ kind: 'agree', key: 'frozen-cannot-be-seamed|frozen' }],
    }),
    ...mend(order, {
      label: order.words.country === 'us' ? 'Stew meat instead' : 'Dice it instead',
      consequence: 'Every steak and joint on your list is diced for stewing.',
      edits: lines.map((line): Edit => (cutsOf(line.target).includes('diced') ? { kind: 'set-cut', lineId: line.id, cut: 'diced' } : { kind: 'remove-line', lineId: line.id })),
    }),
  ],
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const frozenCannotBeSeamedExamples = (): RuleExamples => {
  const circumstances = { conditions: ['frozen'] } as const;
  return {
    valid: [
      exampleOrder({ stage: 'receiving', lines: [exampleLine('a', 'haunch', 'diced'), exampleLine('b', 'shoulder', 'on-the-bone')], circumstances }),
      exampleOrder({ stage: 'receiving', lines: [exampleLine('a', 'haunch', 'steaks')] }),
    ],
    invalid: [
      {
        order: exampleOrder({ stage: 'receiving', lines: [exampleLine('a', 'haunch', 'steaks'), exampleLine('b', 'saddle', 'boned-and-rolled')], circumstances }),
        messages: ['It came in frozen through, and steaks and joints can be cut only once it has thawed, which takes days and costs juice.'],
      },
    ],
  };
};
