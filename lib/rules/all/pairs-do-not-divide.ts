import { CUTS, cutsOf, pluralOf, targetName } from '@/lib/cuts';
import { type Edit, type InstructionLine, placesOfLine } from '@/lib/instructions';
import { missingPlaces } from '../delivered';
import { exampleLine, exampleOrder } from '../example-order';
import { mend } from '../mend';
import { type RuleExamples, type RuleReason, type RuledOrder, defineRule } from '../rule';
import { cutWords, joined, sentence } from '../wording';

type Whole = { readonly lines: readonly InstructionLine[]; readonly people: number };

/** Pieces that come in pairs and stay whole, where more or fewer than two share alike. */
function undivided(order: RuledOrder): readonly Whole[] {
  const { shares, lines } = order.instructions;
  const isHalved = shares.length === 2 && shares.every(({ percent }) => percent === 50);
  if (shares.length < 2 || isHalved) return [];
  const whole = lines.filter(
    (line) => CUTS[line.cut].packing === 'each' && CUTS[line.cut].sizing === 'none' && placesOfLine(line).length === 2 && missingPlaces(line, order).length === 0,
  );
  return whole.length > 0 ? [{ lines: whole, people: shares.length }] : [];
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const pairsDoNotDivideReason: RuleReason = {
  topic: 'packing-and-bill',
  why: 'An animal has two fillets, two loins and two of every leg. Two people who share alike take one each; three cannot, nor two of whom one has more. Sliced, diced or ground meat divides by weight to the packet; a whole piece goes to one of them and is weighed against the rest.',
  source: 'common practice, no source',
};

export const pairsDoNotDivide = defineRule<Whole>({
  id: 'pairs-do-not-divide',
  severity: 'ask',
  title: 'Whole pieces that do not divide',
  ground: 'trade',
  stages: ['order', 'receiving', 'cutting'],
  check: undivided,
  keyOf: () => 'pairs',
  place: () => ({ kind: 'field', field: 'shares' }),
  part: () => null,
  message: ({ lines, people }, { words }) =>
    `${sentence(joined(lines.map(({ target }) => pluralOf(targetName(target, words.country)))))} come in twos, and the ${people} shares do not divide them piece by piece.`,
  suggestions: ({ lines }, order) => {
    const { words } = order;
    const sliced = lines.every(({ target }) => cutsOf(target).includes('medallions'));
    return [
      ...mend(order, {
        label: 'Weigh it out',
        consequence: 'Whole pieces go to one or the other, and the weights are evened out with the rest.',
        edits: [{ kind: 'agree', key: 'pairs-do-not-divide|pairs' }],
      }),
      ...(sliced
        ? mend(order, {
            label: `Slice them: ${cutWords('medallions', words)}`,
            consequence: `${sentence(joined(lines.map(({ target }) => targetName(target, words.country))))} in ${cutWords('medallions', words)}, shared by weight.`,
            edits: lines.map((line): Edit => ({ kind: 'set-cut', lineId: line.id, cut: 'medallions' })),
          })
        : []),
    ];
  },
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const pairsDoNotDivideExamples = (): RuleExamples => {
  const shares = (...percents: readonly number[]) => percents.map((percent) => ({ name: 'Edda', percent, isGiven: false }));
  const lines = [exampleLine('a', 'fillet', 'whole'), exampleLine('b', 'loin', 'whole')];
  return {
    valid: [
      exampleOrder({ lines }),
      exampleOrder({ lines, instructions: { shares: shares(50, 50) } }),
      exampleOrder({ lines: [exampleLine('a', 'loin', 'medallions')], instructions: { shares: shares(34, 33, 33) } }),
    ],
    invalid: [
      {
        order: exampleOrder({ lines, instructions: { shares: shares(34, 33, 33) } }),
        messages: ['Fillets and loins come in twos, and the 3 shares do not divide them piece by piece.'],
      },
      {
        order: exampleOrder({ lines: [exampleLine('a', 'haunch', 'on-the-bone')], instructions: { shares: shares(70, 30) }, words: { country: 'us', unit: 'lb' } }),
        messages: ['Hind legs come in twos, and the 2 shares do not divide them piece by piece.'],
      },
    ],
  };
};
