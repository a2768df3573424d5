import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { currencies, formatMoney, formatRate, isCurrency, minorDigits, parseMoney, parseRate } from '@/lib/units';

const locales = ['en-US', 'en-GB', 'de-DE', 'de-CH', 'sv-SE', 'fr-FR', 'en-ZA', 'pl-PL'];

describe('parseMoney', () => {
  test.each([
    ['$1,234.50', 'USD', 'en-US', 123_450],
    ['USD 12', 'USD', 'en-US', 1200],
    ['1.234,50 €', 'EUR', 'de-DE', 123_450],
    ['12,50', 'USD', 'en-US', 1250],
    ['12.500', 'USD', 'en-US', 1250],
    ['£3.5', 'GBP', 'en-GB', 350],
    ['1200', 'JPY', 'en-US', 1200],
    ['1.234', 'KWD', 'en-US', 1234],
    ['0', 'USD', 'en-US', 0],
  ] as const)('%j in %s, %s, is %i minor units', (text, currency, locale, minor) => {
    expect(parseMoney(text, currency, locale)).toEqual({ ok: true, value: minor });
  });

  test.each(['', '-3', '12.505', 'NaN', '1/2', '1e3', '12 lb', '€12', '=1', '1'.repeat(99)])(
    '%j comes back as a sentence with an example', (text) => {
      expect(parseMoney(text, 'USD', 'en-US')).toEqual({
        ok: false, message: 'Write the amount as a number, for example 12.50.',
      });
    },
  );

  it('names the most when more is typed', () => {
    expect(parseMoney('10000000.01', 'USD', 'en-US')).toEqual({ ok: false, message: 'Write a figure of 10,000,000 or less.' });
  });

  it('gives an example with the decimals of the currency', () => {
    expect(parseMoney('1.5', 'JPY', 'en-US')).toEqual({ ok: false, message: 'Write the amount as a number, for example 125.' });
  });

  it('reads back exactly what was written, in every currency and locale', () => {
    fc.assert(fc.property(
      fc.nat(1_000_000_000), fc.constantFrom(...currencies), fc.constantFrom(...locales),
      (figure, currency, locale) => {
        const minor = figure % (10_000_000 * 10 ** minorDigits(currency));
        expect(parseMoney(formatMoney(minor, currency, locale), currency, locale)).toEqual({ ok: true, value: minor });
      },
    ));
  });
});

describe('formatMoney', () => {
  it('writes minor units in the manner of the locale', () => {
    expect(formatMoney(123_450, 'USD', 'en-US')).toBe('$1,234.50');
    expect(formatMoney(-250, 'USD', 'en-US')).toBe('-$2.50');
    expect(formatMoney(500, 'JPY', 'en-US')).toBe('¥500');
  });

  it('refuses a fraction of a minor unit', () => {
    expect(() => formatMoney(1.5, 'USD', 'en-US')).toThrow('Not a whole number of money units: 1.5');
  });
});

describe('a unit price', () => {
  it('keeps four decimals and shows those it has', () => {
    expect(parseRate('16.4569', 'EUR', 'en-US')).toEqual({ ok: true, value: 164_569 });
    expect(formatRate(164_569, 'USD', 'en-US')).toBe('$16.4569');
    expect(formatRate(34_900, 'USD', 'en-US')).toBe('$3.49');
    expect(formatRate(35_500, 'JPY', 'en-US')).toBe('¥3.55');
  });

  it('is refused with a fifth decimal', () => {
    expect(parseRate('16.45691', 'EUR', 'en-US')).toEqual({
      ok: false, message: 'Write the price as a number with up to four decimals, for example 3.49.',
    });
  });

  it('reads back exactly what was written', () => {
    fc.assert(fc.property(
      fc.nat(100_000_000), fc.constantFrom(...currencies), fc.constantFrom(...locales),
      (ratePer10k, currency, locale) => {
        expect(parseRate(formatRate(ratePer10k, currency, locale), currency, locale)).toEqual({ ok: true, value: ratePer10k });
      },
    ));
  });
});

describe('currencies', () => {
  it('know their digits', () => {
    expect([minorDigits('USD'), minorDigits('JPY'), minorDigits('KWD')]).toEqual([2, 0, 3]);
  });

  it('do not include words of the language', () => {
    expect(['USD', 'XXX', 'toString', 'usd'].map(isCurrency)).toEqual([true, false, false, false]);
  });
});
