import type { CuttingSheet, SheetBlock, SheetLine, SheetStop } from '@/lib/documents';
import { PAGE_SIZES, type Paper } from './job';
import { FLOOR, LARGEST, type SheetSizes, sizesFor } from './sheet-sizes';
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
    readonly marks: number;
    readonly rest: number;
    readonly note: number;
    readonly cautions: number;
  };
  readonly pages: readonly (readonly LaidRow[])[];
};

export const MARGIN = 20;
/** Line to line, as a multiple of the size. */
export const LEADING = 1.27;
export const GAP = 8;
export const MARKER = 8;
const ROW_PADDING = 3;
const BLOCK_GAP = 4;
const TWO_PAGES_LARGEST = 20;

/**
 * Chooses the sizes of a sheet and shares its lines out over pages: the largest lines, from 24 points down, with which
 * everything stands on one page; where not even the smallest do, the largest with which it stands on two.
 */
export function layOutSheet(sheet: CuttingSheet, paper: Paper): SheetLayout {
  for (let line = LARGEST; line >= FLOOR; line -= 0.5) {
    const layout = layOutAt(sheet, paper, line);
    if (layout.pages.length === 1) return layout;
  }
  for (let line = TWO_PAGES_LARGEST; line > FLOOR; line -= 0.5) {
    const layout = layOutAt(sheet, paper, line);
    if (layout.pages.length === 2) return layout;
  }
  return layOutAt(sheet, paper, FLOOR);
}

/** Whether a line names no size and no pack of its own: the same words stand for both, and are said once. */
export function saysOnce(line: Pick<SheetLine, 'size' | 'pack'>): boolean {
  return line.size === line.pack || line.pack === '';
}

function layOutAt(sheet: CuttingSheet, paper: Paper, lineSize: number): SheetLayout {
  const sizes = sizesFor(lineSize);
  const width = PAGE_SIZES[paper][0] - 2 * MARGIN;
  const columns = columnsOf(sheet, width, sizes);
  const frame: Omit<SheetLayout, 'pages'> = {
    paper,
    width,
    sizes,
    columns,
    stopRows: stopRowsOf(sheet.stops, width, sizes),
    stripRows: stripRowsOf(sheet.strips),
    heights: {
      band: bandHeight(sheet, sizes),
      marks: textHeight(sheet.markWords, width, sizes.fact, 700),
      rest: textHeight(sheet.rest, width, sizes.fact, 400) + 8,
      note: sheet.note === '' ? 0 : textHeight(`Hunter's note: ${sheet.note}`, width - 2 * GAP, sizes.note, 400) + 10,
      cautions: textHeight(sheet.cautions.join(' '), width, sizes.caution, 400) + 4,
    },
  };
  return { ...frame, pages: shareOut(sheet.blocks.flatMap((block) => rowsOf(block, columns, sizes)), frame) };
}

/** Each column as wide as its widest words ask, within bounds; the action has what is left. */
function columnsOf({ blocks }: CuttingSheet, width: number, sizes: SheetSizes): Columns {
  const lines = blocks.flatMap((block) => block.lines);
  const widest = (most: number, words: readonly (readonly [string, SheetLine])[]): number =>
    Math.min(most, Math.max(0, ...words.map(([text, line]) => textWidth(text, sizes.line, weightOf(line)))));
  const side = Math.ceil(sizes.line * 2.1);
  const part = Math.ceil(widest(width * 0.28, lines.map((line) => [line.name, line])));
  const apart = lines.filter((line) => !saysOnce(line));
  const pack = Math.ceil(widest(width * 0.16, apart.map((line) => [line.pack, line])));
  const together = widest(width * 0.36, lines.filter(saysOnce).map((line) => [line.size, line]));
  const size = Math.ceil(Math.max(widest(width * 0.22, apart.map((line) => [line.size, line])), together - pack - (pack > 0 ? GAP : 0)));
  const taken = MARKER + side + part + size + pack + 3 * GAP + (pack > 0 ? GAP : 0);
  return { side, part, make: width - taken, size, pack };
}

export function weightOf({ isDeparture }: Pick<SheetLine, 'isDeparture'>): Weight {
  return isDeparture ? 700 : 400;
}

function rowsOf(block: SheetBlock, columns: Columns, sizes: SheetSizes): readonly LaidRow[] {
  const title: LaidRow[] = block.seams === '' ? [] : [{ kind: 'title', block, height: sizes.titleHeight + BLOCK_GAP }];
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
  const note = textHeight(line.note, columns.part + columns.make + columns.size, sizes.detail, 700);
  const cells = [
    high(line.name, columns.part),
    makeHeight(line, columns.make, sizes),
    ...(saysOnce(line)
      ? [high(line.size, columns.size + (columns.pack > 0 ? GAP + columns.pack : 0))]
      : [high(line.size, columns.size), high(line.pack, columns.pack)]),
  ];
  return Math.max(...cells) + note + ROW_PADDING;
}

/** Whether what to make and how to make it stand on one line. */
export function isOneLine({ make, manner, ...line }: SheetLine, width: number, sizes: SheetSizes): boolean {
  const weight = weightOf(line);
  return textWidth(make, sizes.line, weight) + textWidth(` ${manner}`, sizes.detail, weight) <= width;
}

function makeHeight(line: SheetLine, width: number, sizes: SheetSizes): number {
  const weight = weightOf(line);
  const make = textHeight(line.make, width, sizes.line, weight);
  return isOneLine(line, width, sizes) ? make : make + textHeight(line.manner, width, sizes.detail, weight);
}

/** Puts bars side by side while they fit, in their order. */
function stopRowsOf(stops: readonly SheetStop[], width: number, sizes: SheetSizes): readonly (readonly SheetStop[])[] {
  const barWidth = (stop: SheetStop): number => textWidth(stop.text, sizes.stop, 700) + sizes.stop * 2;
  const rows: SheetStop[][] = [];
  for (const stop of stops) {
    const row = rows.at(-1);
    const taken = (row ?? []).reduce((total, one) => total + barWidth(one) + GAP, 0);
    if (row && taken + barWidth(stop) <= width) row.push(stop);
    else rows.push([stop]);
  }
  return rows;
}

/** Up to five strips side by side; six or more in two rows. */
function stripRowsOf(strips: CuttingSheet['strips']): readonly CuttingSheet['strips'][] {
  if (strips.length <= 5) return strips.length === 0 ? [] : [strips];
  const half = Math.ceil(strips.length / 2);
  return [strips.slice(0, half), strips.slice(half)];
}

function bandHeight({ grind, keep, products }: CuttingSheet, sizes: SheetSizes): number {
  const title = sizes.label * LEADING + 8;
  const value = sizes.value * LEADING;
  const label = sizes.label * LEADING;
  return Math.max(
    sizes.chart,
    title + (grind.length + 1) * value,
    title + keep.length * value,
    title + products.reduce((total, product) => total + value * 2 + label * (product.added === '' ? 1 : 2), 0),
  );
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
  const first = heights.band + heights.marks + 2 * GAP;
  const last = heights.rest + heights.note + sizes.writeIn + heights.cautions + stripRows.length * sizes.stripHeight + 2 * GAP;
  const spare = room - first - last - sum(rows);
  if (spare >= 0) {
    const each = Math.min(sizes.line * 0.5, spare / rows.length);
    return [rows.map((row) => (row.kind === 'title' ? row : { ...row, height: row.height + each }))];
  }
  const pages: LaidRow[][] = [[]];
  for (const [index, row] of rows.entries()) {
    const page = pages.at(-1) ?? [];
    const head = pages.length === 1 ? first : 0;
    // A title goes with the line under it.
    const needed = row.height + (row.kind === 'title' ? (rows[index + 1]?.height ?? 0) : 0);
    if (page.length > 0 && head + sum(page) + needed > room) pages.push([row]);
    else page.push(row);
  }
  const end = pages.at(-1) ?? [];
  if (pages.length === 1 || sum(end) + last > room) pages.push([]);
  return pages;
}

function sum(rows: readonly LaidRow[]): number {
  return rows.reduce((total, row) => total + row.height, 0);
}
