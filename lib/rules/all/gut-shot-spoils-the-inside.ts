import type { PartId } from '@/lib/carcass';
import { type Edit, type InstructionLine, PLAIN_INSTRUCTIONS } from '@/lib/instructions';
import { missingPlaces } from '../delivered';
import { exampleLine, exampleOrder } from '../example-order';
import { mend } from '../mend';
import { type RuleExamples, type RuleReason, type RuledOrder, defineRule } from '../rule';
import { joined, lineWords, partOfLine, sentence } from '../wording';

/** What lies against the opened gut: a line from it, or the organs to be kept. */
type Spoilt = { readonly of: 'line'; readonly line: InstructionLine } | { readonly of: 'organs'; readonly organs: readonly ('heart' | 'liver')[] };

const INSIDE: readonly PartId[] = ['fillet'];

function spoilt(order: RuledOrder): readonly Spoilt[] {
  const { instructions, plan } = order;
  if (!plan.forecast.facts.gutShot) return [];
  const lines = instructions.lines
    .filter((line) => (INSIDE.includes(partOfLine(line)) || line.target === 'flank') && line.cut !== 'leave-out' && missingPlaces(line, order).length === 0)
    .map((line): Spoilt => ({ of: 'line', line }));
  const organs = (['heart', 'liver'] as const).filter((item) => instructions.keep[item]);
  return organs.length > 0 ? [...lines, { of: 'organs', organs }] : lines;
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const gutShotSpoilsTheInsideReason: RuleReason = {
  topic: 'condition',
  why: 'A shot through the paunch or gut spreads what was in it over everything that lies inside: the fillets under the spine, the belly wall, heart and liver. It cannot be washed off meat; washing spreads it. The cutter takes away what was touched, and what was not is used with the rest.',
  source: 'common practice, no source',
};

export const gutShotSpoilsTheInside = defineRule<Spoilt>({
  id: 'gut-shot-spoils-the-inside',
  severity: 'stop',
  title: 'Spoilt by the gut shot',
  ground: 'safety',
  stages: ['receiving', 'cutting'],
  check: spoilt,
  keyOf: (data) => (data.of === 'line' ? data.line.id : 'organs'),
  place: (data) => (data.of === 'line' ? { kind: 'line', lineId: data.line.id } : { kind: 'field', field: 'keep' }),
  part: (data) => (data.of === 'line' ? partOfLine(data.line) : null),
  message: (data, { words }) =>
    data.of === 'line'
      ? `The animal was gut-shot, and ${lineWords(data.line, words)} would come from meat that lay against it.`
      : `The animal was gut-shot, so ${joined(data.organs)} ${data.organs.length > 1 ? 'are' : 'is'} not given out.`,
  suggestions: (data, order) =>
    data.of === 'line'
      ? mend(order, {
          label: 'Take it off the list',
          consequence: `Taken off: ${lineWords(data.line, order.words)}. What the cutter finds clean goes with what you have not named.`,
          edits: [{ kind: 'remove-line', lineId: data.line.id }],
        })
      : mend(order, {
          label: `Without ${joined(data.organs)}`,
          consequence: `${sentence(joined(data.organs))} ${data.organs.length > 1 ? 'are' : 'is'} thrown away.`,
          edits: data.organs.map((item): Edit => ({ kind: 'set-keep', item, keep: false })),
        }),
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const gutShotSpoilsTheInsideExamples = (): RuleExamples => {
  const keep = { ...PLAIN_INSTRUCTIONS.keep, heart: true, liver: true };
  const facts = { gutShot: true };
  return {
    valid: [
      exampleOrder({ lines: [exampleLine('a', 'fillet', 'whole')], instructions: { keep }, stage: 'receiving' }),
      exampleOrder({ lines: [exampleLine('a', 'loin', 'whole'), exampleLine('b', 'haunch', 'steaks')], facts, stage: 'receiving' }),
    ],
    invalid: [
      {
        order: exampleOrder({ lines: [exampleLine('a', 'fillet', 'whole'), exampleLine('b', 'flank', 'boned-and-rolled', { side: 'left' })], instructions: { keep }, facts, stage: 'receiving' }),
        messages: [
          'The animal was gut-shot, and fillet in one piece would come from meat that lay against it.',
          'The animal was gut-shot, and left flank boned, rolled and tied would come from meat that lay against it.',
          'The animal was gut-shot, so heart and liver are not given out.',
        ],
      },
    ],
  };
};
