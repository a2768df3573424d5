import { PLAIN_INSTRUCTIONS } from '@/lib/instructions';
import { exampleOrder } from '../example-order';
import { mend } from '../mend';
import { type RuleExamples, type RuleReason, defineRule } from '../rule';

const BOTH = { ...PLAIN_INSTRUCTIONS.keep, cape: true, hide: true, taxidermist: 'Nyberg' };

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const capeTakesHalfTheHideReason: RuleReason = {
  topic: 'trophy',
  why: 'A cape for a shoulder mount is the skin of head, neck and shoulders to behind the forelegs: the front half of the hide. What is left is no whole hide to tan, sell or give away. A mount of the whole animal is another job again, with the skin taken off by a taxidermist’s own cuts.',
  source: 'common practice, no source',
};

export const capeTakesHalfTheHide = defineRule<'both'>({
  id: 'cape-takes-half-the-hide',
  severity: 'stop',
  title: 'A cape and a whole hide',
  ground: 'trade',
  stages: ['order', 'receiving', 'cutting'],
  check: ({ instructions: { keep } }) => (keep.cape && keep.hide ? ['both'] : []),
  keyOf: () => 'hide',
  place: () => ({ kind: 'field', field: 'keep' }),
  part: () => null,
  message: () => 'You want a cape and the whole hide, and the cape is the front half of it.',
  suggestions: (_, order) => [
    ...mend(order, {
      label: 'Only the cape',
      consequence: 'Head, neck and shoulders for the mount; the rest of the skin is not kept.',
      edits: [{ kind: 'set-keep', item: 'hide', keep: false }],
    }),
    ...mend(order, {
      label: 'Only the hide',
      consequence: 'The whole skin for tanning; no shoulder mount can be made of it afterwards.',
      edits: [{ kind: 'set-keep', item: 'cape', keep: false }],
    }),
  ],
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const capeTakesHalfTheHideExamples = (): RuleExamples => ({
  valid: [
    exampleOrder({ instructions: { keep: { ...BOTH, hide: false } } }),
    exampleOrder({ instructions: { keep: { ...BOTH, cape: false } } }),
  ],
  invalid: [
    { order: exampleOrder({ instructions: { keep: BOTH } }), messages: ['You want a cape and the whole hide, and the cape is the front half of it.'] },
  ],
});
