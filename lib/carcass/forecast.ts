import { type Range, allocateByLargestRemainder } from '@/lib/units';
import { type PartPlace, type AnimalFacts, WOUND_LOSS_PER_10K } from './animal-facts';
import { readTissueKey, type TissueKey } from './anatomy';
import { WEIGHED_CV, wholeHanging } from './hanging-weight';
import { type ShareNode, buildShareTree, meanShares, pruneShareTree, shareMoments } from './share-tree';
import type { Species } from './species';
import { SPECIES } from './species/registry';

/** Shares are handed to the whole-number allocation in parts per thousand million. */
const SHARE_SCALE = 1_000_000_000;

/** 90th percentile of the standard normal distribution. */
const Z90 = 1.2815515655446004;

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
  /** Weight of what was delivered, skinned: low, likely, high. */
  readonly hanging: Range;
  readonly hangingCv: number;
  readonly tissues: readonly ForecastTissue[];
  readonly tree: ShareNode;
};

/** Whether a tissue came through the door, given the form brought in and the parts that did not come. */
export function isDelivered(facts: Pick<AnimalFacts, 'form' | 'missing'>, key: TissueKey): boolean {
  const { place, part, kind } = readTissueKey(key);
  if (facts.form === 'boned-out' && kind !== 'muscle') return false;
  if (facts.form === 'quartered') {
    if (part === 'neck' || part === 'ribs' || part === 'fillet') return false;
    if (part === 'loin' && kind === 'bone') return false;
  }
  // A loin or fillet taken out in the field leaves its bone behind.
  const staysBehind = kind === 'bone' && (part === 'loin' || part === 'fillet');
  return staysBehind || !facts.missing.some((gone: PartPlace) => gone.part === part && gone.place === place);
}

/**
 * Forecasts the carcass of one animal: hanging weight and every tissue in it. Deterministic.
 *
 * Likely grams are the mean shares of the likely weight, divided by largest remainder so that they sum to it
 * exactly. A hanging weight, and the boneless weight of an animal that came boned out, are of what was delivered; every
 * other weight is of the whole animal, so what did not come is taken off.
 *
 * Throws when nothing at all was delivered.
 *
 * @example roe deer, field-dressed 16 000 g -> hanging.likely 12 810
 */
export function forecastCarcass(facts: AnimalFacts): CarcassForecast {
  const species = SPECIES[facts.speciesId];
  const pruned = pruneShareTree(shareTreeOf(species), (key) => isDelivered(facts, key));
  if (!pruned) throw new Error('Nothing was delivered');
  const whole = wholeHanging(species, facts);
  const bonelessAsDelivered = facts.form === 'boned-out' && facts.weight?.basis === 'boneless';
  const asDelivered = bonelessAsDelivered || facts.weight?.basis === 'hanging';
  const grams = bonelessAsDelivered && facts.weight ? facts.weight.grams : asDelivered ? whole.grams : whole.grams * pruned.kept;
  const hangingCv = bonelessAsDelivered ? WEIGHED_CV : asDelivered ? whole.cv : cvOfDelivered(whole.cv, shareTreeOf(species), facts);
  const likely = Math.round(grams);
  const shares = meanShares(pruned.node);
  const allocated = allocateByLargestRemainder(
    likely,
    shares.map(({ share }) => Math.round(share * SHARE_SCALE)),
  );
  const tissues = shares.map(({ key }, index): ForecastTissue => {
    const grams = allocated[index] ?? 0;
    const woundLossPer10k = woundLoss(facts, key);
    return { key, grams, woundLossPer10k, woundGrams: Math.round((grams * woundLossPer10k) / 10_000) };
  });
  return { facts, hanging: spread(likely, hangingCv), hangingCv, tissues, tree: pruned.node };
}

const TREES = new Map<Species, ShareNode>();

/** The tree of a species, built at its first use: it never changes. */
function shareTreeOf(species: Species): ShareNode {
  const known = TREES.get(species);
  if (known) return known;
  const tree = buildShareTree(species.composition);
  TREES.set(species, tree);
  return tree;
}

/** Relative spread of what was delivered of a whole animal: of its weight, and of the share of it that came. */
function cvOfDelivered(wholeCv: number, tree: ShareNode, facts: AnimalFacts): number {
  const { mean, meanSquare } = shareMoments(tree, (key) => (isDelivered(facts, key) ? 1 : 0));
  const cameCvSquare = Math.max(0, meanSquare / (mean * mean) - 1);
  return Math.sqrt((1 + wholeCv ** 2) * (1 + cameCvSquare) - 1);
}

function woundLoss(facts: AnimalFacts, key: TissueKey): number {
  const { place, part, kind } = readTissueKey(key);
  if (kind !== 'muscle') return 0;
  return Math.max(
    0,
    ...facts.wounds
      .filter((wound) => wound.part === part && wound.place === place)
      .map((wound) => WOUND_LOSS_PER_10K[wound.severity]),
  );
}

/** Low and high of a log-normal quantity with this median and relative spread. Whole grams. */
function spread(likely: number, cv: number): Range {
  const sigma = Math.sqrt(Math.log1p(cv * cv));
  return {
    low: Math.round(likely * Math.exp(-Z90 * sigma)),
    likely,
    high: Math.round(likely * Math.exp(Z90 * sigma)),
  };
}

/**
 * Range of a quantity made of tissues: sum over tissues of weight x grams, such as what one joint packs.
 * `likely` is the exact figure of the ledger; the spread around it comes from the moments of the share tree
 * and of the hanging weight, matched by a log-normal.
 */
export function rangeOf(forecast: CarcassForecast, weightOf: (key: TissueKey) => number, likely: number): Range {
  const { mean, meanSquare } = shareMoments(forecast.tree, weightOf);
  if (mean <= 0 || likely <= 0) return { low: 0, likely, high: likely };
  const shareCvSquare = Math.max(0, meanSquare / (mean * mean) - 1);
  const cvSquare = (1 + forecast.hangingCv ** 2) * (1 + shareCvSquare) - 1;
  return spread(likely, Math.sqrt(cvSquare));
}
