import { formatMoney, formatRate, formatWeighedQuantity, type Currency } from '@/lib/units';
import type { LineBasis } from './bill';

/**
 * Writes what a line was worked out from; empty for a flat price that holds at any weight.
 *
 * @example formatBasis({ kind: 'weight', quantityHundredths: 1235, aboveHundredths: 0, unit: 'lb', ratePer10k: 34900 }, 'USD') // '12.35 lb at $3.49'
 * @example formatBasis({ kind: 'count', count: 2, eachMinor: 500 }, 'USD') // '2 at $5.00'
 */
export function formatBasis(basis: LineBasis, currency: Currency, locale = 'en-US'): string {
  switch (basis.kind) {
    case 'flat':
      return basis.upToHundredths === null
        ? ''
        : `up to ${formatWeighedQuantity(basis.upToHundredths, basis.unit, locale)}`;
    case 'count':
      return `${basis.count} at ${formatMoney(basis.eachMinor, currency, locale)}`;
    case 'weight': {
      const quantity = formatWeighedQuantity(basis.quantityHundredths, basis.unit, locale);
      const above = basis.aboveHundredths === 0
        ? ''
        : ` above ${formatWeighedQuantity(basis.aboveHundredths, basis.unit, locale)}`;
      return `${quantity}${above} at ${formatRate(basis.ratePer10k, currency, locale)}`;
    }
  }
}
