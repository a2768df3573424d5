import { exampleOrder } from '../example-order';
import { type RuleExamples, type RuleReason, defineRule } from '../rule';

type Awaited = 'pending' | 'positive';

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const waitForTestResultReason: RuleReason = {
  topic: 'health',
  why: 'An animal under test for chronic wasting disease hangs whole until the result is known: once it is cut, its meat cannot be called back, and the knives, the saw and the grinder have touched it. A positive animal is not eaten, so no meat leaves before the result is known. A negative test is not a guarantee.',
  source: 'Michigan State University Extension, processor protocol, 2022; CDC',
};

const SENTENCES: Readonly<Record<'cutting' | 'release', Readonly<Record<Awaited, string>>>> = {
  cutting: {
    pending: 'The disease test of this animal is not back, so it stays whole until it is.',
    positive: 'The disease test of this animal came back positive, so it is not cut; the local authority says what becomes of it.',
  },
  release: {
    pending: 'The disease test of this animal is not back, so its meat stays here until it is.',
    positive: 'The disease test of this animal came back positive, so its meat is not handed over; the local authority says what becomes of it.',
  },
};

export const waitForTestResult = defineRule<Awaited>({
  id: 'wait-for-test-result',
  severity: 'stop',
  title: 'Not before the test is back',
  ground: 'safety',
  stages: ['cutting', 'release'],
  whom: 'shop',
  check: ({ circumstances: { test } }) => (test === 'pending' || test === 'positive' ? [test] : []),
  keyOf: (test) => test,
  place: () => ({ kind: 'field', field: 'animal' }),
  part: () => null,
  message: (test, { stage }) => SENTENCES[stage === 'release' ? 'release' : 'cutting'][test],
  noSuggestionBecause: 'Only the laboratory can answer; nothing in the instructions changes it.',
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const waitForTestResultExamples = (): RuleExamples => ({
  valid: [
    exampleOrder({ stage: 'cutting' }),
    exampleOrder({ stage: 'cutting', circumstances: { test: 'negative' } }),
    exampleOrder({ stage: 'release', circumstances: { test: 'negative' } }),
  ],
  invalid: [
    {
      order: exampleOrder({ stage: 'cutting', circumstances: { test: 'pending' } }),
      messages: ['The disease test of this animal is not back, so it stays whole until it is.'],
    },
    {
      order: exampleOrder({ stage: 'cutting', circumstances: { test: 'positive' } }),
      messages: ['The disease test of this animal came back positive, so it is not cut; the local authority says what becomes of it.'],
    },
    {
      order: exampleOrder({ stage: 'release', circumstances: { test: 'pending' } }),
      messages: ['The disease test of this animal is not back, so its meat stays here until it is.'],
    },
    {
      order: exampleOrder({ stage: 'release', circumstances: { test: 'positive' } }),
      messages: ['The disease test of this animal came back positive, so its meat is not handed over; the local authority says what becomes of it.'],
    },
  ],
});
