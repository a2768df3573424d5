import type { ModelFigure } from './model-figures';
import type { PublishedRow } from './published-yields';

/**
 * How the figure of the forecast stands to the published one.
 * - range: it lies inside the published range.
 * - off: it lies within so much of the published middle, in the published unit.
 * - spread: the published figure meets its 10th to 90th percentile.
 * - clash: neither; another source, or the carcass itself, says otherwise, and why is told.
 */
export type Within = 'range' | 'spread' | 'clash' | { readonly off: number };
export type Verdict = 'range' | 'off' | 'spread' | 'clash';

/** Same source: a coefficient of ours was set from it, so that the arithmetic is checked. Independent: it set nothing here. */
export type Kind = 'same source' | 'independent';

export type YieldCheck = {
  readonly species: string;
  readonly quantity: string;
  readonly kind: Kind;
  /** How the figure of the forecast is worked out. */
  readonly how: string;
  readonly figure: ModelFigure;
  readonly within: Within;
  /** Why this tolerance, or why not. */
  readonly why: string;
};

type CheckRow = readonly [quantity: string, kind: Kind, how: string, figure: ModelFigure, within: Within, why: string];

export function checksOf(species: string, rows: readonly CheckRow[]): readonly YieldCheck[] {
  return rows.map(([quantity, kind, how, figure, within, why]) => ({ species, quantity, kind, how, figure, within, why }));
}

export const off = (amount: number): Within => ({ off: amount });

/** Sums of floating figures are not told apart below this. */
const EQUAL = 1e-6;

export function isInRange({ low, high }: PublishedRow, { likely }: ModelFigure): boolean {
  if (low === null && high === null) return false;
  return likely >= (low ?? -Infinity) - EQUAL && likely <= (high ?? Infinity) + EQUAL;
}

export function meetsSpread({ low, mid, high }: PublishedRow, figure: ModelFigure): boolean {
  const [from, to] = [low ?? mid ?? high ?? Infinity, high ?? mid ?? low ?? -Infinity];
  return from <= figure.high + EQUAL && to >= figure.low - EQUAL;
}

/** The verdict that holds of a check against its row, of the kind it claims; null where the claim is not true. */
export function verdictOf(row: PublishedRow, { figure, within }: YieldCheck): Verdict | null {
  const inRange = isInRange(row, figure);
  const meets = meetsSpread(row, figure);
  if (within === 'range') return inRange ? 'range' : null;
  if (within === 'spread') return meets && !inRange ? 'spread' : null;
  if (within === 'clash') return meets || inRange ? null : 'clash';
  return row.mid !== null && Math.abs(figure.likely - row.mid) <= within.off + EQUAL ? 'off' : null;
}
