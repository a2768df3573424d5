import { type PartId, type Place, isSidedPart, partsOf, placesOf, readTissueKey } from '@/lib/carcass';
import { type NameCountry, cutName, minceName, partName, sidedName, targetName } from '@/lib/cuts';
import { type Plan, PRODUCTS } from '@/lib/plan';
import { type Range, type WeightUnit, formatWeight, formatWeightRange } from '@/lib/units';

/** A forecast row, ready to read: its name, its grams for a bar, and its words. */
export type ForecastRow = {
  readonly key: string;
  readonly label: string;
  readonly range: Range;
  readonly text: string;
  /** An amount that was asked: where it lies on the bar, null where it is not of the same thing, and how likely it is met. */
  readonly asked?: { readonly grams: number | null; readonly text: string };
};

/** What one animal gives, ready for the form, the status page and the sheet. */
export type PlanView = {
  readonly hanging: ForecastRow;
  /** One row a line, by line id. */
  readonly lines: readonly ForecastRow[];
  /** Stewing meat, products, mince, what nobody has decided, bone, waste and drying; empty ones left out. */
  readonly pools: readonly ForecastRow[];
  readonly packedTotal: ForecastRow;
  /** Grams that the longest bar stands for. */
  readonly mostGrams: number;
  /** How each part stands, for the chart. */
  readonly parts: readonly PartStanding[];
};

export type PartState = 'decided' | 'undecided' | 'doubled' | 'wounded' | 'absent';

export type PartStanding = {
  readonly part: PartId;
  readonly place: Place;
  readonly state: PartState;
  readonly name: string;
  /** What happens to it, in words: 'topside joint, rest to mince'. */
  readonly detail: string;
};

type Words = { readonly country: NameCountry; readonly unit: WeightUnit; readonly locale: string };

/** The plan as rows of words and bars. Pure; the same for every page that shows it. */
export function planView(plan: Plan, words: Words): PlanView {
  const row = (key: string, label: string, range: Range): ForecastRow => ({
    key,
    label,
    range,
    text: formatWeightRange(range, words.unit, words.locale),
  });
  const asked = (grams: number, chance: number, what: string): string =>
    `${formatWeight(grams, words.unit, words.locale)} ${what}: ${chanceWords(chance)}.`;
  const pools: readonly (readonly [string, string, Range])[] = [
    ['stew', cutName('diced', words.country), plan.pools.stewing],
    ...plan.products.map((product) => [product.productId, PRODUCTS[product.productId].name, product.finished] as const),
    ['mince', minceName(words.country), plan.mince],
    ['undecided', 'not decided yet', plan.pools.undecided],
    ['bone', 'bone', plan.pools.bone],
    ['waste', 'trimmed away', plan.pools.waste],
    ['drying', 'lost in drying', plan.pools.drying],
  ];
  const lines = plan.lines.map(({ line, packed, chance }): ForecastRow => ({
    ...row(line.id, `${sidedName(targetName(line.target, words.country), line.target === 'saddle' ? 'middle' : line.side)}, ${cutName(line.cut, words.country)}`, packed),
    ...(line.askedGrams !== null && chance !== null && { asked: { grams: line.askedGrams, text: asked(line.askedGrams, chance, 'wanted') } }),
  }));
  const shown = pools
    .filter(([, , range]) => range.likely > 0)
    .map(([key, label, range]): ForecastRow => {
      const product = plan.products.find(({ productId }) => productId === key);
      return {
        ...row(key, label, range),
        ...(product && { asked: { grams: null, text: asked(product.askedGrams, product.chance, 'of your meat in it') } }),
      };
    });
  return {
    hanging: hangingRow(plan, words),
    lines,
    pools: shown,
    packedTotal: row('total', 'to take home', plan.packedTotal),
    mostGrams: Math.max(1, ...[...lines, ...shown].map((one) => one.range.high)),
    parts: partStandings(plan, words),
  };
}

/**
 * How likely a wish is met, as people say it.
 *
 * @example chanceWords(0.72) // 'about 7 in 10 such animals give that'
 */
export function chanceWords(chance: number): string {
  if (chance >= 0.95) return 'nearly every such animal gives that';
  if (chance <= 0.05) return 'hardly any such animal gives that';
  return `about ${Math.round(chance * 10)} in 10 such animals give that`;
}

/** What hangs; a weight read off the rail is no forecast, so it stands without a range. */
function hangingRow({ forecast: { hanging, facts } }: Plan, { unit, locale }: Words): ForecastRow {
  const isWeighed = facts.weight?.basis === 'hanging';
  const text = isWeighed ? formatWeight(hanging.likely, unit, locale) : formatWeightRange(hanging, unit, locale);
  return { key: 'hanging', label: 'on the rail, without hide and head', range: hanging, text };
}

/** How every part stands: double claims first, then wounds, then what did not come, then what is open. */
export function partStandings(plan: Plan, words: Pick<Words, 'country'>): readonly PartStanding[] {
  const { facts } = plan.forecast;
  return partsOf(plan.forecast.species.plan).flatMap((part) =>
    placesOf(isSidedPart(part)).map((place): PartStanding => {
      const here = plan.ledger.filter((row) => {
        const tissue = readTissueKey(row.key);
        return tissue.part === part && tissue.place === place && tissue.kind === 'muscle';
      });
      const doubled = plan.doubles.some((double) => here.some((row) => row.key === double.key));
      const wounded = facts.wounds.some((wound) => wound.part === part && wound.place === place);
      const state: PartState =
        here.length === 0
          ? 'absent'
          : doubled
            ? 'doubled'
            : wounded
              ? 'wounded'
              : here.some((row) => row.pools.undecided > 0)
                ? 'undecided'
                : 'decided';
      const cuts = [
        ...new Set(
          plan.lines
            .filter(({ line }) => here.some((row) => row.lineId === line.id))
            .map(({ line }) => `${targetName(line.target, words.country)} ${cutName(line.cut, words.country)}`),
        ),
      ];
      const unclaimed = here.some((row) => row.lineId === null);
      const rest = unclaimed ? [restWords(plan, part, cuts.length > 0, words.country)] : [];
      return {
        part,
        place,
        state,
        name: sidedName(partName(part, words.country), place),
        detail: here.length === 0 ? 'did not come' : [...cuts, ...rest].join(', '),
      };
    }),
  );
}

function restWords(plan: Plan, part: PartId, partly: boolean, country: NameCountry): string {
  const open = plan.ledger.some((row) => readTissueKey(row.key).part === part && row.pools.undecided > 0);
  const stew = plan.ledger.some((row) => row.lineId === null && row.pools.stewing > 0);
  const to = open ? 'not decided' : stew ? cutName('diced', country) : minceName(country);
  return partly ? `the rest ${open ? 'not decided' : `to ${to}`}` : open ? to : `to ${to}`;
}

/** Likely grams as words, for a short label. */
export function likelyText(range: Range, words: Pick<Words, 'unit' | 'locale'>): string {
  return formatWeight(range.likely, words.unit, words.locale);
}
