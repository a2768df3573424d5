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
