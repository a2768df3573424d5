import { describe, expect, test } from 'vitest';
import { carcassChart } from '@/lib/documents/carcass-chart';

type Point = readonly [number, number];

const NARROW = 358 / carcassChart.width;
const SHAPES = [
  ...carcassChart.parts.flatMap(({ d, hitD }) => (hitD ? [d, hitD] : [d])),
  ...carcassChart.muscles.map(({ d }) => d),
  ...carcassChart.farLimbs,
  ...carcassChart.nearLimbs,
  carcassChart.outline,
  carcassChart.eye,
];
const LINES = [...carcassChart.headLines, carcassChart.shading, carcassChart.ribLines];

/** Corners of a closed shape, its curves cut into short straight pieces. */
function corners(d: string): readonly Point[] {
  const points: Point[] = [];
  for (const [, command, rest = ''] of d.matchAll(/([MLC])([^A-Z]*)/g)) {
    const [a = 0, b = 0, c = 0, e = 0, x = a, y = b] = rest.trim().split(/\s+/).map(Number);
    const [x0, y0] = points.at(-1) ?? [a, b];
    const steps = command === 'C' ? 12 : 1;
    for (let i = 1; i < steps; i += 1) {
      const t = i / steps;
      const [k0, k1, k2, k3] = [(1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t ** 3];
      points.push([k0 * x0 + k1 * a + k2 * c + k3 * x, k0 * y0 + k1 * b + k2 * e + k3 * y]);
    }
    points.push([x, y]);
  }
  return points;
}

function area(d: string): number {
  const points = corners(d);
  const twice = points.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = points[(i + 1) % points.length] ?? [x, y];
    return sum + x * nextY - nextX * y;
  }, 0);
  return Math.abs(twice / 2);
}

function sizeAtPhone(d: string): Point {
  const points = corners(d);
  const span = (values: readonly number[]) => (Math.max(...values) - Math.min(...values)) * NARROW;
  return [span(points.map(([x]) => x)), span(points.map(([, y]) => y))];
}

test('only absolute M, L, C, Q and Z are used, and every area is closed', () => {
  for (const d of [...SHAPES, ...LINES]) expect(d).toMatch(/^M[MLCQZ\d. -]+$/);
  for (const d of SHAPES) expect(d.endsWith('Z')).toBe(true);
});

test('the parts fill the outline', () => {
  const parts = carcassChart.parts.reduce((sum, { d }) => sum + area(d), 0);
  expect(parts / area(carcassChart.outline)).toBeCloseTo(1, 2);
});

describe.each(carcassChart.parts)('$part', ({ part, d, hitD, labelX, labelY, markX, markY }) => {
  test('its muscles fill it, the topside lying over the others', () => {
    const muscles = carcassChart.muscles.filter((muscle) => muscle.part === part && muscle.muscle !== 'topside');
    expect(muscles.reduce((sum, muscle) => sum + area(muscle.d), 0) / area(d)).toBeCloseTo(1, 2);
  });

  test('it answers to a finger 44 px across at 358 px wide', () => {
    const [width, height] = sizeAtPhone(hitD ?? d);
    expect(Math.min(width, height)).toBeGreaterThanOrEqual(44);
  });

  test('its label and its sign lie within the drawing', () => {
    for (const x of [labelX, markX]) expect(x).toSatisfy((value: number) => value > 40 && value < carcassChart.width - 40);
    for (const y of [labelY, markY]) expect(y).toSatisfy((value: number) => value > 20 && value < carcassChart.height - 20);
  });
});
