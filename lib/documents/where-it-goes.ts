import { readTissueKey } from '@/lib/carcass';
import type { NameCountry } from '@/lib/cuts';
import type { PackRow, Weighing } from '@/lib/orders';
import type { Plan } from '@/lib/plan';
import { type Range, type WeightUnit, formatWeight, formatWeightRange } from '@/lib/units';
import { type GivenWeight, type StageBasis, animalStages } from './animal-stages';
import { type GonePartId, exactly, forecastHome, forecastLosses, makingGrams, meatRange, sharedRest, weighedHome } from './gone-parts';
import { type GoneWords, goneWords } from './gone-words';

/** A weight and how it is known: by the scale, by a forecast with low and high, or as a share of what was weighed. Grams. */
export type GoneAmount = { readonly range: Range; readonly known: 'measured' | 'forecast' | 'shared'; readonly text: string };

export type GonePart = GoneAmount & { readonly id: GonePartId; readonly label: string };

/** One bar: so much, of which `leaves` does not reach the next. What leaves and the next stage sum to it, to the gram. */
export type GoneStage = GoneAmount & {
  readonly id: StageBasis | 'came' | 'home';
  readonly label: string;
  readonly leaves: readonly GonePart[];
};

/** Where one animal goes, from alive (or as it came) to the packets. */
export type WhereItGoes = {
  readonly stages: readonly GoneStage[];
  /** What the last stage is made of; sums to it to the gram. */
  readonly home: readonly GonePart[];
  /** Own meat that goes home, as far as it is decided. */
  readonly takesHome: GoneAmount;
  readonly isPacked: boolean;
  /** Some of the cuts keep their bone. */
  readonly hasBoneIn: boolean;
  /** Pork or fat the shop put in besides; 0 until it is packed. Grams. */
  readonly addedGrams: number;
  /** Own meat as it was forecast, to stand beside what was packed; null where products dried in the making, which it leaves out. */
  readonly forecastHome: Range | null;
  readonly words: GoneWords;
};

export type WhereItGoesInput = {
  readonly plan: Plan;
  /** Weights of the animal beside the one the plan stands on, the most trusted first: from the counter, from the hunter. */
  readonly told?: readonly (GivenWeight | null | undefined)[];
  /** What was weighed at the packing table; null or nothing until then. */
  readonly packing?: { readonly rows: readonly PackRow[]; readonly weighings: readonly Weighing[] } | null;
};

export type GoesWords = { readonly country: NameCountry; readonly unit: WeightUnit; readonly locale: string };

/**
 * The way of one animal from alive to the packets. Every stage is what leaves it and the next stage, exactly; the hanging weight
 * is meat, bone, trim, wounds and drying, exactly. Once it is packed, what was not weighed is the rest divided as forecast, by
 * largest remainder. Null where more was packed than hung, or less than forecast and a row was not weighed: such figures make no
 * picture.
 */
export function whereItGoes({ plan, told = [], packing = null }: WhereItGoesInput, read: GoesWords): WhereItGoes | null {
  const words = goneWords(plan, read);
  const write = ({ range, known }: Omit<GoneAmount, 'text'>): string =>
    known === 'forecast' ? formatWeightRange(range, read.unit, read.locale) : `${known === 'shared' ? 'about ' : ''}${formatWeight(range.likely, read.unit, read.locale)}`;
  const amount = (range: Range, known: GoneAmount['known']): GoneAmount => ({ range, known, text: write({ range, known }) });
  const part = (id: GonePartId, label: string, range: Range, known: GoneAmount['known']): GonePart => ({ id, label, ...amount(range, known) });

  const weighed = packing && packing.weighings.length > 0 ? weighedHome(packing.rows, packing.weighings) : null;
  const hung = plan.forecast.hanging;
  const home = weighed?.parts ?? forecastHome(plan);
  const meatGrams = home.reduce((sum, one) => sum + one.range.likely, 0);
  if (meatGrams > hung.likely || (weighed?.isShort && meatGrams < plan.packedTotal.low - makingGrams(plan))) return null;
  const lost = weighed ? sharedRest(plan, hung.likely - meatGrams) : forecastLosses(plan);
  const homeKnown = weighed ? 'measured' : 'forecast';
  const undecided = weighed ? 0 : plan.pools.undecided.likely;
  const takesHome = amount(weighed ? exactly(meatGrams) : plan.packedTotal, homeKnown);
  const meat = undecided > 0 ? amount(meatRange(plan, meatGrams), 'forecast') : takesHome;
  const homeStage: GoneStage = { id: 'home', label: undecided > 0 ? 'Meat' : 'To take home', ...meat, leaves: [] };

  const railLosses = lost.filter(({ range }) => range.likely > 0).map(({ id, range }) => part(id, words.part[id], range, weighed ? 'shared' : 'forecast'));
  const isRailWeighed = words.isCameMeasured;
  const rail = amount(isRailWeighed ? exactly(hung.likely) : hung, isRailWeighed ? 'measured' : 'forecast');
  const { stages, losses } = words.isWhole ? animalStages(plan, told.filter((one) => one !== null && one !== undefined)) : { stages: [], losses: [] };
  const upper = stages.slice(0, -1).map(({ basis, range, isMeasured }, at): GoneStage => {
    const loss = losses[at];
    const next = stages[at + 1]?.basis ?? 'hanging';
    const gone = loss ? [part(basis === 'live' ? 'innards' : 'outside', words.between(basis, next), loss.range, loss.isMeasured ? 'measured' : 'forecast')] : [];
    return { id: basis, label: words.stage(basis), ...amount(range, isMeasured ? 'measured' : 'forecast'), leaves: gone };
  });
  return {
    stages: [...upper, { id: words.isWhole ? 'hanging' : 'came', label: words.came, ...rail, leaves: railLosses }, homeStage],
    home: home.filter(({ range }) => range.likely > 0).map(({ id, label, range }) => part(id, label || words.part[id], range, homeKnown)),
    takesHome,
    isPacked: weighed !== null,
    hasBoneIn: plan.ledger.some(({ key, packed }) => packed > 0 && readTissueKey(key).kind === 'bone'),
    addedGrams: weighed?.addedGrams ?? 0,
    forecastHome: makingGrams(plan) > 0 ? null : plan.packedTotal,
    words,
  };
}
