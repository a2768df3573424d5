import { minorDigits, roundHalfUp, type Currency } from '@/lib/units';

/**
 * Gives the amount of one line in integer minor units: the quantity the customer reads (integer
 * hundredths of a weight unit) times the unit price (integer ten-thousandths of a major unit), rounded
 * once, half up. This is the one rule for every line priced by weight. Throws a RangeError on fractions
 * and negative numbers.
 *
 * @example amountAtRate({ quantityHundredths: 1235, ratePer10k: 34900, currency: 'USD' }) // 4310
 * @example amountAtRate({ quantityHundredths: 750, ratePer10k: 3500, currency: 'USD' }) // 263
 */
export function amountAtRate({ quantityHundredths, ratePer10k, currency }: {
  readonly quantityHundredths: number;
  readonly ratePer10k: number;
  readonly currency: Currency;
}): number {
  if (quantityHundredths < 0) throw new RangeError(`A quantity is not negative: ${quantityHundredths}`);
  if (ratePer10k < 0) throw new RangeError(`A unit price is not negative: ${ratePer10k}`);
  const product = BigInt(quantityHundredths) * BigInt(ratePer10k) * 10n ** BigInt(minorDigits(currency));
  return roundHalfUp(product, 100 * 10_000);
}
