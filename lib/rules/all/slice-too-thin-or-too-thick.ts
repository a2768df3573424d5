import { CUTS } from '@/lib/cuts';
import type { InstructionLine } from '@/lib/instructions';
import { exampleLine, exampleOrder } from '../example-order';
import { mend } from '../mend';
import { type RuleExamples, type RuleReason, type RuledOrder, defineRule } from '../rule';
import { lineWords, partOfLine, sentence, thicknessWords } from '../wording';

type Odd = { readonly line: InstructionLine; readonly asked: number; readonly nearest: number };

/** 3/8 in and 2 in, to the millimetre that a typed inch is read as. */
const THINNEST_MM = 10;
const THICKEST_MM = 51;
/** 1/2 in: a butterfly is two slices of this, joined at one edge. */
const THINNEST_BUTTERFLY_MM = 13;

function odd({ instructions }: RuledOrder): readonly Odd[] {
  return instructions.lines.flatMap((line) => {
    if (line.size.kind !== 'thickness' || CUTS[line.cut].sizing !== 'thickness') return [];
    const asked = line.size.thicknessMm;
    const thinnest = line.cut === 'butterfly' ? THINNEST_BUTTERFLY_MM : THINNEST_MM;
    const nearest = Math.min(THICKEST_MM, Math.max(thinnest, asked));
    return nearest === asked ? [] : [{ line, asked, nearest }];
  });
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const sliceTooThinOrTooThickReason: RuleReason = {
  topic: 'cutting',
  why: 'Game has little fat: a very thin slice is dry before it is brown and tears under the knife, and a very thick one is grey outside and raw within. A butterfly is cut at twice its finished thickness and opened like a book, so it needs a little more to hold together.',
  source: 'common practice, no source',
};

export const sliceTooThinOrTooThick = defineRule<Odd>({
  id: 'slice-too-thin-or-too-thick',
  severity: 'ask',
  title: 'A thickness that does not cook well',
  ground: 'trade',
  stages: ['order', 'receiving', 'cutting'],
  check: odd,
  keyOf: ({ line }) => line.id,
  place: ({ line }) => ({ kind: 'line', lineId: line.id }),
  part: ({ line }) => partOfLine(line),
  message: ({ line, asked, nearest }, { words }) => {
    const [too, most] = asked < nearest ? ['thin', 'thinnest'] : ['thick', 'thickest'];
    return `${sentence(lineWords(line, words))} at ${thicknessWords(asked, words)} would be too ${too} to cook well; ${thicknessWords(nearest, words)} is the ${most} that works.`;
  },
  suggestions: ({ line, nearest }, order) => [
    ...mend(order, {
      label: `Make it ${thicknessWords(nearest, order.words)}`,
      consequence: `${sentence(lineWords(line, order.words))}, ${thicknessWords(nearest, order.words)}${line.cut === 'butterfly' ? ' when opened' : ''}.`,
      edits: [{ kind: 'set-size', lineId: line.id, size: { kind: 'thickness', thicknessMm: nearest } }],
    }),
    ...mend(order, {
      label: 'As the butcher sees fit',
      consequence: 'The cutter chooses the thickness for the muscle.',
      edits: [{ kind: 'set-size', lineId: line.id, size: { kind: 'as-seen-fit' } }],
    }),
  ],
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const sliceTooThinOrTooThickExamples = (): RuleExamples => ({
  valid: [
    exampleOrder({ lines: [exampleLine('a', 'loin', 'medallions', { size: { kind: 'thickness', thicknessMm: 10 } })] }),
    exampleOrder({ lines: [exampleLine('a', 'topside', 'steaks', { size: { kind: 'thickness', thicknessMm: 51 } })] }),
    exampleOrder({ lines: [exampleLine('a', 'topside', 'joint', { size: { kind: 'people', people: 2 } })] }),
  ],
  invalid: [
    {
      order: exampleOrder({
        lines: [
          exampleLine('a', 'topside', 'steaks', { size: { kind: 'thickness', thicknessMm: 6 } }),
          exampleLine('b', 'loin', 'butterfly', { size: { kind: 'thickness', thicknessMm: 10 }, side: 'left' }),
        ],
      }),
      messages: [
        'Topside steaks at 1/4 in would be too thin to cook well; 3/8 in is the thinnest that works.',
        'Left loin butterfly steaks at 3/8 in would be too thin to cook well; 1/2 in is the thinnest that works.',
      ],
    },
    {
      order: exampleOrder({
        lines: [exampleLine('a', 'loin', 'chops', { size: { kind: 'thickness', thicknessMm: 60 } })],
        words: { country: 'us', unit: 'kg' },
      }),
      messages: ['Backstrap bone-in chops at 60 mm would be too thick to cook well; 51 mm is the thickest that works.'],
    },
  ],
});
