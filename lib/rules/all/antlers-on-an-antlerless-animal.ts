import { PLAIN_INSTRUCTIONS } from '@/lib/instructions';
import { exampleOrder } from '../example-order';
import { mend } from '../mend';
import { type RuleExamples, type RuleReason, type RuledOrder, defineRule } from '../rule';

type Antlerless = { readonly name: string };

const KEPT = { ...PLAIN_INSTRUCTIONS.keep, antlers: 'skull-plate' } as const;

function antlerless({ instructions, circumstances, plan }: RuledOrder): readonly Antlerless[] {
  if (instructions.keep.antlers === 'none') return [];
  const { facts, species } = plan.forecast;
  if (facts.ageClass === 'young' || species.trophy === null) return [{ name: facts.ageClass === 'young' ? species.youngName : species.name }];
  return circumstances.sex === 'female' && species.trophy.on === 'male' ? [{ name: species.femaleName }] : [];
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const antlersOnAnAntlerlessAnimalReason: RuleReason = {
  topic: 'trophy',
  why: 'A doe or a young animal carries no antlers to speak of, so either the box was ticked by mistake or the sex or age was. Sex and age decide the weight we reckon with and what the tag allows, so it is worth a look.',
  source: 'common practice, no source',
};

export const antlersOnAnAntlerlessAnimal = defineRule<Antlerless>({
  id: 'antlers-on-an-antlerless-animal',
  severity: 'ask',
  title: 'Antlers of an animal that has none',
  ground: 'trade',
  stages: ['order', 'receiving', 'cutting'],
  check: antlerless,
  keyOf: () => 'antlers',
  place: () => ({ kind: 'field', field: 'keep' }),
  part: () => null,
  message: ({ name }, { instructions: { keep } }) =>
    `${keep.antlers === 'whole-head' ? 'The head is to be kept for its antlers' : 'The antlers are to be kept'}, and this animal is down as a ${name}.`,
  suggestions: ({ name }, order) =>
    mend(order, {
      label: 'No antlers',
      consequence: `It stays a ${name}; if that is wrong, change its sex or age instead.`,
      edits: [{ kind: 'set-antlers', antlers: 'none' }],
    }),
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const antlersOnAnAntlerlessAnimalExamples = (): RuleExamples => ({
  valid: [
    exampleOrder({ instructions: { keep: KEPT }, facts: { sex: 'male' } }),
    exampleOrder({ instructions: { keep: KEPT }, facts: { sex: 'unknown' } }),
    exampleOrder({ facts: { sex: 'female' } }),
  ],
  invalid: [
    { order: exampleOrder({ instructions: { keep: KEPT } }), messages: ['The antlers are to be kept, and this animal is down as a doe.'] },
    {
      order: exampleOrder({
        instructions: { keep: { ...KEPT, antlers: 'whole-head' } },
        facts: { speciesId: 'elk', sex: 'male', ageClass: 'young', weight: null },
      }),
      messages: ['The head is to be kept for its antlers, and this animal is down as a calf.'],
    },
  ],
});
