import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { PUBLISHED_SPECIES } from '@/lib/carcass';
import { RULES, type RuledOrder, afterEdits, findAll } from '@/lib/rules';
import { exampleLine, exampleOrder } from '@/lib/rules/example-order';
import { anyOrder } from './any-order';

const rule = RULES.find(({ id }) => id === 'note-against-a-choice');
if (!rule) throw new Error('No rule for a note against a choice');

/** An order with something of everything a note can refuse. */
const full = (note: string): RuledOrder =>
  exampleOrder({
    lines: [
      exampleLine('a', 'topside', 'joint'),
      exampleLine('b', 'silverside', 'steaks'),
      exampleLine('c', 'loin', 'chops'),
      exampleLine('d', 'fillet', 'medallions'),
      exampleLine('e', 'hind-shank', 'shank-on-bone'),
      exampleLine('f', 'flank', 'leave-out'),
      exampleLine('g', 'rump', 'set-aside-whole'),
    ],
    instructions: {
      note,
      mince: { addedFat: 'pork', fatPercent: 10, packGrams: 454, shape: 'bulk' },
      products: [
        { productId: 'fresh-sausage', gameGrams: 1_000 },
        { productId: 'snack-sticks', gameGrams: 1_000 },
      ],
    },
  })(PUBLISHED_SPECIES);

const saidIn = (note: string): readonly string[] => rule.find(full(note)).map(({ key }) => key.split('|')[1] ?? '');

const against = [
  ['no roasts', ['roast']],
  ['NO JOINTS!', ['roast']],
  ["don't want any steaks, thanks", ['steak']],
  ['no steaks or chops at all', ['steak', 'chop']],
  ['no sausage and no sticks', ['sausage', 'sticks']],
  ['without any jerky', ['jerky']],
  ['no fat', ['fat']],
  ['no fat added please', ['fat']],
  ['no pork', ['pork']],
  ['no bones', ['bone']],
  ['no bone-in', ['bone']],
  ['all boneless', ['boneless']],
  ['Boneless please', ['boneless']],
  ['grind everything', ['all ground']],
  ['all mince', ['all ground']],
  ['Everything to burger', ['all ground']],
  ['keep everything', ['keep everything']],
  ["don’t waste anything", ['keep everything']],
  ['whole backstraps', ['whole loin']],
  ['leave the tenderloins whole', ['whole fillet']],
] as const;
test.each(against)('"%s" is held against what it refuses', (note, ids) => {
  expect(saidIn(note)).toEqual(ids);
});

const falseAlarms = [
  'no problem with roasts',
  'no roasts over 3 lb',
  'no roasts bigger than a shoebox',
  'no steaks thinner than an inch',
  'no roasts except the topside',
  'no roasts, except the topside',
  'no roasts but one',
  'are there no roasts?',
  'no roasts?',
  'there is no fat on it',
  'it has no bones broken',
  'there is no fat.',
  'no bone dust on the steaks',
  'no fat trimmed off',
  'no pork problem here',
  'no beef sticks',
  'no steak seasoning',
  'no sausage with cheese',
  'no rush, no worries',
  'grind everything else',
  'grind everything but the loins',
  'Backstraps in chops. Grind everything.',
  'grind everything, steaks of the round as I said',
  "don't grind everything",
  'not all ground',
  'all ground meat in 1 lb packs',
  'all the ground in packs of 2',
  'keep everything cold',
  'keep everything separate from my brother’s',
  'keep everything clean, please',
  'boneless shoulder',
  'left haunch, boneless',
  'not whole backstraps',
  'whole backstrap steaks',
  'the whole loin chops were good last year',
  'roasts are fine, jerky too',
  'no. Roasts',
  'no\nroasts',
  'I say no to steaks',
];
test.each(falseAlarms)('"%s" is no contradiction', (note) => {
  expect(saidIn(note)).toEqual([]);
});

describe('a contradiction', () => {
  it('is settled by doing as the note says, the choice changed and the note left', () => {
    const order = full('Grind it all');
    const [finding] = rule.find(order);
    const after = afterEdits(order, finding?.suggestions[0]?.edits ?? []);
    expect(after.instructions.lines.map(({ cut }) => cut)).toEqual(['mince', 'mince', 'mince', 'mince', 'mince', 'leave-out', 'mince']);
    expect(after.instructions.note).toBe('Grind it all');
  });

  const struck = [
    ['No roasts, please. By Friday.', 'By Friday.'],
    ['Hung ... a week, no roasts, by Friday', 'Hung ... a week, by Friday'],
    ['Ring me\nno roasts\nby Friday', 'Ring me\n\nby Friday'],
    ['Ring me. No roasts. By Friday.', 'Ring me. By Friday.'],
    ['no roasts or chops', 'no chops'],
    ['no roasts\nno joints', ''],
  ] as const;
  it.each(struck)('is settled by striking the words: of "%s" stays "%s"', (note, left) => {
    const order = full(note);
    const [finding] = rule.find(order);
    const after = afterEdits(order, finding?.suggestions.at(-1)?.edits ?? []);
    expect(after.instructions.note).toBe(left);
    expect(after.instructions.lines).toEqual(order.instructions.lines);
  });
});

const bits = [...against.map(([note]) => note), ...falseAlarms, 'sirloin', 'ham (cured)', 'tri-tip', 'T-bones', 'by Friday', '(', ')', '.', ',', '\n', '?', 'or', 'no'];
const anyNote = fc.array(fc.constantFrom(...bits), { maxLength: 8 }).map((parts) => parts.join(' '));

test('whatever a note says, each suggestion clears its finding and raises no stop', { timeout: 60_000 }, () => {
  const noted = fc.tuple(anyOrder, anyNote).map(([order, note]) => ({ ...order, instructions: { ...order.instructions, note } }));
  const stopsOf = (order: RuledOrder): readonly string[] => findAll(order).filter(({ severity }) => severity === 'stop').map(({ key }) => key);
  fc.assert(fc.property(noted, (order) => {
    const before = stopsOf(order);
    for (const { key, suggestions } of findAll(order).filter(({ place }) => place.kind === 'field' && place.field === 'note')) {
      expect(suggestions.length).toBeGreaterThan(0);
      for (const { edits } of suggestions) {
        const after = afterEdits(order, edits);
        expect(findAll(after).map((finding) => finding.key)).not.toContain(key);
        expect(stopsOf(after).filter((stop) => !before.includes(stop))).toEqual([]);
      }
    }
  }), { numRuns: 80 });
});
