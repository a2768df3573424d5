import { ANATOMY, type MuscleId, type PartId, type TissueId, type TissueKey, isSidedPart, tissueKey } from './anatomy';
import type { CompositionWith } from './species';

/** First, second and third raw moment of a random quantity. */
export type Moments = { readonly mean: number; readonly square: number; readonly cube: number };

/**
 * How a carcass divides, as a tree whose nodes are independent of each other. A leaf is a tissue.
 *
 * - split: Dirichlet shares that sum to one.
 * - wounded: of everything below, the share `sound` is fit to eat and the rest is lost.
 * - weighed: one branch was weighed, and the other is `ratio` times that weight: what a boneless weight says of the bones.
 */
export type ShareNode =
  | { readonly leaf: TissueKey }
  | { readonly concentration: number; readonly children: readonly { readonly mean: number; readonly node: ShareNode }[] }
  | { readonly sound: Moments; readonly node: ShareNode }
  | { readonly weighed: ShareNode; readonly ratio: Moments; readonly other: ShareNode };

/** What one gram of a tissue counts for, sound or lost to a wound. */
export type Weighing = (key: TissueKey, isLost: boolean) => number;

const NOTHING: Moments = { mean: 0, square: 0, cube: 0 };

/** Moments of a share that is Beta(a, b). */
export function betaMoments(a: number, b: number): Moments {
  const mean = a / (a + b);
  const square = (mean * (a + 1)) / (a + b + 1);
  return { mean, square, cube: (square * (a + 2)) / (a + b + 2) };
}

type ShareEntries = { readonly per10k: object; readonly concentration: number };

function split<Name extends string>(shares: ShareEntries, nodeOf: (name: Name) => ShareNode): ShareNode {
  // Object.entries forgets the key type that the composition guarantees.
  const entries = Object.entries(shares.per10k) as [Name, number][];
  return {
    concentration: shares.concentration,
    children: entries.map(([name, per10k]) => ({ mean: per10k / 10_000, node: nodeOf(name) })),
  };
}

/** What is done to the sound meat of a part at a place: null where there is no wound. */
export type WoundOf = (part: PartId, place: 'left' | 'right' | 'middle') => Moments | null;

/**
 * The tree of one composition: carcass -> meat, bone, cover, drying -> parts -> left and right -> muscles. Means at each split sum
 * to one.
 */
export function buildShareTree(composition: CompositionWith<unknown>, woundOf: WoundOf = () => null): ShareNode {
  const pair = (nodeAt: (side: 'left' | 'right') => ShareNode): ShareNode => ({
    concentration: composition.sideConcentration,
    children: [
      { mean: 0.5, node: nodeAt('left') },
      { mean: 0.5, node: nodeAt('right') },
    ],
  });
  const tissue = (id: Exclude<TissueId, 'drying'>): ShareNode =>
    ANATOMY[id].sided ? pair((side) => ({ leaf: tissueKey(side, id) })) : { leaf: tissueKey('middle', id) };
  const meatAt = (part: PartId, place: 'left' | 'right' | 'middle'): ShareNode => {
    const muscles = composition.muscles[part];
    const node: ShareNode = muscles
      ? split<MuscleId>(muscles, (muscle) => ({ leaf: tissueKey(place, muscle) }))
      : { leaf: tissueKey(place, part as MuscleId) };
    const sound = woundOf(part, place);
    return sound ? { sound, node } : node;
  };
  return split(composition.carcass, (name: 'meat' | 'bone' | 'cover' | 'drying') => {
    switch (name) {
      case 'meat':
        return split<PartId>(composition.meat, (part) =>
          isSidedPart(part) ? pair((side) => meatAt(part, side)) : meatAt(part, 'middle'),
        );
      case 'bone':
        return split(composition.bone, tissue);
      case 'cover':
        return split(composition.cover, tissue);
      case 'drying':
        return { leaf: 'middle:drying' };
    }
  });
}

/**
 * The carcass told from its meat, which was weighed: bone, cover and drying are a ratio to it. With shares (p, 1-p) of a
 * Dirichlet, the others divide independently of p, and (1-p)/p is beta prime.
 *
 * Throws where the tree does not begin with a split that has meat in it.
 */
export function seenFromMeat(tree: ShareNode): ShareNode {
  if (!('children' in tree)) throw new Error('Only a whole carcass can be told from its meat');
  const [meat, ...others] = tree.children;
  if (!meat) throw new Error('There is no meat on it');
  const a = tree.concentration * meat.mean;
  const b = tree.concentration * (1 - meat.mean);
  const mean = b / (a - 1);
  const square = (mean * (b + 1)) / (a - 2);
  return {
    weighed: meat.node,
    ratio: { mean, square, cube: (square * (b + 2)) / (a - 3) },
    other: {
      concentration: b,
      children: others.map((child) => ({ mean: child.mean / (1 - meat.mean), node: child.node })),
    },
  };
}

/**
 * The tree without the tissues that are not there, and the mean share of what is left. A Dirichlet without some of its members is
 * a Dirichlet with the rest of its concentration. Returns null where nothing is left.
 */
export function pruneShareTree(
  node: ShareNode,
  isPresent: (key: TissueKey) => boolean,
): { readonly node: ShareNode; readonly kept: number } | null {
  if ('leaf' in node) return isPresent(node.leaf) ? { node, kept: 1 } : null;
  if ('sound' in node) {
    const below = pruneShareTree(node.node, isPresent);
    return below && { kept: below.kept, node: { sound: node.sound, node: below.node } };
  }
  if ('weighed' in node) throw new Error('A carcass told from its meat is not pruned');
  const left = node.children.flatMap((child) => {
    const pruned = pruneShareTree(child.node, isPresent);
    return pruned ? [{ mean: child.mean * pruned.kept, node: pruned.node }] : [];
  });
  const kept = left.reduce((sum, child) => sum + child.mean, 0);
  if (kept <= 0) return null;
  return {
    kept,
    node: {
      concentration: node.concentration * kept,
      children: left.map((child) => ({ mean: child.mean / kept, node: child.node })),
    },
  };
}

/** Mean share of the whole for each leaf, in tree order. They sum to one. */
export function meanShares(node: ShareNode): readonly { readonly key: TissueKey; readonly share: number }[] {
  const leaves: { key: TissueKey; share: number }[] = [];
  const walk = (at: ShareNode, share: number): void => {
    if ('leaf' in at) leaves.push({ key: at.leaf, share });
    else if ('sound' in at) walk(at.node, share);
    else if ('weighed' in at) {
      const all = 1 + at.ratio.mean;
      walk(at.weighed, share / all);
      walk(at.other, (share * at.ratio.mean) / all);
    } else for (const child of at.children) walk(child.node, share * child.mean);
  };
  walk(node, 1);
  return leaves;
}

/**
 * Exact first three moments of sum(weight x share) over the leaves, per gram of what was weighed.
 *
 * At a split with shares d ~ Dirichlet(a), a = c m, independent of what hangs below, and X the quantities below:
 * E[d_i d_j d_k] is the product of rising factorials of a over that of c, so each moment is made of power sums.
 */
export function shareMoments(node: ShareNode, weightOf: Weighing): Moments {
  if ('leaf' in node) return powersOf(weightOf(node.leaf, false));
  if ('sound' in node) return woundedMoments(node.sound, node.node, weightOf);
  if ('weighed' in node) {
    return sumOfIndependent(shareMoments(node.weighed, weightOf), productOf(node.ratio, shareMoments(node.other, weightOf)));
  }
  const c = node.concentration;
  let first = 0;
  let squares = 0;
  let cubes = 0;
  let second = 0;
  let secondOwn = 0;
  let third = 0;
  for (const child of node.children) {
    const a = c * child.mean;
    const x = shareMoments(child.node, weightOf);
    const p = a * x.mean;
    const q = a * (a + 1) * x.square;
    first += p;
    squares += p * p;
    cubes += p * p * p;
    second += q;
    secondOwn += q * p;
    third += a * (a + 1) * (a + 2) * x.cube;
  }
  return {
    mean: first / c,
    square: (second + first * first - squares) / (c * (c + 1)),
    cube:
      (third + 3 * (second * first - secondOwn) + first ** 3 - 3 * first * squares + 2 * cubes) / (c * (c + 1) * (c + 2)),
  };
}

function powersOf(weight: number): Moments {
  return weight === 0 ? NOTHING : { mean: weight, square: weight * weight, cube: weight * weight * weight };
}

/** Moments of a sum of two independent quantities. */
function sumOfIndependent(a: Moments, b: Moments): Moments {
  return {
    mean: a.mean + b.mean,
    square: a.square + 2 * a.mean * b.mean + b.square,
    cube: a.cube + 3 * a.square * b.mean + 3 * a.mean * b.square + b.cube,
  };
}

/** Moments of a product of two independent quantities. */
export function productOf(a: Moments, b: Moments): Moments {
  return { mean: a.mean * b.mean, square: a.square * b.square, cube: a.cube * b.cube };
}

/**
 * s A + (1 - s) B, where A counts the sound and B the lost meat of the same muscles: A and B depend on each other, so their mixed
 * moments come from those of A + B and A - B.
 */
function woundedMoments(sound: Moments, node: ShareNode, weightOf: Weighing): Moments {
  const asSound = (key: TissueKey): number => weightOf(key, false);
  const asLost = (key: TissueKey): number => weightOf(key, true);
  const a = shareMoments(node, asSound);
  const b = shareMoments(node, asLost);
  const plus = shareMoments(node, (key) => asSound(key) + asLost(key));
  const minus = shareMoments(node, (key) => asSound(key) - asLost(key));
  const ab = (plus.square - minus.square) / 4;
  const aab = (plus.cube - minus.cube - 2 * b.cube) / 6;
  const abb = (plus.cube + minus.cube - 2 * a.cube) / 6;
  const { mean: s, square: ss, cube: sss } = sound;
  return {
    mean: s * a.mean + (1 - s) * b.mean,
    square: ss * a.square + 2 * (s - ss) * ab + (1 - 2 * s + ss) * b.square,
    cube: sss * a.cube + 3 * (ss - sss) * aab + 3 * (s - 2 * ss + sss) * abb + (1 - 3 * s + 3 * ss - sss) * b.cube,
  };
}
