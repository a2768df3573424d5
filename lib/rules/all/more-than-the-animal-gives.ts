import type { InstructionLine } from '@/lib/instructions';
import { PRODUCTS, type PlannedProduct } from '@/lib/plan';
import { type Range, formatWeight, formatWeightRange } from '@/lib/units';
import { exampleLine, exampleOrder } from '../example-order';
import { type RuledOrder, defineRule } from '../rule';
import { lineWords, partOfLine, sentence } from '../wording';

/** A promise above the forecast's high, and what there is. Grams. */
type TooMuch = {
  readonly asked: number;
  readonly gives: Range;
} & ({ readonly of: 'line'; readonly line: InstructionLine } | { readonly of: 'product'; readonly product: PlannedProduct });

function tooMuch({ plan }: RuledOrder): readonly TooMuch[] {
  const lines = plan.lines.flatMap(({ line, packed, lost }): TooMuch[] =>
    line.askedGrams !== null && line.askedGrams > packed.high && packed.high > 0 && lost.length === 0
      ? [{ of: 'line', line, asked: line.askedGrams, gives: packed }]
      : [],
  );
  const products = plan.products.flatMap((product): TooMuch[] =>
    product.askedGrams > product.gameGrams.high
      ? [{ of: 'product', product, asked: product.askedGrams, gives: product.gameGrams }]
      : [],
  );
  return [...lines, ...products];
}

export const moreThanTheAnimalGives = defineRule<TooMuch>({
  id: 'more-than-the-animal-gives',
  severity: 'stop',
  title: 'More asked than this animal gives',
  why: 'A carcass of a given weight holds so much loin and no more. The figures come from published weighings of the species and from the weight you gave; "at most" means that nine animals in ten give less. Meat that is not there cannot be packed, and a shop that quietly packs less is blamed for taking it.',
  source: 'the forecast of this animal, from the published weighings named with each species',
  ground: 'trade',
  stages: ['order', 'receiving', 'cutting'],
  check: tooMuch,
  keyOf: (data) => (data.of === 'line' ? data.line.id : data.product.productId),
  place: (data) => (data.of === 'line' ? { kind: 'line', lineId: data.line.id } : { kind: 'field', field: 'products' }),
  part: (data) => (data.of === 'line' ? partOfLine(data.line) : null),
  message: (data, { words }) => {
    const name = data.of === 'line' ? lineWords(data.line, words) : PRODUCTS[data.product.productId].name;
    const asked = formatWeight(data.asked, words.unit);
    const from = data.of === 'line' ? 'this animal gives' : 'what is left for grinding gives';
    return `You asked for ${asked} of ${name}; ${from} ${formatWeightRange(data.gives, words.unit)}.`;
  },
  suggestions: (data, { words }) => {
    const likely = data.gives.likely;
    if (data.of === 'line') {
      return [
        {
          label: 'Take all there is',
          consequence: `About ${formatWeight(likely, words.unit)} of ${lineWords(data.line, words)}; the amount is taken off.`,
          edits: [{ kind: 'set-asked', lineId: data.line.id, askedGrams: null }],
        },
      ];
    }
    const { productId } = data.product;
    const name = PRODUCTS[productId].name;
    const half = Math.floor(data.gives.low / 2);
    return [
      ...(half > 0
        ? [
            {
              label: `Use ${formatWeight(half, words.unit)} for it`,
              consequence: `The rest of what is ground stays plain, about ${formatWeight(likely - half, words.unit)}.`,
              edits: [{ kind: 'set-product' as const, productId, gameGrams: half }],
            },
          ]
        : []),
      {
        label: `Leave out the ${name}`,
        consequence: `${sentence(name)} is taken off your list.`,
        edits: [{ kind: 'set-product', productId, gameGrams: 0 }],
      },
    ];
  },
  examples: {
    valid: [exampleOrder({ lines: [exampleLine('a', 'loin', 'medallions', { askedGrams: 2_000 })] })],
    invalid: [
      {
        order: exampleOrder({ lines: [exampleLine('a', 'loin', 'chops', { askedGrams: 13_608 })] }),
        messages: ['?'],
      },
      {
        order: exampleOrder({ instructions: { products: [{ productId: 'fresh-sausage', gameGrams: 40_000 }] } }),
        messages: ['?'],
      },
    ],
  },
});
