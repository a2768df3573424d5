import { type Side, type TissueKey, readTissueKey } from '@/lib/carcass';
import { sidedName, targetName } from '@/lib/cuts';
import { type InstructionLine, placesOfLine } from '@/lib/instructions';
import { exampleLine, exampleOrder } from '../example-order';
import { type RuledOrder, type Suggestion, defineRule } from '../rule';
import { joined, lineWords, partOfLine, partsOfTissues, sentence } from '../wording';

/** Two lines that want the same tissues. */
type Clash = { readonly first: InstructionLine; readonly second: InstructionLine; readonly keys: readonly TissueKey[] };

/** One finding for each pair of lines, however many muscles they share. */
function clashes({ instructions, plan }: RuledOrder): readonly Clash[] {
  const pairs = new Map<string, { first: InstructionLine; second: InstructionLine; keys: TissueKey[] }>();
  const lineOf = new Map(instructions.lines.map((line) => [line.id, line]));
  for (const { key, lineIds } of plan.doubles) {
    const first = lineOf.get(lineIds[0] ?? '');
    for (const id of lineIds.slice(1)) {
      const second = lineOf.get(id);
      if (!first || !second) continue;
      const pair = `${first.id}|${second.id}`;
      const known = pairs.get(pair);
      if (known) known.keys.push(key);
      else pairs.set(pair, { first, second, keys: [key] });
    }
  }
  return [...pairs.values()];
}

/** The half that one line could have while the other keeps its own. */
function freeSide(keeps: InstructionLine, moves: InstructionLine, lines: readonly InstructionLine[]): Side | null {
  if (moves.side === 'middle' || moves.target === 'saddle' || keeps.target === 'saddle') return null;
  if (keeps.side !== 'left' && keeps.side !== 'right') return null;
  const other: Side = keeps.side === 'left' ? 'right' : 'left';
  const taken = lines.some(
    (line) =>
      line.id !== moves.id &&
      partOfLine(line) === partOfLine(moves) &&
      placesOfLine(line).includes(other),
  );
  return taken ? null : other;
}

function suggestions({ first, second }: Clash, order: RuledOrder): readonly Suggestion[] {
  const { words, instructions } = order;
  const other = freeSide(first, second, instructions.lines);
  const moveOver: readonly Suggestion[] = other
    ? [
        {
          label: `Take it from the ${other} only`,
          consequence: `The ${sidedName(targetName(first.target, words.country), first.side)} stays as you have it; ${lineWords({ ...second, side: other }, words)} comes off the ${other}.`,
          edits: [{ kind: 'set-side', lineId: second.id, side: other }],
        },
      ]
    : [];
  return [
    ...moveOver,
    {
      label: `Keep ${lineWords(first, words)}`,
      consequence: `${sentence(lineWords(second, words))} is taken off your list.`,
      edits: [{ kind: 'remove-line', lineId: second.id }],
    },
    {
      label: `Keep ${lineWords(second, words)}`,
      consequence: `${sentence(lineWords(first, words))} is taken off your list.`,
      edits: [{ kind: 'remove-line', lineId: first.id }],
    },
  ];
}

export const musclePromisedTwice = defineRule<Clash>({
  id: 'muscle-promised-twice',
  severity: 'stop',
  title: 'The same meat is promised twice',
  why: 'A muscle can be cut once. A leg kept whole on the bone has no topside left to roast; a saddle is both loins and both fillets in one piece, so none of them can be had beside it. Without a choice the cutter has to guess, and a cut cannot be uncut.',
  source: 'common practice, no source',
  ground: 'trade',
  stages: ['order', 'receiving', 'cutting'],
  check: clashes,
  keyOf: ({ first, second }) => [first.id, second.id].sort().join('+'),
  place: ({ second }) => ({ kind: 'line', lineId: second.id }),
  part: ({ second }) => partOfLine(second),
  message: ({ first, second, keys }, { words }) => {
    const muscles = keys.filter((key) => readTissueKey(key).kind !== 'cover');
    return `The ${joined(partsOfTissues(muscles, words))} is promised twice: ${lineWords(first, words)}, and ${lineWords(second, words)}.`;
  },
  suggestions,
  examples: {
    valid: [
      exampleOrder({ lines: [exampleLine('a', 'haunch', 'on-the-bone', { side: 'left' }), exampleLine('b', 'topside', 'joint', { side: 'right' })] }),
      exampleOrder({ lines: [exampleLine('a', 'saddle', 'on-the-bone')] }),
    ],
    invalid: [
      {
        order: exampleOrder({ lines: [exampleLine('a', 'haunch', 'on-the-bone', { side: 'left' }), exampleLine('b', 'topside', 'joint')] }),
        messages: ['The left haunch is promised twice: left haunch whole on the bone, and topside joint.'],
      },
      {
        order: exampleOrder({ lines: [exampleLine('a', 'saddle', 'on-the-bone'), exampleLine('b', 'loin', 'medallions')] }),
        messages: ['The back is promised twice: saddle whole on the bone, and loin medallions.'],
      },
      {
        order: exampleOrder({ lines: [exampleLine('a', 'saddle', 'on-the-bone'), exampleLine('b', 'fillet', 'whole')] }),
        messages: ['The both fillets is promised twice: saddle whole on the bone, and fillet left whole.'],
      },
    ],
  },
});
