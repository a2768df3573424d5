/** The calendar day of a moment in a time zone, 'YYYY-MM-DD'. */
export function dayIn(timeZone: string, at: Date): string {
  return new Intl.DateTimeFormat('en-CA', { timeZone, year: 'numeric', month: '2-digit', day: '2-digit' }).format(at);
}

/** A moment as the shop writes it: 'Nov 25, 2026, 08:15'. */
export function momentWords(at: Date, shop: { readonly timeZone: string; readonly locale: string }): string {
  return new Intl.DateTimeFormat(shop.locale, { timeZone: shop.timeZone, dateStyle: 'medium', timeStyle: 'short' }).format(at);
}
