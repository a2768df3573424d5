import type { Edit } from '@/lib/instructions';
import { exampleLine, exampleOrder } from '../example-order';
import { mend } from '../mend';
import { mayBeMade } from '../may-be-made';
import { mayCarryTrichinella } from '../mixing';
import { type RuleExamples, type RuleReason, type RuledOrder, defineRule } from '../rule';

type Dried = { readonly grams: number };

function dried({ instructions, plan }: RuledOrder): readonly Dried[] {
  if (!mayCarryTrichinella(plan.forecast.species)) return [];
  return instructions.products.flatMap(({ productId, gameGrams }) => (productId === 'jerky' ? [{ grams: gameGrams }] : []));
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const jerkyOfAWormCarrierReason: RuleReason = {
  topic: 'health',
  why: 'Bear and boar can carry Trichinella, a worm in the muscle that makes people very ill. Drying, smoking and curing do not kill it, and in wild animals freezing does not either: bear meat frozen for 45 days made six of eight diners ill. Only meat cooked to 165 F (74 C) in the middle is safe, so it is made into things that are cooked through. Your local code decides.',
  source: 'CDC MMWR 73(20), 2024; 83 FR 25302, 2018',
};

export const jerkyOfAWormCarrier = defineRule<Dried>({
  id: 'jerky-of-a-worm-carrier',
  severity: 'stop',
  title: 'Not dried: it can carry worms',
  ground: 'safety',
  stages: ['order', 'receiving', 'cutting'],
  check: dried,
  keyOf: () => 'jerky',
  place: () => ({ kind: 'field', field: 'products' }),
  part: () => null,
  cause: () => 'product jerky',
  message: (_, { plan }) => `No jerky is made of ${plan.forecast.species.name}: drying does not kill the worms it can carry, and freezing does not either.`,
  suggestions: ({ grams }, order) => {
    const gone: Edit = { kind: 'set-product', productId: 'jerky', gameGrams: 0 };
    const before = order.instructions.products.find(({ productId }) => productId === 'summer-sausage')?.gameGrams ?? 0;
    return [
      ...(mayBeMade('summer-sausage', order) ? mend(order, {
        label: 'Summer sausage instead',
        consequence: 'It is cooked through; cook it as the label says all the same. It is made with pork.',
        edits: [gone, { kind: 'set-product', productId: 'summer-sausage', gameGrams: before + grams }],
      }) : []),
      ...mend(order, { label: 'No jerky', consequence: 'What was set aside for it is ground with the rest, to be cooked through.', edits: [gone] }),
    ];
  },
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const jerkyOfAWormCarrierExamples = (): RuleExamples => {
  const lines = [exampleLine('a', 'topside', 'set-aside-whole'), exampleLine('b', 'silverside', 'set-aside-whole')];
  const products = [{ productId: 'jerky', gameGrams: 2_500 }] as const;
  return {
    valid: [exampleOrder({ lines, instructions: { products } }), exampleOrder({ facts: { speciesId: 'black-bear' } })],
    invalid: [
      {
        order: exampleOrder({ lines, instructions: { products }, facts: { speciesId: 'black-bear', weight: null } }),
        messages: ['No jerky is made of black bear: drying does not kill the worms it can carry, and freezing does not either.'],
      },
    ],
  };
};
