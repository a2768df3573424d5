import { PLAIN_INSTRUCTIONS } from '@/lib/instructions';
import { headStays } from '../disease';
import { exampleOrder } from '../example-order';
import { mend } from '../mend';
import { type RuleExamples, type RuleReason, type RuledOrder, defineRule } from '../rule';

type Trophy = { readonly name: string };

const BOTH = { ...PLAIN_INSTRUCTIONS.keep, cape: true, antlers: 'skull-plate', taxidermist: 'Nyberg' } as const;

function spoilt({ instructions: { keep }, plan }: RuledOrder): readonly Trophy[] {
  const { trophy } = plan.forecast.species;
  return keep.cape && keep.antlers === 'skull-plate' && trophy ? [{ name: trophy.name }] : [];
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const skullPlateSpoilsTheMountReason: RuleReason = {
  topic: 'trophy',
  why: 'Sawing a skull plate means sawing through the skin of the face, and a shoulder mount is made of that very skin. For a mount the head stays on the cape, whole, and the taxidermist takes the antlers out. Only where he has said that he skins the head first does the plate go with it.',
  source: 'common practice, no source',
};

export const skullPlateSpoilsTheMount = defineRule<Trophy>({
  id: 'skull-plate-spoils-the-mount',
  severity: 'ask',
  title: 'A mount and a sawn skull plate',
  ground: 'trade',
  stages: ['order', 'receiving', 'cutting'],
  check: spoilt,
  keyOf: () => 'plate',
  place: () => ({ kind: 'field', field: 'keep' }),
  part: () => null,
  message: ({ name }) => `You want a cape for a mount, and sawing the ${name} off cuts through the face of it.`,
  suggestions: (_, order) => [
    ...(headStays(order)
      ? []
      : mend(order, {
          label: 'Leave the head whole, on the cape',
          consequence: 'Nothing is sawn; the taxidermist takes it from there.',
          edits: [{ kind: 'set-antlers', antlers: 'whole-head' }],
        })),
    ...mend(order, {
      label: 'No mount, only the skull plate',
      consequence: 'The cape is not kept.',
      edits: [{ kind: 'set-keep', item: 'cape', keep: false }],
    }),
    ...mend(order, {
      label: 'The head is skinned first',
      consequence: 'The cape is taken off the head whole, then the plate is sawn. Ask the shop what that costs.',
      edits: [{ kind: 'agree', key: 'skull-plate-spoils-the-mount|plate' }],
    }),
  ],
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const skullPlateSpoilsTheMountExamples = (): RuleExamples => ({
  valid: [
    exampleOrder({ facts: { sex: 'male' }, instructions: { keep: { ...BOTH, antlers: 'whole-head' } } }),
    exampleOrder({ facts: { sex: 'male' }, instructions: { keep: { ...BOTH, cape: false } } }),
  ],
  invalid: [
    {
      order: exampleOrder({ facts: { sex: 'male' }, instructions: { keep: BOTH } }),
      messages: ['You want a cape for a mount, and sawing the antlers off cuts through the face of it.'],
    },
    {
      order: exampleOrder({ facts: { sex: 'male' }, instructions: { keep: BOTH }, circumstances: { diseaseZone: true } }),
      messages: ['You want a cape for a mount, and sawing the antlers off cuts through the face of it.'],
    },
  ],
});
