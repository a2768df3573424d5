import { readFileSync } from 'node:fs';
import path from 'node:path';
import { Font } from '@react-pdf/renderer';
import { isPlainLatin } from './readable-text';
import { unpackWoff } from './unpack-woff';

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
      fonts: ([400, 700] as const).map((fontWeight) => {
        const plain = unpackWoff(readFileSync(path.join(folder, `${NAME}-${script}-${fontWeight}-normal.woff`)));
        return { src: `data:font/ttf;base64,${plain.toString('base64')}`, fontWeight };
      }),
    });
  }
  Font.registerHyphenationCallback(unbroken);
}

const LONGEST_WORD = 28;

/** No word is broken, save what is too long to be one and would run off the page. */
function unbroken(word: string): string[] {
  const signs = [...word];
  if (signs.length <= LONGEST_WORD) return [word];
  return Array.from({ length: Math.ceil(signs.length / 7) }, (_, index) => signs.slice(index * 7, index * 7 + 7).join(''));
}

/** The family a text is set in: the extended file is asked only where a letter needs it. */
export function familyOf(text: string): string | string[] {
  return isPlainLatin(text) ? LATIN : [LATIN, EXTENDED];
}
