import { describe, expect, it, test } from 'vitest';
import { MISLEADING_NAME_SOURCES, MISLEADING_TERMS, NAME_COUNTRIES, PLACED_TARGETS, TARGETS, nameBook, targetsOfPlan } from '@/lib/cuts';

describe.each(NAME_COUNTRIES)('the misleading names of the country %s', (country) => {
  const book = nameBook(country);

  it('mean at least two things each, said apart in finished words', () => {
    for (const { meanings } of book.names) {
      expect(meanings.length).toBeGreaterThan(1);
      const said = meanings.map(({ words, where }) => `${words}: ${where}`);
      expect(new Set(said).size).toBe(said.length);
      for (const text of said) expect(text).toMatch(/^[a-z].*: [a-z].*[a-z]$/);
    }
  });

  it('are written in lower case without hyphens, each way once', () => {
    const spellings = [...book.names.flatMap((name) => name.spellings), ...book.plain];
    for (const spelling of spellings) expect(spelling).toMatch(/^[a-z]+( [a-z]+)*$/);
    expect(new Set(spellings).size).toBe(spellings.length);
  });
});

describe('a target whose own name misleads', () => {
  it('is in the US the tenderloin, the backstrap, the top sirloin and the sirloin tip', () => {
    expect(Object.keys(nameBook('us').targets).toSorted()).toEqual(['fillet', 'loin', 'rump', 'thick-flank']);
  });

  it('is in the UK the rump', () => {
    expect(nameBook('uk').targets).toEqual({ rump: 'top of the hind leg, behind the loin' });
  });
});

test('a name is not asked about where it is the shop’s own and everyone means one thing by it', () => {
  expect(nameBook('us').names.map(({ term }) => term)).not.toContain('backstrap');
  expect(nameBook('uk').names.map(({ term }) => term)).toContain('backstrap');
  expect(nameBook('uk').names.map(({ term }) => term)).not.toContain('rump');
});

test('every misleading name says where it is known from', () => {
  for (const term of MISLEADING_TERMS) expect(MISLEADING_NAME_SOURCES[term]).not.toBe('');
});

test('every target of the four-legged has a place in words', () => {
  expect(PLACED_TARGETS.toSorted()).toEqual(targetsOfPlan('four-legged').toSorted());
  for (const target of PLACED_TARGETS) expect(TARGETS[target].part.startsWith('bird')).toBe(false);
});
