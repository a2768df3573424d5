declare module 'fontkit' {
  type Font = {
    readonly unitsPerEm: number;
    readonly hasGlyphForCodePoint: (point: number) => boolean;
    readonly glyphForCodePoint: (point: number) => { readonly advanceWidth: number };
    readonly layout: (text: string) => { readonly advanceWidth: number };
  };
  export function create(bytes: Uint8Array): Font;
}
