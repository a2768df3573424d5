import { TARGETS, gramsPerPerson, targetName } from '@/lib/cuts';
import type { InstructionLine } from '@/lib/instructions';
import { largestPiece } from '@/lib/plan';
import { type Range, formatWeight, formatWeightRange } from '@/lib/units';
import { isNamelessMeat, missingPlaces } from '../delivered';
import { exampleLine, exampleOrder } from '../example-order';
import { mend } from '../mend';
import { type RuleExamples, type RuleReason, type RuledOrder, defineRule } from '../rule';
import { lineWords, partOfLine, sentence } from '../wording';

/** A joint asked for and the largest that one piece of the carcass makes. Grams. */
type Oversize = { readonly line: InstructionLine; readonly asked: number; readonly people: number | null; readonly piece: Range };

function oversize(order: RuledOrder): readonly Oversize[] {
  return order.plan.lines.flatMap((planned) => {
    const { line } = planned;
    const { size } = line;
    const isTold =
      order.plan.doubles.some(({ lineIds }) => lineIds.includes(line.id)) ||
      missingPlaces(line, order).length > 0 ||
      isNamelessMeat(line, order);
    if (isTold || (size.kind !== 'weight' && size.kind !== 'people')) return [];
    const asked = size.kind === 'weight' ? size.grams : size.people * gramsPerPerson(line.cut);
    const piece = largestPiece(order.plan, planned);
    return piece.high > 0 && asked > piece.high ? [{ line, asked, people: size.kind === 'people' ? size.people : null, piece }] : [];
  });
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const jointLargerThanTheMuscleReason: RuleReason = {
  topic: 'amount',
  why: 'A boneless joint is one muscle, squared and tied, and the largest of a deer weighs two or three pounds. A bigger roast is a whole leg on the bone or several joints in one tin. We reckon 200 g of raw boneless meat a person.',
  source: 'the forecast of this animal; 200 g a person: a French kitchen page on roe deer, 2016',
};

export const jointLargerThanTheMuscle = defineRule<Oversize>({
  id: 'joint-larger-than-the-muscle',
  severity: 'ask',
  title: 'A joint larger than the muscle',
  ground: 'trade',
  stages: ['order', 'receiving', 'cutting'],
  check: oversize,
  keyOf: ({ line }) => line.id,
  place: ({ line }) => ({ kind: 'line', lineId: line.id }),
  part: ({ line }) => partOfLine(line),
  message: ({ line, asked, people, piece }, { words }) => {
    const weight = formatWeight(asked, words.unit);
    const wish = people === null ? `at ${weight} apiece` : `for ${people} people takes about ${weight} in one piece`;
    const name = targetName(line.target, words.country);
    const one = TARGETS[line.target].reach === 'sided' ? `one ${name}` : `the ${name}`;
    const gives = `${one} of this animal makes ${formatWeightRange(piece, words.unit)}`;
    return people === null
      ? `You asked for ${lineWords(line, words)} ${wish}; ${gives}.`
      : `${sentence(lineWords(line, words))} ${wish}; ${gives}.`;
  },
  suggestions: ({ line, piece }, order) =>
    mend(order, {
      label: 'As the butcher sees fit',
      consequence: `Each piece as large as it comes, about ${formatWeight(piece.likely, order.words.unit)}.`,
      edits: [{ kind: 'set-size', lineId: line.id, size: { kind: 'as-seen-fit' } }],
    }),
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const jointLargerThanTheMuscleExamples = (): RuleExamples => ({
  valid: [
    exampleOrder({ lines: [exampleLine('a', 'topside', 'joint', { size: { kind: 'people', people: 4 } })] }),
    exampleOrder({ lines: [exampleLine('a', 'haunch', 'boned-and-rolled', { size: { kind: 'weight', grams: 1_500 } })] }),
  ],
  invalid: [
    {
      order: exampleOrder({
        lines: [
          exampleLine('a', 'topside', 'joint', { size: { kind: 'people', people: 12 } }),
          exampleLine('b', 'loin', 'portions', { size: { kind: 'weight', grams: 2_268 }, side: 'left' }),
        ],
      }),
      messages: [
        'Topside joint for 12 people takes about 5.3 lb in one piece; one topside of this animal makes about 2.3 lb (1.9 to 2.6).',
        'You asked for left loin portions at 5.0 lb apiece; one loin of this animal makes about 3.0 lb (2.6 to 3.5).',
      ],
    },
    {
      order: exampleOrder({
        lines: [exampleLine('a', 'saddle', 'boned-and-rolled', { size: { kind: 'weight', grams: 9_000 } })],
        words: { country: 'us', unit: 'kg' },
      }),
      messages: ['You asked for saddle boned, rolled and tied at 9.00 kg apiece; the saddle of this animal makes about 3.03 kg (2.62 to 3.46).'],
    },
  ],
});
