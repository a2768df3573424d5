import { commonPasswords } from './common-passwords';

export const shortestPassword = 15;
export const longestPassword = 128;

/**
 * Says what is wrong with a new password, or null when nothing is. Length is counted in characters as written (code
 * points after NFKC); which kinds of characters it holds does not matter. Refused are common ones, ones that repeat a few
 * characters or run along the alphabet or the digits, and ones made of the words in `about` (the person's and shop's names).
 * Source: NIST SP 800-63B-4, section 3.1.1.2.
 *
 * @example passwordProblem('aaaaaaaaaaaaaaaaaaaa', []) // 'Choose another password: this one only repeats itself, ...'
 */
export function passwordProblem(typed: string, about: readonly string[]): string | null {
  const password = normalizePassword(typed);
  const length = [...password].length;
  if (length === 0) return 'Enter a password';
  if (length < shortestPassword) return `Make the password at least ${shortestPassword} characters long: four or five words do well`;
  if (length > longestPassword) return `Make the password at most ${longestPassword} characters long`;

  const plain = squeeze(password);
  if (commonPasswords.includes(plain)) return 'Choose another password: this one is used by many people, so it is tried first';
  if (repeats(plain)) return 'Choose another password: this one only repeats itself, which is tried first';
  if (runs(plain)) return 'Choose another password: this one runs along the alphabet or the digits, which is tried first';
  if (isMadeOf(plain, about)) return 'Choose another password: this one is made of names that anybody here knows';
  return null;
}

/** The one form in which a password is counted, hashed and compared: NFKC, so that two keyboards type the same one. */
export function normalizePassword(typed: string): string {
  return typed.normalize('NFKC');
}

function squeeze(text: string): string {
  return normalizePassword(text).toLowerCase().replace(/\s+/gu, '');
}

function repeats(plain: string): boolean {
  const characters = [...plain];
  return [1, 2, 3, 4].some((period) => characters.every((character, at) => character === characters[at % period]));
}

function runs(plain: string): boolean {
  const codes = [...plain].map((character) => character.codePointAt(0) ?? 0);
  const steps = codes.slice(1).map((code, at) => code - (codes[at] ?? 0));
  return [1, -1].some((step) => steps.filter((taken) => taken === step).length >= steps.length - 2);
}

/** Too little is left when the known words and all digits are taken away. */
function isMadeOf(plain: string, about: readonly string[]): boolean {
  const words = [...about.flatMap((text) => [squeeze(text), ...text.split(/\s+/u).map(squeeze)]), 'gambrel', 'password'];
  const known = words.filter((word) => word.length >= 3).toSorted((a, b) => b.length - a.length);
  const rest = known.reduce((text, word) => text.replaceAll(word, ''), plain).replace(/[\d\p{P}\p{S}]/gu, '');
  return rest.length < 5 && rest.length < plain.length - 4 && known.some((word) => plain.includes(word));
}
