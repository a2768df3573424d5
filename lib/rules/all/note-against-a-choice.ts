import { PLAIN_INSTRUCTIONS } from '@/lib/instructions';
import { exampleLine, exampleOrder } from '../example-order';
import { mend } from '../mend';
import type { Choice, Saying } from '../note-sayings';
import { withoutSpan } from '../note-words';
import { type Said, readNote } from '../read-note';
import { type RuleExamples, type RuleReason, type RuledOrder, type Suggestion, defineRule } from '../rule';
import { joined } from '../wording';

type Contradiction = { readonly saying: Saying; readonly spots: readonly Said[]; readonly choices: readonly Choice[] };

/** One for each thing said that the order contradicts, however often it is said. */
function contradictions(order: RuledOrder): readonly Contradiction[] {
  const said = order.instructions.note === '' ? [] : readNote(order.instructions.note);
  return [...new Set(said.map(({ saying }) => saying))]
    .map((saying) => ({ saying, spots: said.filter((one) => one.saying === saying), choices: saying.against(order) }))
    .filter(({ choices }) => choices.length > 0);
}

function saidWords({ spots: [first] }: Contradiction, note: string): string {
  return note.slice(first?.at, first?.end).replace(/\s+/g, ' ');
}

function chosenWords({ choices }: Contradiction): string {
  return joined([...new Set(choices.map(({ words }) => words))]);
}

/** The note with every place struck that says so, those too that say it only once another is gone. */
function struckFrom(note: string, saying: Saying): string {
  const spot = readNote(note).findLast((one) => one.saying === saying);
  return spot ? struckFrom(withoutSpan(note, spot, spot.left), saying) : note;
}

function suggestions(found: Contradiction, order: RuledOrder): readonly Suggestion[] {
  const { note } = order.instructions;
  return [
    ...mend(order, {
      label: 'Do as the note says',
      consequence: `${found.saying.doing}: ${chosenWords(found)}.`,
      edits: found.choices.flatMap(({ edits }) => edits),
    }),
    {
      label: 'Keep the order as it is',
      consequence: `Struck from the note: "${saidWords(found, note)}".`,
      edits: [{ kind: 'set-note', note: struckFrom(note, found.saying) }],
    },
  ];
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const noteAgainstAChoiceReason: RuleReason = {
  topic: 'cutting',
  why: 'A note is read by a person at the bench, a choice by everyone who prepares the work. Where the two say different things nobody can know which was meant, so somebody reads it, and asks, before a knife is lifted.',
  source: 'common practice, no source',
};

export const noteAgainstAChoice = defineRule<Contradiction>({
  id: 'note-against-a-choice',
  severity: 'ask',
  title: 'The note says something else',
  ground: 'trade',
  stages: ['order', 'receiving', 'cutting'],
  check: contradictions,
  keyOf: ({ saying }) => saying.id,
  place: () => ({ kind: 'field', field: 'note' }),
  part: () => null,
  message: (found, { instructions }) => `The note says "${saidWords(found, instructions.note)}", and the order has ${chosenWords(found)}; it is held for a person to read.`,
  suggestions,
});

const topside = exampleLine('a', 'topside', 'joint');

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const noteAgainstAChoiceExamples = (): RuleExamples => ({
  valid: [
    exampleOrder({ lines: [topside], instructions: { note: 'No problem with roasts. No steaks, no sausage.' } }),
    exampleOrder({ lines: [topside], instructions: { note: 'No roasts over 3 lb. Grind everything else.' } }),
    exampleOrder({ instructions: { note: 'All ground, no pork, no fat' } }),
  ],
  invalid: [
    {
      order: exampleOrder({ lines: [topside, exampleLine('b', 'silverside', 'steaks')], instructions: { note: 'No roasts or steaks, please' } }),
      messages: [
        'The note says "No roasts or steaks", and the order has topside joint; it is held for a person to read.',
        'The note says "No roasts or steaks", and the order has silverside steaks; it is held for a person to read.',
      ],
    },
    {
      order: exampleOrder({ lines: [topside], instructions: { note: 'grind everything', rest: 'stew' } }),
      messages: ['The note says "grind everything", and the order has topside joint and the rest for stew; it is held for a person to read.'],
    },
    {
      order: exampleOrder({
        lines: [exampleLine('a', 'loin', 'chops'), exampleLine('b', 'ribs', 'leave-out')],
        instructions: { note: 'Keep everything. Loins whole. Boneless.', keep: { ...PLAIN_INSTRUCTIONS.keep, bones: true } },
      }),
      messages: [
        'The note says "Keep everything", and the order has ribs and flank left out; it is held for a person to read.',
        'The note says "Loins whole", and the order has loin chops on the bone; it is held for a person to read.',
        'The note says "Boneless", and the order has loin chops on the bone and bones for stock; it is held for a person to read.',
      ],
    },
    {
      order: exampleOrder({
        instructions: {
          note: 'no pork',
          mince: { ...PLAIN_INSTRUCTIONS.mince, addedFat: 'pork', fatPercent: 15 },
          products: [{ productId: 'fresh-sausage', gameGrams: 2_000 }],
        },
      }),
      messages: ['The note says "no pork", and the order has pork fat in the mince and fresh sausage; it is held for a person to read.'],
    },
  ],
});
