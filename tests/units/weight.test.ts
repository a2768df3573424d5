import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import {
  formatWeighedQuantity, formatWeight, formatWeightRange, heaviestGrams, parseWeight, weighedQuantity, type WeightUnit,
} from '@/lib/units';

describe('parseWeight', () => {
  const readable: [string, WeightUnit, string, number][] = [
    ['12.35', 'lb', 'en-US', 5602],
    ['12.35', 'kg', 'en-US', 12_350],
    ['3 lb 4 oz', 'kg', 'en-US', 1474],
    ['3lb4½oz', 'lb', 'en-US', 1488],
    ['3 pounds and 2 ounces', 'lb', 'en-US', 1417],
    ['1 kg 250 g', 'lb', 'en-US', 1250],
    ['12 1/2', 'lb', 'en-US', 5670],
    ['12-1/2 lbs.', 'lb', 'en-US', 5670],
    ['1½ lb', 'lb', 'en-US', 680],
    ['½', 'kg', 'en-US', 500],
    ['2kg', 'lb', 'en-US', 2000],
    ['700 g', 'lb', 'en-US', 700],
    ['3#', 'kg', 'en-US', 1361],
    ['1,200.5 lb', 'lb', 'en-US', 544_538],
    ['1.200,5 kg', 'kg', 'de-DE', 1_200_500],
    ['1 200,5', 'kg', 'sv-SE', 1_200_500],
    ['1,5 kg', 'lb', 'de-DE', 1500],
    ['1,5 kg', 'lb', 'en-US', 1500],
    ['0,125 kg', 'kg', 'en-GB', 125],
    ['1.200 kg', 'kg', 'en-GB', 1200],
    ['1.200 kg', 'kg', 'de-DE', 1_200_000],
    ['1,200 lb', 'lb', 'en-US', 544_311],
    ['  12.  ', 'kg', 'en-US', 12_000],
    ['.5', 'kg', 'en-US', 500],
    ['0', 'kg', 'en-US', 0],
    ['2000', 'kg', 'en-US', 2_000_000],
  ];
  test.each(readable)('%j in a shop of %s, %s, is %i grams', (text, unit, locale, grams) => {
    expect(parseWeight(text, { unit, locale })).toEqual({ ok: true, value: grams });
  });

  const unreadable = [
    '', ' ', '-5', '−5', 'NaN', 'Infinity', '1e5', '0x10', '=1+1', '1/0', '12 3/2', '.', ',', '1.2.3', '1,20,0', '12,5,0',
    '3.5 lb 4 oz', '3 lb 16 oz', '3 lb 4', '3 lb 4 kg', '12 stone', '7 foo', 'lb', '<b>7</b>', '12\u202e5', '٣', '1'.repeat(400),
  ];
  test.each(unreadable)('%j comes back as a sentence with an example in the shop unit', (text) => {
    expect(parseWeight(text, { unit: 'lb' })).toEqual({
      ok: false, message: 'Write the weight as a number, for example 12.5 lb.',
    });
    expect(parseWeight(text, { unit: 'kg', locale: 'de-DE' })).toEqual({
      ok: false, message: 'Write the weight as a number, for example 5,5 kg.',
    });
  });

  it('names the heaviest weight in the shop unit when more is typed', () => {
    expect(parseWeight('5000', { unit: 'lb' })).toEqual({ ok: false, message: 'Write a weight of 4,409 lb or less.' });
    expect(parseWeight('2000.1', { unit: 'kg' })).toEqual({ ok: false, message: 'Write a weight of 2,000 kg or less.' });
  });

  it('answers any text without throwing, and only with whole grams in bounds', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary' }), (text) => {
      const weight = parseWeight(text, { unit: 'lb' });
      if (weight.ok) {
        expect(Number.isSafeInteger(weight.value) && weight.value >= 0 && weight.value <= heaviestGrams).toBe(true);
      }
    }));
  });

  it('keeps every hundredth of a pound and of a kilogram that a scale shows', () => {
    fc.assert(fc.property(fc.nat(200_000), fc.constantFrom<WeightUnit>('lb', 'kg'), (hundredths, unit) => {
      const text = `${Math.floor(hundredths / 100)}.${String(hundredths % 100).padStart(2, '0')}`;
      const grams = parseWeight(text, { unit });
      expect(grams.ok && weighedQuantity(grams.value, unit)).toBe(hundredths);
    }));
  });
});

describe('weighedQuantity', () => {
  test.each([
    [5602, 'lb', 1235], [108_880, 'kg', 10_888], [0, 'lb', 0], [454, 'lb', 100], [5, 'kg', 1], [4, 'kg', 0], [15, 'kg', 2],
  ] as const)('%i grams in %s are %i hundredths', (grams, unit, hundredths) => {
    expect(weighedQuantity(grams, unit)).toBe(hundredths);
  });

  it('refuses a fraction of a gram', () => {
    expect(() => weighedQuantity(1.5, 'lb')).toThrow('Not a whole number of grams: 1.5');
  });

  it('is written with two decimals in the manner of the locale', () => {
    expect(formatWeighedQuantity(1235, 'lb')).toBe('12.35 lb');
    expect(formatWeighedQuantity(123_456, 'kg', 'de-DE')).toBe('1.234,56 kg');
  });
});

describe('formatWeight', () => {
  test.each([
    [3360, 'lb', '7.4 lb'], [3360, 'kg', '3.36 kg'], [200, 'lb', '0.44 lb'], [451, 'lb', '0.99 lb'], [453, 'lb', '1.0 lb'],
    [440, 'kg', '440 g'], [999, 'kg', '999 g'], [1000, 'kg', '1.00 kg'], [0, 'lb', '0.00 lb'], [544_538, 'lb', '1,200.5 lb'],
  ] as const)('%i grams in %s read %j', (grams, unit, text) => {
    expect(formatWeight(grams, unit)).toBe(text);
  });

  it('reads back to within half of the last digit shown', () => {
    fc.assert(fc.property(
      fc.nat(heaviestGrams), fc.constantFrom<WeightUnit>('lb', 'kg'), fc.constantFrom('en-US', 'en-GB', 'de-DE', 'sv-SE', 'fr-FR'),
      (grams, unit, locale) => {
        const back = parseWeight(formatWeight(grams, unit, locale), { unit, locale });
        if (grams > heaviestGrams - 30 && !back.ok) return;
        expect(back.ok && Math.abs(back.value - grams)).toBeLessThanOrEqual(unit === 'lb' ? 23 : 5);
      },
    ));
  });
});

describe('formatWeightRange', () => {
  it('writes the likely weight, then the low and the high', () => {
    expect(formatWeightRange({ low: 2860, likely: 3360, high: 3900 }, 'lb')).toBe('about 7.4 lb (6.3 to 8.6)');
    expect(formatWeightRange({ low: 2860, likely: 3360, high: 3900 }, 'kg')).toBe('about 3.36 kg (2.86 to 3.90)');
  });

  it('keeps all three weights in the style of the likely one', () => {
    expect(formatWeightRange({ low: 800, likely: 950, high: 1100 }, 'kg')).toBe('about 950 g (800 to 1,100)');
  });

  it('writes a forecast without spread as a plain weight', () => {
    expect(formatWeightRange({ low: 3360, likely: 3360, high: 3360 }, 'lb')).toBe('7.4 lb');
  });
});
