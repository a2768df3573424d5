import type { AnimalFacts, WoundSeverity } from './animal-facts';
import type { PartId, Place } from './anatomy';
import { type Moments, betaMoments } from './share-tree';
import type { CompositionWith } from './species';

/**
 * Muscle of a part that a wound costs, in ten-thousandths, and how firmly that is known (Beta concentration). Judgement: no
 * source splits losses by severity; CHEV1971 gives 13.9% of the carcass on shot antelope as a whole.
 */
export const WOUND_LOSS: Readonly<Record<WoundSeverity, { readonly per10k: number; readonly concentration: number }>> = {
  light: { per10k: 1_500, concentration: 40 },
  heavy: { per10k: 5_000, concentration: 20 },
  lost: { per10k: 10_000, concentration: Infinity },
};

/**
 * What a shot through the guts costs besides: fillets and belly lie in it, the inside of the haunch is touched. Judgement, set so
 * that boneless falls by the 5 to 10 points of hanging that TEDBAKER gives for dirty or hit animals.
 */
const GUT_SHOT_LOSS: Readonly<Partial<Record<PartId, { readonly per10k: number; readonly concentration: number }>>> = {
  fillet: { per10k: 6_000, concentration: 20 },
  ribs: { per10k: 5_000, concentration: 20 },
  haunch: { per10k: 800, concentration: 40 },
};

/** The worst of what a wound or a gut shot costs a part at a place; null where it is whole. */
export function lossAt(
  facts: Pick<AnimalFacts, 'wounds' | 'gutShot'>,
  part: PartId,
  place: Place,
): { readonly per10k: number; readonly sound: Moments } | null {
  const losses = facts.wounds
    .filter((wound) => wound.part === part && wound.place === place)
    .map((wound) => WOUND_LOSS[wound.severity]);
  const gut = facts.gutShot ? GUT_SHOT_LOSS[part] : undefined;
  const worst = [...losses, ...(gut ? [gut] : [])].toSorted((a, b) => b.per10k - a.per10k)[0];
  if (!worst) return null;
  const sound = 1 - worst.per10k / 10_000;
  return {
    per10k: worst.per10k,
    sound: sound === 0 ? { mean: 0, square: 0, cube: 0 } : betaMoments(worst.concentration * sound, worst.concentration * (1 - sound)),
  };
}

/** Weight lost warm to cold in the chill (FITZ2019), in ten-thousandths of the carcass. */
const CHILL_PER_10K = 135;
/** Drying a day on the rail in ten-thousandths. Judgement; with the hide on it is near the 2.45% of WEIDBOAR2 in a week. */
const DRYING_A_DAY_PER_10K = { off: 30, on: 16 } as const;
/** Dried rind trimmed for each day without the hide after the third, and the most of it. Judgement. */
const RIND_A_DAY_PER_10K = 25;
const RIND_FROM_DAY = 3;
const MOST_RIND_PER_10K = 400;
const MOST_DRYING_PER_10K = 1_000;

/** Fat, membrane and rind against the usual. Judgement; fallow fat of 3.8 to 6.6% from summer to winter (STAN2023) is as wide. */
const COVER_BY_FLESH = { lean: 0.65, usual: 1, fat: 1.45 } as const;
/** Muscle that a shop trimming to clean meat takes off with the cover, of the muscle. Judgement. */
const CLOSE_TRIM_SHARE = 0.04;

type CarcassShares = Readonly<Record<'meat' | 'bone' | 'cover' | 'drying', number>>;

/** A composition as fat, hanging and the shop's trim change it. The same object where nothing is out of the usual. */
export function conditionedComposition(
  composition: CompositionWith<unknown>,
  facts: Pick<AnimalFacts, 'flesh' | 'hung' | 'closeTrim'>,
): CompositionWith<unknown> {
  const { flesh = 'usual', hung = null, closeTrim = false } = facts;
  if (flesh === 'usual' && hung === null && !closeTrim) return composition;
  let shares: CarcassShares = composition.carcass.per10k;
  shares = withShare(shares, 'cover', shares.cover * COVER_BY_FLESH[flesh]);
  if (closeTrim) shares = moved(shares, shares.meat * CLOSE_TRIM_SHARE);
  if (hung) {
    const drying = Math.min(MOST_DRYING_PER_10K, CHILL_PER_10K + DRYING_A_DAY_PER_10K[hung.hide] * hung.days);
    shares = withShare(shares, 'drying', drying);
    const rindDays = hung.hide === 'off' ? Math.max(0, hung.days - RIND_FROM_DAY) : 0;
    shares = moved(shares, Math.min(MOST_RIND_PER_10K, RIND_A_DAY_PER_10K * rindDays));
  }
  return { ...composition, carcass: { ...composition.carcass, per10k: shares } };
}

/** One share set, and the others scaled so that all sum to 10000 again. */
function withShare(shares: CarcassShares, name: keyof CarcassShares, share: number): CarcassShares {
  const others = (10_000 - share) / (10_000 - shares[name]);
  const scaled = { meat: shares.meat * others, bone: shares.bone * others, cover: shares.cover * others, drying: shares.drying * others };
  return { ...scaled, [name]: share };
}

/** Muscle that is trimmed away with the cover. */
function moved(shares: CarcassShares, share: number): CarcassShares {
  return { ...shares, meat: shares.meat - share, cover: shares.cover + share };
}
