type Point = readonly [number, number];

/** How lines are laid over a shape: `slope` 1 falls to the right, -1 rises; distances in the units of the drawing. */
export type Hatch = { readonly slope: 1 | -1; readonly gap: number };

/** Parallel slanting lines cut off at the edge of a closed shape, as the path of a pen. The shape is made of M, L, C, Q and Z. */
export function hatchPath(d: string, { slope, gap }: Hatch): string {
  const corners = outlineOf(d);
  const across = corners.map(([x, y]) => y - slope * x);
  const last = Math.max(...across);
  let path = '';
  for (let level = Math.min(...across) + gap / 2; level < last; level += gap) path += cutLine(corners, slope, level);
  return path;
}

/** Two heavy strokes from corner to corner of a closed shape, cut off at its edge. */
export function crossPath(d: string): string {
  const corners = outlineOf(d);
  const [left, right] = [Math.min(...corners.map(([x]) => x)), Math.max(...corners.map(([x]) => x))];
  const [top, bottom] = [Math.min(...corners.map(([, y]) => y)), Math.max(...corners.map(([, y]) => y))];
  const steep = (bottom - top) / (right - left);
  return cutLine(corners, steep, top - steep * left) + cutLine(corners, -steep, bottom + steep * left);
}

/** The stretches of the line y = slope * x + level that lie inside a shape. */
function cutLine(corners: readonly Point[], slope: number, level: number): string {
  const crossings = corners.flatMap((from, index) => {
    const to = corners[(index + 1) % corners.length] ?? from;
    const before = from[1] - slope * from[0] - level;
    const after = to[1] - slope * to[0] - level;
    return before > 0 === after > 0 ? [] : [from[0] + ((to[0] - from[0]) * before) / (before - after)];
  });
  crossings.sort((a, b) => a - b);
  let path = '';
  for (let index = 0; index + 1 < crossings.length; index += 2) {
    const [from = 0, to = 0] = crossings.slice(index, index + 2);
    path += `M${round(from)} ${round(slope * from + level)}L${round(to)} ${round(slope * to + level)}`;
  }
  return path;
}

/** Corners of a closed shape, its curves cut into short straight pieces. */
function outlineOf(d: string): readonly Point[] {
  const points: Point[] = [];
  for (const [, command, rest = ''] of d.matchAll(/([MLCQ])([^A-Z]*)/g)) {
    const numbers = rest.trim().split(/[\s,]+/).map(Number);
    const width = command === 'C' ? 6 : command === 'Q' ? 4 : 2;
    for (let at = 0; at + width <= numbers.length; at += width) points.push(...curve(points.at(-1), numbers.slice(at, at + width)));
  }
  return points;
}

function curve(start: Point | undefined, numbers: readonly number[]): readonly Point[] {
  const [a = 0, b = 0, c = 0, e = 0, f = 0, g = 0] = numbers;
  if (start === undefined || numbers.length === 2) return [[a, b]];
  const steps = 6;
  return Array.from({ length: steps }, (_, index): Point => {
    const t = (index + 1) / steps;
    const u = 1 - t;
    const [x0, y0] = start;
    return numbers.length === 4
      ? [u * u * x0 + 2 * u * t * a + t * t * c, u * u * y0 + 2 * u * t * b + t * t * e]
      : [u ** 3 * x0 + 3 * u * u * t * a + 3 * u * t * t * c + t ** 3 * f, u ** 3 * y0 + 3 * u * u * t * b + 3 * u * t * t * e + t ** 3 * g];
  });
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
