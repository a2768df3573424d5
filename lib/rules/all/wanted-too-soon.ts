import type { Edit } from '@/lib/instructions';
import { type CalendarDay, addDays } from '@/lib/units';
import { exampleOrder } from '../example-order';
import { mend } from '../mend';
import { PLAIN_TERMS, type RuleExamples, type RuleReason, type RuledOrder, type Suggestion, defineRule } from '../rule';
import { dayWords } from '../wording';

/** A day wished for and the first that the shop can keep, for all of it or for the plain cuts alone. */
type TooSoon = { readonly wantedBy: CalendarDay; readonly today: CalendarDay; readonly earliest: CalendarDay; readonly what: 'plain' | 'made' };

function tooSoon({ instructions: { wantedBy, products }, circumstances: { today, shop } }: RuledOrder): readonly TooSoon[] {
  if (wantedBy === null || today === null) return [];
  const plain = addDays(today, shop.plainDays ?? 0);
  if (wantedBy < plain) return [{ wantedBy, today, earliest: plain, what: 'plain' }];
  const made = addDays(today, shop.madeDays ?? 0);
  return products.length > 0 && wantedBy < made ? [{ wantedBy, today, earliest: made, what: 'made' }] : [];
}

function suggestions({ earliest, what }: TooSoon, order: RuledOrder): readonly Suggestion[] {
  const { instructions, circumstances, words } = order;
  // With made things, the day for everything is the day of the slowest.
  const made = instructions.products.length > 0 ? addDays(circumstances.today ?? earliest, circumstances.shop.madeDays ?? 0) : earliest;
  const all = made > earliest ? made : earliest;
  return [
    ...(what === 'made'
      ? mend(order, {
          label: 'Plain cuts by then, made things later',
          consequence: `You collect twice: the cuts on the day you named, the made things from about ${dayWords(all, words)}.`,
          edits: [{ kind: 'agree', key: 'wanted-too-soon|made' }],
        })
      : []),
    ...mend(order, {
      label: `Make it ${dayWords(all, words)}`,
      consequence: `${what === 'plain' && all > earliest ? 'Made things are ready then as well, if' : 'If'} the animal comes in today; later if it comes later.`,
      edits: [{ kind: 'set-wanted-by', wantedBy: all }],
    }),
    ...(what === 'made'
      ? mend(order, {
          label: 'No made things',
          consequence: 'The meat meant for them stays plain and is ready by the day you named.',
          edits: instructions.products.map(({ productId }): Edit => ({ kind: 'set-product', productId, gameGrams: 0 })),
        })
      : mend(order, { label: 'No fixed day', consequence: 'The shop tells you when it is ready.', edits: [{ kind: 'set-wanted-by', wantedBy: null }] })),
  ];
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const wantedTooSoonReason: RuleReason = {
  topic: 'packing-and-bill',
  why: 'A carcass has to hang, be cut in its turn and freeze through before it can be handed over, and smoked or dried things wait for their batch and then for the smokehouse. No hurry shortens a cure or a smoke. Plain cuts can nearly always be collected first.',
  source: 'common practice, no source; the days are the shop’s own',
};

export const wantedTooSoon = defineRule<TooSoon>({
  id: 'wanted-too-soon',
  severity: 'ask',
  title: 'Wanted before it can be ready',
  ground: 'trade',
  stages: ['order', 'receiving'],
  check: tooSoon,
  keyOf: ({ what }) => what,
  place: () => ({ kind: 'field', field: 'wanted' }),
  part: () => null,
  message: ({ wantedBy, today, earliest, what }, { words }) => {
    const day = dayWords(wantedBy, words);
    if (wantedBy < today) return `You need it by ${day}, and that day has passed.`;
    const things = what === 'plain' ? 'plain cuts' : 'made things';
    return `You need it by ${day}, and ${things} are ready on ${dayWords(earliest, words)} at the earliest.`;
  },
  suggestions,
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const wantedTooSoonExamples = (): RuleExamples => {
  const circumstances = { today: '2026-11-25', shop: { ...PLAIN_TERMS, plainDays: 7, madeDays: 28 } } as const;
  const products = [{ productId: 'snack-sticks', gameGrams: 4_000 }] as const;
  return {
    valid: [
      exampleOrder({ instructions: { wantedBy: '2026-12-02' }, circumstances }),
      exampleOrder({ instructions: { wantedBy: '2026-11-26' } }),
      exampleOrder({ instructions: { products }, circumstances }),
    ],
    invalid: [
      {
        order: exampleOrder({ instructions: { wantedBy: '2026-11-28' }, circumstances }),
        messages: ['You need it by 28 November, and plain cuts are ready on 2 December at the earliest.'],
      },
      {
        order: exampleOrder({ instructions: { wantedBy: '2026-12-10', products }, circumstances, words: { country: 'us', unit: 'lb' } }),
        messages: ['You need it by December 10, and made things are ready on December 23 at the earliest.'],
      },
      {
        order: exampleOrder({ instructions: { wantedBy: '2026-11-20' }, circumstances }),
        messages: ['You need it by 20 November, and that day has passed.'],
      },
    ],
  };
};
