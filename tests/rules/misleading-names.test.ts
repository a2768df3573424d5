import { describe, expect, it, test } from 'vitest';
import { PUBLISHED_SPECIES } from '@/lib/carcass';
import { RULES, afterEdits } from '@/lib/rules';
import { exampleOrder } from '@/lib/rules/example-order';

const rule = RULES.find(({ id }) => id === 'name-means-two-things');
if (!rule) throw new Error('No rule for names that mean two things');

const orderWith = (note: string, country: 'us' | 'uk' = 'us', speciesId = 'white-tailed-deer') =>
  exampleOrder({ instructions: { note }, facts: { speciesId }, words: { country, unit: 'lb' } })(PUBLISHED_SPECIES);
const termsOf = (...asked: Parameters<typeof orderWith>): readonly string[] => rule.find(orderWith(...asked)).map(({ key }) => key.split('|')[1] ?? '');

const asks = [
  ['SIRLOIN, please', ['sirloin']],
  ['two Sirloin-Tip roasts', ['sirloin tip']],
  ['hams in the smoker; rump roasts for us', ['ham', 'rump roast']],
  ['rib-eye and t-bones', ['ribeye', 'T-bone']],
  ['Filet mignons\nbrisket\nflat irons', ['filet mignon', 'brisket', 'flat iron']],
  ['cubed, and the rest burgers', ['cube', 'burger']],
  ['I want everything whole', ['whole']],
  ['120lb dressed', ['dressed']],
] as const;
test.each(asks)('"%s" is asked about', (note, terms) => {
  expect(termsOf(note)).toEqual(terms);
});

const silent = [
  'from Birmingham, by way of Hamburg',
  'shamble, chopper, scube, hamlet, rumpus, chopped',
  'top sirloin steaks',
  'cut in quarter inch slices, quarter-pound packs, a quarter of it for my brother',
  'hind quarters hung for three quarters of a day',
  'cube steaks of the round',
  'add bacon to the sausage, bacon-wrapped if you can',
  'field dressed at six, legs off',
  'boneless chops, bone-in chops: both fine',
  'chop up the neck',
  'sirloin\n(loin: along the back, outside)',
];
test.each(silent)('"%s" is not', (note) => {
  expect(termsOf(note)).toEqual([]);
});

describe('beef words', () => {
  it.each(['elk', 'moose'])('are cuts of an animal as large as a %s', (kind) => {
    expect(termsOf('ribeye, brisket, tri-tip, T-bone', 'us', kind)).toEqual([]);
  });

  it('are none of a smaller one, and bacon of none that is lean', () => {
    expect(termsOf('ribeye', 'uk', 'red-deer')).toEqual(['ribeye']);
    expect(termsOf('bacon', 'us', 'moose')).toEqual(['bacon']);
    expect(termsOf('bacon', 'us', 'wild-boar')).toEqual([]);
    expect(termsOf('bacon', 'us', 'black-bear')).toEqual([]);
  });
});

test('a bird has none of it', () => {
  expect(termsOf('ham, chops and tenderloins', 'us', 'wild-turkey')).toEqual([]);
});

test('the meaning is written behind the word, once, with the muscle to be shown', () => {
  const order = orderWith('Sirloin as steaks. The other sirloin too.');
  const [finding] = rule.find(order);
  expect(finding?.suggestions.map(({ target }) => target)).toEqual(['loin', 'rump']);
  const after = afterEdits(order, finding?.suggestions[1]?.edits ?? []);
  expect(after.instructions.note).toBe('Sirloin (top sirloin: top of the hind leg, behind the loin) as steaks. The other sirloin too.');
  expect(rule.find(after)).toEqual([]);
});
