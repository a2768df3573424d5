import type { BaseCharge, Tariff } from '@/lib/pricing';
import { formatMoney, formatRate, formatWeighedQuantity } from '@/lib/units';

/** One price in plain words. */
export type PriceWords = { readonly label: string; readonly words: string };

/** The price list in plain words: what one animal costs, and what is extra. Prices are without tax. */
export function priceWords(tariff: Tariff, locale: string): { readonly base: readonly PriceWords[]; readonly extras: readonly PriceWords[] } {
  const { currency, weightUnit: unit } = tariff;
  const rate = (ratePer10k: number): string => `${formatRate(ratePer10k, currency, locale)} a ${unit}`;
  return {
    base: tariff.base.map(({ name, charge }) => ({ label: name, words: chargeWords(charge, tariff, locale) })),
    extras: [
      ...tariff.perPiece.map(({ name, eachMinor, per }) => ({
        label: name,
        words: `${formatMoney(eachMinor, currency, locale)}${per === 'piece' ? ' each' : ''}`,
      })),
      ...tariff.perWeight.map(({ name, ratePer10k }) => ({ label: name, words: rate(ratePer10k) })),
      ...tariff.products.map(({ name, ratePer10k, addedRatePer10k }) => ({
        label: name,
        words: addedRatePer10k > 0 ? `${rate(ratePer10k)}, added meat ${rate(addedRatePer10k)}` : rate(ratePer10k),
      })),
    ],
  };
}

/**
 * @example 'steps' // '$95.00 up to 60 lb hanging weight, $115.00 up to 100 lb, then $1.15 for each lb more'
 */
function chargeWords(charge: BaseCharge, { currency, weightUnit: unit }: Tariff, locale: string): string {
  const weight = (hundredths: number): string => formatWeighedQuantity(hundredths, unit, locale).replace(/[.,]00 /, ' ');
  switch (charge.kind) {
    case 'flat':
      return `${formatMoney(charge.amountMinor, currency, locale)}, whatever it weighs`;
    case 'per-weight':
      return `${formatRate(charge.ratePer10k, currency, locale)} for each ${unit} of hanging weight`;
    case 'steps': {
      const steps = charge.steps.map(
        ({ upToHundredths, amountMinor }, at) =>
          `${formatMoney(amountMinor, currency, locale)} up to ${weight(upToHundredths)}${at === 0 ? ' hanging weight' : ''}`,
      );
      const more = charge.excessRatePer10k > 0 ? [`then ${formatRate(charge.excessRatePer10k, currency, locale)} for each ${unit} more`] : [];
      return [...steps, ...more].join(', ');
    }
  }
}
