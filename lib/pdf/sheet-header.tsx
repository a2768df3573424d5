import { Path, Svg, View } from '@react-pdf/renderer';
import type { CuttingSheet } from '@/lib/documents';
import { qrPath } from './qr-path';
import { type SheetLayout } from './sheet-layout';
import { GAP } from './sheet-sizes';
import { INK, PAPER } from './styles';
import { clipText, sizeToFit, textWidth } from './text-width';
import { Words } from './words';

type HeaderProps = { readonly sheet: CuttingSheet; readonly layout: SheetLayout; readonly page: string };

/** The number as large as the page allows, whose animal it is, which version of which page this is, and the code. */
export function SheetHeader({ sheet, layout: { width, sizes }, page }: HeaderProps) {
  const left = width - sizes.code - GAP;
  const beside = left - textWidth(sheet.number, sizes.number, 700) - GAP;
  const forName = left - textWidth(sheet.animal, sizes.animal, 400) - 12;
  const surname = sizeToFit(sheet.surname, forName, 700, { most: sizes.surname, least: 18 });
  const meta = { size: 14, leading: 1.15, style: { textAlign: 'right' } } as const;
  return (
    <View style={{ flexDirection: 'row', height: sizes.header, justifyContent: 'space-between' }}>
      <View style={{ width: left, height: sizes.header }}>
        <View style={{ flexDirection: 'row', justifyContent: 'space-between' }}>
          <Words size={sizes.number} weight={700} leading={0.9} style={{ marginTop: sizes.number * -0.17 }}>{sheet.number}</Words>
          <View style={{ width: beside, alignItems: 'flex-end' }}>
            {page !== '' && (
              <View style={{ backgroundColor: INK, paddingHorizontal: 6 }}>
                <Words size={17} weight={700} leading={1.15} color={PAPER}>{page}</Words>
              </View>
            )}
            <Words {...meta} weight={700}>{`Version ${sheet.version}`}</Words>
            {sheet.replaces !== '' && <Words {...meta}>{sheet.replaces}</Words>}
            <Words {...meta}>{`printed ${sheet.printed}`}</Words>
          </View>
        </View>
        <View style={{ flexDirection: 'row', alignItems: 'baseline', gap: 12, position: 'absolute', left: 0, bottom: 4 }}>
          <Words size={surname} weight={700} leading={1.1}>{clipText(sheet.surname, forName, surname, 700)}</Words>
          <Words size={sizes.animal} leading={1.1}>{sheet.animal}</Words>
        </View>
      </View>
      <Code text={sheet.code} side={sizes.code} />
    </View>
  );
}

function Code({ text, side }: { readonly text: string; readonly side: number }) {
  const { d, modules } = qrPath(text);
  return (
    <Svg width={side} height={side} viewBox={`0 0 ${modules} ${modules}`}>
      <Path d={d} fill={INK} />
    </Svg>
  );
}
