/**
 * Folds a text for finding: lower case, marks off letters, one blank between words.
 *
 * @example foldForSearch('Çelik  Örsted') // 'celik orsted'
 */
export function foldForSearch(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '')
    .replace(/[øØ]/g, 'o')
    .replace(/[łŁ]/g, 'l')
    .toLowerCase()
    .replace(/\s+/g, ' ')
    .trim();
}

/** A legal tag as it is compared: letters and digits only. */
export function tagKey(tag: string): string {
  return foldForSearch(tag).replace(/[^\p{L}\p{N}]/gu, '');
}

/** What an order is found by: number, name, digits of the phone, tag and licence. */
export function searchKeyOf(order: {
  readonly number: string;
  readonly name: string;
  readonly phone: string;
  readonly tag: string;
  readonly licence: string;
}): string {
  const digits = order.phone.replace(/\D/g, '');
  return ` ${order.number} ${foldForSearch(order.name)} ${digits} tag:${tagKey(order.tag)} ${foldForSearch(order.tag)} ${foldForSearch(order.licence)} `;
}

/** The terms of a search, each of which an order's key must hold. A phone number is searched by its digits. */
export function searchTerms(text: string): readonly string[] {
  const folded = foldForSearch(text.slice(0, 100));
  const digits = folded.replace(/[\s()+./-]/g, '');
  if (/^\d{4,}$/.test(digits)) return [digits];
  return folded.split(' ').filter((term) => term !== '').slice(0, 6);
}
