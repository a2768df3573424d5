import { minceName } from '@/lib/cuts';
import { exampleOrder } from '../example-order';
import { mend } from '../mend';
import { type RuleExamples, type RuleReason, type RuledOrder, defineRule } from '../rule';

type Fat = { readonly asked: number; readonly most: number };

function tooFat({ instructions: { mince }, circumstances: { shop } }: RuledOrder): readonly Fat[] {
  const { addedFat, fatPercent } = mince;
  return addedFat !== 'none' && fatPercent > shop.mostFatPercent ? [{ asked: fatPercent, most: shop.mostFatPercent }] : [];
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const moreFatThanTheShopAddsReason: RuleReason = {
  topic: 'cutting',
  why: 'Fat makes ground game juicier, up to a point. Above about thirty percent it runs out in the pan and the meat shrinks to little; many codes draw the line for hamburger there as well. What more there is to pay for is bought fat, not your animal.',
  source: 'common practice, no source; 30 percent is the limit for hamburger in 9 CFR 319.15 (from memory)',
};

export const moreFatThanTheShopAdds = defineRule<Fat>({
  id: 'more-fat-than-the-shop-adds',
  severity: 'ask',
  title: 'More fat than is good',
  ground: 'trade',
  stages: ['order', 'receiving', 'cutting'],
  check: tooFat,
  keyOf: () => 'fat',
  place: () => ({ kind: 'field', field: 'mince' }),
  part: () => null,
  message: ({ asked, most }, { words }) => `You asked for ${asked} percent of fat in the ${minceName(words.country)}; this shop adds ${most} at most.`,
  suggestions: ({ most }, order) => [
    ...mend(order, {
      label: `Make it ${most} percent`,
      consequence: 'As much as holds together and stays in the pan.',
      edits: [{ kind: 'set-fat', addedFat: order.instructions.mince.addedFat, fatPercent: most }],
    }),
    ...mend(order, { label: 'No added fat', consequence: 'Pure game, and lean.', edits: [{ kind: 'set-fat', addedFat: 'none', fatPercent: 0 }] }),
  ],
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const moreFatThanTheShopAddsExamples = (): RuleExamples => {
  const mince = { addedFat: 'beef', fatPercent: 40, packGrams: 454, shape: 'bulk' } as const;
  return {
    valid: [exampleOrder({ instructions: { mince: { ...mince, fatPercent: 30 } } }), exampleOrder()],
    invalid: [
      { order: exampleOrder({ instructions: { mince } }), messages: ['You asked for 40 percent of fat in the mince; this shop adds 30 at most.'] },
    ],
  };
};
