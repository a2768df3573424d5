import { Path, Svg, View } from '@react-pdf/renderer';
import type { SheetStop } from '@/lib/documents';
import { type SheetLayout } from './sheet-layout';
import { GAP } from './sheet-sizes';
import { INK, PAPER } from './styles';
import { Words } from './words';

/** White signs on a grid of 24, one for each kind of bar: octagon with a bar, triangle, struck ring, square. */
const SIGNS: Readonly<Record<SheetStop['kind'], { readonly face: string; readonly mark: string }>> = {
  hold: { face: 'M7.5 1 L16.5 1 L23 7.5 L23 16.5 L16.5 23 L7.5 23 L1 16.5 L1 7.5 Z', mark: 'M6 12 L18 12' },
  hazard: { face: 'M12 1 L23.5 22 L0.5 22 Z', mark: 'M12 8 L12 15 M12 17.5 L12 20' },
  never: { face: 'M12 1 C18.1 1 23 5.9 23 12 C23 18.1 18.1 23 12 23 C5.9 23 1 18.1 1 12 C1 5.9 5.9 1 12 1 Z', mark: 'M4.5 4.5 L19.5 19.5' },
  save: { face: 'M2 2 L22 2 L22 22 L2 22 Z', mark: 'M6 12 L10.5 17 L18 7' },
};

/** Black bars with white words half as large again as the lines, each with the sign of its kind. */
export function StopBars({ layout: { stopRows, sizes } }: { readonly layout: SheetLayout }) {
  return stopRows.map((stops) => (
    <View key={stops[0]?.text} style={{ flexDirection: 'row', gap: GAP, height: sizes.stopHeight, marginBottom: 4 }}>
      {stops.map((stop) => (
        <View
          key={stop.text}
          style={{ flexDirection: 'row', alignItems: 'center', flexGrow: 1, backgroundColor: INK, paddingLeft: sizes.stop * 0.3, gap: sizes.stop * 0.3 }}
        >
          <Sign kind={stop.kind} side={sizes.stop * 0.95} />
          <Words size={sizes.stop} weight={700} leading={1.1} color={PAPER} lines={1}>{stop.text}</Words>
        </View>
      ))}
    </View>
  ));
}

function Sign({ kind, side }: { readonly kind: SheetStop['kind']; readonly side: number }) {
  const { face, mark } = SIGNS[kind];
  return (
    <Svg width={side} height={side} viewBox="0 0 24 24">
      <Path d={face} fill={PAPER} />
      <Path d={mark} stroke={INK} strokeWidth={3} fill="none" />
    </Svg>
  );
}
