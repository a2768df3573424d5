import { describe, expect, it } from 'vitest';
import { ageingDays } from '@/lib/orders/ageing';

describe('ageing against published figures', () => {
  // D-1. At least 40 degree-days: ten days at 4 °C, eight at 5 °C. Swedish Hunters' Association.
  it('D-1: 40 degree-days take 10 days at 4 °C and 8 days at 5 °C', () => {
    expect(ageingDays({ targetDegreeDays: 40, celsius: 4 })).toBe(10);
    expect(ageingDays({ targetDegreeDays: 40, celsius: 5 })).toBe(8);
  });
});
