import type { PartPlace } from '@/lib/carcass';
import { minceName } from '@/lib/cuts';
import { exampleOrder } from '../example-order';
import { mend } from '../mend';
import { type RuleExamples, type RuleReason, type RuledOrder, defineRule } from '../rule';
import { partsNoun } from '../wording';

type Shot = { readonly wounds: readonly PartPlace[] };

function shot({ plan, circumstances: { shotWith } }: RuledOrder): readonly Shot[] {
  const { facts, species } = plan.forecast;
  // A bird is always shot with pellets; nobody minces it unlooked at.
  return shotWith === 'pellets' && species.plan === 'four-legged' && plan.mince.high > 0 ? [{ wounds: facts.wounds }] : [];
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const pelletsInTheMeatReason: RuleReason = {
  topic: 'health',
  why: 'Shot and buckshot spread: one pellet breaks a tooth, and a steel one breaks the grinder. In a piece that is diced by hand the cutter feels it; in a tub of trim nobody does. Lead ones leave lead besides, which children and pregnant women should not eat.',
  source: 'common practice, no source; lead: Minnesota DNR 2008, UK FSA',
};

export const pelletsInTheMeat = defineRule<Shot>({
  id: 'pellets-in-the-meat',
  severity: 'ask',
  title: 'There may be pellets in it',
  ground: 'safety',
  stages: ['receiving', 'cutting'],
  check: shot,
  keyOf: () => 'pellets',
  place: () => ({ kind: 'field', field: 'mince' }),
  part: () => null,
  message: ({ wounds }, { words }) =>
    `It was killed with shot, so there may be pellets ${wounds.length > 0 ? `round ${partsNoun(wounds, words).text}` : 'anywhere in it'}, and ${minceName(words.country)} hides them.`,
  suggestions: (_, order) => [
    ...mend(order, {
      label: 'Only what has been looked through',
      consequence: 'Hit parts are cut small and felt through by hand; what is not surely clean is thrown away.',
      edits: [{ kind: 'agree', key: 'pellets-in-the-meat|pellets' }],
    }),
  ],
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const pelletsInTheMeatExamples = (): RuleExamples => ({
  valid: [
    exampleOrder({ stage: 'receiving', circumstances: { shotWith: 'bullet' } }),
    exampleOrder({ stage: 'receiving', facts: { speciesId: 'pheasant', weight: null }, circumstances: { shotWith: 'pellets' } }),
  ],
  invalid: [
    {
      order: exampleOrder({ stage: 'receiving', circumstances: { shotWith: 'pellets' }, facts: { wounds: [{ part: 'shoulder', place: 'left', severity: 'light' }] } }),
      messages: ['It was killed with shot, so there may be pellets round the left shoulder, and mince hides them.'],
    },
    {
      order: exampleOrder({ stage: 'receiving', circumstances: { shotWith: 'pellets' } }),
      messages: ['It was killed with shot, so there may be pellets anywhere in it, and mince hides them.'],
    },
  ],
});
