import { PRODUCTS, type PlannedProduct } from '@/lib/plan';
import { formatWeight, roundedUp } from '@/lib/units';
import { exampleOrder } from '../example-order';
import { mend } from '../mend';
import { barredFromMixing } from '../mixing';
import { isBelowBatch } from '../shortfall';
import { type RuleExamples, type RuleReason, type RuledOrder, defineRule } from '../rule';

function tooSmall(order: RuledOrder): readonly PlannedProduct[] {
  return order.plan.products.filter((product) => isBelowBatch(product, order));
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const belowBatchMinimumReason: RuleReason = {
  topic: 'made-things',
  why: 'A stuffer, a smokehouse rack and a cure are measured for a batch. Below a certain weight the mix sits in the machine instead of in the casing, and the cure cannot be weighed out exactly enough to be safe. Your meat is made by itself, so the batch is yours alone.',
  source: 'common practice, no source; where it begins is judgement and the shop’s to set',
};

export const belowBatchMinimum = defineRule<PlannedProduct>({
  id: 'below-batch-minimum',
  severity: 'stop',
  title: 'Too little for a batch',
  ground: 'trade',
  stages: ['order', 'receiving', 'cutting'],
  check: tooSmall,
  keyOf: ({ productId }) => productId,
  place: () => ({ kind: 'field', field: 'products' }),
  part: () => null,
  cause: ({ productId }) => `product ${productId}`,
  message: ({ productId, askedGrams, leastGrams }, { words: { unit } }) =>
    `You asked for ${formatWeight(askedGrams, unit)} of your meat in ${PRODUCTS[productId].name}; a batch takes ${formatWeight(roundedUp(leastGrams, unit), unit)} or more.`,
  suggestions: ({ productId, leastGrams, there }, order) => {
    const { name } = PRODUCTS[productId];
    const least = roundedUp(leastGrams, order.words.unit);
    return [
      ...(there.low >= least
        ? mend(order, {
            label: `Make it ${formatWeight(least, order.words.unit)}`,
            consequence: `A whole batch of ${name}; that much less stays plain.`,
            edits: [{ kind: 'set-product', productId, gameGrams: least }],
          })
        : []),
      ...(barredFromMixing(order)
        ? []
        : mend(order, {
            label: 'Put it in a batch with others’',
            consequence: `You get your part of the batch by weight; the meat in your ${name} may be another animal’s.`,
            edits: [{ kind: 'set-mixing', mixing: 'may-be-mixed' }],
          })),
      ...mend(order, {
        label: `Leave out the ${name}`,
        consequence: 'The meat stays with the rest.',
        edits: [{ kind: 'set-product', productId, gameGrams: 0 }],
      }),
    ];
  },
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const belowBatchMinimumExamples = (): RuleExamples => ({
  valid: [
    exampleOrder({ instructions: { products: [{ productId: 'snack-sticks', gameGrams: 4_000 }] } }),
    exampleOrder({ instructions: { products: [{ productId: 'fresh-sausage', gameGrams: 200 }] } }),
  ],
  invalid: [
    {
      order: exampleOrder({ instructions: { products: [{ productId: 'snack-sticks', gameGrams: 1_361 }] } }),
      messages: ['You asked for 3.0 lb of your meat in snack sticks; a batch takes 7.0 lb or more.'],
    },
  ],
});
