import { type PartId, type SpeciesFigures, type WeightBasis, partsOf, readTissueKey } from '@/lib/carcass';
import type { Instructions, ProductId } from '@/lib/instructions';
import { PRODUCTS, type Plan } from '@/lib/plan';

/** Bases above the rail: only a weight on one of these tells what comes off. */
export const ARRIVAL_BASES = ['live', 'field-dressed', 'legs-off', 'hide-on'] as const satisfies readonly WeightBasis[];
export type ArrivalBasis = (typeof ARRIVAL_BASES)[number];

/** What one animal told of its kind: shares, each where the scales tell it. */
export type Observation = {
  /** What hung, of what came in, and what that had still on; null where it was not weighed both times, or did not come whole. */
  readonly hanging: { readonly basis: ArrivalBasis; readonly share: number } | null;
  /** Clean meat, of what hung. */
  readonly meatOfHanging: number | null;
  /** A part, of the clean meat: only parts whose cuts were packed by themselves, whole and unhurt. */
  readonly partOfMeat: Readonly<Partial<Record<PartId, number>>>;
};

/** What was weighed of one animal. Grams; own meat is raw and without anything added. */
export type Weighed = {
  /** As it came in, and with what still on; null where it was not weighed. */
  readonly arrived: { readonly grams: number; readonly basis: WeightBasis } | null;
  /** On the rail; null where it was not weighed there. */
  readonly railGrams: number | null;
  /** Packed, by instruction line. */
  readonly lines: ReadonlyMap<string, number>;
  /** Packed stewing meat and mince, without added fat, and own raw meat in products; null where none was weighed. */
  readonly pooledGrams: number | null;
};

/** Below this share of a part's muscle in packed cuts the part is not told by them. */
const LEAST_PART_TOLD = 0.6;
/** Fewer grams are scale noise. */
const LEAST_TOLD_GRAMS = 150;

/**
 * Reads what an animal tells from what was planned and what was weighed. Every share is the plan's own share times how much more
 * or less was weighed than expected, so that wounds, missing parts and the trim of each cut are allowed for already.
 *
 * The meat is told only where pools and lines were both weighed, so that nothing of it is missing.
 */
export function observe(plan: Plan, weighed: Weighed): Observation {
  const { species, facts } = plan.forecast;
  const isWhole = facts.missing.length === 0 && facts.form !== 'quartered' && facts.form !== 'boned-out';
  const { arrived, railGrams } = weighed;
  const basis = ARRIVAL_BASES.find((one) => one === arrived?.basis);
  const meatFactor = factorOfMeat(plan, weighed);
  return {
    hanging: isWhole && basis && arrived && arrived.grams > 0 && railGrams !== null ? { basis, share: railGrams / arrived.grams } : null,
    meatOfHanging: meatFactor === null ? null : (species.composition.carcass.per10k.meat / 10_000) * meatFactor,
    partOfMeat: meatFactor === null ? {} : partsTold(plan, weighed, species, meatFactor),
  };
}

/** Meat weighed over meat expected. Bone and fat left on a cut are taken as expected. */
function factorOfMeat(plan: Plan, { lines, pooledGrams, railGrams }: Weighed): number | null {
  if (railGrams === null || pooledGrams === null) return null;
  let expectedMeat = 0;
  let expectedOnIt = 0;
  for (const { key, packed, pools } of plan.ledger) {
    if (readTissueKey(key).kind === 'muscle') expectedMeat += packed + pools.stewing + pools.grinding + pools['whole-muscle'];
    else expectedOnIt += packed;
  }
  const own = [...lines.values()].reduce((sum, grams) => sum + grams, 0) + pooledGrams;
  const everyLineWeighed = plan.lines.every(({ line, packed }) => packed.likely < LEAST_TOLD_GRAMS || lines.has(line.id));
  return everyLineWeighed && expectedMeat > LEAST_TOLD_GRAMS ? (own - expectedOnIt) / expectedMeat : null;
}

function partsTold(
  plan: Plan,
  { lines }: Weighed,
  species: SpeciesFigures,
  meatFactor: number,
): Readonly<Partial<Record<PartId, number>>> {
  const { facts } = plan.forecast;
  const told = partsOf(species.plan).flatMap((part): [PartId, number][] => {
    const isSound = !facts.gutShot && !facts.wounds.some((wound) => wound.part === part) && !facts.missing.some((gone) => gone.part === part);
    const prior = species.composition.meat.per10k[part];
    if (!isSound || prior === undefined) return [];
    const rows = plan.ledger.filter(({ key }) => readTissueKey(key).part === part);
    const muscle = rows.filter(({ key }) => readTissueKey(key).kind === 'muscle');
    const grams = muscle.reduce((sum, row) => sum + row.grams, 0);
    // A line that takes several parts, such as a saddle, tells none of them apart.
    const own = plan.lines.filter(({ line }) => rows.some((row) => row.lineId === line.id));
    const isTheirOwn = own.every(({ line }) => plan.ledger.every((row) => row.lineId !== line.id || readTissueKey(row.key).part === part));
    const packed = muscle.reduce((sum, row) => sum + row.packed, 0);
    if (!isTheirOwn || packed < LEAST_TOLD_GRAMS || packed < grams * LEAST_PART_TOLD) return [];
    const onIt = rows.reduce((sum, row) => sum + row.packed, 0) - packed;
    const weighed = own.reduce((sum, { line }) => sum + (lines.get(line.id) ?? 0), 0) - onIt;
    return [[part, (prior / 10_000) * (weighed / packed / meatFactor)]];
  });
  return Object.fromEntries(told);
}

/** Own raw meat in a packed pool or product: what was added, and what was lost in making, taken back out. Grams. */
export function ownRawGrams(
  packed: { readonly kind: 'stew' } | { readonly kind: 'mince' } | { readonly kind: 'product'; readonly productId: ProductId },
  grams: number,
  instructions: Pick<Instructions, 'mince'>,
): number {
  if (packed.kind === 'stew') return grams;
  if (packed.kind === 'mince') {
    const { addedFat, fatPercent } = instructions.mince;
    return addedFat === 'none' ? grams : Math.round((grams * (100 - fatPercent)) / 100);
  }
  const { addedPorkPer10k, finishedPer10k } = PRODUCTS[packed.productId];
  return Math.round((grams / (finishedPer10k / 10_000)) * (1 - addedPorkPer10k / 10_000));
}
