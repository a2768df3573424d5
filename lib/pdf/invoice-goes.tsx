import { G, Path, Rect, Svg, View } from '@react-pdf/renderer';
import type { DrawnPart, GoesDrawing } from '@/lib/documents';
import { type Hatch, hatchPath } from './hatching';
import { BARK, INK, PAPER, grow } from './styles';
import { Words } from './words';

const SMALL = 9;
const BAR_WIDTH = 196;
const BAR_HEIGHT = 9;

/** Strokes over what leaves, so that grey paper tells one from another; what dried off stays blank. */
const STROKES: Readonly<Partial<Record<DrawnPart['id'], readonly Hatch[]>>> = {
  innards: [{ slope: 1, gap: 4 }],
  outside: [{ slope: -1, gap: 4 }],
  bone: [{ slope: 1, gap: 4 }, { slope: -1, gap: 4 }],
  trim: [{ slope: 1, gap: 7 }],
  wounds: [{ slope: -1, gap: 2 }],
};

/** Where the animal went: a bar a stage, each as long as its weight, its words above it. */
export function InvoiceGoes({ goes }: { readonly goes: GoesDrawing }) {
  return (
    <View style={{ width: BAR_WIDTH, gap: 3 }}>
      {goes.map((stage) => (
        <View key={stage.label}>
          <View style={{ flexDirection: 'row', justifyContent: 'space-between', gap: 6 }}>
            <Words size={SMALL} leading={1.2} style={grow}>{stage.label}</Words>
            <Words size={SMALL} leading={1.2} weight={700}>{stage.weight}</Words>
          </View>
          <Svg width={BAR_WIDTH} height={BAR_HEIGHT} viewBox={`0 0 ${BAR_WIDTH} ${BAR_HEIGHT}`}>
            {!stage.isHome && <Rect x={0.5} y={0.5} width={Math.max(0, inPoints(stage.per10k) - 0.5)} height={BAR_HEIGHT - 1} fill={BARK} />}
            <Parts parts={stage.parts} from={stage.isHome ? 0 : stage.per10k} isDark={stage.isHome} />
          </Svg>
          {stage.less !== '' && <Words size={SMALL} leading={1.2} style={{ textAlign: 'right' }}>{stage.less}</Words>}
        </View>
      ))}
    </View>
  );
}

function Parts({ parts, from, isDark }: { readonly parts: readonly DrawnPart[]; readonly from: number; readonly isDark: boolean }) {
  return parts.map((part, index) => {
    const before = parts.slice(0, index).reduce((sum, { per10k }) => sum + per10k, from);
    const [left, right] = [inPoints(before), inPoints(before + part.per10k)];
    const box = `M${left} 0.5L${right} 0.5L${right} ${BAR_HEIGHT - 0.5}L${left} ${BAR_HEIGHT - 0.5}Z`;
    const isOpen = part.id === 'undecided' || !isDark;
    return (
      <G key={`${part.id} ${index}`}>
        <Path d={box} fill={isOpen ? PAPER : BARK} stroke={isDark ? PAPER : INK} strokeWidth={0.6} />
        {!isDark && right - left > 1 && (STROKES[part.id] ?? []).map((hatch) => <Path key={hatch.slope} d={hatchPath(box, hatch)} stroke={INK} strokeWidth={0.5} fill="none" />)}
      </G>
    );
  });
}

function inPoints(per10k: number): number {
  return Math.round((per10k * (BAR_WIDTH - 1)) / 1_000) / 10 + 0.5;
}
