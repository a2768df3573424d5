const formats = new Map<string, Intl.NumberFormat>();

/** Gives the formatter for a locale and options, made once: making one costs a hundred times what using it does. */
export function numberFormat(locale: string, options: Intl.NumberFormatOptions): Intl.NumberFormat {
  const key = `${locale} ${JSON.stringify(options)}`;
  const known = formats.get(key);
  if (known !== undefined) return known;
  const made = new Intl.NumberFormat(locale, options);
  formats.set(key, made);
  return made;
}

/**
 * Writes an integer count of tenths, hundredths and so on with that many decimals.
 *
 * @example writeDecimal(1235, { decimals: 2, locale: 'de-DE' }) // '12,35'
 */
export function writeDecimal(
  value: number,
  { decimals, locale }: { readonly decimals: number; readonly locale: string },
): string {
  return numberFormat(locale, { minimumFractionDigits: decimals, maximumFractionDigits: decimals })
    .format(value / 10 ** decimals);
}
