import {
  type AnimalFacts,
  type CarcassForecast,
  type TissueKey,
  type Weighing,
  buildShareTree,
  conditionedComposition,
  isDelivered,
  lossAt,
  readTissueKey,
} from '@/lib/carcass';
import { chanceFrom, shareDrawer } from './carcass-draws';

const BLOCK = 2_000;

/** What the weight that is known is of: the whole animal, what came through the door, or all the meat that was on it. */
function isWeighed(facts: AnimalFacts, key: TissueKey): boolean {
  const { weight, form } = facts;
  switch (weight?.basis) {
    case 'hanging':
      return isDelivered(facts, key);
    case 'quarters':
      return form !== 'quartered' || isDelivered(facts, key);
    case 'boneless':
      return form === 'boned-out' ? isDelivered(facts, key) : readTissueKey(key).kind === 'muscle';
    default:
      return true;
  }
}

/**
 * Draws so many carcasses of one forecast and gives each quantity of each, in grams: whole carcasses are drawn and scaled so that
 * what was weighed weighs what the scale said. Nothing is pruned and no carcass is told from its meat, so that both are tested.
 */
export function drawQuantities(
  { facts, species, base }: CarcassForecast,
  weighings: readonly Weighing[],
  { draws, seed }: { readonly draws: number; readonly seed: number },
): readonly Float64Array[] {
  const chance = chanceFrom(seed);
  const tree = buildShareTree(conditionedComposition(species.composition, facts), (part, place) => lossAt(facts, part, place)?.sound ?? null);
  const { columns, next } = shareDrawer(tree, BLOCK, chance);
  const weighed = [...columns].filter(([key]) => isWeighed(facts, key)).flatMap(([, { sound, lost }]) => (lost ? [sound, lost] : [sound]));
  const terms = weighings.map((weightOf) =>
    [...columns]
      .filter(([key]) => isDelivered(facts, key))
      .flatMap(([key, { sound, lost }]) => [
        { weight: weightOf(key, false), column: sound },
        ...(lost ? [{ weight: weightOf(key, true), column: lost }] : []),
      ])
      .filter(({ weight }) => weight !== 0),
  );
  const quantities = weighings.map(() => new Float64Array(draws));
  const sigma = Math.sqrt(Math.log1p(base.cv ** 2));
  const scale = new Float64Array(BLOCK);
  for (let from = 0; from < draws; from += BLOCK) {
    next();
    scale.fill(0);
    for (const column of weighed) for (let at = 0; at < BLOCK; at += 1) scale[at] = (scale[at] ?? 0) + (column[at] ?? 0);
    for (let at = 0; at < BLOCK; at += 1) scale[at] = (base.grams * Math.exp(sigma * chance.normal())) / (scale[at] ?? 1);
    quantities.forEach((quantity, index) => {
      const out = quantity.subarray(from, from + BLOCK);
      for (const { weight, column } of terms[index] ?? []) {
        for (let at = 0; at < BLOCK; at += 1) out[at] = (out[at] ?? 0) + weight * (column[at] ?? 0);
      }
      for (let at = 0; at < BLOCK; at += 1) out[at] = (out[at] ?? 0) * (scale[at] ?? 0);
    });
  }
  return quantities;
}

/** The value that a share of the draws lies below, by Hoare's selection (1961). Leaves the draws in another order. */
export function percentile(values: Float64Array, share: number): number {
  const wanted = Math.floor(share * values.length);
  let [low, high] = [0, values.length - 1];
  while (low < high) {
    const pivot = values[(low + high) >> 1] ?? 0;
    let [i, j] = [low, high];
    while (i <= j) {
      while ((values[i] ?? 0) < pivot) i += 1;
      while ((values[j] ?? 0) > pivot) j -= 1;
      if (i <= j) {
        const held = values[i] ?? 0;
        values[i] = values[j] ?? 0;
        values[j] = held;
        i += 1;
        j -= 1;
      }
    }
    if (wanted <= j) high = j;
    else if (wanted >= i) low = i;
    else break;
  }
  return values[wanted] ?? Number.NaN;
}

/** Correlation of two quantities of the same carcasses. */
export function correlationOf(one: Float64Array, other: Float64Array): number {
  const mean = (of: Float64Array): number => of.reduce((sum, value) => sum + value, 0) / of.length;
  const [a, b] = [mean(one), mean(other)];
  let [aa, ab, bb] = [0, 0, 0];
  for (let at = 0; at < one.length; at += 1) {
    const [x, y] = [(one[at] ?? 0) - a, (other[at] ?? 0) - b];
    aa += x * x;
    ab += x * y;
    bb += y * y;
  }
  return ab / Math.sqrt(aa * bb);
}
