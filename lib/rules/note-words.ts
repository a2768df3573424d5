/** One word of a note, folded, and where it stands in it. */
export type NoteWord = { readonly text: string; readonly at: number; readonly end: number };

/** A stretch of a note. */
export type NoteSpan = { readonly at: number; readonly end: number };

/** The words of a note, numbers apart from letters: '3lb' is two. One walk, whatever is typed. */
export function noteWords(note: string): readonly NoteWord[] {
  return [...note.matchAll(/\p{L}+(?:['’]\p{L}+)*|\p{N}+/gu)].map((found) => ({
    text: found[0].toLowerCase().replaceAll('’', "'"),
    at: found.index,
    end: found.index + found[0].length,
  }));
}

/** How many words from `from` on are this phrase, one behind another on one line, each perhaps plural; 0 where they are not. */
export function wordsOfPhrase(note: string, words: readonly NoteWord[], from: number, phrase: string): number {
  if (words[from]?.text[0] !== phrase[0]) return 0;
  const wanted = phrase.split(' ');
  const fits = wanted.every((text, at) => {
    const word = words[from + at]?.text;
    return (word === text || word === `${text}s` || word === `${text}es`) && (at === 0 || isNext(note, words, from + at));
  });
  return fits ? wanted.length : 0;
}

/** Whether nothing but blanks and hyphens lies between a word and the one before it. */
export function isNext(note: string, words: readonly NoteWord[], at: number): boolean {
  const [before, word] = [words[at - 1], words[at]];
  return before !== undefined && word !== undefined && /^[ \t-]*$/.test(note.slice(before.end, word.at));
}

/** A note with a stretch struck from it, or put otherwise, and no stray comma, full stop or 'please' left behind. */
export function withoutSpan(note: string, { at, end }: NoteSpan, instead = ''): string {
  if (instead !== '') return note.slice(0, at) + instead + note.slice(end);
  const before = note.slice(0, at).replace(/[ \t,;]+$/, '');
  const isBegin = before === '' || /[.!?\n]$/.test(before);
  const behind = note.slice(end).replace(/^,?[ \t]*(?:please|thanks)\b/i, '').replace(/^[ \t]+/, '');
  const after = isBegin ? behind.replace(/^[,;.!]+[ \t]*/, '') : behind;
  return `${before}${/^$|\n$/.test(before) || /^[,;.!\n]|^$/.test(after) ? '' : ' '}${after}`.trim();
}
