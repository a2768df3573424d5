import { type QRCode, create } from 'qrcode';

/** A QR code as one path on a grid of whole modules, its four quiet modules on every side included. */
export type QrPath = { readonly d: string; readonly modules: number };

const QUIET = 4;

/**
 * Draws a text as a QR code, a run of dark modules in a row as one rectangle: of level Q, and of H where that makes it no
 * larger, as it does for a number with its version. Throws on a text too long for any code.
 */
export function qrPath(text: string): QrPath {
  const modules = strongestModules(text);
  const { size } = modules;
  const dark = (row: number, column: number): boolean => column < size && modules.get(row, column) === 1;
  let d = '';
  for (let row = 0; row < size; row += 1) {
    for (let column = 0; column < size; column += 1) {
      if (!dark(row, column)) continue;
      const from = column;
      while (dark(row, column)) column += 1;
      d += `M${from + QUIET} ${row + QUIET}H${column + QUIET}V${row + QUIET + 1}H${from + QUIET}Z`;
    }
  }
  return { d, modules: size + 2 * QUIET };
}

function strongestModules(text: string): QRCode['modules'] {
  const usual = create(text, { errorCorrectionLevel: 'Q' });
  try {
    return create(text, { errorCorrectionLevel: 'H', version: usual.version }).modules;
  } catch {
    // The stronger code does not fit the same grid.
    return usual.modules;
  }
}
