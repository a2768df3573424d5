import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { celsiusTenthsOf, fahrenheitTenthsOf, formatTemperature, parseTemperature } from '@/lib/units';

describe('temperature', () => {
  it('comes back to the same tenth of a degree Celsius', () => {
    fc.assert(fc.property(fc.integer({ min: -1000, max: 3000 }), (celsiusTenths) => {
      expect(celsiusTenthsOf(fahrenheitTenthsOf(celsiusTenths))).toBe(celsiusTenths);
    }));
  });

  test.each([
    ['165 F', 'C', 739], ['165', 'F', 739], ['4 °C', 'F', 40], ['-18', 'C', -180], ['−18 °C', 'C', -180], ['0 F', 'C', -178],
    ['4,4', 'C', 44], ['40.5°', 'F', 47],
  ] as const)('%j in a shop of %s is %i tenths Celsius', (text, unit, celsiusTenths) => {
    expect(parseTemperature(text, { unit })).toEqual({ ok: true, value: celsiusTenths });
  });

  test.each(['', 'cold', '4 K', '301 C', '-101 C', '1e2', 'NaN', '--4', '9'.repeat(60)])('%j comes back as a sentence', (text) => {
    expect(parseTemperature(text, { unit: 'F' })).toEqual({
      ok: false, message: 'Write the temperature as a number, for example 40 °F.',
    });
  });

  it('is written with one decimal in the unit of the shop', () => {
    expect(formatTemperature(711, 'C')).toBe('71.1 °C');
    expect(formatTemperature(711, 'F')).toBe('160.0 °F');
    expect(formatTemperature(-180, 'C', 'de-DE')).toBe('-18,0 °C');
  });
});
