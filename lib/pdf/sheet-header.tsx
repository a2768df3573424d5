import { Path, Svg, View } from '@react-pdf/renderer';
import type { CuttingSheet } from '@/lib/documents';
import { qrPath } from './qr-path';
import { GAP, type SheetLayout } from './sheet-layout';
import { INK, PAPER, row } from './styles';
import { sizeToFit, textWidth } from './text-width';
import { Words } from './words';

type HeaderProps = { readonly sheet: CuttingSheet; readonly layout: SheetLayout; readonly page: string };

/** The number as large as the page allows, whose animal it is, which version of which page this is, and the code. */
export function SheetHeader({ sheet, layout: { width, sizes }, page }: HeaderProps) {
  const left = width - sizes.code - GAP;
  const animal = textWidth(sheet.animal, sizes.animal, 400) + 12;
  const surname = sizeToFit(sheet.surname, left - animal, 700, { most: sizes.surname, least: 18 });
  return (
    <View style={{ flexDirection: 'row', height: sizes.header, justifyContent: 'space-between' }}>
      <View style={{ width: left }}>
        <View style={{ flexDirection: 'row', justifyContent: 'space-between' }}>
          <Words size={sizes.number} weight={700} leading={0.9}>{sheet.number}</Words>
          <View style={{ alignItems: 'flex-end', paddingTop: 2 }}>
            <View style={{ ...row, backgroundColor: page === '' ? PAPER : INK, paddingHorizontal: page === '' ? 0 : 6 }}>
              <Words size={17} weight={700} color={page === '' ? INK : PAPER}>{page === '' ? `Version ${sheet.version}` : page}</Words>
            </View>
            {page !== '' && <Words size={14} weight={700}>{`Version ${sheet.version}`}</Words>}
            {sheet.replaces !== '' && <Words size={14}>{sheet.replaces}</Words>}
            <Words size={14} lines={2} style={{ textAlign: 'right' }}>{`printed ${sheet.printed}`}</Words>
          </View>
        </View>
        <View style={{ flexDirection: 'row', alignItems: 'baseline', gap: 12 }}>
          <Words size={surname} weight={700} leading={1.1} lines={1} style={{ maxWidth: left - animal }}>{sheet.surname}</Words>
          <Words size={sizes.animal} leading={1.1} lines={1}>{sheet.animal}</Words>
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
