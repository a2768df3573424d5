import type { DeliveryForm } from '@/lib/carcass';
import { PLAIN_INSTRUCTIONS } from '@/lib/instructions';
import { exampleOrder } from '../example-order';
import { mend } from '../mend';
import { type RuleExamples, type RuleReason, defineRule } from '../rule';

type Skinned = { readonly form: Exclude<DeliveryForm, 'hide-on'> };

const HOW: Readonly<Record<Skinned['form'], string>> = {
  skinned: 'already skinned',
  quartered: 'in quarters, without its hide',
  'boned-out': 'boned out, without its hide',
};
const KEPT = { ...PLAIN_INSTRUCTIONS.keep, cape: true };

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const capeAfterSkinningReason: RuleReason = {
  topic: 'trophy',
  why: 'A cape for a shoulder mount is skinned in one piece, from behind the shoulders to the nose, before anything else is done. Once the hide is off it cannot be cut again; if you have kept it, it goes straight to the taxidermist.',
  source: 'common practice, no source',
};

export const capeAfterSkinning = defineRule<Skinned>({
  id: 'cape-after-skinning',
  severity: 'ask',
  title: 'A cape from an animal without its hide',
  ground: 'trade',
  stages: ['order', 'receiving', 'cutting'],
  check: ({ instructions, circumstances: { form } }) => (instructions.keep.cape && form !== 'hide-on' ? [{ form }] : []),
  keyOf: () => 'cape',
  place: () => ({ kind: 'field', field: 'keep' }),
  part: () => null,
  message: ({ form }) => `A cape is to be kept, and the animal comes ${HOW[form]}.`,
  suggestions: (_, order) =>
    mend(order, {
      label: 'No cape',
      consequence: 'No cape is skinned here; a hide you have at home stays yours.',
      edits: [{ kind: 'set-keep', item: 'cape', keep: false }],
    }),
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const capeAfterSkinningExamples = (): RuleExamples => ({
  valid: [exampleOrder({ instructions: { keep: KEPT } }), exampleOrder({ facts: { form: 'skinned' } })],
  invalid: [
    {
      order: exampleOrder({ instructions: { keep: KEPT }, facts: { form: 'skinned' } }),
      messages: ['A cape is to be kept, and the animal comes already skinned.'],
    },
    {
      order: exampleOrder({ instructions: { keep: KEPT }, facts: { form: 'quartered' } }),
      messages: ['A cape is to be kept, and the animal comes in quarters, without its hide.'],
    },
  ],
});
