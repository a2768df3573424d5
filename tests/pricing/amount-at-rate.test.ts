import { expect, it, test } from 'vitest';
import { amountAtRate, type Tariff } from '@/lib/pricing';

const cases: [number, number, Tariff['currency'], number][] = [
  [1235, 34_900, 'USD', 4310],
  [750, 3500, 'USD', 263],
  [10_888, 164_569, 'EUR', 179_183],
  [1050, 10_000, 'JPY', 11],
  [100, 12_345, 'KWD', 1235],
  [0, 12_345, 'USD', 0],
  [440_900, 100_000_000_000, 'KWD', 44_090_000_000_000],
];
test.each(cases)('%i hundredths at %i per 10,000 %s are %i minor units', (quantityHundredths, ratePer10k, currency, minor) => {
  expect(amountAtRate({ quantityHundredths, ratePer10k, currency })).toBe(minor);
});

it('refuses negative quantities and prices', () => {
  expect(() => amountAtRate({ quantityHundredths: -1, ratePer10k: 1, currency: 'USD' })).toThrow('A quantity is not negative: -1');
  expect(() => amountAtRate({ quantityHundredths: 1, ratePer10k: -1, currency: 'USD' })).toThrow('A unit price is not negative: -1');
});
