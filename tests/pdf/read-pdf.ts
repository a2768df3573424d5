import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { inflateSync } from 'node:zlib';

/** Whether the programs that read a PDF back are there. */
export const hasPoppler = ['pdftotext', 'pdftoppm'].every((program) => {
  try {
    execFileSync(program, ['-v'], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
});

export type Word = { readonly page: number; readonly text: string; readonly left: number; readonly top: number; readonly right: number; readonly bottom: number };

/** Counts the pages of a file. */
export function pageCount(pdf: Uint8Array): number {
  return [...Buffer.from(pdf).toString('latin1').matchAll(/\/Type \/Page\b/g)].length;
}

/** Width and height of every page, in points. */
export function pageSizes(pdf: Uint8Array): readonly (readonly [number, number])[] {
  return [...Buffer.from(pdf).toString('latin1').matchAll(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/g)].map(([, width, height]) => [Number(width), Number(height)]);
}

/** Every size that a text is set in, in points, from the drawing commands themselves; each once, smallest first. */
export function fontSizes(pdf: Uint8Array): readonly number[] {
  const bytes = Buffer.from(pdf);
  const sizes = new Set<number>();
  for (let at = bytes.indexOf('stream\n'); at >= 0; at = bytes.indexOf('stream\n', at + 7)) {
    if (bytes.subarray(at - 3, at).toString() === 'end') continue;
    const commands = inflated(bytes.subarray(at + 7, bytes.indexOf('endstream', at)));
    for (const [, size] of commands.matchAll(/\/F\d+ ([\d.]+) Tf/g)) sizes.add(Number(size));
  }
  return [...sizes].sort((a, b) => a - b);
}

function inflated(bytes: Buffer): string {
  try {
    return inflateSync(bytes).toString('latin1');
  } catch {
    return '';
  }
}

/** The words of a file as a reader finds them, with their boxes in points from the top left corner. */
export function wordsOf(pdf: Uint8Array): readonly Word[] {
  const xml = withFile(pdf, (file) => execFileSync('pdftotext', ['-bbox', file, '-'], { encoding: 'utf8' }));
  return xml.split('<page ').slice(1).flatMap((page, index) =>
    [...page.matchAll(/<word xMin="([\d.-]+)" yMin="([\d.-]+)" xMax="([\d.-]+)" yMax="([\d.-]+)">([^<]*)</g)].map(([, left, top, right, bottom, text = '']) => ({
      page: index + 1,
      text: text.replaceAll('&amp;', '&').replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&quot;', '"').replaceAll('&#39;', "'"),
      left: Number(left),
      top: Number(top),
      right: Number(right),
      bottom: Number(bottom),
    })),
  );
}

/** All words of a file in reading order, one blank between two. */
export function textOf(pdf: Uint8Array): string {
  return withFile(pdf, (file) => execFileSync('pdftotext', ['-raw', file, '-'], { encoding: 'utf8' })).replace(/\s+/g, ' ');
}

/** A one-bit picture: 1 is ink. */
export type Raster = { readonly width: number; readonly height: number; readonly ink: Uint8Array };

/** The first page as a printer of 203 dots to the inch would set it. */
export function rasterOf(pdf: Uint8Array): Raster {
  return withFile(pdf, (file, folder) => {
    execFileSync('pdftoppm', ['-r', '203', '-mono', '-f', '1', '-l', '1', file, join(folder, 'page')]);
    const name = readdirSync(folder).find((one) => one.endsWith('.pbm')) ?? '';
    const bytes = readFileSync(join(folder, name));
    const [head = '', width = '', height = ''] = /^P4\s+(\d+)\s+(\d+)\s/.exec(bytes.subarray(0, 40).toString('latin1')) ?? [];
    const size = { width: Number(width), height: Number(height) };
    const stride = Math.ceil(size.width / 8);
    const ink = new Uint8Array(size.width * size.height);
    for (let y = 0; y < size.height; y += 1) {
      for (let x = 0; x < size.width; x += 1) {
        ink[y * size.width + x] = ((bytes[head.length + y * stride + (x >> 3)] ?? 0) >> (7 - (x & 7))) & 1;
      }
    }
    return { ...size, ink };
  });
}

function withFile<T>(pdf: Uint8Array, read: (file: string, folder: string) => T): T {
  const folder = mkdtempSync(join(tmpdir(), 'gambrel-pdf-'));
  try {
    const file = join(folder, 'file.pdf');
    writeFileSync(file, pdf);
    return read(file, folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
