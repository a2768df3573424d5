import { View } from '@react-pdf/renderer';
import type { ReactNode } from 'react';
import type { CuttingSheet } from '@/lib/documents';
import { SheetChart } from './sheet-chart';
import { GAP, type SheetLayout } from './sheet-layout';
import { INK, PAPER, grow } from './styles';
import { Words } from './words';

type BoxesProps = { readonly sheet: CuttingSheet; readonly layout: SheetLayout };

/** Chart, weight and mince, products, what is kept: side by side. */
export function SheetBand({ sheet, layout: { sizes, heights } }: BoxesProps) {
  return (
    <View style={{ flexDirection: 'row', gap: GAP, height: heights.band, marginTop: GAP }}>
      <SheetChart marks={sheet.marks} height={sizes.chart} />
      <Box title={sheet.grindTitle}>
        {sheet.grind.map(({ label, value }) => (
          <View key={label} style={{ flexDirection: 'row', alignItems: 'baseline', gap: 5 }}>
            <Words size={sizes.label}>{label}</Words>
            <Words size={sizes.value} weight={700} lines={1}>{value}</Words>
          </View>
        ))}
        <Words size={sizes.label} lines={2}>{sheet.weight}</Words>
      </Box>
      {sheet.products.length > 0 && (
        <Box title="PRODUCTS">
          {sheet.products.map((product) => (
            <View key={product.name}>
              <Words size={sizes.value} weight={700}>{product.name}</Words>
              <Words size={sizes.label}>{product.setAside}</Words>
              {product.added !== '' && <Words size={sizes.label} weight={700}>{product.added}</Words>}
            </View>
          ))}
        </Box>
      )}
      {sheet.keep.length > 0 && (
        <Box title="KEEP">
          {sheet.keep.map((item) => (
            <Words key={item} size={sizes.value} weight={700}>{item}</Words>
          ))}
        </Box>
      )}
    </View>
  );
}

function Box({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <View style={{ ...grow, borderWidth: 1.25, borderColor: INK }}>
      <View style={{ backgroundColor: INK, paddingHorizontal: 4 }}>
        <Words size={14} weight={700} color={PAPER}>{title}</Words>
      </View>
      <View style={{ paddingHorizontal: 4, paddingTop: 2 }}>{children}</View>
    </View>
  );
}

/** Boxes to write in with a wet hand. */
export function WriteIns({ sheet, layout: { sizes } }: BoxesProps) {
  return (
    <View style={{ flexDirection: 'row', height: sizes.writeIn, marginTop: GAP }}>
      {sheet.writeIns.map((label, index) => (
        <View key={label} style={{ ...grow, borderWidth: 1.25, borderLeftWidth: index === 0 ? 1.25 : 0, borderColor: INK, paddingHorizontal: 4 }}>
          <Words size={sizes.label}>{label}</Words>
        </View>
      ))}
    </View>
  );
}

/** The number again, and the line that is signed last. */
export function SignOff({ sheet, layout: { sizes }, words }: BoxesProps & { readonly words: string }) {
  return (
    <View style={{ flexDirection: 'row', alignItems: 'flex-end', height: sizes.signOff, gap: GAP }}>
      <Words size={sizes.numberAgain} weight={700} leading={1}>{sheet.number}</Words>
      <View style={{ ...grow, flexDirection: 'row', alignItems: 'flex-end', borderBottomWidth: 1.25, borderBottomColor: INK, marginBottom: 7 }}>
        <Words size={sizes.fact} weight={700}>{words}</Words>
      </View>
    </View>
  );
}
