import type { ShareNode, TissueKey } from '@/lib/carcass';

/** Uniform numbers in (0, 1) from a fixed seed (mulberry32), so that a run repeats. */
export function uniforms(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return (((mixed ^ (mixed >>> 14)) >>> 0) + 0.5) / 4_294_967_296;
  };
}

function normal(next: () => number): number {
  return Math.sqrt(-2 * Math.log(next())) * Math.cos(2 * Math.PI * next());
}

/** One Beta variate of this mean and concentration. */
export function drawBeta(mean: number, concentration: number, next: () => number): number {
  const [a, b] = [gamma(mean * concentration, next), gamma((1 - mean) * concentration, next)];
  return a / (a + b);
}

/** One carcass drawn from a share tree: the share of every tissue in it. */
export function drawLeaves(node: ShareNode, next: () => number, share = 1, into = new Map<TissueKey, number>()): ReadonlyMap<TissueKey, number> {
  if ('leaf' in node) {
    into.set(node.leaf, share);
    return into;
  }
  if (!('children' in node)) throw new Error('Only a tree of splits is drawn here');
  const draws = node.children.map(({ mean }) => gamma(mean * node.concentration, next));
  const total = draws.reduce((sum, one) => sum + one, 0);
  node.children.forEach((child, at) => drawLeaves(child.node, next, (share * (draws[at] ?? 0)) / total, into));
  return into;
}

/** One gamma variate of this shape and scale one: Marsaglia and Tsang (2000), ACM TOMS 26(3). */
function gamma(shape: number, next: () => number): number {
  if (shape < 1) return gamma(shape + 1, next) * next() ** (1 / shape);
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const x = normal(next);
    const v = (1 + c * x) ** 3;
    if (v > 0 && Math.log(next()) < 0.5 * x * x + d - d * v + d * Math.log(v)) return d * v;
  }
}

/** One log-normal weight of this median and relative spread. */
export function drawWeight(median: number, cv: number, next: () => number): number {
  return median * Math.exp(Math.sqrt(Math.log1p(cv * cv)) * normal(next));
}

/** One carcass drawn from a share tree: the weighted sum of its shares. */
export function drawShare(node: ShareNode, weightOf: (key: TissueKey) => number, next: () => number): number {
  if ('leaf' in node) return weightOf(node.leaf);
  if (!('children' in node)) throw new Error('Only a tree of splits is drawn here');
  const draws = node.children.map(({ mean }) => gamma(mean * node.concentration, next));
  const total = draws.reduce((sum, one) => sum + one, 0);
  return node.children.reduce((sum, child, at) => sum + ((draws[at] ?? 0) / total) * drawShare(child.node, weightOf, next), 0);
}
