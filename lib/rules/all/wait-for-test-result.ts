import { exampleOrder } from '../example-order';
import { type RuleExamples, type RuleReason, defineRule } from '../rule';

type Awaited = 'pending' | 'positive';

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const waitForTestResultReason: RuleReason = {
  topic: 'health',
  why: 'An animal under test for chronic wasting disease hangs whole until the result is known: once it is cut, its meat cannot be called back, and the knives, the saw and the grinder have touched it. A positive animal is not eaten. A negative test is not a guarantee.',
  source: 'Michigan State University Extension, processor protocol, 2022; CDC',
};

export const waitForTestResult = defineRule<Awaited>({
  id: 'wait-for-test-result',
  severity: 'stop',
  title: 'Not cut before the test is back',
  ground: 'safety',
  stages: ['cutting'],
  check: ({ circumstances: { test } }) => (test === 'pending' || test === 'positive' ? [test] : []),
  keyOf: (test) => test,
  place: () => ({ kind: 'field', field: 'animal' }),
  part: () => null,
  message: (test) =>
    test === 'pending'
      ? 'The disease test of this animal is not back, so it stays whole until it is.'
      : 'The disease test of this animal came back positive, so it is not cut; the local authority says what becomes of it.',
  noSuggestionBecause: 'Only the laboratory can answer; nothing in the instructions changes it.',
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const waitForTestResultExamples = (): RuleExamples => ({
  valid: [
    exampleOrder({ stage: 'cutting' }),
    exampleOrder({ stage: 'cutting', circumstances: { test: 'negative' } }),
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
  ],
});
