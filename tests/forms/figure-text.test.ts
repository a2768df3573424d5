import fc from 'fast-check';
import { expect, test } from 'vitest';
import { figureText, weightFigure } from '@/lib/forms';
import { parseMoney, parseWeight, weighedQuantity } from '@/lib/units';

test.each([
  [95_00, { scale: 2, least: 2, locale: 'en-US' }, '95.00'],
  [123_456_00, { scale: 2, least: 2, locale: 'en-US' }, '123456.00'],
  [60_00, { scale: 2, least: 0, locale: 'en-US' }, '60'],
  [8_875, { scale: 3, least: 0, locale: 'de-DE' }, '8,875'],
  [1_500, { scale: 0, least: 2, locale: 'ja-JP' }, '1500'],
])('writes %d as %o', (value, how, text) => {
  expect(figureText(value, how)).toBe(text);
});

test('an amount written in a box is read back to the last unit', () => {
  fc.assert(
    fc.property(fc.nat(100_000_000), fc.constantFrom('en-US', 'de-DE', 'fr-FR', 'de-CH'), (minor, locale) => {
      expect(parseMoney(figureText(minor, { scale: 2, least: 2, locale }), 'USD', locale)).toEqual({ ok: true, value: minor });
    }),
  );
});

test('a weight opened and saved again is priced the same, and kilograms are the same to the gram', () => {
  // The heaviest weight taken, 2,000 kg to the gram, is not a whole hundredth of a pound: the last that is lies below it.
  fc.assert(
    fc.property(fc.nat(1_999_999), fc.constantFrom('en-US', 'de-DE'), (grams, locale) => {
      const again = (unit: 'lb' | 'kg') => parseWeight(weightFigure(grams, { unit, locale }), { unit, locale });
      const inPounds = again('lb');
      expect(inPounds.ok && weighedQuantity(inPounds.value, 'lb')).toBe(weighedQuantity(grams, 'lb'));
      expect(again('kg')).toEqual({ ok: true, value: grams });
    }),
  );
});
