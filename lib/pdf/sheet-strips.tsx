import { View } from '@react-pdf/renderer';
import type { SheetLayout } from './sheet-layout';
import { INK } from './styles';
import { clipText, sizeToFit } from './text-width';
import { Words } from './words';

const dashed = { borderColor: INK, borderStyle: 'dashed' } as const;

/** Strips to cut off and tie to what leaves the carcass: title, number, name. */
export function SheetStrips({ layout: { stripRows, sizes, width } }: { readonly layout: SheetLayout }) {
  return stripRows.map((strips) => (
    <View key={strips[0]?.title} style={{ ...dashed, flexDirection: 'row', height: sizes.stripHeight, borderTopWidth: 1.5 }}>
      {strips.map((strip, index) => {
        const wide = width / strips.length;
        const fitted = (text: string, most: number, least: number): number => sizeToFit(text, wide - 10, 700, { most, least });
        return (
          <View key={strip.title} style={{ ...dashed, width: wide, borderLeftWidth: index === 0 ? 0 : 1.5, alignItems: 'center', justifyContent: 'space-between', paddingVertical: 2 }}>
            <Words size={fitted(strip.title, sizes.stripTitle + 2, sizes.stripTitle)} weight={700} leading={1.05} lines={1}>{strip.title}</Words>
            <Words size={fitted(strip.number, sizes.stripNumber, 25)} weight={700} leading={1.1}>{strip.number}</Words>
            <Words size={14} weight={700} leading={1.05}>{clipText(strip.name, wide - 10, 14, 700)}</Words>
          </View>
        );
      })}
    </View>
  ));
}
