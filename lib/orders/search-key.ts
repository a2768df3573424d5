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
 * The terms of a search, each in its spellings, of which an order's key must hold one; none where nothing to look for is
 * left. A phone number is searched by its digits. The signs that a database takes for any letter, and the mark of the tag,
 * part words.
 *
 * @example searchTerms('Mueller, 50%') // [['mueller,', 'muller,'], ['50']]
 */
export function searchTerms(text: string): readonly (readonly string[])[] {
  const typed = text.slice(0, 100).replace(/[%_=\p{Cc}]/gu, ' ');
  const folded = foldForSearch(typed.normalize('NFC').replace(/[äöü]/gi, '$&e'));
  const digits = folded.replace(/[\s()+./-]/g, '');
  if (/^\d{4,}$/.test(digits)) return [[digits]];
  return folded.split(' ').filter((term) => term !== '').slice(0, 6).map(spellings);
}

/** A term as typed, and with an a, o or u for each ae, oe or ue: a key holds ä, ö and ü without their marks. */
function spellings(term: string): readonly string[] {
  const parts = term.split(/(?<=[aou])e/);
  // Of a term with more than three, all or none.
  if (parts.length > 4) return [term, parts.join('')];
  return parts.reduce<readonly string[]>((begun, part) => (begun.length === 0 ? [part] : begun.flatMap((one) => [`${one}e${part}`, one + part])), []);
}
