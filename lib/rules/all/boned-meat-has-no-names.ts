import { minceName } from '@/lib/cuts';
import type { InstructionLine } from '@/lib/instructions';
import { isNamelessMeat } from '../delivered';
import { exampleLine, exampleOrder } from '../example-order';
import { mend } from '../mend';
import { type RuleExamples, type RuleReason, defineRule } from '../rule';
import { joined, lineWords } from '../wording';

type Nameless = { readonly lines: readonly InstructionLine[] };

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const bonedMeatHasNoNamesReason: RuleReason = {
  topic: 'condition',
  why: 'Once an animal is boned out and lies in a cooler, a topside and a silverside look alike, and pieces are cut across their seams. The shop can mince or dice such meat, or sort out what the hunter has bagged and marked piece by piece.',
  source: 'common practice, no source',
};

export const bonedMeatHasNoNames = defineRule<Nameless>({
  id: 'boned-meat-has-no-names',
  severity: 'ask',
  title: 'Boned meat has no names',
  ground: 'trade',
  stages: ['order', 'receiving', 'cutting'],
  check: (order) => {
    const lines = order.instructions.lines.filter((line) => isNamelessMeat(line, order));
    return lines.length > 0 ? [{ lines }] : [];
  },
  keyOf: () => 'lines',
  place: () => ({ kind: 'field', field: 'animal' }),
  part: () => null,
  message: ({ lines }, { words }) =>
    `The meat comes boned out, where ${joined(lines.map((line) => lineWords(line, words)))} cannot be told from the rest.`,
  suggestions: ({ lines }, order) => {
    const removed = lines.map((line) => ({ kind: 'remove-line' as const, lineId: line.id }));
    const mince = minceName(order.words.country);
    return [
      ...mend(order, {
        label: order.words.country === 'us' ? 'Grind it' : 'Mince it',
        consequence: `These lines are taken off, and what you have not named becomes ${mince}.`,
        edits: [...removed, { kind: 'set-rest', rest: 'mince' }],
      }),
      ...mend(order, {
        label: 'Dice it for stewing',
        consequence: `These lines are taken off, and what you have not named becomes stewing meat, its trimmings ${mince}.`,
        edits: [...removed, { kind: 'set-rest', rest: 'stew' }],
      }),
    ];
  },
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const bonedMeatHasNoNamesExamples = (): RuleExamples => ({
  valid: [
    exampleOrder({ facts: { form: 'boned-out' } }),
    exampleOrder({ lines: [exampleLine('a', 'haunch', 'diced')], facts: { form: 'boned-out' } }),
    exampleOrder({ lines: [exampleLine('a', 'topside', 'joint')], facts: { form: 'quartered' } }),
  ],
  invalid: [
    {
      order: exampleOrder({
        lines: [exampleLine('a', 'topside', 'steaks'), exampleLine('b', 'rump', 'joint'), exampleLine('c', 'shoulder', 'mince')],
        facts: { form: 'boned-out' },
      }),
      messages: ['The meat comes boned out, where topside steaks and rump joint cannot be told from the rest.'],
    },
  ],
});
