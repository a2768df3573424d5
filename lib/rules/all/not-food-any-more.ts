import { exampleOrder } from '../example-order';
import { type RuleExamples, type RuleReason, defineRule } from '../rule';

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const notFoodAnyMoreReason: RuleReason = {
  topic: 'condition',
  why: 'Meat that smells sour, is green along the bone or has flies’ eggs or maggots on it was too warm for too long. No trimming, washing or grinding makes it food again, and it must not come near other people’s meat. The shop shows it to the hunter, takes a picture, and disposes of it as the local code says.',
  source: 'common practice, no source; cold at 41 F (5 C): FDA Food Code',
};

export const notFoodAnyMore = defineRule<'sour'>({
  id: 'not-food-any-more',
  severity: 'stop',
  title: 'Not food any more',
  ground: 'safety',
  stages: ['receiving', 'cutting'],
  whom: 'shop',
  check: ({ circumstances: { conditions } }) => (conditions.includes('sour') ? ['sour'] : []),
  keyOf: () => 'sour',
  place: () => ({ kind: 'field', field: 'animal' }),
  part: () => null,
  message: () => 'It came in sour or fly-blown, so it is not cut: show it to the hunter, take a picture, and keep it apart from all other meat.',
  noSuggestionBecause: 'Nothing in the instructions makes it food again.',
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const notFoodAnyMoreExamples = (): RuleExamples => ({
  valid: [exampleOrder({ stage: 'receiving' }), exampleOrder({ stage: 'receiving', circumstances: { conditions: ['warm', 'wet'] } })],
  invalid: [
    {
      order: exampleOrder({ stage: 'receiving', circumstances: { conditions: ['sour', 'warm'] } }),
      messages: ['It came in sour or fly-blown, so it is not cut: show it to the hunter, take a picture, and keep it apart from all other meat.'],
    },
  ],
});
