const LETTERS: Readonly<Record<string, string>> = { ø: 'o', ł: 'l', đ: 'd', ð: 'd', ı: 'i', ß: 'ss', æ: 'ae', œ: 'oe', þ: 'th' };

/**
 * Folds a text for finding: lower case, marks off letters, letters of their own as they are typed elsewhere, one
 * apostrophe, one blank between words.
 *
 * @example foldForSearch('Çelik  Örsted') // 'celik orsted'
 */
export function foldForSearch(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '')
    .toLowerCase()
    .replace(/[øłđðıßæœþ]/g, (letter) => LETTERS[letter] ?? letter)
    .replace(/[’‘ʼ`´]/g, "'")
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
  // Nobody's words may pass for the tag, which is looked up by its mark.
  const words = (text: string): string => foldForSearch(text.replaceAll('=', ' '));
  return ` ${order.number} ${words(order.name)} ${digits} =${tagKey(order.tag)} ${words(order.tag)} ${words(order.licence)} `;
}

/**
 * The terms of a search, each of which an order's key must hold; none where nothing to look for is left. A phone number is
 * searched by its digits. The signs that a database takes for any letter, and the mark of the tag, part words.
 *
 * @example searchTerms('Müller, 50%') // ['muller,', '50']
 */
export function searchTerms(text: string): readonly string[] {
  const folded = foldForSearch(text.slice(0, 100).replace(/[%_=\p{Cc}]/gu, ' '));
  const digits = folded.replace(/[\s()+./-]/g, '');
  if (/^\d{4,}$/.test(digits)) return [digits];
  return folded.split(' ').filter((term) => term !== '').slice(0, 6);
}
