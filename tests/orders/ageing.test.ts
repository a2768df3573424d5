import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { ageingDays } from '@/lib/orders/ageing';

describe('ageingDays', () => {
  test.each([[40, 3, 14], [42, 1.4, 30], [40, 4.4, 10], [0, 4, 0], [40, 100, 1]])(
    '%d degree-days at %d °C take %i days', (targetDegreeDays, celsius, days) => {
      expect(ageingDays({ targetDegreeDays, celsius })).toBe(days);
    },
  );

  test.each([0, -1, 0.04])('never ends at %d °C', (celsius) => {
    expect(ageingDays({ targetDegreeDays: 40, celsius })).toBeNull();
  });

  it('reaches the target on the last day and not a day before', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 200 }), fc.integer({ min: 1, max: 150 }), (targetDegreeDays, tenths) => {
      const days = ageingDays({ targetDegreeDays, celsius: tenths / 10 });
      expect(days).not.toBeNull();
      expect((days ?? 0) * tenths).toBeGreaterThanOrEqual(targetDegreeDays * 10);
      expect(((days ?? 0) - 1) * tenths).toBeLessThan(targetDegreeDays * 10);
    }));
  });

  it('refuses what is no number', () => {
    expect(() => ageingDays({ targetDegreeDays: Number.NaN, celsius: 4 })).toThrow('Not a number of degree-days: NaN');
    expect(() => ageingDays({ targetDegreeDays: -1, celsius: 4 })).toThrow('Not a number of degree-days: -1');
    expect(() => ageingDays({ targetDegreeDays: 40, celsius: Number.NaN })).toThrow('Not a temperature: NaN');
  });
});
