import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import {
  type Evidence,
  PUBLISHED_IDS,
  type Shares,
  type ShareNode,
  type TissueKey,
  buildShareTree,
  meanShares,
  pruneShareTree,
  readTissueKey,
  shareMoments,
  publishedSpecies,
} from '@/lib/carcass';
import { drawShare, uniforms } from './dirichlet-sampler';

type AnySplit = { readonly per10k: Readonly<Record<string, number>> } & Pick<Shares<string>, 'concentration'> & Evidence;

function splitsOf(speciesId: string): readonly AnySplit[] {
  const { fieldDressed, composition } = publishedSpecies(speciesId);
  const { sideConcentration, muscles, ...splits } = composition;
  expect(sideConcentration).toBeGreaterThan(0);
  return [fieldDressed, ...Object.values(splits), ...Object.values(muscles)];
}

function everyNode(node: ShareNode): readonly ShareNode[] {
  return 'children' in node ? [node, ...node.children.flatMap((child) => everyNode(child.node))] : [node];
}

describe.each(PUBLISHED_IDS)('the shares of a %s', (speciesId) => {
  it('sum to 10000 at each node, each with how firmly it is known and why', () => {
    for (const shares of splitsOf(speciesId)) {
      expect(Object.values(shares.per10k).reduce((sum, one) => sum + one, 0)).toBe(10_000);
      expect(shares.concentration).toBeGreaterThan(0);
      expect(shares.why).not.toBe('');
    }
  });

  it('make a tree whose means sum to one at each node and over the leaves', () => {
    const tree = buildShareTree(publishedSpecies(speciesId).composition);
    for (const node of everyNode(tree)) {
      if ('children' in node) expect(node.children.reduce((sum, child) => sum + child.mean, 0)).toBeCloseTo(1, 12);
    }
    const leaves = meanShares(tree);
    expect(leaves.reduce((sum, leaf) => sum + leaf.share, 0)).toBeCloseTo(1, 12);
    expect(new Set(leaves.map(({ key }) => key)).size).toBe(leaves.length);
  });
});

describe('a pruned tree', () => {
  const tree = buildShareTree(publishedSpecies('white-tailed-deer').composition);
  const keys = meanShares(tree).map(({ key }) => key);

  it('keeps exactly what is there, in the same proportions, and tells how much of the whole that is', () => {
    fc.assert(fc.property(fc.subarray(keys, { minLength: 1 }), (present) => {
      const pruned = pruneShareTree(tree, (key) => present.includes(key));
      if (!pruned) throw new Error('Something was there');
      const before = new Map(meanShares(tree).map(({ key, share }) => [key, share]));
      const after = meanShares(pruned.node);
      expect(after.map(({ key }) => key).sort()).toEqual(present.toSorted());
      expect(pruned.kept).toBeCloseTo(present.reduce((sum, key) => sum + (before.get(key) ?? 0), 0), 12);
      for (const { key, share } of after) expect(share * pruned.kept).toBeCloseTo(before.get(key) ?? 0, 12);
    }));
  });

  it('of nothing is null', () => {
    expect(pruneShareTree(tree, () => false)).toBeNull();
  });

  it('of everything is the tree itself', () => {
    expect(pruneShareTree(tree, () => true)?.kept).toBeCloseTo(1, 12);
  });
});

describe('moments of a weighted sum of shares', () => {
  const DRAWS = 20_000;
  const cases: readonly (readonly [string, (key: TissueKey) => number])[] = [
    ['one topside', (key) => (key === 'left:topside' ? 1 : 0)],
    ['all the meat', (key) => (readTissueKey(key).kind === 'muscle' ? 1 : 0)],
    ['both loins with most of their bone', (key) => (key.endsWith(':loin') ? 1 : key.endsWith(':spine') ? 0.7 : 0)],
    ['trim of a leg, a shoulder and the ribs', (key) => ({ haunch: 0.06, shoulder: 0.9, ribs: 1 } as Record<string, number>)[readTissueKey(key).part ?? ''] ?? 0],
  ];

  // Standard error of a mean of n draws is sd / sqrt(n), and of a variance about var * sqrt(2 / n): 1% here. The fixed seed is
  // allowed four of them.
  describe.each(['white-tailed-deer', 'roe-deer'] as const)('of a %s', (speciesId) => {
    test.each(cases)(`of %s agree with ${DRAWS} drawn carcasses within four standard errors`, (_, weightOf) => {
      const tree = buildShareTree(publishedSpecies(speciesId).composition);
      const next = uniforms(20_261_125);
      const drawn = Array.from({ length: DRAWS }, () => drawShare(tree, weightOf, next));
      const { mean, square } = shareMoments(tree, weightOf);
      const variance = square - mean * mean;
      const sampleMean = drawn.reduce((sum, one) => sum + one, 0) / DRAWS;
      const sampleVariance = drawn.reduce((sum, one) => sum + (one - sampleMean) ** 2, 0) / (DRAWS - 1);
      expect(Math.abs(sampleMean - mean)).toBeLessThan(4 * Math.sqrt(variance / DRAWS));
      expect(Math.abs(sampleVariance / variance - 1)).toBeLessThan(4 * Math.sqrt(2 / DRAWS));
    });
  });

  it('of the whole carcass have no spread: it is one', () => {
    for (const id of PUBLISHED_IDS) {
      const { mean, square } = shareMoments(buildShareTree(publishedSpecies(id).composition), () => 1);
      expect(mean).toBeCloseTo(1, 12);
      expect(square).toBeCloseTo(1, 12);
    }
  });

  it('are never those of a negative variance', () => {
    const tree = buildShareTree(publishedSpecies('elk').composition);
    const keys = meanShares(tree).map(({ key }) => key);
    fc.assert(fc.property(fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: keys.length, maxLength: keys.length }), (weights) => {
      const { mean, square } = shareMoments(tree, (key) => weights[keys.indexOf(key)] ?? 0);
      expect(square - mean * mean).toBeGreaterThan(-1e-12);
    }));
  });
});
