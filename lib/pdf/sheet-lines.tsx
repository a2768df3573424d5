import { View } from '@react-pdf/renderer';
import type { SheetLine } from '@/lib/documents';
import { LEADING, type LaidRow, MARKER, NOTE_PADDING, type SheetLayout, makeRows, sharedWidth, sharedWords, weightOf } from './sheet-layout';
import { GAP } from './sheet-sizes';
import { GREY, INK, PAPER } from './styles';
import { Words, WordsPair } from './words';

/** The cells may reach over their row by this much before the renderer leaves words out. */
const SLACK = 3;

/** The lines in knife order. A departure is heavy, with a black edge and a black side sign; the usual is light. */
export function SheetLines({ rows, layout }: { readonly rows: readonly LaidRow[]; readonly layout: SheetLayout }) {
  return rows.map((row) =>
    row.kind === 'title' ? (
      <View key={row.block.title} style={{ height: row.height, flexDirection: 'row', alignItems: 'flex-end', gap: GAP, borderTopWidth: 2.5, borderTopColor: INK }}>
        <Words size={layout.sizes.title} weight={700}>{row.block.title}</Words>
        <Words size={layout.sizes.title} lines={1} style={{ flexShrink: 1 }}>{row.block.seams}</Words>
      </View>
    ) : (
      <Line key={`${row.line.part} ${row.line.action}`} row={row} layout={layout} />
    ),
  );
}

type LineProps = { readonly row: Extract<LaidRow, { kind: 'line' }>; readonly layout: SheetLayout };

function Line({ row: { line, height, opensBlock }, layout: { columns, sizes } }: LineProps) {
  const weight = weightOf(line);
  const shared = sharedWords(line);
  const cell = { size: sizes.line, weight, leading: LEADING };
  const rule = opensBlock ? { borderTopWidth: 2.5, borderTopColor: INK } : { borderTopWidth: 0.75, borderTopColor: GREY };
  return (
    <View style={{ height, flexDirection: 'row', alignItems: 'center', ...rule }}>
      <View style={{ width: MARKER - 3, marginRight: 3, height: height - 4, backgroundColor: line.isDeparture ? INK : PAPER }} />
      <View style={{ flexDirection: 'row', gap: GAP, alignItems: 'center', height: height + 2 * SLACK, marginVertical: -SLACK }}>
        <SideSign line={line} size={sizes.side} width={columns.side} />
        <Words {...cell} style={{ width: columns.part }}>{line.name}</Words>
        <Make line={line} columns={columns} sizes={sizes} />
        {shared === null ? (
          <>
            <Words {...cell} style={{ width: columns.size }}>{line.size}</Words>
            <Words {...cell} style={{ width: columns.pack }}>{line.pack}</Words>
          </>
        ) : (
          <Words {...cell} style={{ width: sharedWidth(columns) }}>{shared}</Words>
        )}
      </View>
    </View>
  );
}

type MakeProps = { readonly line: SheetLine } & Pick<SheetLayout, 'columns' | 'sizes'>;

/** What to make, large; how to make it, smaller; what to mind, white on black. */
function Make({ line, columns, sizes }: MakeProps) {
  const weight = weightOf(line);
  return (
    <View style={{ width: columns.make }}>
      {makeRows(line, columns.make, sizes).map(({ pieces }) => (
        <View key={pieces[0]} style={{ flexDirection: 'row', alignItems: 'center' }}>
          {pieces.includes('make') && (
            <WordsPair first={{ text: line.make, size: sizes.line, weight }} second={{ text: pieces.includes('manner') ? line.manner : '', size: sizes.detail, weight }} />
          )}
          {pieces[0] === 'manner' && <Words size={sizes.detail} weight={weight} leading={LEADING}>{line.manner}</Words>}
          {pieces.includes('note') && (
            <Words
              size={sizes.detail}
              weight={700}
              leading={LEADING}
              color={PAPER}
              style={{ backgroundColor: INK, paddingHorizontal: NOTE_PADDING, marginLeft: pieces[0] === 'note' ? 0 : NOTE_PADDING + 2 }}
            >
              {line.note}
            </Words>
          )}
        </View>
      ))}
    </View>
  );
}

/** L on the left, R on the right, both across; nothing for a part that has no sides. */
function SideSign({ line, size, width }: { readonly line: SheetLine; readonly size: number; readonly width: number }) {
  if (line.side === 'middle') return <View style={{ width }} />;
  const half = (width - 2) / 2;
  const box = {
    width: line.side === 'both' ? width : half,
    marginLeft: line.side === 'right' ? width - half : 0,
    marginRight: line.side === 'left' ? width - half : 0,
    height: size * 1.5,
    alignItems: 'center' as const,
    justifyContent: 'center' as const,
    borderWidth: 1.25,
    borderColor: INK,
    backgroundColor: line.isDeparture ? INK : PAPER,
  };
  const letters = line.side === 'both' ? 'L+R' : line.side === 'left' ? 'L' : 'R';
  return (
    <View style={box}>
      <Words size={size} weight={700} leading={1} color={line.isDeparture ? PAPER : INK}>{letters}</Words>
    </View>
  );
}
