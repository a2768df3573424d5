import { GLYPH_WIDTHS } from './glyph-widths';

export type Weight = 400 | 700;

const FIRST = 0x20;
/** For a letter outside the table: as wide as a wide capital. */
const OTHER = 720;
/** Kerning and rounding never make a line this much wider. */
const SPARE_PER_1000 = 1_020;

/**
 * Width of one line of text in points, a little more rather than less. Pure: no font file is opened.
 *
 * @example textWidth('10427-7', 72, 700) // about 275
 */
export function textWidth(text: string, size: number, weight: Weight): number {
  return (thousandthsOf(text, weight) * size * SPARE_PER_1000) / 1_000_000;
}

const known: Readonly<Record<Weight, Map<string, number>>> = { 400: new Map(), 700: new Map() };
const MOST_KNOWN = 4_000;

/** The same words are measured at size after size: kept, and forgotten all at once when they grow many. */
function thousandthsOf(text: string, weight: Weight): number {
  const kept = known[weight].get(text);
  if (kept !== undefined) return kept;
  let thousandths = 0;
  for (const sign of text) thousandths += GLYPH_WIDTHS[weight][(sign.codePointAt(0) ?? 0) - FIRST] || OTHER;
  if (known[weight].size >= MOST_KNOWN) known[weight].clear();
  known[weight].set(text, thousandths);
  return thousandths;
}

/** How many lines a text takes in a width, broken at blanks; a word that is wider takes as many as it fills. 0 for ''. */
export function lineCount(text: string, width: number, size: number, weight: Weight): number {
  if (text === '') return 0;
  if (textWidth(text, size, weight) <= width) return 1;
  const blank = textWidth(' ', size, weight);
  let lines = 0;
  let room = 0;
  for (const word of text.split(/\s+/).filter((part) => part !== '')) {
    const wide = textWidth(word, size, weight);
    if (lines > 0 && wide + blank <= room) {
      room -= wide + blank;
    } else {
      const filled = Math.max(1, Math.ceil(wide / width));
      lines += filled;
      room = filled * width - wide;
    }
  }
  return lines;
}

/** The largest size from `most` down to `least`, in steps of a point, at which a text stands on one line; `least` where none does. */
export function sizeToFit(text: string, width: number, weight: Weight, { most, least }: { readonly most: number; readonly least: number }): number {
  let size = most;
  while (size > least && textWidth(text, size, weight) > width) size -= 1;
  return Math.max(size, least);
}

/**
 * A text that stands on one line of a width, its end given up for dots where it is too long.
 *
 * @example clipText('Featherstonehaugh', 60, 14, 700) // 'Feather…'
 */
export function clipText(text: string, width: number, size: number, weight: Weight): string {
  if (textWidth(text, size, weight) <= width) return text;
  const signs = [...text];
  while (signs.length > 1 && textWidth(`${signs.join('')}…`, size, weight) > width) signs.pop();
  return `${signs.join('').trimEnd()}…`;
}
