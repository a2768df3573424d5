import { exampleLine, exampleOrder } from '../example-order';
import { type RuleExamples, type RuleReason, defineRule } from '../rule';
import {
  type ShortPromise,
  askedWords,
  causeOfPromise,
  givesWords,
  keyOfPromise,
  lessSuggestions,
  partOfPromise,
  placeOfPromise,
  shortPromises,
} from '../short-promise';

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const moreThanTheAnimalGivesReason: RuleReason = {
  topic: 'amount',
  why: 'A carcass of a given weight holds so much loin and no more. The figures come from published weighings of the species and from the weight you gave; in nine animals of ten there is less than the highest figure. Meat that is not there cannot be packed, and a shop that quietly packs less is blamed for taking it.',
  source: 'the forecast of this animal, from the published weighings named with each species',
};

export const moreThanTheAnimalGives = defineRule<ShortPromise>({
  id: 'more-than-the-animal-gives',
  severity: 'stop',
  title: 'More asked than this animal gives',
  ground: 'trade',
  stages: ['order', 'receiving', 'cutting'],
  check: (order) => shortPromises(order, 'certain'),
  keyOf: keyOfPromise,
  place: placeOfPromise,
  part: partOfPromise,
  cause: causeOfPromise,
  message: (data, order) => `You asked for ${askedWords(data, order)}; ${givesWords(data, order)}.`,
  suggestions: lessSuggestions,
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const moreThanTheAnimalGivesExamples = (): RuleExamples => ({
  valid: [
    exampleOrder({ lines: [exampleLine('a', 'loin', 'medallions', { askedGrams: 2_000 })] }),
    exampleOrder({
      lines: [exampleLine('a', 'haunch', 'on-the-bone'), exampleLine('b', 'topside', 'joint', { askedGrams: 90_000 })],
    }),
  ],
  invalid: [
    {
      order: exampleOrder({ lines: [exampleLine('a', 'loin', 'chops', { askedGrams: 13_608 })] }),
      messages: ['You asked for 30.0 lb of loin chops on the bone; this animal gives about 13.2 lb (12.0 to 14.5).'],
    },
    {
      order: exampleOrder({ instructions: { products: [{ productId: 'fresh-sausage', gameGrams: 40_000 }] } }),
      messages: ['You asked for 88.2 lb of your meat in fresh sausage; what is left for grinding is about 44.5 lb (39.9 to 49.1).'],
    },
    {
      order: exampleOrder({
        lines: (['saddle', 'haunch', 'shoulder', 'neck'] as const).map((target) => exampleLine(target, target, 'on-the-bone')).concat(exampleLine('ribs', 'ribs', 'leave-out')),
        instructions: { products: [{ productId: 'fresh-sausage', gameGrams: 4_000 }] },
        words: { country: 'us', unit: 'kg' },
      }),
      messages: ['You asked for 4.00 kg of your meat in fresh sausage; nothing is left for grinding.'],
    },
  ],
});
