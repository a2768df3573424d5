import { type TissueKey, isDelivered, readTissueKey, tissueKey } from '@/lib/carcass';
import { CUTS, TARGETS, TARGET_IDS, targetName } from '@/lib/cuts';
import { type Edit, type InstructionLine, placesOfLine } from '@/lib/instructions';
import { exampleLine, exampleOrder } from '../example-order';
import { mend } from '../mend';
import { type RuleExamples, type RuleReason, type RuledOrder, type Suggestion, defineRule } from '../rule';
import { cutWords, joined, lineWords, muscleWords, partOfLine, sentence, tissueNoun } from '../wording';

/** Two lines that want the same tissues; first is the one written first. */
type Clash = { readonly first: InstructionLine; readonly second: InstructionLine; readonly keys: readonly TissueKey[] };

/** More pairs than anyone writes; a form made to be slow is told of these first, and of the others once they are settled. */
const MOST_CLASHES = 40;

/** One finding for each pair of lines, however many muscles they share. */
function clashes({ instructions, plan }: RuledOrder): readonly Clash[] {
  const found: Clash[] = [];
  for (const [at, first] of instructions.lines.entries()) {
    for (const second of instructions.lines.slice(at + 1)) {
      const keys = plan.doubles
        .filter(({ lineIds }) => lineIds.includes(first.id) && lineIds.includes(second.id))
        .map(({ key }) => key);
      if (keys.length > 0) found.push({ first, second, keys });
      if (found.length === MOST_CLASHES) return found;
    }
  }
  return found;
}

/** One line keeps its half and the other has the other half, where that is all it takes. */
function onSides(clash: Clash, order: RuledOrder): readonly Suggestion[] {
  const { first, second } = clash;
  if ([first, second].some((line) => TARGETS[line.target].reach !== 'sided')) return [];
  const isFirstOnRight = first.side === 'right' || (first.side === 'both' && second.side === 'left');
  const firstThere: InstructionLine = { ...first, side: isFirstOnRight ? 'right' : 'left' };
  const secondThere: InstructionLine = { ...second, side: isFirstOnRight ? 'left' : 'right' };
  if (![firstThere, secondThere].every((line) => hasCome(line, order))) return [];
  return mend(order, {
    label: 'One from each side',
    consequence: `${sentence(lineWords(firstThere, order.words))}, and ${lineWords(secondThere, order.words)}.`,
    edits: [
      ...(first.side === firstThere.side ? [] : [moveTo(firstThere)]),
      ...(second.side === secondThere.side ? [] : [moveTo(secondThere)]),
    ],
  });
}

function moveTo({ id, side }: InstructionLine): Edit {
  return { kind: 'set-side', lineId: id, side };
}

function hasCome(line: InstructionLine, { plan }: RuledOrder): boolean {
  return placesOfLine(line).every((place) =>
    TARGETS[line.target].muscles.some((muscle) => isDelivered(plan.forecast.facts, tissueKey(place, muscle))),
  );
}

/** Where a muscle is wanted out of a part that is cut up anyway: both, the part named muscle by muscle round it. */
function roundIt({ first, second }: Clash, order: RuledOrder): readonly Suggestion[] {
  const [whole, piece] = TARGETS[first.target].muscles.length > TARGETS[second.target].muscles.length ? [first, second] : [second, first];
  const taken = TARGETS[piece.target].muscles;
  const isPlain = whole.askedGrams === null && whole.size.kind === 'as-seen-fit' && whole.pack.kind === 'as-seen-fit';
  const isInside = taken.every((muscle) => TARGETS[whole.target].muscles.includes(muscle));
  const others = TARGETS[whole.target].muscles.filter((muscle) => !taken.includes(muscle));
  const named = TARGET_IDS.filter((id) => others.some((muscle) => muscle === id) && CUTS[whole.cut].targets.includes(id));
  const isBulk = CUTS[whole.cut].packing === 'weight';
  if (!isPlain || !isInside || CUTS[whole.cut].bone !== 'out' || named.length === 0) return [];
  if (isBulk && named.length !== others.length) return [];

  const unnamed = others.filter((muscle) => !named.some((id) => id === muscle));
  const shared = placesOfLine(whole).filter((place) => placesOfLine(piece).includes(place));
  const [untouched] = placesOfLine(whole).filter((place) => !shared.includes(place));
  const [only] = shared;
  const { words } = order;
  return mend(order, {
    label: `Have both: ${lineWords(piece, words)}, and the rest ${isBulk ? '' : 'in '}${cutWords(whole.cut, words)}`,
    consequence: [
      `${sentence(joined(named.map((id) => targetName(id, words.country))))} ${cutWords(whole.cut, words)}; ${lineWords(piece, words)} stays as you have it.`,
      ...(unnamed.length === 0
        ? []
        : [`${sentence(joined(unnamed.map((muscle) => muscleWords(muscle, words))))} ${unnamed.length > 1 ? 'go' : 'goes'} with what you have not named.`]),
    ].join(' '),
    edits: [
      untouched ? { kind: 'set-side', lineId: whole.id, side: untouched } : { kind: 'remove-line', lineId: whole.id },
      ...named.map((target): Edit => ({ kind: 'add-line', target, side: shared.length > 1 || !only ? 'both' : only, cut: whole.cut })),
    ],
  });
}

function keepOne(keeps: InstructionLine, goes: InstructionLine, order: RuledOrder): readonly Suggestion[] {
  return mend(order, {
    label: `Keep ${lineWords(keeps, order.words)}`,
    consequence: `Taken off your list: ${lineWords(goes, order.words)}.`,
    edits: [{ kind: 'remove-line', lineId: goes.id }],
  });
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const musclePromisedTwiceReason: RuleReason = {
  topic: 'meat',
  why: 'A muscle can be cut once. A leg kept whole on the bone has no topside left to roast; a saddle is both loins and both fillets in one piece, so none of them can be had beside it. Without a choice the cutter has to guess, and a cut cannot be uncut.',
  source: 'common practice, no source',
};

export const musclePromisedTwice = defineRule<Clash>({
  id: 'muscle-promised-twice',
  severity: 'stop',
  title: 'The same meat is promised twice',
  ground: 'trade',
  stages: ['order', 'receiving', 'cutting'],
  check: clashes,
  keyOf: ({ first, second }) => [first.id, second.id].sort().join('+'),
  place: ({ second }) => ({ kind: 'line', lineId: second.id }),
  part: ({ second }) => partOfLine(second),
  message: ({ first, second, keys }, { words }) => {
    const muscles = keys.filter((key) => readTissueKey(key).kind === 'muscle');
    const { text, many } = tissueNoun(muscles.length > 0 ? muscles : keys, words);
    return `${sentence(text)} ${many ? 'are' : 'is'} promised twice: ${lineWords(first, words)}, and ${lineWords(second, words)}.`;
  },
  suggestions: (clash, order) => [
    ...roundIt(clash, order),
    ...onSides(clash, order),
    ...keepOne(clash.first, clash.second, order),
    ...keepOne(clash.second, clash.first, order),
  ],
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const musclePromisedTwiceExamples = (): RuleExamples => ({
  valid: [
    exampleOrder({ lines: [exampleLine('a', 'haunch', 'on-the-bone', { side: 'left' }), exampleLine('b', 'topside', 'joint', { side: 'right' })] }),
    exampleOrder({ lines: [exampleLine('a', 'saddle', 'on-the-bone')] }),
    exampleOrder({ lines: [exampleLine('a', 'rib-rack', 'rack'), exampleLine('b', 'flank', 'mince')] }),
  ],
  invalid: [
    {
      order: exampleOrder({ lines: [exampleLine('a', 'haunch', 'on-the-bone', { side: 'left' }), exampleLine('b', 'topside', 'joint')] }),
      messages: ['The left topside is promised twice: left haunch whole on the bone, and topside joint.'],
    },
    {
      order: exampleOrder({ lines: [exampleLine('a', 'saddle', 'on-the-bone'), exampleLine('b', 'loin', 'medallions')] }),
      messages: ['Both loins are promised twice: saddle whole on the bone, and loin medallions.'],
    },
    {
      order: exampleOrder({ lines: [exampleLine('a', 'saddle', 'on-the-bone'), exampleLine('b', 'fillet', 'whole')] }),
      messages: ['Both fillets are promised twice: saddle whole on the bone, and fillet in one piece.'],
    },
    {
      order: exampleOrder({ lines: [exampleLine('a', 'haunch', 'steaks'), exampleLine('b', 'topside', 'joint', { side: 'right' })] }),
      messages: ['The right topside is promised twice: haunch steaks, and right topside joint.'],
    },
    {
      order: exampleOrder({
        lines: [exampleLine('a', 'haunch', 'diced'), exampleLine('b', 'haunch', 'mince', { side: 'right' }), exampleLine('c', 'neck', 'diced'), exampleLine('d', 'neck', 'on-the-bone')],
        words: { country: 'us', unit: 'lb' },
      }),
      messages: [
        'The right hind leg is promised twice: hind leg for stew meat, and right hind leg to be ground.',
        'The neck is promised twice: neck for stew meat, and neck whole on the bone.',
      ],
    },
  ],
});
