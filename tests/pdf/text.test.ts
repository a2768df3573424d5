import { readFileSync } from 'node:fs';
import { create } from 'fontkit';
import { describe, expect, test } from 'vitest';
import { GLYPH_WIDTHS } from '@/lib/pdf/glyph-widths';
import { DRAWN_RANGES, readableData, readableText } from '@/lib/pdf/readable-text';
import { unpackWoff } from '@/lib/pdf/unpack-woff';
import { clipText, lineCount, sizeToFit, textWidth } from '@/lib/pdf/text-width';

const fontOf = (script: 'latin' | 'latin-ext', weight: 400 | 700) =>
  create(readFileSync(`lib/pdf/fonts/atkinson-hyperlegible-next-${script}-${weight}-normal.woff`));

test('an unpacked font is a plain one, and nothing else is unpacked', () => {
  const plain = unpackWoff(readFileSync('lib/pdf/fonts/atkinson-hyperlegible-next-latin-400-normal.woff'));
  expect(create(plain).glyphForCodePoint(0x57).advanceWidth).toBe(fontOf('latin', 400).glyphForCodePoint(0x57).advanceWidth);
  expect(() => unpackWoff(plain)).toThrow('Not a WOFF file');
});

describe.each([400, 700] as const)('the embedded face at weight %i', (weight) => {
  test('has the widths of the table', () => {
    const font = fontOf('latin', weight);
    const found = GLYPH_WIDTHS[weight].map((_, index) => (font.hasGlyphForCodePoint(index + 0x20) ? font.glyphForCodePoint(index + 0x20).advanceWidth : 0));
    expect(GLYPH_WIDTHS[weight]).toEqual(found.map(Math.round));
  });

  test.each([['latin', DRAWN_RANGES.latin], ['latin-ext', DRAWN_RANGES.extended]] as const)('draws every sign that counts as drawn by %s', (script, ranges) => {
    const font = fontOf(script, weight);
    const signs = ranges.flatMap(([from, to]) => Array.from({ length: to - from + 1 }, (_, index) => from + index));
    expect(signs.filter((sign) => !font.hasGlyphForCodePoint(sign))).toEqual([]);
  });

  test('sets no line wider than it is measured', () => {
    const font = fontOf('latin', weight);
    const lines = ['WHOLE, SILVERSKIN OFF', 'SEAM, SQUARE & TIE', '3/4 in open', 'Hanging: 92.40 lb', '10427-7', 'AVAVAWATA To Ty'];
    const wider = lines.filter((line) => (font.layout(line).advanceWidth * 20) / font.unitsPerEm > textWidth(line, 20, weight));
    expect(wider).toEqual([]);
  });
});

test.each([
  ['Ørsted-Łukasz 鹿', 'Ørsted-Łukasz ?'],
  ['鹿野 Müller', '? Müller'],
  ['Ngô Văn 🦌👍🏽', 'Ngô Văn'],
  ['Ṽera Đặng', 'Vera Đang'],
  ['a\u202Egnp\u202C.exe\u0000', 'agnp.exe'],
  ['two\r\nlines\tand  blanks', 'two lines and blanks'],
  ['non\u2011breaking \u201Cquotes\u201D ½ €', 'non-breaking “quotes” ½ €'],
  ['e\u0301cole', 'école'],
  ['', ''],
])('%j is drawn as %j', (text, drawn) => {
  expect(readableText(text)).toBe(drawn);
});

test('plain data keeps its shape when its texts are made readable', () => {
  expect(readableData({ name: '鹿 A', count: 3, none: null, list: [{ text: 'x\u0000' }] })).toEqual({ name: '? A', count: 3, none: null, list: [{ text: 'x' }] });
});

test.each([
  ['', 0],
  ['one', 1],
  ['one two three four', 2],
  ['x'.repeat(60), 5],
])('%j takes %i lines of 100 points', (text, lines) => {
  expect(lineCount(text, 100, 14, 400)).toBe(lines);
});

test('a text is set smaller until it fits, and no smaller than allowed', () => {
  expect(sizeToFit('Thorn', 200, 700, { most: 28, least: 18 })).toBe(28);
  expect(sizeToFit('Featherstonehaugh', 200, 700, { most: 28, least: 18 })).toBe(21);
  expect(sizeToFit('Featherstonehaugh-Cholmondeley', 200, 700, { most: 28, least: 18 })).toBe(18);
});

test('a text too long for its line ends in dots', () => {
  expect(clipText('Thorn', 100, 14, 700)).toBe('Thorn');
  expect(clipText('Featherstonehaugh', 80, 14, 700)).toBe('Featherst…');
  expect(textWidth(clipText('W'.repeat(200), 80, 14, 700), 14, 700)).toBeLessThanOrEqual(80);
});
