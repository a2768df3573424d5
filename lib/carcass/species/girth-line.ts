import type { Evidence, GirthRule } from '../species';

const GRAMS_PER_POUND = 453.59237;
const MM_PER_INCH = 25.4;

type Point = GirthRule['points'][number];

function pointAt(inches: number, pounds: number): Point {
  return { girthMm: inches * MM_PER_INCH, grams: pounds * GRAMS_PER_POUND };
}

/** Two points of a published line, pounds by inches of girth, as millimetres and grams without rounding. */
export function girthLine({ slopeLbPerIn, interceptLb, fromIn, toIn }: {
  readonly slopeLbPerIn: number;
  readonly interceptLb: number;
  readonly fromIn: number;
  readonly toIn: number;
}): readonly Point[] {
  return [fromIn, toIn].map((inches) => pointAt(inches, interceptLb + slopeLbPerIn * inches));
}

/** The points of a published chart: inches of girth and pounds. */
export function girthTable(rows: readonly (readonly [inches: number, pounds: number])[]): readonly Point[] {
  return rows.map(([inches, pounds]) => pointAt(inches, pounds));
}

/** A rule of weight by girth: whom it is for, what it weighs, its points, how wide it scatters and why we think so. */
export function girthRule(
  ageClasses: GirthRule['ageClasses'],
  basis: GirthRule['basis'],
  points: readonly Point[],
  evidence: Evidence & { readonly cv: number },
): GirthRule {
  return { ageClasses, basis, points, ...evidence };
}
