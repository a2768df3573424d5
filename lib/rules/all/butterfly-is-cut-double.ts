import type { InstructionLine } from '@/lib/instructions';
import { exampleLine, exampleOrder } from '../example-order';
import { type RuleExamples, type RuleReason, defineRule } from '../rule';
import { lineWords, partOfLine, sentence, thicknessWords } from '../wording';

type Butterfly = { readonly line: InstructionLine; readonly thicknessMm: number };

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const butterflyIsCutDoubleReason: RuleReason = {
  topic: 'cutting',
  why: 'A butterfly steak is cut twice as thick as it is fried: the knife goes in, splits it nearly through, and it is opened like a book. The thickness on the order is the opened one, so a loin gives half as many of them as of medallions of that size.',
  source: 'common practice, no source',
};

export const butterflyIsCutDouble = defineRule<Butterfly>({
  id: 'butterfly-is-cut-double',
  severity: 'note',
  title: 'A butterfly is cut double',
  ground: 'trade',
  stages: ['order'],
  check: ({ instructions }) =>
    instructions.lines.flatMap((line) => (line.cut === 'butterfly' && line.size.kind === 'thickness' ? [{ line, thicknessMm: line.size.thicknessMm }] : [])),
  keyOf: ({ line }) => line.id,
  place: ({ line }) => ({ kind: 'line', lineId: line.id }),
  part: ({ line }) => partOfLine(line),
  message: ({ line, thicknessMm }, { words }) =>
    `${sentence(lineWords(line, words))}: ${thicknessWords(thicknessMm, words)} is the opened steak, which is cut twice as thick and split.`,
  noSuggestionBecause: 'It only says how the figure is read; another thickness is chosen at the line.',
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const butterflyIsCutDoubleExamples = (): RuleExamples => ({
  valid: [exampleOrder({ lines: [exampleLine('a', 'loin', 'butterfly')] }), exampleOrder({ lines: [exampleLine('a', 'loin', 'medallions', { size: { kind: 'thickness', thicknessMm: 25 } })] })],
  invalid: [
    {
      order: exampleOrder({ lines: [exampleLine('a', 'loin', 'butterfly', { size: { kind: 'thickness', thicknessMm: 25 } })] }),
      messages: ['Loin butterfly steaks: 1 in is the opened steak, which is cut twice as thick and split.'],
    },
  ],
});
