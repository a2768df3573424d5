import { carcassChart, type CuttingSheet, type SheetBlock, type SheetLine, type SheetStop } from '@/lib/documents';
import { PAGE_SIZES, type Paper } from './job';
import { FLOOR, type Frame, GAP, LARGEST, type SheetSizes, sizesFor } from './sheet-sizes';
import { barWidth, stopRowsOf } from './stop-rows';
import { lineCount, textWidth, type Weight } from './text-width';

/** Widths of the columns of the lines, in points. */
export type Columns = { readonly side: number; readonly part: number; readonly make: number; readonly size: number; readonly pack: number };

export type LaidRow =
  | { readonly kind: 'title'; readonly block: SheetBlock; readonly height: number }
  | { readonly kind: 'line'; readonly line: SheetLine; readonly height: number; readonly opensBlock: boolean };

/** Where everything of a sheet stands: sizes, columns, the rows of each page, and the heights of the rest. Points. */
export type SheetLayout = {
  readonly paper: Paper;
  readonly width: number;
  readonly sizes: SheetSizes;
  readonly columns: Columns;
  readonly stopRows: readonly (readonly SheetStop[])[];
  readonly stripRows: readonly CuttingSheet['strips'][];
  readonly heights: {
    /** Chart and boxes. */
    readonly band: number;
    /** Lines of what goes home besides meat, by when, and to whom. */
    readonly tagged: number;
    readonly marks: number;
    readonly rest: number;
    readonly note: number;
    readonly cautions: number;
  };
  readonly pages: readonly (readonly LaidRow[])[];
};

export const MARGIN = 18;
/** Line to line, as a multiple of the size. */
export const LEADING = 1.27;
export const MARKER = 7;
export const CHART_GAP = 4;
export const BOX_PADDING = 4;
/** Beside a tag's word, on either side. */
const TAG_PADDING = 5;
/** Before a manner, and on either side of a note. */
export const NOTE_PADDING = 4;
const ROW_PADDING = 2.5;
const BLOCK_GAP = 3;
const TWO_PAGES_LARGEST = 20;
/** Room for the names of a block and its seams is taken only while the lines stay at least this large. */
const TITLES_FROM = 19;

/**
 * Chooses the sizes of a sheet and shares its lines out over pages: the largest lines, from 24 points down, with which
 * everything stands on one page, with a roomy frame where that fits; where not even the smallest do, the largest with which it stands on two.
 */
export function layOutSheet(sheet: CuttingSheet, paper: Paper): SheetLayout {
  return (
    firstWith(1, LARGEST, (line, frame) => layOutAt(sheet, paper, sizesFor(line, frame))) ??
    firstWith(2, TWO_PAGES_LARGEST, (line, frame) => layOutAt(sheet, paper, sizesFor(line, frame))) ??
    layOutAt(sheet, paper, sizesFor(FLOOR, 'tight'))
  );
}

function firstWith(pages: number, largest: number, layOut: (line: number, frame: Frame) => SheetLayout): SheetLayout | undefined {
  for (let line = largest; line >= FLOOR; line -= 0.5) {
    // Where a tight frame does not fit, a roomy one does not either.
    const tight = layOut(line, 'tight');
    if (tight.pages.length !== pages || !barsFit(tight)) continue;
    const roomy = layOut(line, 'roomy');
    return roomy.pages.length === pages ? roomy : tight;
  }
  return undefined;
}

/** What becomes of everything else, and the weight it is all cut from. */
export function restWords({ rest, weight }: CuttingSheet): string {
  return `${rest} ${weight}.`;
}

/** The words of a line whose size and pack are the same or of which only one is named: said once, across both columns. Else null. */
export function sharedWords({ size, pack }: Pick<SheetLine, 'size' | 'pack'>): string | null {
  if (size === '') return pack;
  return pack === '' || pack === size ? size : null;
}

function layOutAt(sheet: CuttingSheet, paper: Paper, sizes: SheetSizes): SheetLayout {
  const width = PAGE_SIZES[paper][0] - 2 * MARGIN;
  const columns = columnsOf(sheet, width, sizes);
  const settled: Omit<SheetLayout, 'pages'> = {
    paper,
    width,
    sizes,
    columns,
    stopRows: stopRowsOf(sheet.stops, width, sizes),
    stripRows: stripRowsOf(sheet.strips),
    heights: {
      band: bandHeight(sheet, width, sizes),
      tagged: taggedLines(sheet, width, sizes).reduce((total, { height }) => total + height, 0),
      marks: textHeight(sheet.markWords, width, sizes.fact, 700),
      rest: textHeight(restWords(sheet), width, sizes.fact, 400) + 7,
      note: sheet.note === '' ? 0 : textHeight(`Hunter's note: ${sheet.note}`, width - 2 * GAP, sizes.note, 400) + 6,
      cautions: textHeight(sheet.cautions.join(' '), width, sizes.caution, 400) + 6,
    },
  };
  return { ...settled, pages: shareOut(sheet.blocks.flatMap((block) => rowsOf(block, settled)), settled) };
}

/** Each column as wide as its widest words ask, within bounds; the action has what is left. */
function columnsOf({ blocks }: CuttingSheet, width: number, sizes: SheetSizes): Columns {
  const lines = blocks.flatMap((block) => block.lines);
  const widest = (most: number, words: readonly (readonly [string, SheetLine])[]): number =>
    Math.min(most, Math.max(0, ...words.map(([text, line]) => textWidth(text, sizes.line, weightOf(line)))));
  const side = Math.ceil(sizes.side * 2.2);
  const part = Math.ceil(widest(width * 0.3, lines.map((line) => [line.name, line])));
  const apart = lines.filter((line) => sharedWords(line) === null);
  const pack = Math.ceil(widest(width * 0.16, apart.map((line) => [line.pack, line])));
  const together = widest(width * 0.36, lines.map((line) => [sharedWords(line) ?? '', line]));
  const size = Math.ceil(Math.max(widest(width * 0.22, apart.map((line) => [line.size, line])), together - pack - (pack > 0 ? GAP : 0)));
  const taken = MARKER + side + part + size + pack + 3 * GAP + (pack > 0 ? GAP : 0);
  return { side, part, make: width - taken, size, pack };
}

export function weightOf({ isDeparture }: Pick<SheetLine, 'isDeparture'>): Weight {
  return isDeparture ? 700 : 400;
}

function rowsOf(block: SheetBlock, { columns, sizes, width }: Pick<SheetLayout, 'columns' | 'sizes' | 'width'>): readonly LaidRow[] {
  const fits = sizes.line >= TITLES_FROM && textWidth(block.title, sizes.title, 700) + GAP + textWidth(block.seams, sizes.title, 400) <= width;
  const title: LaidRow[] = block.seams === '' || !fits ? [] : [{ kind: 'title', block, height: sizes.titleHeight + BLOCK_GAP }];
  return [
    ...title,
    ...block.lines.map((line, index): LaidRow => {
      const opensBlock = index === 0 && title.length === 0;
      return { kind: 'line', line, opensBlock, height: rowHeight(line, columns, sizes) + (opensBlock ? BLOCK_GAP : 0) };
    }),
  ];
}

function rowHeight(line: SheetLine, columns: Columns, sizes: SheetSizes): number {
  const weight = weightOf(line);
  const high = (text: string, width: number): number => textHeight(text, width, sizes.line, weight);
  const shared = sharedWords(line);
  const cells = [
    high(line.name, columns.part),
    makeRows(line, columns.make, sizes).reduce((total, row) => total + row.height, 0),
    ...(shared === null
      ? [high(line.size, columns.size), high(line.pack, columns.pack)]
      : [high(shared, sharedWidth(columns))]),
  ];
  return Math.max(...cells) + ROW_PADDING;
}

/** Width of the columns of size and pack together. */
export function sharedWidth({ size, pack }: Columns): number {
  return size + (pack > 0 ? GAP + pack : 0);
}

type MakePiece = 'make' | 'manner' | 'note';

/** What to make, how, and what to mind: side by side while they fit in the width, else one under another. */
export function makeRows(line: SheetLine, width: number, sizes: SheetSizes): readonly { readonly pieces: readonly MakePiece[]; readonly height: number }[] {
  const weight = weightOf(line);
  const measure = (piece: MakePiece): { readonly size: number; readonly weight: Weight; readonly wide: number } => {
    const size = piece === 'make' ? sizes.line : sizes.detail;
    const of = piece === 'note' ? 700 : weight;
    return { size, weight: of, wide: textWidth(line[piece], size, of) + (piece === 'make' ? 0 : NOTE_PADDING * 2) };
  };
  const rows: { pieces: MakePiece[]; height: number; left: number }[] = [];
  for (const piece of (['make', 'manner', 'note'] as const).filter((one) => line[one] !== '')) {
    const { size, weight: of, wide } = measure(piece);
    const row = rows.at(-1);
    if (row && row.left >= wide) {
      row.pieces.push(piece);
      row.left -= wide;
    } else {
      rows.push({ pieces: [piece], height: textHeight(line[piece], width, size, of), left: width - wide });
    }
  }
  return rows;
}

/** Whether no bar is wider than the page: the lines are then small enough for bars half as large again. */
function barsFit({ stopRows, sizes, width }: SheetLayout): boolean {
  return stopRows.flat().every((stop) => barWidth(stop, sizes) <= width);
}

/** What stands under a tag on the first page, with the width of the tags and the height each takes. */
export function taggedLines(sheet: Pick<CuttingSheet, 'keep' | 'facts'>, width: number, sizes: SheetSizes): readonly TaggedLine[] {
  const all = [...(sheet.keep.length === 0 ? [] : [{ tag: 'KEEP', words: sheet.keep.join(', ') }]), ...sheet.facts];
  const tagWidth = Math.max(0, ...all.map(({ tag }) => textWidth(tag, sizes.label, 700) + 2 * TAG_PADDING));
  return all.map(({ tag, words }) => ({ tag, words, tagWidth, height: textHeight(words, width - tagWidth - GAP, sizes.fact, 700) + 4 }));
}

/** Up to five strips side by side; six or more in two rows. */
function stripRowsOf(strips: CuttingSheet['strips']): readonly CuttingSheet['strips'][] {
  if (strips.length <= 5) return strips.length === 0 ? [] : [strips];
  const half = Math.ceil(strips.length / 2);
  return [strips.slice(0, half), strips.slice(half)];
}

type TaggedLine = { readonly tag: string; readonly words: string; readonly tagWidth: number; readonly height: number };

type BoxWidths = { readonly grind: number; readonly products: number };

/** Widths of the boxes beside the chart; that of the mince has all of it where there are no products. */
export function boxWidths({ products }: CuttingSheet, width: number, sizes: SheetSizes): BoxWidths {
  const room = width - chartWidth(sizes.chart) - GAP;
  if (products.length === 0) return { grind: room, products: 0 };
  const grind = (room - GAP) * 0.45;
  return { grind, products: room - GAP - grind };
}

/** Width of both sides of the chart, and the gap between them. */
export function chartWidth(height: number): number {
  return 2 * ((height * carcassChart.width) / carcassChart.height) + CHART_GAP;
}

function bandHeight(sheet: CuttingSheet, width: number, sizes: SheetSizes): number {
  const wide = boxWidths(sheet, width, sizes);
  const high = (text: string, box: keyof BoxWidths, size: number): number => textHeight(text, wide[box] - 2 * BOX_PADDING, size, 700);
  const total = (heights: readonly number[]): number => sizes.label * LEADING + 5 + heights.reduce((sum, one) => sum + one, 0);
  return Math.max(
    sizes.chart,
    total(grindRows(sheet, wide.grind).map((row) => Math.max(...row.map((one) => pairHeight(one, wide.grind / row.length - 2 * BOX_PADDING, sizes))))),
    total([
      ...sheet.products.map((product) => pairHeight({ label: product.batch, value: product.name }, wide.products - 2 * BOX_PADDING, sizes) + high(product.setAside, 'products', sizes.label) + high(product.added, 'products', sizes.label)),
      high(sheet.ifShort, 'products', sizes.label),
    ]),
  );
}

/** The lines of the mince box: two facts side by side where the box is wide. */
export function grindRows({ grind }: CuttingSheet, width: number): readonly CuttingSheet['grind'][] {
  const across = width > 240 ? 2 : 1;
  return Array.from({ length: Math.ceil(grind.length / across) }, (_, index) => grind.slice(index * across, (index + 1) * across));
}

function pairHeight({ label, value }: CuttingSheet['grind'][number], width: number, sizes: SheetSizes): number {
  const wide = textWidth(label, sizes.label, 700) + textWidth(` ${value}`, sizes.value, 700);
  return Math.ceil(wide / width) * sizes.value * LEADING;
}

function textHeight(text: string, width: number, size: number, weight: Weight): number {
  return lineCount(text, width, size, weight) * size * LEADING;
}

/**
 * Puts rows on pages. Every page has the header, the bars and the number again at its foot; the first the chart and the
 * boxes; the last what is written in, the cautions and the strips. Room left on a single page sets the rows apart.
 */
function shareOut(rows: readonly LaidRow[], { paper, sizes, stopRows, stripRows, heights }: Omit<SheetLayout, 'pages'>): SheetLayout['pages'] {
  const stops = stopRows.length * (sizes.stopHeight + 4);
  const room = PAGE_SIZES[paper][1] - 2 * MARGIN - sizes.header - stops - sizes.signOff - GAP;
  const first = heights.band + heights.tagged + heights.marks + 2 * GAP;
  const last = heights.rest + heights.note + sizes.writeIn + heights.cautions + stripRows.length * sizes.stripHeight + 2 * GAP;
  const spare = room - first - last - sum(rows);
  if (spare >= 0) {
    const each = Math.min(sizes.line * 0.4, spare / rows.length);
    return [rows.map((row) => (row.kind === 'title' ? row : { ...row, height: row.height + each }))];
  }
  const pages: LaidRow[][] = [[]];
  for (const [index, row] of rows.entries()) {
    const page = pages.at(-1) ?? [];
    const head = pages.length === 1 ? first : 0;
    // A title goes with the line under it.
    const needed = row.height + (row.kind === 'title' ? (rows[index + 1]?.height ?? 0) : 0);
    if (page.length > 0 && head + sum(page) + needed > room) pages.push([opening(row)]);
    else page.push(row);
  }
  const end = pages.at(-1) ?? [];
  if (pages.length === 1 || sum(end) + last > room) pages.push([]);
  return pages;
}

/** A row as it stands first on a page: under a heavy rule, as the first of a block does. */
function opening(row: LaidRow): LaidRow {
  return row.kind === 'title' || row.opensBlock ? row : { ...row, opensBlock: true, height: row.height + BLOCK_GAP };
}

function sum(rows: readonly LaidRow[]): number {
  return rows.reduce((total, row) => total + row.height, 0);
}
