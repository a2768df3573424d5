import type { NameCountry } from '@/lib/cuts';
import type { Instructions } from '@/lib/instructions';
import { type Assessment, billFacts, packRows } from '@/lib/orders';
import { type Tariff, estimateOrder } from '@/lib/pricing';
import { formatMoney } from '@/lib/units';

/** What an order may come to, as ready words. */
export type EstimateView = {
  /** 'about $153.30 ($133.30 to $171.44)'; a plain amount where it does not depend on the weight. */
  readonly text: string;
  /** The likely amount alone: 'about $153.30'. */
  readonly likely: string;
  /** One row a line of the bill at the likely weight, taxes last. */
  readonly rows: readonly { readonly label: string; readonly amount: string }[];
  /** What the price list says nothing of: the shop will tell. */
  readonly unpriced: boolean;
};

/** Prices the forecast at its low, likely and high. */
export function estimateView(
  { plan, facts }: Pick<Assessment, 'plan' | 'facts'>,
  instructions: Instructions,
  shop: { readonly tariff: Tariff; readonly locale: string; readonly country: NameCountry },
): EstimateView {
  const rows = packRows(instructions, plan, shop.country);
  const at = (level: 'low' | 'likely' | 'high') =>
    billFacts({
      speciesId: facts.speciesId,
      instructions,
      arrival: null,
      form: facts.form,
      hangingGrams: plan.forecast.hanging[level],
      rows,
      weighings: null,
      level,
      payments: [],
    });
  const { low, likely, high } = estimateOrder({ low: at('low'), likely: at('likely'), high: at('high') }, shop.tariff);
  const money = (minor: number): string => formatMoney(minor, shop.tariff.currency, shop.locale);
  return {
    text:
      low.totalMinor === high.totalMinor
        ? money(likely.totalMinor)
        : `about ${money(likely.totalMinor)} (${money(low.totalMinor)} to ${money(high.totalMinor)})`,
    likely: low.totalMinor === high.totalMinor ? money(likely.totalMinor) : `about ${money(likely.totalMinor)}`,
    rows: [
      ...likely.lines.map((line) => ({ label: line.label, amount: money(line.amountMinor) })),
      ...likely.taxes.filter((tax) => tax.amountMinor > 0).map((tax) => ({ label: tax.name, amount: money(tax.amountMinor) })),
    ],
    unpriced: likely.unpriced.length > 0,
  };
}
