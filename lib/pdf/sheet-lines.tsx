import { View } from '@react-pdf/renderer';
import type { SheetLine } from '@/lib/documents';
import { GAP, LEADING, type LaidRow, MARKER, type SheetLayout, isOneLine, saysOnce, weightOf } from './sheet-layout';
import { GREY, INK, PAPER } from './styles';
import { Words } from './words';

/** The lines in knife order. A departure is heavy, with a black edge and a black side sign; the usual is light. */
export function SheetLines({ rows, layout }: { readonly rows: readonly LaidRow[]; readonly layout: SheetLayout }) {
  return rows.map((row, index) =>
    row.kind === 'title' ? (
      <View key={row.block.title} style={{ height: row.height, flexDirection: 'row', alignItems: 'flex-end', gap: GAP, borderTopWidth: 2.5, borderTopColor: INK }}>
        <Words size={layout.sizes.title} weight={700}>{row.block.title}</Words>
        <Words size={layout.sizes.title} lines={1} style={{ flexShrink: 1 }}>{row.block.seams}</Words>
      </View>
    ) : (
      <Line key={`${row.line.part} ${row.line.action}`} row={row} layout={layout} isFirst={index === 0} />
    ),
  );
}

type LineProps = { readonly row: Extract<LaidRow, { kind: 'line' }>; readonly layout: SheetLayout; readonly isFirst: boolean };

function Line({ row: { line, height, opensBlock }, layout: { columns, sizes }, isFirst }: LineProps) {
  const weight = weightOf(line);
  const cell = { size: sizes.line, weight, leading: LEADING };
  const isHeavy = opensBlock || isFirst;
  const rule = isHeavy ? { borderTopWidth: 2.5, borderTopColor: INK } : { borderTopWidth: 0.75, borderTopColor: GREY };
  return (
    <View style={{ height, flexDirection: 'row', alignItems: 'center', ...rule }}>
      <View style={{ width: MARKER - 3, marginRight: 3, height: height - 4, backgroundColor: line.isDeparture ? INK : PAPER }} />
      <View style={{ flexGrow: 1 }}>
        <View style={{ flexDirection: 'row', gap: GAP, alignItems: 'center' }}>
          <SideSign line={line} size={sizes.line} width={columns.side} />
          <Words {...cell} style={{ width: columns.part }}>{line.name}</Words>
          <Make line={line} layout={{ columns, sizes }} />
          {saysOnce(line) ? (
            <Words {...cell} style={{ width: columns.size + (columns.pack > 0 ? GAP + columns.pack : 0) }}>{line.size}</Words>
          ) : (
            <>
              <Words {...cell} style={{ width: columns.size }}>{line.size}</Words>
              <Words {...cell} style={{ width: columns.pack }}>{line.pack}</Words>
            </>
          )}
        </View>
        {line.note !== '' && (
          <Words size={sizes.detail} weight={700} style={{ marginLeft: columns.side + GAP }}>{line.note}</Words>
        )}
      </View>
    </View>
  );
}

/** What to make, large, and how to make it, smaller: beside it where there is room, else under it. */
function Make({ line, layout: { columns, sizes } }: { readonly line: SheetLine; readonly layout: Pick<SheetLayout, 'columns' | 'sizes'> }) {
  const weight = weightOf(line);
  const beside = isOneLine(line, columns.make, sizes);
  return (
    <View style={{ width: columns.make, flexDirection: beside ? 'row' : 'column', alignItems: beside ? 'baseline' : 'flex-start', gap: beside ? sizes.detail * 0.3 : 0 }}>
      <Words size={sizes.line} weight={weight} leading={LEADING}>{line.make}</Words>
      {line.manner !== '' && <Words size={sizes.detail} weight={weight} leading={LEADING}>{line.manner}</Words>}
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
    height: size * 1.1,
    alignItems: 'center' as const,
    justifyContent: 'center' as const,
    borderWidth: 1.25,
    borderColor: INK,
    backgroundColor: line.isDeparture ? INK : PAPER,
  };
  const letters = line.side === 'both' ? 'L+R' : line.side === 'left' ? 'L' : 'R';
  return (
    <View style={box}>
      <Words size={size * 0.8} weight={700} leading={1} color={line.isDeparture ? PAPER : INK}>{letters}</Words>
    </View>
  );
}
