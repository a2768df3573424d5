import { describe, expect, it } from 'vitest';
import { celsiusTenthsOf, parseWeight } from '@/lib/units';

describe('units against published figures', () => {
  // U-1. International pound and ounce, exact: 0.45359237 kg and 28.349523125 g. NIST Special Publication 811.
  it('U-1: 4,000 lb are 1,814,369 g and 1,000 oz are 28,350 g, from the exact pound and ounce', () => {
    expect(parseWeight('1', { unit: 'lb' })).toEqual({ ok: true, value: 454 });
    expect(parseWeight('4000 lb', { unit: 'kg' })).toEqual({ ok: true, value: 1_814_369 });
    expect(parseWeight('1 oz', { unit: 'lb' })).toEqual({ ok: true, value: 28 });
    expect(parseWeight('1000 oz', { unit: 'lb' })).toEqual({ ok: true, value: 28_350 });
  });

  // U-2. 37.5 lb are 17.009713875 kg. Derived from the NIST pound.
  it('U-2: 37.5 lb are 17,010 g to the gram', () => {
    expect(parseWeight('37.5 lb', { unit: 'kg' })).toEqual({ ok: true, value: 17_010 });
  });

  // T-1. 41, 160 and 165 °F are 5.0, 71.1 and 73.9 °C. Arithmetic.
  it('T-1: 41, 160 and 165 °F are 5.0, 71.1 and 73.9 °C', () => {
    expect([410, 1600, 1650].map(celsiusTenthsOf)).toEqual([50, 711, 739]);
  });
});
