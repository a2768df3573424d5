import {
  type CarcassForecast,
  type ForecastTissue,
  type TissueKey,
  type Weighing,
  chanceIn,
  rangeOf,
  readTissueKey,
} from '@/lib/carcass';
import { CUTS, type TrimSplit } from '@/lib/cuts';
import type { InstructionLine, Instructions } from '@/lib/instructions';
import { type Range, allocateByLargestRemainder } from '@/lib/units';
import { type DoubleClaim, settleClaims } from './claims';
import { type PieceForecast, forecastPieces } from './piece-forecast';
import { PRODUCT_POOLS, type PlannedProduct, type ProductPool, planProducts } from './products';

/** Where meat that no cut packs ends up. Undecided: nobody has said. */
export const POOLS = ['stewing', 'grinding', 'whole-muscle', 'bone', 'waste', 'drying', 'undecided'] as const;
export type PoolId = (typeof POOLS)[number];

/** Where every gram of one tissue goes. `packed` + all pools = `grams`, exactly. */
export type LedgerRow = {
  readonly key: TissueKey;
  readonly grams: number;
  readonly lineId: string | null;
  readonly packed: number;
  readonly pools: Readonly<Record<PoolId, number>>;
};

export type PlannedLine = {
  readonly line: InstructionLine;
  /** What it packs. Grams. */
  readonly packed: Range;
  /** Probability, 0 to 1, that it packs the amount asked; null where none is named. */
  readonly chance: number | null;
  /** How many pieces and packets that makes, and how many people it feeds. */
  readonly pieces: PieceForecast;
  /** Tissues it claimed but an earlier line keeps. */
  readonly lost: readonly TissueKey[];
};

/** Forecast, lines and pools of one order. Grams. Mass is conserved: all packed + all pools = hanging.likely. */
export type Plan = {
  readonly forecast: CarcassForecast;
  readonly lines: readonly PlannedLine[];
  readonly pools: Readonly<Record<PoolId, Range>>;
  readonly ledger: readonly LedgerRow[];
  readonly doubles: readonly DoubleClaim[];
  /** Muscles that came and have no destination. */
  readonly undecided: readonly TissueKey[];
  readonly products: readonly PlannedProduct[];
  /** Hunter's own meat left for plain mince when the products have had theirs. */
  readonly mince: Range;
  /** Everything that goes home: lines, stewing meat, mince and products, without added fat. */
  readonly packedTotal: Range;
};

type Destination = 'packed' | PoolId;
type Shares = Readonly<Record<Destination, number>>;

const NOWHERE: Shares = { packed: 0, stewing: 0, grinding: 0, 'whole-muscle': 0, bone: 0, waste: 0, drying: 0, undecided: 0 };
const DESTINATIONS = ['packed', ...POOLS] as const;

/** Of the cover on a part kept on the bone, what stays on it rather than being trimmed away; a bird keeps its skin. Judgement. */
const COVER_KEPT_PER_10K = { 'four-legged': 6_000, bird: 10_000 } as const;

/**
 * Plans one order: every tissue of the forecast goes to the line that claims it, or to what the hunter chose for
 * the rest, or to bone, waste and drying. Rounding: each tissue is divided by largest remainder, so that nothing
 * is lost. Ranges are the 10th and 90th percentile of the same divisions.
 */
export function planOrder(instructions: Instructions, forecast: CarcassForecast): Plan {
  const present = new Set(forecast.tissues.map((tissue) => tissue.key));
  const { owner, doubles } = settleClaims(instructions.lines, (key) => present.has(key));
  const shares = new Map(
    forecast.tissues.map((tissue) => [tissue.key, sharesOf(tissue, owner.get(tissue.key) ?? null, instructions, forecast)]),
  );
  const ledger = forecast.tissues.map((tissue) =>
    ledgerRow(tissue, owner.get(tissue.key)?.id ?? null, shares.get(tissue.key) ?? NOWHERE),
  );
  const range = (likely: number, weightOf: Weighing): Range => rangeOf(forecast, weightOf, likely);
  const share = (key: TissueKey, isLost: boolean, destination: Destination): number =>
    isLost ? (destination === 'waste' ? 1 : 0) : (shares.get(key)?.[destination] ?? 0) / 10_000;

  const lines = instructions.lines.map((line): PlannedLine => {
    const rows = ledger.filter((row) => row.lineId === line.id);
    const its: Weighing = (key, isLost) => (owner.get(key)?.id === line.id ? share(key, isLost, 'packed') : 0);
    const packed = range(sum(rows.map((row) => row.packed)), its);
    return {
      line,
      packed,
      chance: line.askedGrams === null ? null : chanceIn(forecast, its, line.askedGrams),
      pieces: forecastPieces(line, packed, rows.filter(({ key }) => readTissueKey(key).kind === 'muscle')),
      lost: doubles
        .filter((double) => double.lineIds.includes(line.id) && double.lineIds[0] !== line.id)
        .map((double) => double.key),
    };
  });
  const poolRange = (pool: PoolId): Range =>
    range(sum(ledger.map((row) => row.pools[pool])), (key, isLost) => share(key, isLost, pool));
  const pools: Record<PoolId, Range> = {
    stewing: poolRange('stewing'),
    grinding: poolRange('grinding'),
    'whole-muscle': poolRange('whole-muscle'),
    bone: poolRange('bone'),
    waste: poolRange('waste'),
    drying: poolRange('drying'),
    undecided: poolRange('undecided'),
  };
  const held = (of: readonly ProductPool[]): Weighing => (key, isLost) =>
    of.reduce((sum, pool) => sum + share(key, isLost, pool), 0);
  const { products, mince } = planProducts(instructions, pools, (of, grams) => chanceIn(forecast, held(of), grams));
  const homeward: Weighing = (key, isLost) =>
    share(key, isLost, 'packed') + share(key, isLost, 'stewing') + held(PRODUCT_POOLS)(key, isLost);
  return {
    forecast,
    lines,
    pools,
    ledger,
    doubles,
    undecided: ledger.filter((row) => row.pools.undecided > 0).map((row) => row.key),
    products,
    mince,
    packedTotal: range(
      sum(ledger.map((row) => row.packed + row.pools.stewing + row.pools.grinding + row.pools['whole-muscle'])),
      homeward,
    ),
  };
}

/** Where the sound grams of a tissue go; what a wound costs is waste. */
function sharesOf(tissue: ForecastTissue, line: InstructionLine | null, instructions: Instructions, { species }: CarcassForecast): Shares {
  const { kind } = readTissueKey(tissue.key);
  switch (kind) {
    case 'drying':
      return { ...NOWHERE, drying: 10_000 };
    case 'bone':
      return line ? { ...NOWHERE, packed: 10_000 } : { ...NOWHERE, bone: 10_000 };
    case 'cover': {
      const kept = line ? COVER_KEPT_PER_10K[species.plan] : 0;
      return { ...NOWHERE, packed: kept, waste: 10_000 - kept };
    }
    case 'muscle':
      return meatShares(line ? squaredOff(CUTS[line.cut].split, instructions.squaredOff) : restSplit(instructions.rest));
  }
}

function meatShares({ whole = 0, ...split }: TrimSplit & { readonly undecided: number }): Shares {
  return { ...NOWHERE, ...split, 'whole-muscle': whole };
}

function squaredOff(split: TrimSplit, to: Instructions['squaredOff']): TrimSplit & { undecided: number } {
  return to === 'stew'
    ? { ...split, undecided: 0 }
    : { ...split, stewing: 0, grinding: split.grinding + split.stewing, undecided: 0 };
}

function restSplit(rest: Instructions['rest']): TrimSplit & { undecided: number } {
  switch (rest) {
    case 'mince':
      return { ...CUTS.mince.split, undecided: 0 };
    case 'stew': {
      const { packed, stewing, grinding, waste } = CUTS.diced.split;
      return { packed: 0, stewing: stewing + packed, grinding, waste, undecided: 0 };
    }
    case 'undecided':
      return { packed: 0, stewing: 0, grinding: 0, waste: 0, undecided: 10_000 };
  }
}

function ledgerRow(tissue: ForecastTissue, lineId: string | null, shares: Shares): LedgerRow {
  const grams = allocateByLargestRemainder(
    tissue.grams - tissue.woundGrams,
    DESTINATIONS.map((destination) => shares[destination]),
  );
  const at = (destination: Destination): number => grams[DESTINATIONS.indexOf(destination)] ?? 0;
  return {
    key: tissue.key,
    grams: tissue.grams,
    lineId,
    packed: at('packed'),
    pools: {
      stewing: at('stewing'),
      grinding: at('grinding'),
      'whole-muscle': at('whole-muscle'),
      bone: at('bone'),
      waste: at('waste') + tissue.woundGrams,
      drying: at('drying'),
      undecided: at('undecided'),
    },
  };
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, one) => total + one, 0);
}
