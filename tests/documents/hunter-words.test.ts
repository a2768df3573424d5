import { expect, test } from 'vitest';
import { PUBLISHED_SPECIES } from '@/lib/carcass';
import { chartRows, cookingCaution, estimateView, partStandings, priceWords } from '@/lib/documents';
import { assessForm, blankOrderForm, describedInstructions, stepOrderForm, type OrderFormValues } from '@/lib/forms';
import { CAREFUL } from '@/lib/law';
import { defaultTariff } from '@/seed/default-tariff';

const shop = { unit: 'lb', locale: 'en-US', country: 'us', diseaseZones: [], law: CAREFUL.points, tariff: defaultTariff, species: PUBLISHED_SPECIES } as const;
const blank = blankOrderForm('form-key-1');
const doe: OrderFormValues = {
  ...blank,
  animal: { ...blank.animal, speciesId: 'white-tailed-deer', sex: 'female', ageClass: 'adult', weight: '92.4', weightBasis: 'hanging', form: 'hide-on' },
  rest: 'mince',
};
const assessed = (values: OrderFormValues) => assessForm(values, shop) ?? expect.fail('nothing to assess');

test('before anything is known the chart names every part once', () => {
  expect(chartRows(null, 'uk').map(({ name, side, state }) => [name, side, state])).toEqual([
    ['Fillet', 'both', 'undecided'],
    ['Back', 'both', 'undecided'],
    ['Haunch', 'both', 'undecided'],
    ['Shoulder', 'both', 'undecided'],
    ['Neck', 'middle', 'undecided'],
    ['Ribs and flank', 'both', 'undecided'],
  ]);
});

test('a pair that stands alike is one row, a pair that does not is two', () => {
  const alike = chartRows(partStandings(assessed(doe).plan, shop), 'us');
  expect(alike.find(({ part }) => part === 'haunch')).toMatchObject({ side: 'both', name: 'Both hind legs', state: 'decided' });
  const { values } = stepOrderForm(doe, 'add:haunch', 'edit', shop);
  const left: OrderFormValues = { ...values, lines: values.lines.map((line) => ({ ...line, side: 'left' })) };
  const rows = chartRows(partStandings(assessed(left).plan, shop), 'us').filter(({ part }) => part === 'haunch');
  expect(rows.map(({ side, name }) => [side, name])).toEqual([['left', 'Left hind leg'], ['right', 'Right hind leg']]);
});

test('the estimate says its range, and one amount where the weight does not matter', () => {
  const hung = estimateView(assessed(doe), describedInstructions(doe, shop), shop);
  // 92.4 lb lies under the 100 lb step: 115.00, and 25.00 for the hide. Weighed to half a percent, so it stays there.
  expect(hung).toEqual({
    text: '$140.00',
    likely: '$140.00',
    rows: [
      { label: 'Deer, cut, ground, wrapped and frozen', amount: '$115.00' },
      { label: 'Skinning', amount: '$25.00' },
    ],
    unpriced: false,
  });
  const guessed: OrderFormValues = { ...doe, animal: { ...doe.animal, weight: '', weightBasis: '' } };
  expect(estimateView(assessed(guessed), describedInstructions(guessed, shop), shop).text).toMatch(/^about \$[\d.]+ \(\$[\d.]+ to \$[\d.]+\)$/);
});

test('the price list reads as sentences', () => {
  const { base, extras } = priceWords(defaultTariff, 'en-US');
  expect(base.map(({ words }) => words)).toEqual([
    '$95.00 up to 60 lb hanging weight, $115.00 up to 100 lb, then $1.15 for each lb more',
    '$80.00, whatever it weighs',
    '$1.25 for each lb of hanging weight',
    '$1.35 for each lb of hanging weight',
    '$1.50 for each lb of hanging weight',
    '$15.00, whatever it weighs',
  ]);
  expect(extras).toContainEqual({ label: 'Fresh sausage', words: '$2.25 a lb, added meat $2.49 a lb' });
});

test('the cooking caution follows the stricter local figure', () => {
  expect(cookingCaution('160 F')).toBe('Cook game to 160 F (71 C) in the middle, ground or whole.');
  expect(cookingCaution('165 F')).toBe('Cook game to 165 F (74 C) in the middle, ground or whole.');
});
