import { formatWeight, parseWeight } from '@/lib/units';
import type { FormShop } from './order-form-values';

const gramsInUnit = { lb: 453.592_37, kg: 1000 } as const;

/**
 * Writes grams into an input so that reading it again gives the same grams: as people read it where that is exact,
 * else with as many decimals as it takes, three at most. A form opened and saved untouched changes nothing.
 *
 * @example typedWeight(6804, { unit: 'lb', locale: 'en-US' }) // '15.0 lb'
 * @example typedWeight(54599, { unit: 'lb', locale: 'en-US' }) // '120.37 lb'
 */
export function typedWeight(grams: number, shop: Pick<FormShop, 'unit' | 'locale'>): string {
  const { unit, locale } = shop;
  const decimals = (most: number): string =>
    `${new Intl.NumberFormat(locale, { minimumFractionDigits: most, maximumFractionDigits: most, useGrouping: false }).format(grams / gramsInUnit[unit])} ${unit}`;
  const exact = [formatWeight(grams, unit, locale), decimals(2), decimals(3)].find((text) => {
    const read = parseWeight(text, shop);
    return read.ok && read.value === grams;
  });
  return exact ?? `${grams} g`;
}
