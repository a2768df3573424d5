import { PLAIN_INSTRUCTIONS } from '@/lib/instructions';
import { exampleOrder } from '../example-order';
import { mend } from '../mend';
import { type RuleExamples, type RuleReason, defineRule } from '../rule';

const CAPE = { ...PLAIN_INSTRUCTIONS.keep, cape: true };

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const capeWithNowhereToGoReason: RuleReason = {
  topic: 'trophy',
  why: 'A raw cape loses its hair within days if it is not frozen or salted, and a shop has no room to keep one. So it is said beforehand who comes for it: a taxidermist by name, or the hunter on the day it is skinned, or it goes into the freezer until then.',
  source: 'common practice, no source',
};

export const capeWithNowhereToGo = defineRule<'cape'>({
  id: 'cape-with-nowhere-to-go',
  severity: 'ask',
  title: 'Nobody named for the cape',
  ground: 'trade',
  stages: ['order', 'receiving', 'release'],
  check: ({ instructions: { keep }, circumstances: { form } }) => (keep.cape && keep.taxidermist === '' && form === 'hide-on' ? ['cape'] : []),
  keyOf: () => 'cape',
  place: () => ({ kind: 'field', field: 'keep' }),
  part: () => null,
  message: () => 'A cape is to be kept, and nobody is named who mounts it or comes for it; raw, it spoils in days.',
  suggestions: (_, order) => [
    ...mend(order, {
      label: 'I come for it the day it is skinned',
      consequence: 'The shop calls you; it waits a day and no longer.',
      edits: [{ kind: 'set-taxidermist', taxidermist: 'the hunter collects it fresh' }],
    }),
    ...mend(order, {
      label: 'Freeze it for me',
      consequence: 'It is folded and frozen, and given out with the meat; the price list says whether that costs.',
      edits: [{ kind: 'set-taxidermist', taxidermist: 'freeze, the hunter collects it' }],
    }),
  ],
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const capeWithNowhereToGoExamples = (): RuleExamples => ({
  valid: [exampleOrder(), exampleOrder({ instructions: { keep: { ...CAPE, taxidermist: 'Nyberg' } } }), exampleOrder({ instructions: { keep: CAPE }, facts: { form: 'skinned' } })],
  invalid: [
    {
      order: exampleOrder({ instructions: { keep: CAPE } }),
      messages: ['A cape is to be kept, and nobody is named who mounts it or comes for it; raw, it spoils in days.'],
    },
  ],
});
