import { exampleOrder } from '../example-order';
import { mend } from '../mend';
import { type RuleExamples, type RuleReason, defineRule } from '../rule';

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const dirtyNeedsCleaningReason: RuleReason = {
  topic: 'condition',
  why: 'Hair, leaves and dirt have to be picked and cut off by hand before a knife goes into the meat, and with them goes some of the meat. It takes time that the price of cutting does not hold, so the shop says so before it begins rather than on the bill.',
  source: 'common practice, no source',
};

export const dirtyNeedsCleaning = defineRule<'dirty'>({
  id: 'dirty-needs-cleaning',
  severity: 'ask',
  title: 'It has to be cleaned first',
  ground: 'trade',
  stages: ['receiving', 'cutting'],
  check: ({ circumstances: { conditions } }) => (conditions.includes('dirty') && !conditions.includes('sour') ? ['dirty'] : []),
  keyOf: () => 'cleaning',
  place: () => ({ kind: 'field', field: 'animal' }),
  part: () => null,
  message: () => 'It came in with hair or dirt on the meat, which is cleaned off by hand and charged by the price list.',
  suggestions: (_, order) =>
    mend(order, {
      label: 'Yes, clean it',
      consequence: 'The cleaning charge of the price list comes on the bill.',
      edits: [{ kind: 'agree', key: 'dirty-needs-cleaning|cleaning' }],
    }),
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const dirtyNeedsCleaningExamples = (): RuleExamples => ({
  valid: [
    exampleOrder({ stage: 'receiving', circumstances: { conditions: ['clean'] } }),
    exampleOrder({ stage: 'receiving', circumstances: { conditions: ['dirty'] }, instructions: { agreed: ['dirty-needs-cleaning|cleaning'] } }),
  ],
  invalid: [
    {
      order: exampleOrder({ stage: 'receiving', circumstances: { conditions: ['dirty'] } }),
      messages: ['It came in with hair or dirt on the meat, which is cleaned off by hand and charged by the price list.'],
    },
  ],
});
