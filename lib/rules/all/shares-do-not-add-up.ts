import type { Share } from '@/lib/instructions';
import { allocateByLargestRemainder } from '@/lib/units';
import { exampleOrder } from '../example-order';
import { mend } from '../mend';
import { type RuleExamples, type RuleReason, type RuledOrder, type Suggestion, defineRule } from '../rule';
import { joined } from '../wording';

type Sum = { readonly shares: readonly Share[]; readonly percent: number };

function wrongSum({ instructions: { shares } }: RuledOrder): readonly Sum[] {
  const percent = shares.reduce((sum, share) => sum + share.percent, 0);
  return shares.length > 0 && percent !== 100 ? [{ shares, percent }] : [];
}

function scaled(shares: readonly Share[]): readonly Share[] {
  const isBlank = shares.every(({ percent }) => percent === 0);
  const parts = allocateByLargestRemainder(100, shares.map(({ percent }) => (isBlank ? 1 : percent)));
  return shares.map((share, at) => ({ ...share, percent: parts[at] ?? 0 }));
}

function suggestions({ shares, percent }: Sum, order: RuledOrder): readonly Suggestion[] {
  const even = scaled(shares);
  const [first, ...others] = shares;
  const most = shares.find((share) => share.percent === Math.max(...shares.map((one) => one.percent)));
  const over = percent - 100;
  const rounder = shares.map((share) => (share === most ? { ...share, percent: share.percent - over } : share));
  return [
    ...(most && over > 0 && shares.length > 1 && most.percent > over
      ? mend(order, {
          label: `Make it ${joined(rounder.map((share) => String(share.percent)))} percent`,
          consequence: `The ${over} too many come off ${most.name ? `the share of ${most.name}` : 'the largest share'}.`,
          edits: [{ kind: 'set-shares', shares: rounder }],
        })
      : []),
    ...mend(order, {
      label: `Make it ${joined(even.map((share) => String(share.percent)))} percent`,
      consequence: 'The same shares, brought to 100.',
      edits: [{ kind: 'set-shares', shares: even }],
    }),
    ...(first && others.length > 0 && percent < 100
      ? mend(order, {
          label: `Give the other ${100 - percent} percent to ${first.name || 'the first'}`,
          consequence: `${first.name || 'The first'} has ${first.percent + 100 - percent} percent then.`,
          edits: [{ kind: 'set-shares', shares: [{ ...first, percent: first.percent + 100 - percent }, ...others] }],
        })
      : []),
    ...mend(order, { label: 'Do not share it', consequence: 'All of it goes to the name on the order.', edits: [{ kind: 'set-shares', shares: [] }] }),
  ];
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const sharesDoNotAddUpReason: RuleReason = {
  topic: 'packing-and-bill',
  why: 'An animal that is shared is divided by weight when it is packed, and all of it has to go to somebody. Shares that make more than the whole promise meat twice; shares that make less leave meat on the table with no name on it.',
  source: 'common practice, no source',
};

export const sharesDoNotAddUp = defineRule<Sum>({
  id: 'shares-do-not-add-up',
  severity: 'stop',
  title: 'The shares are not the whole',
  ground: 'trade',
  stages: ['order', 'receiving', 'cutting'],
  check: wrongSum,
  keyOf: () => 'shares',
  place: () => ({ kind: 'field', field: 'shares' }),
  part: () => null,
  message: ({ shares, percent }) =>
    shares.length === 1
      ? `The one share is ${percent} percent, and nobody has the rest.`
      : `${joined(shares.map((share) => String(share.percent)))} percent make ${percent}, not 100.`,
  suggestions,
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const sharesDoNotAddUpExamples = (): RuleExamples => {
  const shares = (...percents: readonly number[]): readonly Share[] =>
    percents.map((percent, at) => ({ name: ['Edda', 'Jonas', 'Mirela'][at] ?? '', percent, isGiven: false }));
  return {
    valid: [exampleOrder(), exampleOrder({ instructions: { shares: shares(50, 25, 25) } })],
    invalid: [
      { order: exampleOrder({ instructions: { shares: shares(50, 30, 30) } }), messages: ['50, 30 and 30 percent make 110, not 100.'] },
      { order: exampleOrder({ instructions: { shares: shares(60) } }), messages: ['The one share is 60 percent, and nobody has the rest.'] },
      { order: exampleOrder({ instructions: { shares: shares(0, 0, 0) } }), messages: ['0, 0 and 0 percent make 0, not 100.'] },
    ],
  };
};
