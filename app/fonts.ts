import localFont from 'next/font/local';

// The extended-Latin files load only on a page that holds such a letter. They stand first in the
// font list (tokens.css): their range skips plain Latin, and the metric-matched fallback stays last.

const text = localFont({
  src: '../node_modules/@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-wght-normal.woff2',
  variable: '--font-text',
  weight: '200 800',
  display: 'swap',
});

const textExtended = localFont({
  src: '../node_modules/@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-ext-wght-normal.woff2',
  variable: '--font-text-ext',
  weight: '200 800',
  display: 'swap',
  preload: false,
  adjustFontFallback: false,
  declarations: [
    {
      prop: 'unicode-range',
      value: 'U+0100-02BA,U+02BD-02C5,U+02C7-02CC,U+02CE-02D7,U+02DD-02FF,U+1D00-1DBF,U+1E00-1E9F,U+1EF2-1EFF,U+20A0-20AB,U+20AD-20C0,U+2113',
    },
  ],
});

const display = localFont({
  src: '../node_modules/@fontsource-variable/bitter/files/bitter-latin-wght-normal.woff2',
  variable: '--font-display',
  weight: '100 900',
  display: 'swap',
  adjustFontFallback: 'Times New Roman',
});

const displayExtended = localFont({
  src: '../node_modules/@fontsource-variable/bitter/files/bitter-latin-ext-wght-normal.woff2',
  variable: '--font-display-ext',
  weight: '100 900',
  display: 'swap',
  preload: false,
  adjustFontFallback: false,
  declarations: [
    {
      prop: 'unicode-range',
      value: 'U+0100-02BA,U+02BD-02C5,U+02C7-02CC,U+02CE-02D7,U+02DD-02FF,U+1D00-1DBF,U+1E00-1E9F,U+1EF2-1EFF,U+20A0-20AB,U+20AD-20C0,U+2113',
    },
  ],
});

/** Class names for `<html>`; they carry the font variables that tokens.css reads. */
export const fontClasses = `${text.variable} ${textExtended.variable} ${display.variable} ${displayExtended.variable}`;;
