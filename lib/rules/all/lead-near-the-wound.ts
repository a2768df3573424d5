import type { PartPlace } from '@/lib/carcass';
import { minceName } from '@/lib/cuts';
import { exampleOrder } from '../example-order';
import { type RuleExamples, type RuleReason, defineRule } from '../rule';
import { partsNoun } from '../wording';

type Struck = { readonly wounds: readonly PartPlace[] };

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const leadNearTheWoundReason: RuleReason = {
  topic: 'health',
  why: 'A lead bullet leaves fragments too small to see, up to 18 inches from the wound, and grinding spreads them through a whole batch; no distance is known to be safe. So the meat round a wound is cut away wide and thrown away, not ground. Children and pregnant women should not eat game shot with lead from near the wound.',
  source: 'Minnesota DNR 2008; UK FSA',
};

export const leadNearTheWound = defineRule<Struck>({
  id: 'lead-near-the-wound',
  severity: 'note',
  title: 'Wound trim stays out of the grind',
  ground: 'safety',
  stages: ['order', 'receiving', 'cutting'],
  check: ({ plan }) => {
    const { wounds } = plan.forecast.facts;
    return wounds.length > 0 ? [{ wounds }] : [];
  },
  keyOf: () => 'wound',
  place: () => ({ kind: 'field', field: 'mince' }),
  part: () => null,
  message: ({ wounds }, { words }) => {
    const wound = wounds.length > 1 ? 'wounds' : 'wound';
    return `Meat round the ${wound} in ${partsNoun(wounds, words).text} is cut away wide and stays out of the ${minceName(words.country)}.`;
  },
  noSuggestionBecause: 'The cutter does it in any case; there is nothing to choose.',
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const leadNearTheWoundExamples = (): RuleExamples => ({
  valid: [exampleOrder()],
  invalid: [
    {
      order: exampleOrder({ facts: { wounds: [{ part: 'shoulder', place: 'left', severity: 'heavy' }] } }),
      messages: ['Meat round the wound in the left shoulder is cut away wide and stays out of the mince.'],
    },
    {
      order: exampleOrder({
        facts: {
          wounds: [
            { part: 'shoulder', place: 'right', severity: 'heavy' },
            { part: 'ribs', place: 'left', severity: 'light' },
            { part: 'ribs', place: 'right', severity: 'light' },
          ],
        },
        words: { country: 'us', unit: 'lb' },
      }),
      messages: ['Meat round the wounds in the right shoulder and the ribs and flank on both sides is cut away wide and stays out of the ground meat.'],
    },
  ],
});
