import { z } from 'zod';

/** Control characters and the marks that turn the direction of writing: neither is ever part of a name. */
const hiddenCharacters = /[\p{Cc}\u200E\u200F\u202A-\u202E\u2066-\u2069]/gu;

/** One line as it is kept: blanks for line breaks and tabs, no hidden characters, no blanks around it. */
export function tidyLine(text: string): string {
  return text.replace(/\r\n?|\n|\t/g, ' ').replace(hiddenCharacters, '').replace(/ {2,}/g, ' ').trim();
}

/** Several lines as they are kept, each tidy, at most one of them empty in a row. */
export function tidyLines(text: string): string {
  const lines = text.replace(/\r\n?/g, '\n').split('\n');
  return lines.map(tidyLine).join('\n').replace(/\n{3,}/g, '\n\n').trim();
}

/** One line that has to be filled in. Line breaks become spaces; hidden characters go. `missing` says what to enter. */
export function lineOf({ missing, longest, tooLong }: { missing: string; longest: number; tooLong?: string }) {
  const sentence = tooLong ?? `Shorten this to ${longest} characters`;
  return z.string(missing).transform(tidyLine).pipe(z.string().min(1, missing).max(longest, sentence));
}

/** One line that may stay empty. */
export function optionalLine(longest: number) {
  return z.string().transform(tidyLine).pipe(z.string().max(longest, `Shorten this to ${longest} characters`));
}

/** Several lines that may stay empty. */
export function optionalLines(longest: number) {
  return z.string().transform(tidyLines).pipe(z.string().max(longest, `Shorten this to ${longest} characters`));
}
