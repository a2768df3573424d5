import { type Range, allocateByLargestRemainder } from '@/lib/units';
import type { AnimalFacts } from './animal-facts';
import { readTissueKey, type TissueKey } from './anatomy';
import { conditionedComposition, lossAt } from './conditions';
import { isDelivered } from './delivery';
import { type Distribution, chanceOfAtLeast, distributionOf, logNormalMoments, tenthAndNinetieth } from './distribution';
import {
  type ShareNode,
  type Weighing,
  buildShareTree,
  meanShares,
  productOf,
  pruneShareTree,
  seenFromMeat,
  shareMoments,
} from './share-tree';
import { type SpeciesBook, type SpeciesFigures, speciesOf } from './species';
import { type UncertainWeight, WEIGHED_CV, wholeHanging } from './weights';

/** Shares are handed to the whole-number allocation in parts per thousand million. */
const SHARE_SCALE = 1_000_000_000;

export type ForecastTissue = {
  readonly key: TissueKey;
  /** Grams at the likely composition; all tissues sum to `hanging.likely`. */
  readonly grams: number;
  /** Of those, what a wound costs. */
  readonly woundGrams: number;
  readonly woundLossPer10k: number;
};

/** What hangs on the rail and how it divides. All weights in grams. */
export type CarcassForecast = {
  readonly facts: AnimalFacts;
  readonly species: SpeciesFigures;
  /** Weight of what was delivered, skinned: low, likely, high. */
  readonly hanging: Range;
  readonly tissues: readonly ForecastTissue[];
  /** What the shares of the tree are taken of. */
  readonly base: UncertainWeight;
  readonly tree: ShareNode;
  /** Tissues of the tree that did not come. */
  readonly absent: ReadonlySet<TissueKey>;
};

/**
 * Forecasts the carcass of one animal: hanging weight and every tissue in it. Deterministic.
 *
 * Likely grams are the mean shares of the likely weight, divided by largest remainder so that they sum to it
 * exactly. A hanging weight, a weight of the quarters, and the boneless weight of an animal that came boned out, are of what was
 * delivered; every other weight is of the whole animal, so what did not come is taken off.
 *
 * Throws when nothing at all was delivered, or on a species the book does not have.
 *
 * @example roe deer, field-dressed 16 000 g -> hanging.likely 12 810
 */
export function forecastCarcass(facts: AnimalFacts, book: SpeciesBook): CarcassForecast {
  const species = speciesOf(book, facts.speciesId);
  const known = whatIsKnown(species, facts);
  const whole = meanShares(known.tree);
  const here = whole.filter(({ key }) => isDelivered(facts, key));
  const kept = here.reduce((sum, { share }) => sum + share, 0);
  if (kept <= 0) throw new Error('Nothing was delivered');
  const absent = new Set(whole.filter(({ key }) => !isDelivered(facts, key)).map(({ key }) => key));
  const likely = Math.round(known.base.grams * shareMoments(known.tree, () => 1).mean * kept);
  const allocated = allocateByLargestRemainder(
    likely,
    here.map(({ share }) => Math.round((share / kept) * SHARE_SCALE)),
  );
  const tissues = here.map(({ key }, index): ForecastTissue => {
    const grams = allocated[index] ?? 0;
    const { part, place, kind } = readTissueKey(key);
    const woundLossPer10k = kind === 'muscle' && part ? (lossAt(facts, part, place)?.per10k ?? 0) : 0;
    return { key, grams, woundLossPer10k, woundGrams: Math.round((grams * woundLossPer10k) / 10_000) };
  });
  const weighed = { ...known, absent };
  return { facts, species, hanging: rangeOf(weighed, () => 1, likely), tissues, ...weighed };
}

const USUAL_TREES = new WeakMap<SpeciesFigures, ShareNode>();

/** The tree of an animal; that of a species with nothing out of the usual is built once. */
function treeOf(species: SpeciesFigures, facts: AnimalFacts): ShareNode {
  const composition = conditionedComposition(species.composition, facts);
  if (composition !== species.composition || facts.wounds.length > 0 || facts.gutShot) {
    return buildShareTree(composition, (part, place) => lossAt(facts, part, place)?.sound ?? null);
  }
  const known = USUAL_TREES.get(species);
  if (known) return known;
  const tree = buildShareTree(composition);
  USUAL_TREES.set(species, tree);
  return tree;
}

/**
 * The weight that is known and the tree it divides by: a weight of what was delivered divides what came; a boneless weight tells
 * of the bones; any other is of the whole animal.
 */
function whatIsKnown(species: SpeciesFigures, facts: AnimalFacts): { readonly base: UncertainWeight; readonly tree: ShareNode } {
  const { weight, form } = facts;
  const tree = treeOf(species, facts);
  if (!weight) return { base: wholeHanging(species, facts), tree };
  const scale = { grams: weight.grams, cv: WEIGHED_CV };
  if (weight.basis === 'boneless' && form !== 'boned-out') return { base: scale, tree: seenFromMeat(tree) };
  const isOfWhatCame = weight.basis === 'hanging' || weight.basis === 'boneless' || (weight.basis === 'quarters' && form === 'quartered');
  if (!isOfWhatCame) return { base: wholeHanging(species, facts), tree };
  const came = pruneShareTree(tree, (key) => isDelivered(facts, key));
  if (!came) throw new Error('Nothing was delivered');
  return { base: scale, tree: came.node };
}

/** What a quantity made of tissues needs to be told how likely it is. */
type Weighed = Pick<CarcassForecast, 'base' | 'tree' | 'absent'>;

/** How likely each amount of a quantity made of tissues is: sum over tissues of weight x grams, such as what one joint packs. */
export function distributionIn({ base, tree, absent }: Weighed, weightOf: Weighing): Distribution {
  const here: Weighing = absent.size === 0 ? weightOf : (key, isLost) => (absent.has(key) ? 0 : weightOf(key, isLost));
  return distributionOf(productOf(logNormalMoments(base.grams, base.cv), shareMoments(tree, here)));
}

/**
 * Range of a quantity made of tissues. `likely` is the exact figure of the ledger; low and high are the 10th and 90th percentile
 * of the distribution with the exact mean, spread and skewness of the share tree times the weight.
 */
export function rangeOf(forecast: Weighed, weightOf: Weighing, likely: number): Range {
  const { low, high } = tenthAndNinetieth(distributionIn(forecast, weightOf));
  return { low: Math.min(likely, Math.round(low)), likely, high: Math.max(likely, Math.round(high)) };
}

/** Probability, 0 to 1, that a quantity made of tissues is at least so many grams. */
export function chanceIn(forecast: Weighed, weightOf: Weighing, grams: number): number {
  return chanceOfAtLeast(distributionIn(forecast, weightOf), grams);
}
