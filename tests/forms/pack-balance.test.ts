import fc from 'fast-check';
import { expect, test } from 'vitest';
import { packBalance } from '@/lib/forms';
import type { PackRow } from '@/lib/orders';

const row = (lineKey: string, likely: number, addedGrams = 0, cutId = 'steaks'): PackRow => ({
  lineKey,
  label: lineKey,
  cutId,
  expected: { low: likely, likely, high: likely },
  addedGrams,
});
const shop = { unit: 'kg', locale: 'en-US' } as const;

test('adds up what is typed and counts what cannot be read', () => {
  const rows = [row('line-1', 2_000), row('line-2', 3_000), row('line-3', 1_000)];
  expect(packBalance(rows, { 'line-1': '2.5', 'line-2': 'three', 'line-3': ' ' }, shop)).toEqual({ packedGrams: 2_500, addedGrams: 0, ownGrams: 2_500, unread: 1 });
});

test('leaves added pork and fat out of the own meat, in the proportion that was planned', () => {
  expect(packBalance([row('product:fresh-sausage', 4_000, 1_000)], { 'product:fresh-sausage': '6' }, shop)).toMatchObject({ packedGrams: 6_000, ownGrams: 4_500 });
});

test('leaves heart, liver and bones out of the own meat: they did not hang', () => {
  expect(packBalance([row('keep:bones', 0, 0, 'kept')], { 'keep:bones': '12' }, shop)).toMatchObject({ packedGrams: 12_000, ownGrams: 0 });
});

test('own meat is never more than what is packed, whatever is typed', () => {
  fc.assert(
    fc.property(fc.dictionary(fc.constantFrom('a', 'b', 'c'), fc.oneof(fc.string(), fc.nat(90).map(String))), fc.nat(2_000), (typed, added) => {
      const { ownGrams, packedGrams } = packBalance([row('a', 2_000, added), row('b', 0), row('c', 500, 0, 'kept')], typed, shop);
      expect(ownGrams).toBeGreaterThanOrEqual(0);
      expect(ownGrams).toBeLessThanOrEqual(packedGrams);
    }),
  );
});
