import { View } from '@react-pdf/renderer';
import type { ReactNode } from 'react';
import type { CuttingSheet } from '@/lib/documents';
import { SheetChart } from './sheet-chart';
import { BOX_PADDING, type SheetLayout, boxWidths, grindRows, taggedLines } from './sheet-layout';
import { GAP } from './sheet-sizes';
import { INK, PAPER, grow } from './styles';
import { Words, WordsPair } from './words';

type BoxesProps = { readonly sheet: CuttingSheet; readonly layout: SheetLayout };

/** Chart, mince and products, side by side. */
export function SheetBand({ sheet, layout: { sizes, heights, width } }: BoxesProps) {
  const wide = boxWidths(sheet, width, sizes);
  return (
    <View style={{ flexDirection: 'row', gap: GAP, height: heights.band, marginTop: GAP }}>
      <SheetChart marks={sheet.marks} height={sizes.chart} />
      <Box title={sheet.grindTitle} width={wide.grind}>
        {grindRows(sheet, wide.grind).map((facts) => (
          <View key={facts[0]?.label} style={{ flexDirection: 'row' }}>
            {facts.map(({ label, value }) => (
              <View key={label} style={grow}>
                <WordsPair first={{ text: label, size: sizes.label, weight: 400 }} second={{ text: value, size: sizes.value, weight: 700 }} />
              </View>
            ))}
          </View>
        ))}
      </Box>
      {sheet.products.length > 0 && (
        <Box title="PRODUCTS" width={wide.products}>
          {sheet.products.map((product) => (
            <View key={product.name}>
              <WordsPair
                first={{ text: product.name, size: sizes.value, weight: 700 }}
                second={{ text: unbroken(product.batch), size: sizes.label, weight: product.batch === 'MIXED BATCH' ? 700 : 400 }}
              />
              <Words size={sizes.label}>{product.setAside}</Words>
              {product.added !== '' && <Words size={sizes.label} weight={700}>{product.added}</Words>}
            </View>
          ))}
          {sheet.ifShort !== '' && <Words size={sizes.label} weight={700}>{sheet.ifShort}</Words>}
        </Box>
      )}
    </View>
  );
}

/** The same words, held on one line. */
function unbroken(text: string): string {
  return text.replaceAll(' ', '\u00A0');
}

/** What goes home besides meat, by when it is wanted, and whose it is: each line under its tag, white on black. */
export function TaggedLines({ sheet, layout: { sizes, width } }: BoxesProps) {
  return taggedLines(sheet, width, sizes).map(({ tag, words, tagWidth, height }) => (
    <View key={tag} style={{ height, paddingTop: 3, flexDirection: 'row' }}>
      <View style={{ width: tagWidth, marginRight: GAP, backgroundColor: INK, alignItems: 'center', alignSelf: 'flex-start' }}>
        <Words size={sizes.label} weight={700} color={PAPER}>{tag}</Words>
      </View>
      <View style={grow}>
        <Words size={sizes.fact} weight={700}>{words}</Words>
      </View>
    </View>
  ));
}

function Box({ title, width, children }: { readonly title: string; readonly width: number; readonly children: ReactNode }) {
  return (
    <View style={{ width, borderWidth: 1.25, borderColor: INK }}>
      <View style={{ backgroundColor: INK, paddingHorizontal: BOX_PADDING }}>
        <Words size={14} weight={700} color={PAPER}>{title}</Words>
      </View>
      <View style={{ paddingHorizontal: BOX_PADDING, paddingTop: 2 }}>{children}</View>
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
      <Words size={sizes.numberAgain} weight={700} leading={0.9} style={{ marginBottom: 2 }}>{sheet.number}</Words>
      <View style={{ ...grow, flexDirection: 'row', alignItems: 'flex-end', borderBottomWidth: 1.25, borderBottomColor: INK, marginBottom: 5 }}>
        <Words size={sizes.fact} weight={700}>{words}</Words>
      </View>
    </View>
  );
}
