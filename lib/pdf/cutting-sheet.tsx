import { Page, View } from '@react-pdf/renderer';
import type { CuttingSheet } from '@/lib/documents';
import { PAGE_SIZES, type Paper } from './job';
import { SheetBand, SignOff, TaggedLines, WriteIns } from './sheet-boxes';
import { SheetHeader } from './sheet-header';
import { MARGIN, layOutSheet, restWords } from './sheet-layout';
import { GAP } from './sheet-sizes';
import { SheetLines } from './sheet-lines';
import { StopBars } from './sheet-stops';
import { SheetStrips } from './sheet-strips';
import { INK } from './styles';
import { Words } from './words';

/** The page or pages of one animal. Every height is settled beforehand, so that a page never breaks by itself. */
export function CuttingSheetPages({ sheet, paper }: { readonly sheet: CuttingSheet; readonly paper: Paper }) {
  const layout = layOutSheet(sheet, paper);
  const { pages, sizes, heights } = layout;
  const [width, height] = PAGE_SIZES[paper];
  return pages.map((rows, index) => {
    const isFirst = index === 0;
    const isLast = index === pages.length - 1;
    const page = pages.length === 1 ? '' : `${index + 1} of ${pages.length}`;
    return (
      <Page key={page} size={[width, height]} wrap={false} style={{ padding: MARGIN }}>
        {/* A page that is not broken takes the height of what is in it, not that of the paper. */}
        <View style={{ height: height - 2 * MARGIN }}>
          <SheetHeader sheet={sheet} layout={layout} page={page} />
          <StopBars layout={layout} />
          <SheetLines rows={rows} layout={layout} />
          {isLast && (
            <View style={{ height: heights.rest, borderTopWidth: 2.5, borderTopColor: INK, paddingTop: 1 }}>
              <Words size={sizes.fact}>{restWords(sheet)}</Words>
            </View>
          )}
          {isFirst && <SheetBand sheet={sheet} layout={layout} />}
          {isFirst && <TaggedLines sheet={sheet} layout={layout} />}
          {isFirst && sheet.markWords !== '' && (
            <View style={{ height: heights.marks }}>
              <Words size={sizes.fact} weight={700}>{sheet.markWords}</Words>
            </View>
          )}
          {isLast && sheet.note !== '' && (
            <View style={{ height: heights.note, paddingTop: 3 }}>
              <Words size={sizes.note}>{`Hunter's note: ${sheet.note}`}</Words>
            </View>
          )}
          <View style={{ flexGrow: 1, minHeight: GAP }} />
          {isLast && <WriteIns sheet={sheet} layout={layout} />}
          <SignOff sheet={sheet} layout={layout} words={isLast ? sheet.signOff : `continued on ${index + 2} of ${pages.length}`} />
          {isLast && (
            <View style={{ height: heights.cautions, paddingTop: 3 }}>
              <Words size={sizes.caution}>{sheet.cautions.join(' ')}</Words>
            </View>
          )}
          {isLast && <SheetStrips layout={layout} />}
        </View>
      </Page>
    );
  });
}
