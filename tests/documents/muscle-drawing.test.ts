import { describe, expect, it, test } from 'vitest';
import { PLACED_TARGETS, TARGETS, TARGET_IDS } from '@/lib/cuts';
import { DRAWN_TARGETS, MUSCLE_DRAWING, muscleDrawing } from '@/lib/documents';

describe.each(DRAWN_TARGETS)('the picture of the %s', (target) => {
  const drawing = muscleDrawing(target) ?? '';

  it('is one small drawing with something marked by more than its colour', () => {
    expect(drawing).toMatch(/^<svg [^>]*viewBox="[\d. ]+"[^>]*>.*<\/svg>$/s);
    expect(drawing.match(/fill="url\(#h\)"/g)?.length).toBe(target === 'saddle' ? 2 : 1);
    // The content policy refuses a style, even in a picture.
    expect(drawing).not.toMatch(/style|class=/);
    expect(drawing).not.toMatch(/undefined|NaN|d=""/);
    expect(drawing.length).toBeLessThan(20_000);
  });

  it('has what is marked within its window', () => {
    const [x = 0, y = 0, width = 0, height = 0] = (/viewBox="([^"]+)"/.exec(drawing)?.[1] ?? '').split(' ').map(Number);
    const marked = /d="([^"]+)" fill="url\(#h\)"/.exec(drawing)?.[1] ?? '';
    const figures = (marked.match(/-?\d+(\.\d+)?/g) ?? []).map(Number);
    const across = figures.filter((_, at) => at % 2 === 0);
    const down = figures.filter((_, at) => at % 2 === 1);
    expect(Math.min(...across)).toBeGreaterThan(x);
    expect(Math.max(...across)).toBeLessThan(x + width);
    expect(Math.min(...down)).toBeGreaterThan(y);
    // A leg may run out of it at the foot.
    expect(down.toSorted((a, b) => a - b)[Math.floor(down.length / 2)]).toBeLessThan(y + height);
  });

  it('is as wide as any other, in the same proportions', () => {
    const [, , width = 0, height = 0] = (/viewBox="([^"]+)"/.exec(drawing)?.[1] ?? '').split(' ').map(Number);
    expect(width / height).toBeCloseTo(MUSCLE_DRAWING.width / MUSCLE_DRAWING.height, 6);
  });
});

test('every target of the four-legged has a picture, no bird has', () => {
  expect(DRAWN_TARGETS).toEqual(PLACED_TARGETS);
  for (const target of TARGET_IDS) expect(muscleDrawing(target) === null).toBe(TARGETS[target].part.startsWith('bird'));
});

test('no two pictures are the same', () => {
  const all = DRAWN_TARGETS.flatMap((target) => [muscleDrawing(target, 'light'), muscleDrawing(target, 'dark')]);
  expect(new Set(all).size).toBe(2 * DRAWN_TARGETS.length);
});
