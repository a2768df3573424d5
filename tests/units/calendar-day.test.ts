import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { addDays, addMonths, daysBetween, formatDay, isCalendarDay } from '@/lib/units';

const anyDay = fc.integer({ min: 0, max: 60_000 }).map((days) => addDays('1970-01-01', days));

describe('isCalendarDay', () => {
  test.each([
    ['2026-11-25', true], ['2028-02-29', true], ['2026-02-29', false], ['2026-13-01', false], ['2026-00-10', false],
    ['2026-11-31', false], ['2026-1-5', false], ['', false], ['2026-11-25T00:00:00Z', false], ['25.11.2026', false],
  ])('%j: %s', (text, known) => {
    expect(isCalendarDay(text)).toBe(known);
  });
});

describe('addDays', () => {
  it('crosses the year', () => {
    expect(addDays('2026-11-25', 90)).toBe('2027-02-23');
    expect(addDays('2027-01-01', -1)).toBe('2026-12-31');
  });

  it('is undone by daysBetween', () => {
    fc.assert(fc.property(anyDay, fc.integer({ min: -30_000, max: 30_000 }), (day, days) => {
      expect(daysBetween(day, addDays(day, days))).toBe(days);
    }));
  });

  it('refuses what is no day, a fraction and a year past 9999', () => {
    expect(() => addDays('2026-02-30', 1)).toThrow('Not a day: 2026-02-30');
    expect(() => addDays('2026-02-20', 0.5)).toThrow('Not a whole number: 0.5');
    expect(() => addDays('9999-12-31', 1)).toThrow('Outside the years');
    expect(() => addDays('2026-02-20', Number.MAX_SAFE_INTEGER)).toThrow('Outside the years');
  });
});

describe('addMonths', () => {
  test.each([
    ['2026-11-25', 18, '2028-05-25'], ['2027-01-31', 1, '2027-02-28'], ['2028-01-31', 1, '2028-02-29'],
    ['2027-03-31', -1, '2027-02-28'], ['2028-02-29', 12, '2029-02-28'], ['2026-12-15', 0, '2026-12-15'],
  ])('%s and %i months is %s', (day, months, later) => {
    expect(addMonths(day, months)).toBe(later);
  });

  it('never lands past the month asked for', () => {
    fc.assert(fc.property(anyDay, fc.integer({ min: -200, max: 200 }), (day, months) => {
      const count = (text: string) => Number(text.slice(0, 4)) * 12 + Number(text.slice(5, 7));
      expect(count(addMonths(day, months)) - count(day)).toBe(months);
    }));
  });
});

describe('formatDay', () => {
  it('writes the day in the manner of the locale, whatever the zone of the machine', () => {
    expect(formatDay('2026-11-25', 'en-US')).toBe('Nov 25, 2026');
    expect(formatDay('2026-11-25', 'en-GB')).toBe('25 Nov 2026');
  });
});
