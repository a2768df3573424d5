import jsQR from 'jsqr';
import { describe, expect, test } from 'vitest';
import { drawPdf } from '@/lib/pdf/draw';
import { qrPath } from '@/lib/pdf/qr-path';
import { layOutSheet } from '@/lib/pdf/sheet-layout';
import { type Raster, hasPoppler, rasterOf } from './read-pdf';
import { typicalSheet } from './samples';

const DOTS_PER_POINT = 203 / 72;
const SMUDGED = 0.1;

test('a number with its version takes the smallest code, with four quiet modules round it', () => {
  const { d, modules } = qrPath('104277V999');
  expect(modules).toBe(21 + 8);
  const places = [...d.matchAll(/[MHV](\d+)(?: (\d+))?/g)].flatMap(([, x, y]) => (y === undefined ? [Number(x)] : [Number(x), Number(y)]));
  expect([Math.min(...places), Math.max(...places)]).toEqual([4, 25]);
});

/** The corner of a page that holds the code, turned about its middle. White stands outside it. */
function cornerOf({ width, ink }: Raster, side: number, degrees: number): Raster {
  const angle = (degrees * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const margin = Math.round(18 * DOTS_PER_POINT);
  const [left, top] = [width - margin - side, margin];
  const middle = side / 2;
  const turned = new Uint8Array(side * side);
  for (let y = 0; y < side; y += 1) {
    for (let x = 0; x < side; x += 1) {
      const fromX = Math.round(cos * (x - middle) + sin * (y - middle) + middle);
      const fromY = Math.round(cos * (y - middle) - sin * (x - middle) + middle);
      const inside = fromX >= 0 && fromY >= 0 && fromX < side && fromY < side;
      turned[y * side + x] = inside ? (ink[(top + fromY) * width + left + fromX] ?? 0) : 0;
    }
  }
  return { width: side, height: side, ink: turned };
}

/** A blot over a tenth of the code, of ink or of wet paper, away from its three corner marks. */
function smudged(raster: Raster, colour: 0 | 1): Raster {
  const code = (raster.width * 21) / 29;
  const blot = Math.sqrt(SMUDGED) * code;
  const from = (raster.width * 25) / 29 - blot;
  const ink = raster.ink.map((dot, at) => {
    const [x, y] = [at % raster.width, Math.floor(at / raster.width)];
    return x >= from && x < from + blot && y >= from && y < from + blot ? colour : dot;
  });
  return { ...raster, ink };
}

function read({ width, height, ink }: Raster): string | undefined {
  const rgba = new Uint8ClampedArray(width * height * 4);
  ink.forEach((dot, at) => rgba.set([dot ? 0 : 255, dot ? 0 : 255, dot ? 0 : 255, 255], at * 4));
  return jsQR(rgba, width, height)?.data;
}

describe.skipIf(!hasPoppler)('the code on a sheet, printed at 203 dots to the inch in one bit', () => {
  const sheet = typicalSheet();
  const raster = drawPdf({ kind: 'sheets', paper: 'letter', sheets: [sheet] }).then(rasterOf);
  const side = Math.round(layOutSheet(sheet, 'letter').sizes.code * DOTS_PER_POINT);

  test.each([-5, 0, 5])('reads turned by %i degrees', async (degrees) => {
    expect(read(cornerOf(await raster, side, degrees))).toBe('104277V1');
  });

  test.each([
    ['ink', 1, 5],
    ['ink', 1, -5],
    ['wet paper', 0, 5],
    ['wet paper', 0, -5],
  ] as const)('reads with a tenth of it lost to %s (%i), turned by %i degrees', async (_, colour, degrees) => {
    expect(read(smudged(cornerOf(await raster, side, degrees), colour))).toBe('104277V1');
  });

  test('is no longer read when half of it is gone', async () => {
    const { ink, ...size } = cornerOf(await raster, side, 5);
    expect(read({ ...size, ink: ink.map((dot, at) => (at % size.width > size.width / 2 ? 0 : dot)) })).toBeUndefined();
  });

  test('gives each module at least four dots', () => {
    expect(side / 29).toBeGreaterThanOrEqual(4);
  });
});
