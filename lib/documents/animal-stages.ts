import { type SpeciesFigures, type WeightBasis, convertWeight, distributionOf, logNormalMoments, tenthAndNinetieth } from '@/lib/carcass';
import type { Plan } from '@/lib/plan';
import type { Range } from '@/lib/units';

/** Weights of the whole animal on its way to the rail, from the heaviest down. */
export const STAGE_BASES = ['live', 'field-dressed', 'legs-off', 'hide-on', 'hanging'] as const;
export type StageBasis = (typeof STAGE_BASES)[number];

/** Grams of one stage. Measured where a scale said so; then low, likely and high are the same. */
export type StageWeight = { readonly basis: StageBasis; readonly range: Range; readonly isMeasured: boolean };

/** What comes off between a stage and the next. Grams; likely is the difference to the gram. */
export type StageLoss = { readonly range: Range; readonly isMeasured: boolean };

export type AnimalStages = { readonly stages: readonly StageWeight[]; readonly losses: readonly StageLoss[] };

export type GivenWeight = { readonly grams: number; readonly basis: WeightBasis };

/** A weight told that lies further than this from what the other weights make of it is a guess or a slip. Judgement. */
const FURTHEST = 0.15;
/** Width from the 10th to the 90th percentile in standard deviations. */
const TEN_TO_NINETY = 2 * 1.2815515655446004;

type Anchor = { readonly grams: number; readonly isMeasured: boolean };
type Anchors = ReadonlyMap<StageBasis, Anchor>;
type Near = Anchor & { readonly basis: StageBasis };

/**
 * An animal that came whole, from alive down to the rail: the weights that were measured, and between and above them what its
 * species makes of them. Every stage is lighter than the one before; the last is the plan's own hanging weight. `told` are further
 * weights, the most trusted first; one that does not fit is passed over.
 */
export function animalStages(plan: Plan, told: readonly GivenWeight[]): AnimalStages {
  const { species, facts, hanging } = plan.forecast;
  const railCv = facts.weight?.basis === 'hanging' ? 0 : Math.log(hanging.high / Math.max(1, hanging.low)) / TEN_TO_NINETY;
  const anchors = new Map<StageBasis, Anchor>([['hanging', { grams: hanging.likely, isMeasured: facts.weight?.basis === 'hanging' }]]);
  for (const { grams, basis } of [...(facts.weight ? [facts.weight] : []), ...told]) {
    if (isStageBasis(basis) && !anchors.has(basis) && fits(species, anchors, grams, basis)) anchors.set(basis, { grams, isMeasured: true });
  }
  const bases = STAGE_BASES.filter((basis) => anchors.has(basis) || basis === 'live' || basis === 'field-dressed');
  const stages = bases.map((basis): StageWeight & { readonly cv: number } => {
    const known = anchors.get(basis);
    if (known?.isMeasured) return { basis, range: { low: known.grams, likely: known.grams, high: known.grams }, isMeasured: true, cv: 0 };
    const cv = spreadOf(species, anchors, basis, railCv);
    const likely = known?.grams ?? Math.round(likelyOf(species, anchors, basis));
    return { basis, range: basis === 'hanging' ? hanging : around(likely, cv), isMeasured: false, cv };
  });
  const losses = stages.slice(0, -1).map((from, at): StageLoss => {
    const to = stages[at + 1] ?? from;
    const grams = from.range.likely - to.range.likely;
    if (from.isMeasured && to.isMeasured) return { range: { low: grams, likely: grams, high: grams }, isMeasured: true };
    const step = convertWeight(species, { grams: 1, cv: 0 }, from.basis, to.basis);
    const isFromAbove = stages.slice(0, at + 1).some((one) => one.isMeasured) && !stages.slice(at + 1).some((one) => one.isMeasured);
    const own = (step.cv * (isFromAbove ? step.grams : 1)) / (1 - step.grams);
    return { range: around(grams, Math.hypot(own, isFromAbove ? from.cv : to.cv)), isMeasured: false };
  });
  return { stages: stages.map(({ basis, range, isMeasured }) => ({ basis, range, isMeasured })), losses };
}

function isStageBasis(basis: WeightBasis): basis is StageBasis {
  return (STAGE_BASES as readonly string[]).includes(basis);
}

/** Whether a weight lies between its neighbours, and near what the nearest of them makes of it. */
function fits(species: SpeciesFigures, anchors: Anchors, grams: number, basis: StageBasis): boolean {
  const { above, below } = neighbours(anchors, basis);
  return [above, below].every((near) => {
    if (!near) return true;
    const isInOrder = near === above ? grams < near.grams : grams > near.grams;
    return isInOrder && Math.abs(Math.log(grams / convertWeight(species, { grams: near.grams, cv: 0 }, near.basis, basis).grams)) < FURTHEST;
  });
}

/** Between two anchors on the way that the species' own shares divide it, else carried from the nearest. */
function likelyOf(species: SpeciesFigures, anchors: Anchors, basis: StageBasis): number {
  const { above, below } = neighbours(anchors, basis);
  const carried = (near: Near): number => convertWeight(species, { grams: near.grams, cv: 0 }, near.basis, basis).grams;
  if (!above || !below) return carried(above ?? below ?? absurd(basis));
  const down = Math.log(above.grams / carried(above));
  const up = Math.log(carried(below) / below.grams);
  return below.grams * (above.grams / below.grams) ** (up / (down + up));
}

/** Relative spread of a stage nobody weighed, from the nearest weights that were. */
function spreadOf(species: SpeciesFigures, anchors: Anchors, basis: StageBasis, railCv: number): number {
  const measured = new Map([...anchors].filter(([, { isMeasured }]) => isMeasured));
  const { above, below } = neighbours(measured, basis);
  const cvs = [above, below].flatMap((near) => (near ? [convertWeight(species, { grams: 1, cv: 0 }, near.basis, basis).cv] : []));
  const [one, other] = cvs;
  if (one === undefined) return convertWeight(species, { grams: 1, cv: railCv }, 'hanging', basis).cv;
  return other === undefined ? one : (one * other) / Math.hypot(one, other);
}

function neighbours(anchors: Anchors, basis: StageBasis): { readonly above: Near | null; readonly below: Near | null } {
  const at = STAGE_BASES.indexOf(basis);
  const near = (bases: readonly StageBasis[]): Near | null => {
    const found = bases.find((one) => anchors.has(one));
    const anchor = found && anchors.get(found);
    return found && anchor ? { basis: found, ...anchor } : null;
  };
  return { above: near(STAGE_BASES.slice(0, at).toReversed()), below: near(STAGE_BASES.slice(at + 1)) };
}

function around(likely: number, cv: number): Range {
  const { low, high } = tenthAndNinetieth(distributionOf(logNormalMoments(likely, cv)));
  return { low: Math.min(likely, Math.round(low)), likely, high: Math.max(likely, Math.round(high)) };
}

function absurd(basis: StageBasis): never {
  throw new Error(`No weight to carry to ${basis}`);
}
