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
 * - came: of everything below, only what is `present` was weighed, and shares are of that; it is `kept` of the whole on average.
 */
export type ShareNode =
  | { readonly leaf: TissueKey }
  | { readonly concentration: number; readonly children: readonly { readonly mean: number; readonly node: ShareNode }[] }
  | { readonly sound: Moments; readonly node: ShareNode }
  | { readonly weighed: ShareNode; readonly ratio: Moments; readonly other: ShareNode }
  | { readonly came: ShareNode; readonly present: ReadonlySet<TissueKey>; readonly kept: number };

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
 * The tree of what is there, whose shares are of that, and its mean share of the whole. Returns null where nothing is left. A
 * Dirichlet without some of its members is a Dirichlet with the rest of its concentration; a member of which only a part is there
 * still varies as the whole member does, so such a tree keeps its members and is seen as what came of it.
 */
export function pruneShareTree(
  tree: ShareNode,
  isPresent: (key: TissueKey) => boolean,
): { readonly node: ShareNode; readonly kept: number } | null {
  const here = meanShares(tree).filter(({ key }) => isPresent(key));
  const kept = here.reduce((sum, { share }) => sum + share, 0);
  return kept > 0 ? { node: whatCame(tree, new Set(here.map(({ key }) => key))), kept } : null;
}

function whatCame(tree: ShareNode, present: ReadonlySet<TissueKey>): ShareNode {
  if ('weighed' in tree) throw new Error('A carcass told from its meat is not pruned');
  const membersThere = 'children' in tree ? tree.children.filter(({ node }) => meanShares(node).some(({ key }) => present.has(key))) : [];
  const [only, second] = membersThere;
  if (only && !second) return whatCame(only.node, present);
  const node = 'children' in tree ? withMembers(tree.concentration, membersThere) : tree;
  const leaves = meanShares(node);
  if (leaves.every(({ key }) => present.has(key))) return node;
  return { came: node, present, kept: leaves.reduce((sum, { key, share }) => (present.has(key) ? sum + share : sum), 0) };
}

function withMembers(concentration: number, members: readonly { readonly mean: number; readonly node: ShareNode }[]): ShareNode {
  const mean = members.reduce((sum, member) => sum + member.mean, 0);
  return { concentration: concentration * mean, children: members.map((member) => ({ mean: member.mean / mean, node: member.node })) };
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
    } else if ('came' in at) {
      leaves.push(...meanShares(at.came).filter(({ key }) => at.present.has(key)).map((leaf) => ({ key: leaf.key, share: (share * leaf.share) / at.kept })));
    } else for (const child of at.children) walk(child.node, share * child.mean);
  };
  walk(node, 1);
  return leaves;
}

/**
 * First three moments of sum(weight x share) over the leaves, per gram of what was weighed. Exact, but for a carcass of which some
 * parts came and were weighed.
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
  if ('came' in node) return momentsPerCame(node, weightOf);
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
  const asLost = (key: TissueKey): number => weightOf(key, true);
  const a = shareMoments(node, weightOf);
  const b = shareMoments(node, asLost);
  const plus = shareMoments(node, (key, isLost) => weightOf(key, isLost) + asLost(key));
  const minus = shareMoments(node, (key, isLost) => weightOf(key, isLost) - asLost(key));
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

/**
 * N / D, where N is the quantity and D all that came. With r = E N / E D, e = (N - r D) / E D and d = D / E D - 1, it is
 * r + e (1 - d + d^2 - ...); the moments are taken to the second order, fourth ones as those of normal quantities. e and d are
 * weighted sums of shares themselves, so all that is needed is exact.
 */
function momentsPerCame({ came, present, kept }: Extract<ShareNode, { readonly came: ShareNode }>, weightOf: Weighing): Moments {
  const counted: Weighing = (key, isLost) => (present.has(key) ? weightOf(key, isLost) : 0);
  const r = shareMoments(came, counted).mean / kept;
  const asE: Weighing = (key, isLost) => (present.has(key) ? (weightOf(key, isLost) - r) / kept : 0);
  // All shares sum to one, so that the one taken off is a weight of one off each.
  const asD = (key: TissueKey): number => (present.has(key) ? 1 / kept - 1 : -1);
  const e = shareMoments(came, asE);
  const d = shareMoments(came, asD);
  const plus = shareMoments(came, (key, isLost) => asE(key, isLost) + asD(key));
  const minus = shareMoments(came, (key, isLost) => asE(key, isLost) - asD(key));
  const ed = (plus.square - minus.square) / 4;
  const eed = (plus.cube - minus.cube - 2 * d.cube) / 6;
  const edd = (plus.cube + minus.cube - 2 * e.cube) / 6;
  const mean = r - ed + edd;
  const variance = Math.max(0, e.square - 2 * eed + 3 * e.square * d.square + 5 * ed * ed);
  const third = e.cube - 6 * e.square * ed;
  return { mean, square: variance + mean * mean, cube: third + 3 * mean * variance + mean ** 3 };
}
