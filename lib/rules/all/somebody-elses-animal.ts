import { exampleOrder } from '../example-order';
import { type RuleExamples, type RuleReason, defineRule } from '../rule';

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const somebodyElsesAnimalReason: RuleReason = {
  topic: 'paper-and-law',
  why: 'The tag belongs to whoever killed the animal. Somebody who brings a friend’s deer usually has to carry a note signed by that friend, with name, licence and tag number, and the shop keeps it with its records for the day an officer asks. Your local rule decides what must be on it.',
  source: 'common practice, no source; from whom an animal was received: for example South Dakota ARSD 41:06:03:11, 50 CFR 20.36 for migratory birds',
};

export const somebodyElsesAnimal = defineRule<string>({
  id: 'somebody-elses-animal',
  severity: 'ask',
  title: 'Killed by somebody else',
  ground: 'law',
  stages: ['receiving', 'cutting'],
  whom: 'shop',
  check: ({ circumstances: { killedBy, hasTransferNote } }) => (killedBy !== '' && !hasTransferNote ? [killedBy] : []),
  keyOf: () => 'killed-by',
  place: () => ({ kind: 'field', field: 'animal' }),
  part: () => null,
  message: (name) => `${name} killed it, and no signed note came with it: ask for one, with name, licence and tag number.`,
  noSuggestionBecause: 'The note has to come from the person; it is ticked at receiving when it has.',
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const somebodyElsesAnimalExamples = (): RuleExamples => ({
  valid: [exampleOrder({ stage: 'receiving' }), exampleOrder({ stage: 'receiving', circumstances: { killedBy: 'Jonas Tveit', hasTransferNote: true } })],
  invalid: [
    {
      order: exampleOrder({ stage: 'receiving', circumstances: { killedBy: 'Jonas Tveit' } }),
      messages: ['Jonas Tveit killed it, and no signed note came with it: ask for one, with name, licence and tag number.'],
    },
  ],
});
