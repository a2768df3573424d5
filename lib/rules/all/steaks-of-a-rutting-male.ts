import { cutsOf } from '@/lib/cuts';
import type { Edit, InstructionLine } from '@/lib/instructions';
import { exampleLine, exampleOrder } from '../example-order';
import { mend } from '../mend';
import { type RuleExamples, type RuleReason, type RuledOrder, defineRule } from '../rule';
import { cutWords, joined, lineWords } from '../wording';

type Tough = { readonly lines: readonly InstructionLine[]; readonly name: string };

function tough({ instructions, circumstances, plan }: RuledOrder): readonly Tough[] {
  if (!circumstances.conditions.includes('rutting')) return [];
  const lines = instructions.lines.filter(({ target, cut }) => cut === 'steaks' && cutsOf(target).includes('tenderised-steaks'));
  return lines.length > 0 ? [{ lines, name: plan.forecast.species.maleName }] : [];
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const steaksOfARuttingMaleReason: RuleReason = {
  topic: 'cutting',
  why: 'An old male in the rut has run, fought and fasted for weeks; his leg muscles are coarse and dark, and the taste is strong. Steaks of them are easier to eat when the fibres are broken by the tenderiser, and ground or stewed the difference goes away.',
  source: 'common practice, no source',
};

export const steaksOfARuttingMale = defineRule<Tough>({
  id: 'steaks-of-a-rutting-male',
  severity: 'note',
  title: 'Steaks from a male in the rut',
  ground: 'trade',
  stages: ['receiving', 'cutting'],
  check: tough,
  keyOf: () => 'steaks',
  place: ({ lines: [first] }) => (first ? { kind: 'line', lineId: first.id } : { kind: 'field', field: 'animal' }),
  part: () => null,
  message: ({ lines, name }, { words }) => `This ${name} smells of the rut, and ${joined(lines.map((line) => lineWords(line, words)))} will be tough unless tenderised.`,
  suggestions: ({ lines }, order) =>
    mend(order, {
      label: `All as ${cutWords('tenderised-steaks', order.words)}`,
      consequence: 'The same steaks, run through the tenderiser.',
      edits: lines.map((line): Edit => ({ kind: 'set-cut', lineId: line.id, cut: 'tenderised-steaks' })),
    }),
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const steaksOfARuttingMaleExamples = (): RuleExamples => {
  const lines = [exampleLine('a', 'topside', 'steaks'), exampleLine('b', 'loin', 'steaks')];
  const facts = { sex: 'male' } as const;
  return {
    valid: [exampleOrder({ lines, facts, stage: 'receiving' }), exampleOrder({ facts, stage: 'receiving', circumstances: { conditions: ['rutting'] } })],
    invalid: [
      {
        order: exampleOrder({ lines, facts, stage: 'receiving', circumstances: { conditions: ['rutting'] } }),
        messages: ['This buck smells of the rut, and topside steaks will be tough unless tenderised.'],
      },
    ],
  };
};
