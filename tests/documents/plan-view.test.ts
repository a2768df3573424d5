import { expect, test } from 'vitest';
import { PUBLISHED_SPECIES, forecastCarcass } from '@/lib/carcass';
import { chanceWords, planView } from '@/lib/documents';
import { PLAIN_INSTRUCTIONS, newLine } from '@/lib/instructions';
import { planOrder } from '@/lib/plan';

test.each([
  [1, 'nearly every such animal gives that'],
  [0.72, 'about 7 in 10 such animals give that'],
  [0.06, 'about 1 in 10 such animals give that'],
  [0, 'hardly any such animal gives that'],
])('a chance of %d is said as people say it', (chance, words) => {
  expect(chanceWords(chance)).toBe(words);
});

test('an amount asked of a line stands on its bar, and that of a product beside it, each with its chance', () => {
  const facts = { speciesId: 'white-tailed-deer', sex: 'female', ageClass: 'adult', weight: { grams: 45_359, basis: 'field-dressed' }, form: 'hide-on', missing: [], wounds: [] } as const;
  const plan = planOrder(
    { ...PLAIN_INSTRUCTIONS, lines: [{ ...newLine('a', 'loin', 'medallions'), askedGrams: 2_722 }, newLine('b', 'neck', 'diced')], products: [{ productId: 'fresh-sausage', gameGrams: 4_536 }] },
    forecastCarcass(facts, PUBLISHED_SPECIES),
  );
  const { lines, pools } = planView(plan, { country: 'us', unit: 'lb', locale: 'en-US' });
  expect(lines[0]?.asked).toEqual({ grams: 2_722, text: expect.stringMatching(/^6\.0 lb wanted: about \d in 10 such animals give that\.$/) });
  expect(lines[1]?.asked).toBeUndefined();
  expect(pools.find(({ key }) => key === 'fresh-sausage')?.asked).toEqual({ grams: null, text: '10.0 lb of your meat in it: nearly every such animal gives that.' });
  expect(pools.find(({ key }) => key === 'mince')?.asked).toBeUndefined();
});
