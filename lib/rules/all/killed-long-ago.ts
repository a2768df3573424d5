import { exampleOrder } from '../example-order';
import { type RuleExamples, type RuleReason, defineRule } from '../rule';

/** Longer than any shop hangs before it has even come in; judgement. */
const LONG_DAYS = 10;

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const killedLongAgoReason: RuleReason = {
  topic: 'condition',
  why: 'An animal comes to the shop within a day or two of the kill. If the date says more than a week, either it is a slip of the pen, which the book must not hold, or the animal has lain somewhere, and the owner wants to know where and how cold before it goes into the cooler beside the others.',
  source: 'common practice, no source; days until it must be brought in where a disease is looked for: Ohio 24 h, Missouri 48 h',
};

export const killedLongAgo = defineRule<number>({
  id: 'killed-long-ago',
  severity: 'ask',
  title: 'Killed long before it came',
  ground: 'trade',
  stages: ['receiving'],
  whom: 'shop',
  check: ({ circumstances: { killedDaysAgo, conditions } }) =>
    killedDaysAgo !== null && killedDaysAgo > LONG_DAYS && !conditions.includes('frozen') ? [killedDaysAgo] : [],
  keyOf: () => 'killed',
  place: () => ({ kind: 'field', field: 'animal' }),
  part: () => null,
  message: (days) => `It was killed ${days} days before today by its papers: check the date, and ask where it has been.`,
  noSuggestionBecause: 'Only who brought it can say; the date is corrected at receiving.',
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const killedLongAgoExamples = (): RuleExamples => ({
  valid: [
    exampleOrder({ stage: 'receiving', circumstances: { killedDaysAgo: 3 } }),
    exampleOrder({ stage: 'receiving', circumstances: { killedDaysAgo: 30, conditions: ['frozen'] } }),
  ],
  invalid: [
    {
      order: exampleOrder({ stage: 'receiving', circumstances: { killedDaysAgo: 15 } }),
      messages: ['It was killed 15 days before today by its papers: check the date, and ask where it has been.'],
    },
  ],
});
