import { expect, test } from 'vitest';
import { type PackRow, farOff, lookAgain } from '@/lib/orders';

const pounds = { unit: 'lb', locale: 'en-US' } as const;
const row = (lineKey: string, label: string, likely: number): PackRow => ({
  lineKey,
  label,
  cutId: 'whole',
  expected: { low: likely * 0.8, likely, high: likely * 1.2 },
  addedGrams: 0,
});
const rows = [row('line-1', 'Both tenderloins, whole', 454), row('pool:stew', 'Stew meat', 2000), row('pool:mince', 'Ground meat, 10% pork fat added', 9000), row('keep:heart', 'Heart', 0)];
const asExpected = rows.filter(({ lineKey }) => lineKey !== 'keep:heart').map(({ lineKey, expected }) => ({ lineKey, grams: expected.likely }));

test.each([
  [1560, null],
  [1561, 'more'],
  [400, null],
  [399, 'less'],
  [0, 'less'],
] as const)('%i g of 800 to 1200 is far off: %s', (grams, far) => {
  expect(farOff({ expected: { low: 800, likely: 1000, high: 1200 } }, grams)).toBe(far);
});

test('nothing is asked of weights as expected; what nothing is expected of may be left empty, or weigh anything', () => {
  expect(lookAgain(rows, asExpected, pounds)).toBeNull();
  expect(lookAgain(rows, [...asExpected, { lineKey: 'keep:heart', grams: 5000 }], pounds)).toBeNull();
});

test('what is far off and what was left empty is told in one sentence', () => {
  const far = { lineKey: 'line-1', grams: 4536 };
  expect(lookAgain(rows, [...asExpected.slice(1), far], pounds)).toBe('Look again: both tenderloins 10.0 lb, about 1.0 lb was expected.');
  expect(lookAgain(rows, [far], pounds)).toBe('Look again: both tenderloins 10.0 lb, about 1.0 lb was expected; nothing was weighed for stew meat and ground meat.');
  expect(lookAgain(rows, [], pounds)).toBe('Look again: nothing was weighed for both tenderloins, stew meat and ground meat.');
});
