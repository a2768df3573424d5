import { minceName } from '@/lib/cuts';
import { exampleOrder } from '../example-order';
import { mend } from '../mend';
import { type RuleExamples, type RuleReason, type RuledOrder, defineRule } from '../rule';

type Lean = { readonly fatPercent: number };

/** Below this a patty falls apart in the pan; judgement, as the trade has it. */
const LEAST_FAT_PERCENT = 10;

function lean({ instructions: { mince }, plan }: RuledOrder): readonly Lean[] {
  const fatPercent = mince.addedFat === 'none' ? 0 : mince.fatPercent;
  return mince.shape === 'patties' && fatPercent < LEAST_FAT_PERCENT && plan.mince.high > 0 ? [{ fatPercent }] : [];
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const pattiesWithoutFatReason: RuleReason = {
  topic: 'cutting',
  why: 'Ground game has hardly any fat of its own, and fat is what holds a patty together and keeps it moist. With less than about a tenth it crumbles on the grill. Loose in a packet the same meat is fine for sauces and stews, and fat can be mixed in at home.',
  source: 'common practice, no source; the tenth is judgement',
};

export const pattiesWithoutFat = defineRule<Lean>({
  id: 'patties-without-fat',
  severity: 'ask',
  title: 'Patties too lean to hold',
  ground: 'trade',
  stages: ['order', 'receiving', 'cutting'],
  check: lean,
  keyOf: () => 'patties',
  place: () => ({ kind: 'field', field: 'mince' }),
  part: () => null,
  message: ({ fatPercent }) =>
    `You asked for patties with ${fatPercent === 0 ? 'no fat added' : `only ${fatPercent} percent of fat`}, and they would crumble in the pan; ${LEAST_FAT_PERCENT} percent holds them together.`,
  suggestions: (_, order) => [
    ...mend(order, {
      label: `Add ${LEAST_FAT_PERCENT} percent beef fat`,
      consequence: 'It is mixed in when the meat is ground; the price list says what it costs.',
      edits: [{ kind: 'set-fat', addedFat: 'beef', fatPercent: LEAST_FAT_PERCENT }],
    }),
    ...mend(order, {
      label: 'Loose instead of patties',
      consequence: `Packets of plain ${minceName(order.words.country)}, as lean as they are.`,
      edits: [{ kind: 'set-mince-shape', shape: 'bulk' }],
    }),
  ],
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const pattiesWithoutFatExamples = (): RuleExamples => {
  const patties = { addedFat: 'none', fatPercent: 0, packGrams: 454, shape: 'patties' } as const;
  return {
    valid: [
      exampleOrder({ instructions: { mince: { ...patties, addedFat: 'beef', fatPercent: 10 } } }),
      exampleOrder({ instructions: { mince: { ...patties, shape: 'bulk' } } }),
      exampleOrder({ instructions: { mince: patties, rest: 'undecided' } }),
    ],
    invalid: [
      {
        order: exampleOrder({ instructions: { mince: patties } }),
        messages: ['You asked for patties with no fat added, and they would crumble in the pan; 10 percent holds them together.'],
      },
      {
        order: exampleOrder({ instructions: { mince: { ...patties, addedFat: 'beef', fatPercent: 5 } } }),
        messages: ['You asked for patties with only 5 percent of fat, and they would crumble in the pan; 10 percent holds them together.'],
      },
    ],
  };
};
