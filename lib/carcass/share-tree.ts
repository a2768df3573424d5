import { ANATOMY, type PartId, type TissueId, type TissueKey, tissueKey } from './anatomy';
import type { Composition, Shares } from './species';

/**
 * How a carcass divides, as a tree of Dirichlet splits: the shares below one node sum to one, and nodes are
 * independent of each other. A leaf is a tissue.
 */
export type ShareNode =
  | { readonly leaf: TissueKey }
  | { readonly concentration: number; readonly children: readonly { readonly mean: number; readonly node: ShareNode }[] };

/** First and second moment of a weighted sum of shares. */
export type Moments = { readonly mean: number; readonly meanSquare: number };

function split<Name extends string>(shares: Shares<Name>, nodeOf: (name: Name) => ShareNode): ShareNode {
  // Object.entries forgets the key type that Record guarantees.
  const entries = Object.entries(shares.per10k) as [Name, number][];
  return {
    concentration: shares.concentration,
    children: entries.map(([name, per10k]) => ({ mean: per10k / 10_000, node: nodeOf(name) })),
  };
}

/**
 * The tree of one species: carcass -> meat, bone, cover, drying -> parts -> left and right -> muscles.
 * Means at each node sum to one.
 */
export function buildShareTree(composition: Composition): ShareNode {
  const pair = (nodeAt: (side: 'left' | 'right') => ShareNode): ShareNode => ({
    concentration: composition.sideConcentration,
    children: [
      { mean: 0.5, node: nodeAt('left') },
      { mean: 0.5, node: nodeAt('right') },
    ],
  });
  const tissue = (id: Exclude<TissueId, 'drying'>): ShareNode =>
    ANATOMY[id].sided ? pair((side) => ({ leaf: tissueKey(side, id) })) : { leaf: tissueKey('middle', id) };
  const muscleSplits = {
    haunch: composition.haunch,
    shoulder: composition.shoulder,
    ribs: composition.ribs,
  } as const;
  const part = (id: PartId): ShareNode =>
    id === 'haunch' || id === 'shoulder' || id === 'ribs'
      ? pair((side) => split<TissueId>(muscleSplits[id] as Shares<TissueId>, (muscle) => ({ leaf: tissueKey(side, muscle) })))
      : tissue(id);
  return split(composition.carcass, (name) => {
    switch (name) {
      case 'meat':
        return split(composition.meat, part);
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
 * The tree without the tissues that are not there, and the mean share of what is left.
 * A Dirichlet without some of its members is a Dirichlet with the rest of its concentration.
 * Returns null where nothing is left.
 */
export function pruneShareTree(
  node: ShareNode,
  isPresent: (key: TissueKey) => boolean,
): { readonly node: ShareNode; readonly kept: number } | null {
  if ('leaf' in node) return isPresent(node.leaf) ? { node, kept: 1 } : null;
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
    else for (const child of at.children) walk(child.node, share * child.mean);
  };
  walk(node, 1);
  return leaves;
}

/**
 * Exact mean and mean square of sum(weight x share) over the leaves.
 * At a node with shares d ~ Dirichlet(c m), independent of what hangs below:
 * E[L] = sum m E, and E[L^2] = c/(c+1) ((sum m E)^2 - sum m^2 E^2) + sum m (c m + 1)/(c+1) E2.
 */
export function shareMoments(node: ShareNode, weightOf: (key: TissueKey) => number): Moments {
  if ('leaf' in node) {
    const weight = weightOf(node.leaf);
    return { mean: weight, meanSquare: weight * weight };
  }
  const c = node.concentration;
  let mean = 0;
  let squares = 0;
  let own = 0;
  for (const child of node.children) {
    const below = shareMoments(child.node, weightOf);
    const contribution = child.mean * below.mean;
    mean += contribution;
    squares += contribution * contribution;
    own += ((child.mean * (c * child.mean + 1)) / (c + 1)) * below.meanSquare;
  }
  return { mean, meanSquare: (c / (c + 1)) * (mean * mean - squares) + own };
}

