import { describe, expect, test } from 'vitest';
import type { CuttingSheet, SheetLine } from '@/lib/documents';
import { layOutSheet } from '@/lib/pdf/sheet-layout';
import { sizesFor } from '@/lib/pdf/sheet-sizes';
import { elkSheet, heavySheet, typicalSheet, usualSheet } from './samples';

const PAPERS = ['letter', 'a4'] as const;

/** The typical sheet with so many lines, all alike. */
function withLines(count: number): CuttingSheet {
  const sheet = typicalSheet();
  const [line] = sheet.blocks.flatMap((block) => block.lines);
  const lines = Array.from({ length: count }, (_, index): SheetLine => ({ ...(line as SheetLine), part: `PART ${index}` }));
  return { ...sheet, blocks: [{ title: 'HAUNCH', seams: '', lines }] };
}

const sizeAt = (count: number): readonly [number, number] => {
  const { sizes, pages } = layOutSheet(withLines(count), 'letter');
  return [sizes.line, pages.length];
};

describe.each(PAPERS)('on %s', (paper) => {
  test('a typical order of ten lines stands on one page at 18 points or more', () => {
    const { sizes, pages } = layOutSheet(typicalSheet(), paper);
    expect(pages).toHaveLength(1);
    expect(sizes.line).toBeGreaterThanOrEqual(18);
    expect(sizes.number).toBeGreaterThanOrEqual(60);
  });

  test('what the shop does anyway stands at the largest size', () => {
    expect(layOutSheet(usualSheet(), paper).sizes.line).toBe(24);
  });

  test('an elk with wounds and bars stands on one page', () => {
    expect(layOutSheet(elkSheet(), paper).pages).toHaveLength(1);
  });

  test('a heavy order goes on to a second page, and no line is lost or told twice', () => {
    const sheet = heavySheet();
    const { pages } = layOutSheet(sheet, paper);
    expect(pages).toHaveLength(2);
    const lines = pages.flat().flatMap((row) => (row.kind === 'line' ? [row.line] : []));
    expect(lines).toEqual(sheet.blocks.flatMap((block) => block.lines));
  });
});

test('more lines are never larger, step down to 14 points, and only then go on to a second page', () => {
  const counts = Array.from({ length: 30 }, (_, index) => index + 1);
  const onePage = counts.map(sizeAt).filter(([, pages]) => pages === 1).map(([size]) => size);
  expect(onePage).toEqual([...onePage].sort((a, b) => b - a));
  expect(onePage[0]).toBe(24);
  expect(onePage.at(-1)).toBeLessThan(16);
  expect(onePage.length).toBeGreaterThanOrEqual(13);
});

test('no number of lines gets lost, however many', () => {
  for (const count of [1, 12, 25, 40, 80]) {
    const rows = layOutSheet(withLines(count), 'letter').pages.flat();
    expect(rows.filter(({ kind }) => kind === 'line')).toHaveLength(count);
  }
});

test('bars are half as large again as the lines, and never wider than the page', () => {
  const stops: CuttingSheet['stops'] = [{ kind: 'hazard', text: 'DISEASE ZONE - NO SAWN BONE' }];
  const { sizes, pages } = layOutSheet({ ...usualSheet(), stops }, 'a4');
  expect(pages).toHaveLength(1);
  expect(sizes.stop).toBe(sizes.line * 1.5);
  expect(sizes.line).toBeLessThan(24);
});

test('nothing is set smaller than 13 points at any step', () => {
  for (let line = 14; line <= 24; line += 0.5) {
    for (const frame of ['roomy', 'tight'] as const) {
      const sizes = sizesFor(line, frame);
      const texts = [sizes.line, sizes.detail, sizes.side, sizes.title, sizes.label, sizes.value, sizes.fact, sizes.note, sizes.caution, sizes.stripTitle, sizes.stripNumber];
      expect(Math.min(...texts)).toBe(13);
      expect(sizes.number).toBeGreaterThanOrEqual(60);
    }
  }
});
