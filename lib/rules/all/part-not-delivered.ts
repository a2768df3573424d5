import type { Place } from '@/lib/carcass';
import { type CutId, TARGETS, partName } from '@/lib/cuts';
import { type InstructionLine, placesOfLine } from '@/lib/instructions';
import { isBoneMissing, missingPlaces, soundSide } from '../delivered';
import { exampleLine, exampleOrder } from '../example-order';
import { mend } from '../mend';
import { type RuleExamples, type RuleReason, type RuledOrder, type Suggestion, defineRule } from '../rule';
import { lineWords, partOfLine, partsNoun, sentence } from '../wording';

/** A line cut from something that did not come: the meat at these places, or only the bone it would keep. */
type Absent = { readonly line: InstructionLine; readonly places: readonly Place[] };

const WITHOUT_BONE: Partial<Readonly<Record<CutId, CutId>>> = { chops: 'medallions' };

function absent(order: RuledOrder): readonly Absent[] {
  if (order.circumstances.form === 'boned-out') {
    return order.instructions.lines.flatMap((line) => {
      const places = missingPlaces(line, order);
      return places.length > 0 && (line.cut === 'diced' || line.cut === 'mince') ? [{ line, places }] : [];
    });
  }
  return order.instructions.lines.flatMap((line) => {
    const places = missingPlaces(line, order);
    return places.length > 0 || isBoneMissing(line, order) ? [{ line, places }] : [];
  });
}

function suggestions({ line, places }: Absent, order: RuledOrder): readonly Suggestion[] {
  const { words } = order;
  const side = places.length > 0 ? soundSide(line, places, order) : line.side;
  return [
    ...(side ? fromThere({ ...line, side }, line, order) : []),
    ...mend(order, {
      label: 'Take it off the list',
      consequence: `Taken off: ${lineWords(line, words)}.`,
      edits: [{ kind: 'remove-line', lineId: line.id }],
    }),
  ];
}

/** The line from a side that came, and without the bone where that did not. */
function fromThere(there: InstructionLine, line: InstructionLine, order: RuledOrder): readonly Suggestion[] {
  const cut = isBoneMissing(there, order) ? WITHOUT_BONE[line.cut] : line.cut;
  if (!cut) return [];
  const wish = sentence(lineWords({ ...there, cut }, order.words));
  const isMoved = there.side !== line.side;
  return mend(order, {
    label: cut === line.cut ? `${line.side === 'both' ? 'Only' : 'Take it'} from the ${there.side}` : `${wish} instead`,
    consequence: cut === line.cut ? `${wish}.` : 'The same meat, without the bone.',
    edits: [
      ...(isMoved ? [{ kind: 'set-side' as const, lineId: line.id, side: there.side }] : []),
      ...(cut === line.cut ? [] : [{ kind: 'set-cut' as const, lineId: line.id, cut }]),
    ],
  });
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const partNotDeliveredReason: RuleReason = {
  topic: 'condition',
  why: 'Fillets are often taken out in the field, and quarters come without neck, ribs and spine. What did not come cannot be packed, and a fillet that is missing at the end is later called stolen; so it is said now, and what came is ticked off at the counter.',
  source: 'common practice, no source; what quarters hold: Texas 42.001(8)',
};

export const partNotDelivered = defineRule<Absent>({
  id: 'part-not-delivered',
  severity: 'ask',
  title: 'It is not with this animal',
  ground: 'trade',
  stages: ['order', 'receiving', 'cutting'],
  check: absent,
  keyOf: ({ line }) => line.id,
  place: ({ line }) => ({ kind: 'line', lineId: line.id }),
  part: ({ line }) => partOfLine(line),
  message: ({ line, places }, { words }) => {
    const part = partOfLine(line);
    if (places.length === 0) {
      return `The back comes off the bone in quarters, so ${lineWords(line, words)} cannot be had.`;
    }
    const { text, many } = partsNoun(places.map((place) => ({ part, place })), words);
    const absence = text.startsWith('both ')
      ? `Neither ${partName(part, words.country)} is with this animal`
      : `${sentence(text)} ${many ? 'are' : 'is'} not with this animal`;
    const [other] = placesOfLine(line).filter((place) => !places.includes(place));
    const isWholeGone = TARGETS[line.target].reach === 'both-as-one' || !other;
    return isWholeGone ? `${absence}, so ${lineWords(line, words)} cannot be had.` : `${absence}, so ${lineWords(line, words)} can come only from the ${other}.`;
  },
  suggestions,
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const partNotDeliveredExamples = (): RuleExamples => ({
  valid: [
    exampleOrder({ lines: [exampleLine('a', 'fillet', 'whole')] }),
    exampleOrder({
      lines: [exampleLine('a', 'fillet', 'whole', { side: 'right' }), exampleLine('b', 'saddle', 'on-the-bone')],
      facts: { missing: [{ part: 'fillet', place: 'left' }] },
    }),
    exampleOrder({ lines: [exampleLine('a', 'haunch', 'on-the-bone'), exampleLine('b', 'loin', 'medallions')], facts: { form: 'quartered' } }),
  ],
  invalid: [
    {
      order: exampleOrder({ lines: [exampleLine('a', 'fillet', 'whole')], facts: { missing: [{ part: 'fillet', place: 'left' }] } }),
      messages: ['The left fillet is not with this animal, so fillet in one piece can come only from the right.'],
    },
    {
      order: exampleOrder({
        lines: [exampleLine('a', 'fillet', 'medallions')],
        facts: { missing: [{ part: 'fillet', place: 'left' }, { part: 'fillet', place: 'right' }] },
        words: { country: 'us', unit: 'lb' },
      }),
      messages: ['Neither tenderloin is with this animal, so tenderloin medallions cannot be had.'],
    },
    {
      order: exampleOrder({
        lines: [exampleLine('a', 'neck', 'diced'), exampleLine('b', 'loin', 'chops'), exampleLine('c', 'rib-rack', 'rack', { side: 'left' })],
        facts: { form: 'quartered' },
      }),
      messages: [
        'The neck is not with this animal, so neck diced for stewing cannot be had.',
        'The back comes off the bone in quarters, so loin chops on the bone cannot be had.',
        'The left ribs and flank are not with this animal, so left rib rack on the bone cannot be had.',
      ],
    },
  ],
});
