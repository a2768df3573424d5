import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { figuresOf, publishedSpecies } from '@/lib/carcass';
import { type OddYield, oddYieldWords, yieldRows } from '@/lib/documents';
import { learnSpecies } from '@/lib/learning';

const published = figuresOf(publishedSpecies('white-tailed-deer'));
const us = { country: 'us', locale: 'en-US', isOn: true } as const;
const deer = (meat: number, haunch?: number) => ({ hanging: null, meatOfHanging: meat, partOfMeat: haunch === undefined ? {} : { haunch } });

describe('what was learned of a species', () => {
  it('says the published figure, one’s own and what goes now, each with where eight in ten lie', () => {
    const rows = yieldRows(learnSpecies(published, [deer(0.5, 0.42), deer(0.52, 0.43), deer(0.51)]), us);
    expect(rows.slice(0, 5).map(({ name, published: before, yours, now }) => [name, before, yours, now])).toEqual([
      ['Field-dressed, of what it weighed live', '78.4% (75 to 82)', 'none yet', '78.4% (75 to 82)'],
      ['On the rail, of field-dressed', '81.0% (77 to 85)', 'none yet', '81.0% (77 to 85)'],
      ['Clean meat, of what hung', '56.0% (51 to 61)', '51.0% (50 to 52), 3 animals', '54.8% (50 to 60)'],
      ['Tenderloin, of the clean meat', '2.2% (2 to 3)', 'none yet', '2.2% (2 to 3)'],
      ['Back, of the clean meat', '13.8% (12 to 15)', 'none yet', '13.8% (12 to 15)'],
    ]);
  });

  it('names no range for a single animal', () => {
    const row = yieldRows(learnSpecies(published, [deer(0.5)]), us).find(({ key }) => key === 'meat');
    expect(row?.yours).toBe('50.0%, 1 animal');
    expect(row?.marks.map(({ of, range }) => [of, range !== null])).toEqual([['published', true], ['yours', false], ['now', true]]);
  });

  it('writes as the shop does, and goes by the published figures while switched off', () => {
    const row = yieldRows(learnSpecies(published, [deer(0.5)]), { country: 'uk', locale: 'de-DE', isOn: false }).find(({ key }) => key === 'meat');
    expect([row?.published, row?.yours, row?.now]).toEqual(['56,0% (51 to 61)', '50,0%, 1 animal', '56,0% (51 to 61)']);
    expect(row?.marks[2]?.at).toBe(row?.marks[0]?.at);
  });

  it('keeps every mark on its axis, in the order of the shares', () => {
    fc.assert(fc.property(fc.array(fc.double({ min: 0.02, max: 0.98, noNaN: true }), { minLength: 1, maxLength: 12 }), (shares) => {
      const learned = learnSpecies(published, shares.map((share) => deer(share)));
      const row = yieldRows(learned, us).find(({ key }) => key === 'meat');
      for (const { at, range } of row?.marks ?? []) {
        for (const place of [at, range?.from ?? at, range?.to ?? at]) expect(place >= 0 && place <= 100).toBe(true);
        if (range) expect(range.from <= at && at <= range.to).toBe(true);
      }
      const [before, own] = row?.marks ?? [];
      const mean = learned.shares.find(({ of }) => of === 'meat')?.own.mean ?? 0;
      if (before && own && Math.abs(mean - 0.56) > 0.001) expect(own.at < before.at).toBe(mean < 0.56);
    }));
  });
});

test.each<[OddYield, string]>([
  [{ of: 'meat', expected: 0.56, found: 0.25 }, 'The meat came to 25.0% of what hung; about 56.0% was to be expected. Kilograms may have been written as pounds.'],
  [{ of: 'meat', expected: 0.56, found: 0.71 }, 'The meat came to 71.0% of what hung; about 56.0% was to be expected.'],
  [{ of: 'hanging', expected: 0.81, found: 0.4 }, 'It hung at 40.0% of what came in; about 81.0% was to be expected. Kilograms may have been written as pounds.'],
  [{ of: 'line', label: 'Backstraps, medallions', expectedGrams: 1_814, foundGrams: 3_992 }, 'Backstraps, medallions: 8.8 lb was weighed; about 4.0 lb was to be expected. Pounds may have been written as kilograms.'],
])('says why %j is odd', (odd, words) => {
  expect(oddYieldWords(odd, { unit: 'lb', locale: 'en-US' })).toBe(words);
});
