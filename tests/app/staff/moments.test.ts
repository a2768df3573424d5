import { expect, test } from 'vitest';
import { agoWords, dayWords, isoDay, momentWords } from '@/app/staff/_components/moments';

const shop = { locale: 'en-US', timeZone: 'America/Chicago' } as const;
const now = new Date('2026-11-25T02:00:00Z');

test('a moment is told by the shop’s own clock, the year only when it is another', () => {
  expect(momentWords(new Date('2026-11-20T17:05:00Z'), shop, now).replace(/\s/g, ' ')).toBe('Nov 20, 11:05 AM');
  expect(dayWords(new Date('2025-12-31T23:00:00Z'), shop, now)).toBe('Dec 31, 2025');
});

test.each([
  ['2026-11-25T01:00:00Z', 'today'],
  ['2026-11-24T05:00:00Z', 'yesterday'],
  ['2026-11-18T18:00:00Z', '6 days ago'],
  ['2026-11-26T18:00:00Z', 'today'],
])('%s is %s, by the nights in between at the shop', (at, words) => {
  expect(agoWords(new Date(at), shop, now)).toBe(words);
});

test('a day is the shop’s, not that of Greenwich', () => {
  expect(isoDay(now, shop.timeZone)).toBe('2026-11-24');
});
