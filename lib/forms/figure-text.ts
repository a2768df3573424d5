import { type WeightUnit, weighedQuantity } from '@/lib/units';

/**
 * Writes an integer count of 1/10^scale as a figure to be typed over: at least `least` decimals, no grouping, no sign
 * of money or weight.
 *
 * @example figureText(95_00, { scale: 2, least: 2, locale: 'en-US' }) // '95.00'
 * @example figureText(8875, { scale: 3, least: 0, locale: 'de-DE' }) // '8,875'
 */
export function figureText(
  value: number,
  { scale, least, locale }: { readonly scale: number; readonly least: number; readonly locale: string },
): string {
  return new Intl.NumberFormat(locale, {
    minimumFractionDigits: Math.min(least, scale),
    maximumFractionDigits: scale,
    useGrouping: false,
  }).format(value / 10 ** scale);
}

/**
 * Writes integer grams as the figure of a scale, without its unit: kilograms to the gram, pounds to the hundredth that
 * is priced, so that a weight opened and saved again costs the same.
 *
 * @example weightFigure(3366, { unit: 'lb', locale: 'en-US' }) // '7.42'
 */
export function weightFigure(grams: number, { unit, locale }: { readonly unit: WeightUnit; readonly locale: string }): string {
  return unit === 'kg'
    ? figureText(grams, { scale: 3, least: 2, locale })
    : figureText(weighedQuantity(grams, unit), { scale: 2, least: 1, locale });
}
