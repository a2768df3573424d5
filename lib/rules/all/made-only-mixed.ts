import type { Edit, ProductId } from '@/lib/instructions';
import { PRODUCTS } from '@/lib/plan';
import { exampleOrder } from '../example-order';
import { mend } from '../mend';
import { CAREFUL } from '@/lib/law';
import { barredFromMixing } from '../mixing';
import { PLAIN_TERMS, type RuleExamples, type RuleReason, type RuledOrder, defineRule } from '../rule';
import { madeWords, sentence } from '../wording';

function onlyMixed({ instructions: { mixing, products }, circumstances: { shop } }: RuledOrder): readonly ProductId[] {
  if (mixing === 'may-be-mixed') return [];
  return products.map(({ productId }) => productId).filter((id) => shop.mixedOnly.includes(id));
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const madeOnlyMixedReason: RuleReason = {
  topic: 'made-things',
  why: 'Some made things need more meat than one deer has to spare, so a shop makes them of several hunters’ meat at once and shares the batch out by weight. Whoever wants meat of one animal only has to go without them, or accept the shared batch. Some places do not allow mixing at all.',
  source: 'common practice, no source; mixing is not allowed, for example, under Wisconsin ATCP 55.08',
};

export const madeOnlyMixed = defineRule<ProductId>({
  id: 'made-only-mixed',
  severity: 'stop',
  title: 'Made here only in shared batches',
  ground: 'trade',
  stages: ['order', 'receiving', 'cutting'],
  check: onlyMixed,
  keyOf: (productId) => productId,
  place: () => ({ kind: 'field', field: 'products' }),
  part: () => null,
  cause: (productId) => `product ${productId}`,
  message: (productId, order) => {
    const barred = barredFromMixing(order);
    const made = `${sentence(madeWords(productId))} made here only in batches with other hunters’ meat`;
    if (!barred) return `${made}, and yours is to stay by itself.`;
    return barred.isByLaw ? `${made}, and the rule this shop goes by allows no such batch.` : `${made}, and ${barred.what} may not go into one.`;
  },
  suggestions: (productId, order) => {
    const { name } = PRODUCTS[productId];
    const leftOut: Edit = { kind: 'set-product', productId, gameGrams: 0 };
    return [
      ...mend(order, { label: `Leave out the ${name}`, consequence: 'The meat meant for it stays plain, and your own.', edits: [leftOut] }),
      ...(barredFromMixing(order)
        ? []
        : mend(order, {
            label: 'A shared batch is fine',
            consequence: `You get your part of the batch by weight; the meat in your ${name} may be another animal’s.`,
            edits: [{ kind: 'set-mixing', mixing: 'may-be-mixed' }],
          })),
    ];
  },
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const madeOnlyMixedExamples = (): RuleExamples => {
  const products = [{ productId: 'summer-sausage', gameGrams: 4_000 }] as const;
  const circumstances = { shop: { ...PLAIN_TERMS, mixedOnly: ['summer-sausage'] }, law: { ...CAREFUL.points, pooling: 'allowed' } } as const;
  return {
    valid: [exampleOrder({ instructions: { products } }), exampleOrder({ instructions: { products, mixing: 'may-be-mixed' }, circumstances })],
    invalid: [
      {
        order: exampleOrder({ instructions: { products }, circumstances }),
        messages: ['Summer sausage is made here only in batches with other hunters’ meat, and yours is to stay by itself.'],
      },
      {
        order: exampleOrder({ instructions: { products }, circumstances: { ...circumstances, diseaseZone: true } }),
        messages: ['Summer sausage is made here only in batches with other hunters’ meat, and meat of an animal from a disease zone may not go into one.'],
      },
      {
        order: exampleOrder({ instructions: { products }, circumstances: { shop: circumstances.shop } }),
        messages: ['Summer sausage is made here only in batches with other hunters’ meat, and the rule this shop goes by allows no such batch.'],
      },
    ],
  };
};
