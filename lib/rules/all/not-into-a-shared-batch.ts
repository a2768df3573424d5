import type { Edit } from '@/lib/instructions';
import { PRODUCTS } from '@/lib/plan';
import { exampleOrder } from '../example-order';
import { mend } from '../mend';
import { CAREFUL } from '@/lib/law';
import { type Barred, barredFromMixing } from '../mixing';
import { PLAIN_TERMS, type RuleExamples, type RuleReason, type RuledOrder, defineRule } from '../rule';
import { joined, sentence } from '../wording';

function barred(order: RuledOrder): readonly Barred[] {
  const { mixing, products } = order.instructions;
  const why = mixing === 'may-be-mixed' && products.length > 0 ? barredFromMixing(order) : null;
  return why ? [why] : [];
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const notIntoASharedBatchReason: RuleReason = {
  topic: 'made-things',
  why: 'What goes into a shared batch goes into everybody’s packets. An animal from a disease zone or with a test open, one that was gut-shot or came in dirty, and bear or boar, which can carry worms that only thorough cooking kills, are worked by themselves, last in the day, with the machines cleaned after.',
  source: 'Michigan State University Extension, 2022; CDC MMWR 73(20), 2024; otherwise common practice, no source',
};

export const notIntoASharedBatch = defineRule<Barred>({
  id: 'not-into-a-shared-batch',
  severity: 'stop',
  title: 'Not into a batch with others’ meat',
  ground: 'safety',
  stages: ['order', 'receiving', 'cutting'],
  check: barred,
  keyOf: () => 'mixing',
  place: () => ({ kind: 'field', field: 'products' }),
  part: () => null,
  message: ({ what, isByLaw }) => isByLaw ? `Where this shop is, ${what} is not mixed in one batch; the local rule decides.` : `${sentence(what)} is not put into a batch with other hunters’ meat.`,
  suggestions: (_, order) => {
    const { instructions, circumstances } = order;
    const mixedOnly = instructions.products.map(({ productId }) => productId).filter((id) => circumstances.shop.mixedOnly.includes(id));
    const gone = mixedOnly.map((id) => PRODUCTS[id].name);
    return mend(order, {
      label: gone.length > 0 ? `Leave out the ${joined(gone)}` : 'Make mine by itself',
      consequence:
        gone.length > 0
          ? `${gone.length > 1 ? 'They come' : 'It comes'} here only from shared batches; all else is made of your own meat by itself.`
          : 'A batch of your own, made after the others.',
      edits: [{ kind: 'set-mixing', mixing: 'own-meat-only' }, ...mixedOnly.map((productId): Edit => ({ kind: 'set-product', productId, gameGrams: 0 }))],
    });
  },
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const notIntoASharedBatchExamples = (): RuleExamples => {
  const law = { ...CAREFUL.points, pooling: 'allowed' } as const;
  const mixed = { mixing: 'may-be-mixed', products: [{ productId: 'summer-sausage', gameGrams: 4_000 }] } as const;
  return {
    valid: [
      exampleOrder({ instructions: mixed, circumstances: { law } }),
      exampleOrder({ instructions: { ...mixed, mixing: 'own-meat-only' }, circumstances: { diseaseZone: true } }),
      exampleOrder({ instructions: { mixing: 'may-be-mixed' }, circumstances: { diseaseZone: true } }),
    ],
    invalid: [
      {
        order: exampleOrder({ instructions: mixed }),
        messages: ['Where this shop is, the meat of different hunters is not mixed in one batch; the local rule decides.'],
      },
      {
        order: exampleOrder({ instructions: mixed, circumstances: { diseaseZone: true, shop: { ...PLAIN_TERMS, mixedOnly: ['summer-sausage'] } } }),
        messages: ['Meat of an animal from a disease zone is not put into a batch with other hunters’ meat.'],
      },
      {
        order: exampleOrder({ instructions: mixed, facts: { speciesId: 'wild-boar' } }),
        messages: ['Meat of wild boar is not put into a batch with other hunters’ meat.'],
      },
      {
        order: exampleOrder({ instructions: mixed, facts: { gutShot: true }, stage: 'receiving' }),
        messages: ['Meat of a gut-shot animal is not put into a batch with other hunters’ meat.'],
      },
    ],
  };
};
