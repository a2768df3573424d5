import type { Edit } from '@/lib/instructions';
import { PRODUCTS } from '@/lib/plan';
import type { CalendarDay } from '@/lib/units';
import { exampleOrder } from '../example-order';
import { mend } from '../mend';
import { PLAIN_TERMS, type RuleExamples, type RuleReason, type RuledOrder, defineRule } from '../rule';
import { dayWords, joined, sentence } from '../wording';

type Late = { readonly lastDay: CalendarDay; readonly names: readonly string[] };

function late({ instructions: { products }, circumstances: { today, shop } }: RuledOrder): readonly Late[] {
  if (products.length === 0 || today === null || shop.madeUntil === null || today <= shop.madeUntil) return [];
  return [{ lastDay: shop.madeUntil, names: products.map(({ productId }) => PRODUCTS[productId].name) }];
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const afterTheLastBatchReason: RuleReason = {
  topic: 'made-things',
  why: 'Casings, cure and smokehouse time are laid in for a season. After the last batch has been planned there is no other for one animal’s meat to go into until the next season; it can be kept as mince and frozen, and made up another year if the shop offers that.',
  source: 'common practice, no source; the day is the shop’s own',
};

export const afterTheLastBatch = defineRule<Late>({
  id: 'after-the-last-batch',
  severity: 'stop',
  title: 'Made things are over for this season',
  ground: 'trade',
  stages: ['order'],
  check: late,
  keyOf: () => 'made',
  place: () => ({ kind: 'field', field: 'products' }),
  part: () => null,
  message: ({ lastDay, names }, { words }) => `${sentence(joined(names))} can be made only of animals that came in by ${dayWords(lastDay, words)}.`,
  suggestions: (_, order) =>
    mend(order, {
      label: 'Leave it plain',
      consequence: 'The meat meant for it goes with the rest.',
      edits: order.instructions.products.map(({ productId }): Edit => ({ kind: 'set-product', productId, gameGrams: 0 })),
    }),
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const afterTheLastBatchExamples = (): RuleExamples => {
  const products = [{ productId: 'snack-sticks', gameGrams: 4_000 }, { productId: 'fresh-sausage', gameGrams: 2_000 }] as const;
  const shop = { ...PLAIN_TERMS, madeUntil: '2026-12-15' };
  return {
    valid: [
      exampleOrder({ instructions: { products }, circumstances: { today: '2026-12-15', shop } }),
      exampleOrder({ circumstances: { today: '2026-12-16', shop } }),
    ],
    invalid: [
      {
        order: exampleOrder({ instructions: { products }, circumstances: { today: '2026-12-16', shop } }),
        messages: ['Snack sticks and fresh sausage can be made only of animals that came in by 15 December.'],
      },
    ],
  };
};
