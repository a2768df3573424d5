import path from 'node:path';
import { Font } from '@react-pdf/renderer';
import { isPlainLatin } from './readable-text';

const NAME = 'atkinson-hyperlegible-next';
const LATIN = 'Hyperlegible';
const EXTENDED = 'HyperlegibleExtended';

/** Makes the embedded face known to the renderer, and stops it from breaking words. Once in a thread. */
export function registerFonts(): void {
  // Read at run time from the checkout, not bundled.
  const folder = path.join(/* turbopackIgnore: true */ process.cwd(), 'lib', 'pdf', 'fonts');
  for (const [family, script] of [[LATIN, 'latin'], [EXTENDED, 'latin-ext']] as const) {
    Font.register({
      family,
      fonts: ([400, 700] as const).map((fontWeight) => ({ src: path.join(folder, `${NAME}-${script}-${fontWeight}-normal.woff`), fontWeight })),
    });
  }
  Font.registerHyphenationCallback((word) => [word]);
}

/** The family a text is set in: the extended file is asked only where a letter needs it. */
export function familyOf(text: string): string | string[] {
  return isPlainLatin(text) ? LATIN : [LATIN, EXTENDED];
}
