import type { Edit, InstructionLine } from '@/lib/instructions';
import { PRODUCTS } from '@/lib/plan';
import { type Range, formatWeight, formatWeightRange, roundedDown } from '@/lib/units';
import { exampleLine, exampleOrder } from '../example-order';
import { mayBeMade } from '../may-be-made';
import { afterEdits, mend } from '../mend';
import { type RuleExamples, type RuleReason, type RuledOrder, defineRule } from '../rule';
import { joined, lineWords, partOfLine } from '../wording';

type Idle = { readonly lines: readonly [InstructionLine, ...InstructionLine[]]; readonly set: Range };

/** Whole muscle that no product draws on. */
function idle({ instructions, plan }: RuledOrder): readonly Idle[] {
  const drawn = plan.products.some(({ productId }) => !PRODUCTS[productId].from.includes('grinding'));
  if (drawn) return [];
  const [first, ...others] = instructions.lines.filter(({ cut }) => cut === 'set-aside-whole');
  return first && plan.pools['whole-muscle'].likely > 0 ? [{ lines: [first, ...others], set: plan.pools['whole-muscle'] }] : [];
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const setAsideForNothingReason: RuleReason = {
  topic: 'made-things',
  why: 'Jerky is sliced from whole muscle, so good pieces of leg or loin are kept out of the grind for it. Where no jerky is asked for, they would be ground after all: the best meat of the animal in the cheapest packet.',
  source: 'common practice, no source',
};

export const setAsideForNothing = defineRule<Idle>({
  id: 'set-aside-for-nothing',
  severity: 'ask',
  title: 'Whole muscle set aside for nothing',
  ground: 'trade',
  stages: ['order', 'receiving', 'cutting'],
  check: idle,
  keyOf: () => 'whole-muscle',
  place: ({ lines: [first] }) => ({ kind: 'line', lineId: first.id }),
  part: ({ lines: [first] }) => partOfLine(first),
  message: ({ set }, { words: { unit } }) => `${capitalised(formatWeightRange(set, unit))} of whole muscle is set aside, and no jerky is asked for.`,
  suggestions: ({ lines }, order) => {
    const { unit } = order.words;
    // Products asked for earlier may draw on it as well.
    const asked = afterEdits(order, [{ kind: 'set-product', productId: 'jerky', gameGrams: PRODUCTS.jerky.leastBlockGrams }]);
    const sure = roundedDown(asked.plan.products.find(({ productId }) => productId === 'jerky')?.there.low ?? 0, unit);
    return [
      ...(sure >= PRODUCTS.jerky.leastBlockGrams && mayBeMade('jerky', order)
        ? mend(order, {
            label: `Make ${formatWeight(sure, unit)} of it into jerky`,
            consequence: `Dried it weighs about ${formatWeight(Math.round((sure * PRODUCTS.jerky.finishedPer10k) / 10_000), unit)}; what is left over is ground.`,
            edits: [{ kind: 'set-product', productId: 'jerky', gameGrams: sure }],
          })
        : []),
      ...mend(order, {
        label: 'Dice it for stewing instead',
        consequence: `${capitalised(joined(lines.map((line) => lineWords({ ...line, cut: 'diced' }, order.words))))}.`,
        edits: lines.map((line): Edit => ({ kind: 'set-cut', lineId: line.id, cut: 'diced' })),
      }),
    ];
  },
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const setAsideForNothingExamples = (): RuleExamples => ({
  valid: [
    exampleOrder({
      lines: [exampleLine('a', 'topside', 'set-aside-whole')],
      instructions: { products: [{ productId: 'jerky', gameGrams: 2_300 }] },
    }),
    exampleOrder({ lines: [exampleLine('a', 'topside', 'joint')] }),
  ],
  invalid: [
    {
      order: exampleOrder({ lines: [exampleLine('a', 'topside', 'set-aside-whole')] }),
      messages: ['About 4.9 lb (4.3 to 5.6) of whole muscle is set aside, and no jerky is asked for.'],
    },
  ],
});

function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
