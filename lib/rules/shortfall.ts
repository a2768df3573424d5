import { PRODUCTS, type PlannedLine, type PlannedProduct } from '@/lib/plan';
import type { Range } from '@/lib/units';
import { isBoneMissing, isNamelessMeat, missingPlaces } from './delivered';
import type { RuledOrder } from './rule';

/** How a promise stands to the forecast: kept, probably short (above likely), or more than there is (above high). */
export type Shortfall = 'none' | 'probable' | 'certain';

/**
 * Of one line. A line that is promised twice, did not come or has no name is not measured: that is its own
 * finding, and one trouble is told once.
 */
export function shortfallOfLine({ line, packed }: PlannedLine, order: RuledOrder): Shortfall {
  if (line.askedGrams === null || packed.high === 0) return 'none';
  const isTold =
    order.plan.doubles.some((double) => double.lineIds.includes(line.id)) ||
    missingPlaces(line, order).length > 0 ||
    isBoneMissing(line, order) ||
    isNamelessMeat(line, order);
  return isTold ? 'none' : against(line.askedGrams, packed);
}

/**
 * Of one product. What there is for it is not known while meat is promised twice; less than a batch takes is its own finding
 * where there would be enough.
 */
export function shortfallOfProduct({ productId, askedGrams, leastGrams, there }: PlannedProduct, { plan }: RuledOrder): Shortfall {
  if (plan.doubles.length > 0 || isOpen(productId, plan)) return 'none';
  return against(there.high >= leastGrams ? askedGrams : Math.max(askedGrams, leastGrams), there);
}

/** Whether a product is asked for below its smallest batch, where there would be enough for one. Not told while meat is promised twice. */
export function isBelowBatch({ productId, askedGrams, leastGrams, there }: PlannedProduct, { plan }: RuledOrder): boolean {
  return plan.doubles.length === 0 && !isOpen(productId, plan) && askedGrams < leastGrams && there.high >= leastGrams;
}

/** Whether what a product is ground from has not been decided yet: that is asked first. */
function isOpen(productId: PlannedProduct['productId'], plan: RuledOrder['plan']): boolean {
  return plan.undecided.length > 0 && PRODUCTS[productId].from.includes('grinding');
}

function against(asked: number, gives: Range): Shortfall {
  if (asked > gives.high) return 'certain';
  return asked > gives.likely ? 'probable' : 'none';
}
