import { afterAll, describe, expect, it, test } from 'vitest';
import { lostTo } from './model-figures';
import { NOT_EXPRESSIBLE } from './not-expressible';
import { PUBLISHED_SOURCES } from './published-sources';
import { PUBLISHED_ROWS, type PublishedRow } from './published-yields';
import { type Verdict, type YieldCheck, isInRange, verdictOf } from './yield-check';
import { DEER_CHECKS } from './yield-checks-deer';
import { OTHER_CHECKS } from './yield-checks-others';

const CHECKS = [...DEER_CHECKS, ...OTHER_CHECKS];
const keyOf = ({ species, quantity }: { readonly species: string; readonly quantity: string }): string => `${species} / ${quantity}`;
const ROWS = new Map(PUBLISHED_ROWS.map((row) => [keyOf(row), row]));

const VERDICTS: Readonly<Record<Verdict, string>> = {
  range: 'inside the published range',
  off: 'at the published figure, within the tolerance told',
  spread: 'published figure within our 10th to 90th percentile',
  clash: 'outside: another source or the carcass says otherwise',
};

function rowOf(check: YieldCheck): PublishedRow {
  const row = ROWS.get(keyOf(check));
  if (!row) throw new Error(`No published row: ${keyOf(check)}`);
  return row;
}

const short = (figure: number | null): string => (figure === null ? '' : String(Number(figure.toPrecision(4))));
const published = ({ low, mid, high }: PublishedRow): string => (low === null && high === null ? short(mid) : `${short(low)}..${short(mid)}..${short(high)}`);

describe('every published figure', () => {
  test.each(CHECKS.map((check) => [`${keyOf(check)} (${rowOf(check).source}): ${check.how}`, check] as const))('%s', (_, check) => {
    const row = rowOf(check);
    expect(check.why).not.toBe('');
    // What is inside the published range says so: no weaker claim hides it.
    if (check.within === 'spread' || check.within === 'clash') expect(isInRange(row, check.figure)).toBe(false);
    expect({ published: published(row), ours: check.figure, within: check.within, verdict: verdictOf(row, check) }).toMatchObject({
      verdict: typeof check.within === 'object' ? 'off' : check.within,
    });
  });

  it('is checked once, or told why not: nothing is forgotten and nothing is made up', () => {
    const unsaid = NOT_EXPRESSIBLE.flatMap(({ rows }) => Object.entries(rows).flatMap(([species, quantities]) => quantities.map((quantity) => keyOf({ species, quantity }))));
    const accounted = [...CHECKS.map(keyOf), ...unsaid];
    expect(new Set(accounted).size).toBe(accounted.length);
    expect(accounted.toSorted()).toEqual([...ROWS.keys()].toSorted());
    expect(accounted.length).toBe(PUBLISHED_ROWS.length);
  });

  it('has a source that is cited, and every source cited has a figure', () => {
    expect(new Set(PUBLISHED_ROWS.map(({ source }) => source))).toEqual(new Set(Object.keys(PUBLISHED_SOURCES)));
  });
});

describe('meat lost to a shot', () => {
  // CHEV1971 has 13.9% of the carcass on animals shot anywhere; a part that is thrown away takes its bone along. Independent.
  it('is 13.9% of an impala between one heavy shoulder with light ribs and both shoulders lost with heavy ribs', () => {
    const shot = (shoulders: readonly ('heavy' | 'lost')[], ribs: 'light' | 'heavy') =>
      lostTo({
        speciesId: 'impala',
        weight: { grams: 1_000_000, basis: 'hanging' },
        wounds: shoulders.flatMap((severity, at) => {
          const place = at === 0 ? 'left' : 'right';
          return [{ part: 'shoulder' as const, place, severity } as const, { part: 'ribs' as const, place, severity: ribs } as const];
        }),
      }).likely / 10_000;
    expect(shot(['heavy'], 'light')).toBeLessThan(5);
    expect(shot(['lost', 'lost'], 'heavy')).toBeGreaterThan(13.9);
  });
});

afterAll(() => {
  const count = (verdict: Verdict, kind?: YieldCheck['kind']): number =>
    CHECKS.filter((check) => verdictOf(rowOf(check), check) === verdict && (kind === undefined || check.kind === kind)).length;
  const unsaid = NOT_EXPRESSIBLE.map(({ why, rows }) => ({ why, count: Object.values(rows).flat().length }));
  const table = CHECKS.map((check) => {
    const row = rowOf(check);
    const verdict = verdictOf(row, check) ?? 'FAILS';
    return [verdict.padEnd(6), keyOf(check).padEnd(66), published(row).padStart(20), short(check.figure.likely).padStart(9), row.unit.padEnd(14), check.kind.padEnd(11), row.source].join('  ');
  });
  console.log(
    [
      'how     species / quantity                                                             published         ours  unit            kind         source',
      ...table,
      '',
      `${PUBLISHED_ROWS.length} published rows: ${CHECKS.length} checked, ${unsaid.reduce((sum, one) => sum + one.count, 0)} not expressible`,
      ...(Object.keys(VERDICTS) as Verdict[]).map(
        (verdict) => `  ${String(count(verdict)).padStart(4)} ${verdict.padEnd(6)} ${VERDICTS[verdict]} (${count(verdict, 'independent')} of them independent)`,
      ),
      ...unsaid.map(({ why, count: rows }) => `  ${String(rows).padStart(4)} not expressible: ${why}`),
      '',
      ...CHECKS.filter(({ within }) => within === 'clash').map((check) => `clash: ${keyOf(check)} (${rowOf(check).source}): ${check.why}`),
      '',
      ...Object.entries(PUBLISHED_SOURCES).map(([key, { grade, citation }]) => `${key} (${grade}): ${citation}`),
    ].join('\n'),
  );
});
