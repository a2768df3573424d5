import type { Highs, Model } from 'highs';
import type { FitCase } from './any-fit';

/**
 * The same division as `fitWishes`, said as integer programmes and left to HiGHS: own meat of each wish as large as it
 * can be, one after the other, each kept as an equation in the next; then, if asked, each draw the same way.
 */
export function solveWithHighs(
  highs: Highs,
  { supplies, wishes }: FitCase,
  { withDraws }: { readonly withDraws: boolean },
): { readonly gameGrams: readonly number[]; readonly draws: readonly (readonly number[])[] } {
  return highs.withModel({ format: 'lp', data: programmeOf({ supplies, wishes }) }, (model) => {
    // The feasibility jump only looks for a first solution, and takes three quarters of the time to do so.
    model.options.set({ output_flag: false, mip_rel_gap: 0, mip_abs_gap: 0, mip_heuristic_run_feasibility_jump: false });
    const gameGrams = wishes.map((_, at) => largest(highs, model, `x${at}`));
    const draws = withDraws
      ? wishes.map(({ from }, at) =>
          from.map((pool) => largest(highs, model, `f${at}_${supplies.findIndex((supply) => supply.pool === pool)}`)),
        )
      : [];
    return { gameGrams, draws };
  });
}

/** Makes one variable as large as it can be, and keeps it there. */
function largest(highs: Highs, model: Model, name: string): number {
  const column = model.getColByName(name);
  model.changeColCost(column, 1);
  model.run();
  if (model.getModelStatus() !== highs.constants.modelStatus.optimal) throw new Error(`HiGHS found no optimum for ${name}`);
  const value = model.getSolution().colValue[column] ?? Number.NaN;
  const grams = Math.round(value) + 0; // no minus zero
  if (!(Math.abs(value - grams) < 1e-4)) throw new Error(`HiGHS gives ${name} the fraction ${value}`);
  model.changeColCost(column, 0);
  model.changeColBounds(column, grams, grams);
  return grams;
}

/**
 * The programme in the LP format: x is what a wish gets, f what it draws from a pool, n its number of steps, and b
 * whether it gets anything.
 */
function programmeOf({ supplies, wishes }: FitCase): string {
  const held = supplies.reduce((sum, { grams }) => sum + grams, 0);
  const rows: string[] = [];
  const bounds: string[] = [];
  const whole: string[] = [];
  const eitherOr: string[] = [];
  wishes.forEach(({ from, askedGrams, leastGrams, stepGrams }, at) => {
    const most = Math.min(askedGrams ?? held, held);
    const draws = supplies.flatMap(({ pool }, place) => (from.includes(pool) ? [`f${at}_${place}`] : []));
    rows.push(`${draws.join(' + ')} - x${at} = 0`, `x${at} - ${stepGrams} n${at} = 0`);
    rows.push(`x${at} - ${leastGrams} b${at} >= 0`, `x${at} - ${most} b${at} <= 0`);
    bounds.push(`x${at} <= ${most}`);
    whole.push(`x${at}`, `n${at}`, ...draws);
    eitherOr.push(`b${at}`);
  });
  supplies.forEach(({ pool, grams }, place) => {
    const draws = wishes.flatMap(({ from }, at) => (from.includes(pool) ? [`f${at}_${place}`] : []));
    if (draws.length > 0) rows.push(`${draws.join(' + ')} <= ${grams}`);
  });
  return ['max', ' o: 0 x0', 'st', ...rows.map((row, at) => ` r${at}: ${row}`), 'bounds', ...bounds.map((bound) => ` ${bound}`),
    'gen', ` ${whole.join(' ')}`, 'bin', ` ${eitherOr.join(' ')}`, 'end', ''].join('\n');
}
