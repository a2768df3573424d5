import { type Place, rangeOf, readTissueKey } from '@/lib/carcass';
import { TARGETS } from '@/lib/cuts';
import { placesOfLine } from '@/lib/instructions';
import type { Range } from '@/lib/units';
import type { Plan, PlannedLine } from './plan-order';

/**
 * What the largest single piece of a line packs: one topside of the two, or the whole saddle. Grams; the low, likely
 * and high of the half that gives most.
 */
export function largestPiece(plan: Plan, { line }: PlannedLine): Range {
  const places = placesOfLine(line);
  const pieces: readonly (readonly Place[])[] =
    TARGETS[line.target].reach === 'both-as-one' ? [places] : places.map((place) => [place]);
  return pieces
    .map((piece): Range => {
      const rows = plan.ledger.filter((row) => row.lineId === line.id && piece.includes(readTissueKey(row.key).place));
      const wounded = new Map(plan.forecast.tissues.map(({ key, woundGrams }) => [key, woundGrams]));
      const shares = new Map(rows.map((row) => {
        const sound = row.grams - (wounded.get(row.key) ?? 0);
        return [row.key, sound > 0 ? row.packed / sound : 0];
      }));
      const likely = rows.reduce((sum, row) => sum + row.packed, 0);
      return rangeOf(plan.forecast, (key, isLost) => (isLost ? 0 : (shares.get(key) ?? 0)), likely);
    })
    .reduce((largest, one) => (one.high > largest.high ? one : largest), { low: 0, likely: 0, high: 0 });
}
