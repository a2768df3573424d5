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
export const probablyShortReason: RuleReason = {
  topic: 'amount',
  why: 'No two animals of one weight hold the same meat, so the forecast is a range. What you asked for lies in the upper half of it: there may be enough, but more often there is not. It is better to say now what is wanted then, than to leave it to the cutter.',
  source: 'the forecast of this animal, from the published weighings named with each species',
};

export const probablyShort = defineRule<ShortPromise>({
  id: 'probably-short',
  severity: 'ask',
  title: 'Probably not quite enough',
  ground: 'trade',
  stages: ['order', 'receiving', 'cutting'],
  check: (order) => shortPromises(order, 'probable'),
  keyOf: keyOfPromise,
  place: placeOfPromise,
  part: partOfPromise,
  cause: causeOfPromise,
  message: (data, order) => `You asked for ${askedWords(data, order)}, and it may fall short: ${givesWords(data, order)}.`,
  suggestions: lessSuggestions,
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const probablyShortExamples = (): RuleExamples => ({
  valid: [
    exampleOrder({ lines: [exampleLine('a', 'loin', 'medallions', { askedGrams: 2_000 })] }),
    exampleOrder({ lines: [exampleLine('a', 'loin', 'medallions', { askedGrams: 90_000 })] }),
  ],
  invalid: [
    {
      order: exampleOrder({ lines: [exampleLine('a', 'loin', 'medallions', { askedGrams: 2_850 })] }),
      messages: ['You asked for 6.3 lb of loin medallions, and it may fall short: this animal gives about 5.9 lb (5.0 to 6.7).'],
    },
    {
      order: exampleOrder({
        instructions: { products: [{ productId: 'fresh-sausage', gameGrams: 21_000 }] },
        words: { country: 'us', unit: 'kg' },
      }),
      messages: ['You asked for 21.00 kg of your meat in fresh sausage, and it may fall short: what is left for grinding is about 20.16 kg (18.09 to 22.29).'],
    },
  ],
});
