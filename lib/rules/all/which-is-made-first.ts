import { PRODUCTS, type PlannedProduct } from '@/lib/plan';
import { exampleLine, exampleOrder } from '../example-order';
import { mend } from '../mend';
import { isBelowBatch, shortfallOfProduct } from '../shortfall';
import { type RuleExamples, type RuleReason, type RuledOrder, defineRule } from '../rule';
import { joined } from '../wording';

/** Below this chance that all of it can be made, the hunter is asked what comes first. */
const SURE = 0.9;

function unsure(order: RuledOrder): readonly (readonly PlannedProduct[])[] {
  const { instructions, plan } = order;
  const { products } = plan;
  const isShort = plan.doubles.length === 0 && products.some(({ chance }) => chance < SURE);
  // What cannot be had at all is told first; once that is settled there may be nothing left to ask.
  const isTold = products.some((product) => shortfallOfProduct(product, order) === 'certain' || isBelowBatch(product, order));
  return products.length > 1 && !instructions.isPriorityStated && isShort && !isTold ? [products] : [];
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const whichIsMadeFirstReason: RuleReason = {
  topic: 'made-things',
  why: 'No scale knows before the knife how much there will be to grind. When it turns out less than hoped for, something comes out smaller or not at all. Without an order of priority the cutter has to choose, and is blamed for it; with one, it is printed on the sheet and kept to.',
  source: 'common practice, no source',
};

export const whichIsMadeFirst = defineRule<readonly PlannedProduct[]>({
  id: 'which-is-made-first',
  severity: 'ask',
  title: 'What comes first if meat runs short',
  ground: 'trade',
  stages: ['order', 'receiving', 'cutting'],
  check: unsure,
  keyOf: () => 'first',
  place: () => ({ kind: 'field', field: 'products' }),
  part: () => null,
  message: (products) => `There may not be meat enough for ${joined(products.map(({ productId }) => PRODUCTS[productId].name))}; which comes first is for you to say.`,
  suggestions: (products, order) =>
    products.flatMap(({ productId }) => {
      const { name } = PRODUCTS[productId];
      const others = products.filter((one) => one.productId !== productId).map((one) => PRODUCTS[one.productId].name);
      return mend(order, {
        label: `The ${name} first`,
        consequence: `If there is less, it is the ${joined(others)} that ${others.length > 1 || others[0]?.endsWith('s') ? 'come' : 'comes'} out smaller.`,
        edits: [{ kind: 'serve-first', productId }],
      });
    }),
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const whichIsMadeFirstExamples = (): RuleExamples => {
  const lines = [exampleLine('a', 'haunch', 'on-the-bone'), exampleLine('b', 'loin', 'medallions')];
  const products = [{ productId: 'fresh-sausage', gameGrams: 4_000 }, { productId: 'snack-sticks', gameGrams: 4_000 }] as const;
  return {
    valid: [
      exampleOrder({ instructions: { products } }),
      exampleOrder({ lines, instructions: { products, isPriorityStated: true } }),
      exampleOrder({ lines, instructions: { products: products.slice(0, 1) } }),
    ],
    invalid: [
      {
        order: exampleOrder({ lines, instructions: { products } }),
        messages: ['There may not be meat enough for fresh sausage and snack sticks; which comes first is for you to say.'],
      },
    ],
  };
};
