import { describe, expect, it, test } from 'vitest';
import { PUBLISHED_SPECIES } from '@/lib/carcass';
import { type Instructions, PLAIN_INSTRUCTIONS, newLine } from '@/lib/instructions';
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

describe('a meaning that is tapped', () => {
  const after = (note: string, label: string, country: 'uk' | 'us' = 'us', instructions: Partial<Instructions> = {}): Instructions => {
    const order = exampleOrder({ lines: instructions.lines ?? [], instructions: { ...instructions, note }, words: { country, unit: 'lb' } })(PUBLISHED_SPECIES);
    const suggestion = rule.find(order).flatMap(({ suggestions }) => suggestions).find((one) => one.label === label);
    return afterEdits(order, suggestion?.edits ?? []).instructions;
  };

  test('puts on the list what the note wants whole', () => {
    expect(after('leave the sirloin whole, no sausage', 'Top sirloin').lines).toMatchObject([{ target: 'rump', cut: 'joint' }]);
    expect(after('sirloin tips and TENDERLOINS whole', 'Tenderloin').lines).toMatchObject([{ target: 'fillet', cut: 'whole' }]);
  });

  test('leaves the list alone where “whole” is said of something else, or the meat is on it already', () => {
    expect(after('sirloin tips and TENDERLOINS whole', 'Sirloin tip').lines).toEqual([]);
    expect(after('sirloin in steaks', 'Top sirloin').lines).toEqual([]);
    const lines = [newLine('line-1', 'rump', 'steaks')];
    expect(after('leave the sirloin whole', 'Top sirloin', 'us', { lines }).lines).toEqual(lines);
  });

  test('says the same of the ground meat as the word', () => {
    const fat = { mince: { ...PLAIN_INSTRUCTIONS.mince, addedFat: 'beef', fatPercent: 10 } } as const;
    expect(after('burger please', 'Patties').mince.shape).toBe('patties');
    expect(after('burger please', 'Ground meat without fat', 'us', fat).mince).toMatchObject({ addedFat: 'none', fatPercent: 0 });
    expect(after('burger please', 'Mince with fat', 'uk').mince).toMatchObject({ addedFat: 'beef', fatPercent: 10 });
  });
});
