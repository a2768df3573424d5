import { exampleOrder } from '../example-order';
import { mend } from '../mend';
import { type RuleExamples, type RuleReason, type RuledOrder, defineRule } from '../rule';

type Names = { readonly first: string; readonly second: string };

/** 'Edda & Jonas Nyberg' and the like. One 'and' in a name; more are a firm or a jest. */
function twoNames({ instructions: { shares }, circumstances: { hunterName } }: RuledOrder): readonly Names[] {
  if (shares.length > 0) return [];
  const names = hunterName.split(/ and |[&+/]/i).map((name) => name.trim());
  const [first = '', second = ''] = names;
  if (names.length !== 2 || first === '' || second === '') return [];
  // 'Edda & Jonas Nyberg' are both Nybergs.
  const surname = first.includes(' ') ? '' : second.split(' ').slice(1).join(' ');
  return [{ first: surname === '' ? first : `${first} ${surname}`, second }];
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const twoNamesOneAnimalReason: RuleReason = {
  topic: 'packing-and-bill',
  why: 'Every packet carries one label. Two names on an order may be a couple with one freezer, or two hunters who will stand at the counter on different days and each want their half. Said beforehand it is two stacks of packets; said afterwards it is an argument.',
  source: 'common practice, no source',
};

export const twoNamesOneAnimal = defineRule<Names>({
  id: 'two-names-one-animal',
  severity: 'ask',
  title: 'Two names on one animal',
  ground: 'trade',
  stages: ['order', 'receiving'],
  check: twoNames,
  keyOf: () => 'names',
  place: () => ({ kind: 'field', field: 'shares' }),
  part: () => null,
  message: ({ first, second }) => `The order is in two names, ${first} and ${second}, and does not say whether the meat is to be divided.`,
  suggestions: ({ first, second }, order) => [
    ...mend(order, {
      label: 'One household, one stack',
      consequence: 'Nothing is divided; both names are on the label.',
      edits: [{ kind: 'agree', key: 'two-names-one-animal|names' }],
    }),
    ...mend(order, {
      label: 'Half each',
      consequence: `${first} 50 percent, ${second} 50 percent, by weight.`,
      edits: [{ kind: 'set-shares', shares: [{ name: first, percent: 50, isGiven: false }, { name: second, percent: 50, isGiven: false }] }],
    }),
  ],
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const twoNamesOneAnimalExamples = (): RuleExamples => ({
  valid: [
    exampleOrder({ circumstances: { hunterName: 'Edda Nyberg' } }),
    exampleOrder({ circumstances: { hunterName: 'Alexandra Sandholm' } }),
    exampleOrder({ circumstances: { hunterName: 'Edda & Jonas' }, instructions: { shares: [{ name: 'Edda', percent: 100, isGiven: false }] } }),
  ],
  invalid: [
    {
      order: exampleOrder({ circumstances: { hunterName: 'Edda & Jonas Nyberg' } }),
      messages: ['The order is in two names, Edda Nyberg and Jonas Nyberg, and does not say whether the meat is to be divided.'],
    },
    {
      order: exampleOrder({ circumstances: { hunterName: 'Edda and Mirela' } }),
      messages: ['The order is in two names, Edda and Mirela, and does not say whether the meat is to be divided.'],
    },
  ],
});
