import { describe, expect, it } from 'vitest';
import { amountAtRate } from '@/lib/pricing';
import { parseRate, parseWeight, weighedQuantity, type WeightUnit } from '@/lib/units';

function priceAsTyped({ weight, unit, price }: { weight: string; unit: WeightUnit; price: string }): number {
  const grams = parseWeight(weight, { unit });
  const rate = parseRate(price, 'USD', 'en-US');
  if (!grams.ok || !rate.ok) throw new Error(`Not read: ${weight} at ${price}`);
  return amountAtRate({ quantityHundredths: weighedQuantity(grams.value, unit), ratePer10k: rate.value, currency: 'USD' });
}

describe('money against worked figures', () => {
  // M-1. 12.35 x 3.49 = 43.1015. Arithmetic.
  it('M-1: 12.35 lb at 3.49 come to 43.10', () => {
    expect(priceAsTyped({ weight: '12.35', unit: 'lb', price: '3.49' })).toBe(4310);
  });

  // M-2. 7.5 x 0.35 = 2.625, a tie. The policy of this shop is half up. Arithmetic.
  it('M-2: 7.5 lb at 0.35 come to 2.63, the tie going up', () => {
    expect(priceAsTyped({ weight: '7.5', unit: 'lb', price: '0.35' })).toBe(263);
  });

  // M-3. 108.88 x 16.4569 = 1791.8272...; at 16.46 it would be 1792.1648. Arithmetic on a published unit price.
  it('M-3: 108.88 kg at 16.4569 come to 1791.83, since a unit price keeps four decimals', () => {
    expect(priceAsTyped({ weight: '108.88', unit: 'kg', price: '16.4569' })).toBe(179_183);
    expect(priceAsTyped({ weight: '108.88', unit: 'kg', price: '16.46' })).toBe(179_216);
  });
});
