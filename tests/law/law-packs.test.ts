import { describe, expect, test } from 'vitest';
import {
  CAREFUL,
  LAW_CHOICES,
  LAW_LIMITS,
  LAW_PACKS,
  LAW_POINTS,
  type LawPoint,
  type LawPoints,
  NOT_ADVICE,
  NOT_READ,
  evidenceWords,
  isChoicePoint,
  lawPack,
  pointWords,
  valueWords,
} from '@/lib/law';
import { addMonths, addDays, celsiusTenthsOf, daysBetween, isCalendarDay } from '@/lib/units';

const reader = { unit: 'F', locale: 'en-US' } as const;

describe('every pack', () => {
  test('has an id and a place of its own', () => {
    expect(new Set(LAW_PACKS.map(({ id }) => id)).size).toBe(LAW_PACKS.length);
    expect(new Set(LAW_PACKS.map(({ place }) => place)).size).toBe(LAW_PACKS.length);
    expect(LAW_PACKS[0]).toBe(CAREFUL);
  });

  test.each(LAW_PACKS.map((pack) => [pack.place, pack] as const))('%s: each point has a value that can be chosen, a citation, a day and a note', (_, { points, evidence }) => {
    expect(Object.keys(points).toSorted()).toEqual(LAW_POINTS.toSorted());
    expect(Object.keys(evidence).toSorted()).toEqual(LAW_POINTS.toSorted());
    for (const point of LAW_POINTS) {
      const value: LawPoints[LawPoint] = points[point];
      if (isChoicePoint(point)) expect(LAW_CHOICES[point]).toContain(value);
      else {
        expect(value).toBeGreaterThanOrEqual(LAW_LIMITS[point as keyof typeof LAW_LIMITS].least);
        expect(value).toBeLessThanOrEqual(LAW_LIMITS[point as keyof typeof LAW_LIMITS].most);
        expect(value).toSatisfy(Number.isSafeInteger);
      }
      const { citation, readOn, note } = evidence[point];
      expect(citation).toMatch(/\w{2}/);
      expect(note).toMatch(/^[^a-z ].*[.)]$/);
      expect(readOn).toSatisfy(isCalendarDay);
      expect(`${citation} ${note}`).not.toMatch(/undefined|NaN| {2}/);
    }
  });

  test.each(LAW_PACKS.filter((pack) => pack !== CAREFUL).map((pack) => [pack.place, pack] as const))('%s: what was not read is the careful figure, and says so', (_, { points, evidence }) => {
    for (const point of LAW_POINTS) {
      const { basis, citation, note, textYear } = evidence[point];
      expect(citation === NOT_READ).toBe(basis === 'not-read');
      if (basis !== 'not-read') continue;
      expect(points[point]).toBe(CAREFUL.points[point]);
      expect(note).toContain(CAREFUL.evidence[point].citation);
      expect(textYear).toBeNull();
    }
  });

  test('a place that was never shipped is no place chosen', () => {
    expect(lawPack('atlantis')).toBe(CAREFUL);
    expect(lawPack('constructor')).toBe(CAREFUL);
    expect(lawPack('us-ohio').place).toBe('Ohio');
  });
});

/** The most days so many months can have, over a whole turn of leap years. */
function mostDays(months: number): number {
  const starts = Array.from({ length: 1461 }, (_, day) => addDays('2026-01-01', day));
  return Math.max(...starts.map((start) => daysBetween(start, addMonths(start, months))));
}

/** What the texts say, one line a figure: place, point, value, and the citation and basis it must carry. */
const FIGURES: readonly (readonly [string, LawPoint, LawPoints[LawPoint], string, string])[] = [
  // Michigan State University Extension, 2022: bone out, never cut the spine, no ground product from several carcasses.
  ['us-michigan', 'sawnBoneFromZone', 'not-allowed', 'Michigan State University Extension', 'read'],
  ['us-michigan', 'spineFromZone', 'not-allowed', 'Michigan State University Extension', 'read'],
  ['us-michigan', 'pooling', 'not-allowed', 'Michigan State University Extension', 'read'],
  // Michigan, WCO 4.4(1), second-hand: 90 days after receipt.
  ['us-michigan', 'keepRecordDays', 90, 'Wildlife Conservation Order 4.4(1)', 'second-hand'],
  // Missouri 3 CSR 10-4.135: quarters with no spine or head, antlers with clean skull plate.
  ['us-missouri', 'overBorder', 'no-spine-no-head', '3 CSR 10-4.135', 'read'],
  ['us-missouri', 'spineFromZone', 'not-allowed', '3 CSR 10-4.135', 'read'],
  ['us-missouri', 'headFromZone', 'clean-skull-plate-only', '3 CSR 10-4.135', 'read'],
  // Wisconsin ATCP 55.08: no mixing with other people's food. 55.07(13): records 3 years.
  ['us-wisconsin', 'pooling', 'not-allowed', 'ATCP 55.08', 'read'],
  ['us-wisconsin', 'keepRecordDays', mostDays(36), 'ATCP 55.07(13)', 'read'],
  // Texas, 2024: one container per carcass.
  ['us-texas', 'pooling', 'not-allowed', 'Texas chronic wasting disease rules, 2024', 'read'],
  // Colorado 2 CCR 406-0-018: 1 year after release.
  ['us-colorado', 'keepRecordDays', mostDays(12), '2 CCR 406-0-018', 'read'],
  // South Dakota ARSD 41:06:03:11: 1 year from receipt.
  ['us-south-dakota', 'keepRecordDays', mostDays(12), 'ARSD 41:06:03:11', 'read'],
  // Indiana 312 IAC 9-3-10, second-hand: 18 months after preparation.
  ['us-indiana', 'keepRecordDays', mostDays(18), '312 IAC 9-3-10', 'second-hand'],
  // 9 CFR 320.3: 2 years after 31 December of the year.
  ['us-another-state', 'keepRecordDays', daysBetween('2028-01-01', '2030-12-31'), '9 CFR 320.3', 'read'],
  // (EC) 853/2004 Annex III Section IV: boar to the Trichinella test; large game 7 °C.
  ['eu', 'trichinellaTest', 'wanted', '(EC) 853/2004', 'read'],
  ['eu', 'coldCelsiusTenths', 70, '(EC) 853/2004', 'read'],
  ['uk', 'trichinellaTest', 'wanted', '(EC) 853/2004', 'read'],
  ['uk', 'coldCelsiusTenths', 70, '(EC) 853/2004', 'from-memory'],
];

describe('figures against the texts', () => {
  test.each(FIGURES)('%s, %s: %s (%s)', (id, point, value, citation, basis) => {
    const { points, evidence } = lawPack(id);
    expect([points[point], evidence[point].basis]).toEqual([value, basis]);
    expect(evidence[point].citation).toContain(citation);
  });

  test('nothing counts as read that has no line here, but for the cold of every state', () => {
    const read = LAW_PACKS.filter((pack) => pack !== CAREFUL).flatMap(({ id, evidence }) =>
      LAW_POINTS.filter((point) => evidence[point].basis !== 'not-read' && evidence[point].citation !== 'FDA Food Code 3-501.16').map((point) => `${id} ${point}`),
    );
    expect(read.toSorted()).toEqual(FIGURES.map(([id, point]) => `${id} ${point}`).toSorted());
  });

  test('every state holds at 41 °F, the model food code', () => {
    const states = LAW_PACKS.filter(({ id }) => id.startsWith('us-'));
    expect(states).toHaveLength(10);
    for (const { points } of states) expect(points.coldCelsiusTenths).toBe(celsiusTenthsOf(410));
  });

  test('months and years are the most days they can have', () => {
    expect([mostDays(12), mostDays(18), mostDays(36)]).toEqual([366, 550, 1096]);
  });

  test('with no place chosen nothing is freer than in any place, but for the cold of the European Union’s small game', () => {
    for (const { points } of LAW_PACKS) {
      for (const point of LAW_POINTS) {
        if (!isChoicePoint(point)) continue;
        const order: readonly string[] = LAW_CHOICES[point];
        expect(order.indexOf(CAREFUL.points[point])).toBeGreaterThanOrEqual(order.indexOf(points[point]));
      }
      expect(CAREFUL.points.coldCelsiusTenths).toBeLessThanOrEqual(points.coldCelsiusTenths);
      expect(CAREFUL.points.keepRecordDays).toBeGreaterThanOrEqual(points.keepRecordDays);
    }
  });
});

describe('words', () => {
  test('every point and every choice has words of its own', () => {
    expect(new Set(LAW_POINTS.map(pointWords)).size).toBe(LAW_POINTS.length);
    for (const point of LAW_POINTS.filter(isChoicePoint)) {
      const words = LAW_CHOICES[point].map((value) => valueWords(point, value, reader));
      expect(new Set(words).size).toBe(words.length);
      for (const [at, word] of words.entries()) expect(word).not.toBe(LAW_CHOICES[point][at]);
    }
  });

  test('figures are written with their unit', () => {
    expect(valueWords('coldCelsiusTenths', 50, reader)).toBe('41.0 °F');
    expect(valueWords('coldCelsiusTenths', 70, { unit: 'C', locale: 'de-DE' })).toBe('7,0 °C');
    expect(valueWords('keepRecordDays', 1096, reader)).toBe('1096 days');
    expect(valueWords('keepRecordDays', 1, reader)).toBe('1 day');
  });

  test('evidence says when it was read, which year’s text, and how', () => {
    expect(evidenceWords(lawPack('us-michigan').evidence.pooling, 'en-US')).toBe('Nov 25, 2026, text of 2022');
    expect(evidenceWords(lawPack('us-indiana').evidence.keepRecordDays, 'en-US')).toBe('Nov 25, 2026, as quoted by somebody else');
    expect(evidenceWords(lawPack('us-ohio').evidence.pooling, 'en-US')).toBe('Nov 25, 2026, nothing found for this place');
  });

  test('nothing here is advice, and it says who decides', () => {
    expect(NOT_ADVICE).toMatch(/^This is not legal advice\./);
    expect(NOT_ADVICE).toContain('Your local code and the local authority decide');
  });
});
