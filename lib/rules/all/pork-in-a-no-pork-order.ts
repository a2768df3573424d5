import { CUTS, minceName } from '@/lib/cuts';
import type { InstructionLine, ProductId } from '@/lib/instructions';
import { PRODUCTS } from '@/lib/plan';
import { exampleLine, exampleOrder } from '../example-order';
import { mend } from '../mend';
import { type RuleExamples, type RuleReason, type RuledOrder, type Suggestion, defineRule } from '../rule';
import { lineWords, madeWords, partOfLine, sentence } from '../wording';

type Pork =
  | { readonly in: 'mince' }
  | { readonly in: 'product'; readonly productId: ProductId }
  | { readonly in: 'line'; readonly line: InstructionLine };

function pork({ instructions }: RuledOrder): readonly Pork[] {
  if (!instructions.noPork) return [];
  const products = instructions.products
    .filter(({ productId }) => PRODUCTS[productId].contains.includes('pork'))
    .map(({ productId }): Pork => ({ in: 'product', productId }));
  const lines = instructions.lines.filter(({ cut }) => CUTS[cut].adds?.what === 'pork').map((line): Pork => ({ in: 'line', line }));
  return [...(instructions.mince.addedFat === 'pork' ? [{ in: 'mince' } as const] : []), ...products, ...lines];
}

function suggestions(found: Pork, order: RuledOrder): readonly Suggestion[] {
  if (found.in === 'line') {
    const plain = { ...found.line, cut: 'medallions' } as const;
    return mend(order, {
      label: 'Plain, without bacon',
      consequence: `${sentence(lineWords(plain, order.words))}.`,
      edits: [{ kind: 'set-cut', lineId: found.line.id, cut: 'medallions' }],
    });
  }
  if (found.in === 'product') {
    const { name } = PRODUCTS[found.productId];
    return mend(order, {
      label: `Leave out the ${name}`,
      consequence: `The meat meant for ${name} stays plain ${minceName(order.words.country)}.`,
      edits: [{ kind: 'set-product', productId: found.productId, gameGrams: 0 }],
    });
  }
  const { fatPercent } = order.instructions.mince;
  return [
    ...mend(order, {
      label: 'Beef fat instead',
      consequence: `The same ${fatPercent} percent, of beef.`,
      edits: [{ kind: 'set-fat', addedFat: 'beef', fatPercent }],
    }),
    ...mend(order, {
      label: 'No added fat',
      consequence: 'Pure game; it is leaner and crumbles more easily in the pan.',
      edits: [{ kind: 'set-fat', addedFat: 'none', fatPercent: 0 }],
    }),
  ];
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const porkInANoPorkOrderReason: RuleReason = {
  topic: 'made-things',
  why: 'A household that eats no pork, for its faith or its health, must be able to trust every packet. Ground game is often mixed with pork fat and most sausage is made with pork, so it is easy to ask for by accident.',
  source: 'common practice, no source',
};

export const porkInANoPorkOrder = defineRule<Pork>({
  id: 'pork-in-a-no-pork-order',
  severity: 'stop',
  title: 'Pork in an order without pork',
  ground: 'safety',
  stages: ['order', 'receiving', 'cutting'],
  check: pork,
  keyOf: (found) => (found.in === 'mince' ? 'mince' : found.in === 'line' ? found.line.id : found.productId),
  place: (found) => (found.in === 'line' ? { kind: 'line', lineId: found.line.id } : { kind: 'field', field: found.in === 'mince' ? 'mince' : 'products' }),
  part: (found) => (found.in === 'line' ? partOfLine(found.line) : null),
  cause: (found) => (found.in === 'product' ? `product ${found.productId}` : `pork in ${found.in === 'mince' ? 'the mince' : found.line.id}`),
  message: (found, { words }) => {
    if (found.in === 'line') return `Bacon is pork, and this order is to be without it: ${lineWords(found.line, words)}.`;
    return found.in === 'mince'
      ? `Pork fat is to go into the ${minceName(words.country)}, and this order is to be without pork.`
      : `${sentence(madeWords(found.productId))} made with pork, and this order is to be without pork.`;
  },
  suggestions,
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const porkInANoPorkOrderExamples = (): RuleExamples => ({
  valid: [
    exampleOrder({ instructions: { mince: { addedFat: 'pork', fatPercent: 15, packGrams: 454, shape: 'bulk' } } }),
    exampleOrder({ instructions: { noPork: true, mince: { addedFat: 'beef', fatPercent: 15, packGrams: 454, shape: 'bulk' } } }),
  ],
  invalid: [
    {
      order: exampleOrder({ lines: [exampleLine('a', 'loin', 'bacon-wrapped', { side: 'left' })], instructions: { noPork: true } }),
      messages: ['Bacon is pork, and this order is to be without it: left loin medallions wrapped in bacon.'],
    },
    {
      order: exampleOrder({
        instructions: {
          noPork: true,
          mince: { addedFat: 'pork', fatPercent: 15, packGrams: 454, shape: 'bulk' },
          products: [{ productId: 'fresh-sausage', gameGrams: 2_000 }],
        },
      }),
      messages: [
        'Pork fat is to go into the mince, and this order is to be without pork.',
        'Fresh sausage is made with pork, and this order is to be without pork.',
      ],
    },
    {
      order: exampleOrder({
        instructions: { noPork: true, mince: { addedFat: 'pork', fatPercent: 15, packGrams: 454, shape: 'bulk' } },
        words: { country: 'us', unit: 'lb' },
      }),
      messages: ['Pork fat is to go into the ground meat, and this order is to be without pork.'],
    },
  ],
});
