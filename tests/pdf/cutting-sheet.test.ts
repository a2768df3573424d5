import { describe, expect, test } from 'vitest';
import type { CuttingSheet } from '@/lib/documents';
import { ALLERGENS, allergenName } from '@/lib/instructions';
import { drawPdf } from '@/lib/pdf/draw';
import { PAGE_SIZES } from '@/lib/pdf/job';
import { fontSizes, hasPoppler, pageCount, pageSizes, textOf, wordsOf } from './read-pdf';
import { elkSheet, heavySheet, makeLine, makeSheet, rareSheet, typicalSheet, usualSheet } from './samples';

const draw = (sheet: CuttingSheet, paper: 'letter' | 'a4' = 'letter') => drawPdf({ kind: 'sheets', paper, sheets: [sheet] });
const SAMPLES = { typical: typicalSheet(), usual: usualSheet(), elk: elkSheet(), heavy: heavySheet(), rare: rareSheet() };
const CASES = Object.entries(SAMPLES).flatMap(([name, sheet]) => (['letter', 'a4'] as const).map((paper) => ({ name, sheet, paper })));

/** Everything a cutter must find on the paper. */
const wordsToFind = (sheet: CuttingSheet): readonly string[] => [
  ...sheet.stops.map((stop) => stop.text),
  ...sheet.blocks.flatMap((block) => block.lines.flatMap((line) => [line.name, line.make, line.manner, line.size, line.pack, line.note])),
  sheet.rest,
  sheet.weight,
  ...sheet.grind.flatMap(({ label, value }) => [label, value]),
  ...sheet.products.flatMap((product) => [product.name, product.batch, product.setAside, product.added]),
  sheet.ifShort,
  ...sheet.keep,
  ...sheet.facts.flatMap(({ tag, words }) => [tag, words]),
  sheet.markWords,
  sheet.note,
  ...sheet.writeIns,
  sheet.signOff,
  ...sheet.cautions,
  ...sheet.strips.map((strip) => strip.title),
  sheet.printed,
  `Version ${sheet.version}`,
  sheet.replaces,
];

test.each(CASES)('the $name sheet on $paper has as many pages as it says', async ({ sheet, paper }) => {
  expect(pageCount(await draw(sheet, paper))).toBe(sheet === SAMPLES.heavy || sheet === SAMPLES.rare ? 2 : 1);
});

test.each(CASES)('every page of the $name sheet is as large as $paper', async ({ sheet, paper }) => {
  for (const [width, height] of pageSizes(await draw(sheet, paper))) {
    expect(width).toBeCloseTo(PAGE_SIZES[paper][0], 1);
    expect(height).toBeCloseTo(PAGE_SIZES[paper][1], 1);
  }
});

test.each(CASES)('the $name sheet on $paper sets nothing below 13 points, and the number at 60 or more', async ({ sheet, paper }) => {
  const sizes = fontSizes(await draw(sheet, paper));
  expect(sizes[0]).toBeGreaterThanOrEqual(13);
  expect(sizes.at(-1)).toBeGreaterThanOrEqual(60);
});

describe.skipIf(!hasPoppler)('read back', () => {
  test.each(CASES)('the $name sheet on $paper says everything', async ({ sheet, paper }) => {
    const text = textOf(await draw(sheet, paper)).replace(/\s/g, '');
    expect(wordsToFind(sheet).filter((words) => !text.includes(words.replace(/\s/g, '')))).toEqual([]);
  });

  test.each(CASES)('the $name sheet on $paper keeps within its margins, and nothing lies on anything else', async ({ sheet, paper }) => {
    const words = wordsOf(await draw(sheet, paper));
    const [width, height] = PAGE_SIZES[paper];
    // Capitals and figures fill the upper two thirds of the box that the reader reports.
    const inked = words.map((word) => ({ ...word, top: word.top + (word.bottom - word.top) * 0.28, bottom: word.bottom - (word.bottom - word.top) * 0.3 }));
    expect(inked.filter(({ left, right, top, bottom }) => left < 17 || right > width - 16 || top < 17 || bottom > height - 12)).toEqual([]);
    const clashes = inked.flatMap((a, index) =>
      inked.slice(index + 1).filter((b) => a.page === b.page && a.left < b.right - 0.5 && b.left < a.right - 0.5 && a.top < b.bottom && b.top < a.bottom).map((b) => `${a.text} / ${b.text}`),
    );
    expect(clashes).toEqual([]);
  });

  test.each(CASES)('the $name sheet on $paper has its number at the top and at the bottom of every page', async ({ sheet, paper }) => {
    const words = wordsOf(await draw(sheet, paper)).filter((word) => word.text === sheet.number);
    const height = PAGE_SIZES[paper][1];
    const pages = [...new Set(words.map(({ page }) => page))];
    for (const page of pages) {
      const here = words.filter((word) => word.page === page);
      expect(here.some((word) => word.bottom - word.top > 60 && word.bottom < height / 5)).toBe(true);
      expect(here.some((word) => word.top > height * 0.75)).toBe(true);
    }
    expect(words.filter((word) => word.bottom - word.top > 24)).toHaveLength(2 * pages.length + sheet.strips.length);
  });

  test('a list of allergies wider than the page goes on in the next bar, and no word of it is cut off', async () => {
    const pdf = await draw(makeSheet({ instructions: { avoid: ALLERGENS, noPork: true, boneless: true } }));
    expect(pageCount(pdf)).toBe(1);
    const text = textOf(pdf).replace(/\s/g, '');
    expect(ALLERGENS.map((id) => allergenName(id).toUpperCase().replace(' ', '')).filter((name) => !text.includes(name))).toEqual([]);
    expect(wordsOf(pdf).filter(({ right }) => right > 612 - 16)).toEqual([]);
  });

  test('a second page is marked on both', async () => {
    const text = textOf(await draw(SAMPLES.heavy));
    expect(text).toContain('1 of 2');
    expect(text).toContain('2 of 2');
    expect(text).toContain('continued on 2 of 2');
  });

  test('each strip carries its title, the number and the name', async () => {
    const sheet = makeSheet({ instructions: { keep: { heart: false, liver: false, bones: false, antlers: 'skull-plate', cape: true, hide: false, taxidermist: '' } } });
    const text = textOf(await draw(sheet));
    expect(sheet.strips.map(({ title }) => title)).toEqual(['ANTLERS', 'CAPE', 'LUG: GRIND', 'BOX 1', 'BOX 2']);
    expect(text.split('Thorn')).toHaveLength(1 + 1 + sheet.strips.length);
  });

  test('hostile and foreign text neither breaks the page nor leaves it', async () => {
    const sheet = makeSheet({
      hunterName: `Ørsted-Łukasz 鹿 ${'W'.repeat(120)}`,
      instructions: { lines: [makeLine('neck', 'mince')], note: `<b>=cmd|' ${'x'.repeat(300)} \u202Etfel 🦌 ${'word '.repeat(40)}` },
    });
    const pdf = await draw(sheet);
    expect(pageCount(pdf)).toBe(1);
    const words = wordsOf(pdf);
    expect(words.filter(({ right }) => right > 612 - 16)).toEqual([]);
    expect(textOf(pdf)).toContain("<b>=cmd|'");
  });
});

test('a name of nothing but foreign letters still draws', async () => {
  expect(pageCount(await draw(makeSheet({ hunterName: '鹿野 山' })))).toBe(1);
});

test('many sheets make one file, a page each', async () => {
  const sheets = [1, 2, 3].map((sequence) => typicalSheet(sequence));
  expect(pageCount(await drawPdf({ kind: 'sheets', paper: 'a4', sheets }))).toBe(3);
});
