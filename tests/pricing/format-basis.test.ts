import { expect, test } from 'vitest';
import { formatBasis, type LineBasis } from '@/lib/pricing';

const weight = { kind: 'weight', quantityHundredths: 1235, aboveHundredths: 0, unit: 'lb', ratePer10k: 34_900 } as const;
const cases: [LineBasis, string][] = [
  [weight, '12.35 lb at $3.49'],
  [{ ...weight, aboveHundredths: 10_000 }, '12.35 lb above 100.00 lb at $3.49'],
  [{ kind: 'count', count: 2, eachMinor: 500 }, '2 at $5.00'],
  [{ kind: 'flat', upToHundredths: 6000, unit: 'lb' }, 'up to 60.00 lb'],
  [{ kind: 'flat', upToHundredths: null, unit: 'lb' }, ''],
];
test.each(cases)('%j reads %j', (basis, text) => {
  expect(formatBasis(basis, 'USD', 'en-US')).toBe(text);
});
