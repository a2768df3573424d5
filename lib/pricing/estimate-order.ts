import type { Bill, BillFacts } from './bill';
import { priceOrder } from './price-order';
import type { Tariff } from './tariff';

/**
 * Prices what an order may come to: `priceOrder` on the low, the likely and the high forecast. Throws as
 * `priceOrder` does.
 */
export function estimateOrder(
  { low, likely, high }: { readonly low: BillFacts; readonly likely: BillFacts; readonly high: BillFacts },
  tariff: Tariff,
): { readonly low: Bill; readonly likely: Bill; readonly high: Bill } {
  return { low: priceOrder(low, tariff), likely: priceOrder(likely, tariff), high: priceOrder(high, tariff) };
}
