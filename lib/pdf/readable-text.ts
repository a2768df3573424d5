/** What the two embedded files draw between them, as ranges of code points. A test holds them against the files. */
const LATIN = [
  [0x20, 0x7e], [0xa0, 0xac], [0xae, 0xb4], [0xb6, 0xff], [0x131, 0x131], [0x152, 0x153], [0x2013, 0x2014],
  [0x2018, 0x201a], [0x201c, 0x201e], [0x2022, 0x2022], [0x2026, 0x2026], [0x2039, 0x203a], [0x2044, 0x2044],
  [0x20ac, 0x20ac], [0x2122, 0x2122], [0x2212, 0x2212],
] as const;
const EXTENDED = [
  [0x100, 0x107], [0x10a, 0x113], [0x116, 0x11b], [0x11e, 0x123], [0x126, 0x127], [0x12a, 0x12b], [0x12e, 0x130],
  [0x132, 0x133], [0x136, 0x137], [0x139, 0x13e], [0x141, 0x148], [0x150, 0x151], [0x154, 0x155], [0x158, 0x15b],
  [0x15e, 0x165], [0x16a, 0x16b], [0x16e, 0x17e], [0x218, 0x21b], [0x1e80, 0x1e85], [0x1e9e, 0x1e9e],
  [0x1ef2, 0x1ef3], [0x20b9, 0x20b9],
] as const;

export const DRAWN_RANGES = { latin: LATIN, extended: EXTENDED };

/** Signs the face lacks that have a plain stand-in. */
const STAND_INS: Readonly<Record<string, string>> = {
  '\u2010': '-', '\u2011': '-', '\u2012': '-', '\u2015': '\u2014', '\u2043': '-', '\u00b5': 'u', '\u2032': "'",
  '\u2033': '"', '\u2190': '<-', '\u2192': '->', '\u2713': 'x', '\u2044': '/',
};

const PICTURE = /[\p{Extended_Pictographic}\p{Regional_Indicator}\p{Emoji_Modifier}]/u;

/** Whether every sign of a text is in the basic file, so that the extended one need not be asked. */
export function isPlainLatin(text: string): boolean {
  for (const sign of text) if (!isIn(LATIN, sign)) return false;
  return true;
}

/**
 * A text as the embedded face can draw it. Direction marks, controls and pictures go; a letter the face lacks loses
 * its marks; one with no likeness at all becomes '?', one for a run of them. Line breaks become blanks.
 *
 * @example readableText('Ørsted-Łukasz 鹿') // 'Ørsted-Łukasz ?'
 * @example readableText('Ngô 🦌') // 'Ngô'
 */
export function readableText(text: string): string {
  const kept = text
    .normalize('NFC')
    .replace(/\s+/gu, ' ')
    .replace(/[\p{Cc}\p{Cf}\p{Co}\p{Cs}]/gu, '');
  let out = '';
  let isLost = false;
  for (const sign of kept) {
    const drawn = drawnAs(sign);
    if (drawn !== null) out += drawn;
    else if (!isLost) out += '?';
    isLost = drawn === null;
  }
  return out.replace(/ +/g, ' ').trim();
}

/** Every text in plain data made readable; all else as it is. */
export function readableData<T>(data: T): T {
  if (typeof data === 'string') return readableText(data) as T;
  if (Array.isArray(data)) return data.map(readableData) as T;
  if (data !== null && typeof data === 'object') {
    return Object.fromEntries(Object.entries(data).map(([key, value]) => [key, readableData(value)])) as T;
  }
  return data;
}

function drawnAs(sign: string): string | null {
  const standIn = STAND_INS[sign];
  if (standIn !== undefined) return standIn;
  if (isDrawn(sign)) return sign;
  if (PICTURE.test(sign)) return '';
  const bare = sign.normalize('NFKD').replace(/\p{M}/gu, '');
  if (bare === '') return '';
  return [...bare].every(isDrawn) ? bare : null;
}

function isDrawn(sign: string): boolean {
  return isIn(LATIN, sign) || isIn(EXTENDED, sign);
}

function isIn(ranges: readonly (readonly [number, number])[], sign: string): boolean {
  const point = sign.codePointAt(0) ?? 0;
  return ranges.some(([from, to]) => point >= from && point <= to);
}
