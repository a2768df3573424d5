import { G, Path, Svg, View } from '@react-pdf/renderer';
import { carcassChart, type ChartPart, type SheetMark } from '@/lib/documents';
import { crossPath, hatchPath } from './hatching';
import { CHART_GAP } from './sheet-layout';
import { GREY, INK, PALE, PAPER } from './styles';
import { Words } from './words';

type Side = 'left' | 'right';

const chart = carcassChart;
/** Strokes laid over a part that was hit, by part, worked out once. */
const strokes = new Map<string, { readonly hatch: string; readonly cross: string }>();

/** The carcass from both sides: hit parts hatched and crossed out, parts that did not come dotted. */
export function SheetChart({ marks, height }: { readonly marks: readonly SheetMark[]; readonly height: number }) {
  return (
    <View style={{ flexDirection: 'row', gap: CHART_GAP }}>
      <OneSide side="left" marks={marks} height={height} />
      <OneSide side="right" marks={marks} height={height} />
    </View>
  );
}

function OneSide({ side, marks, height }: { readonly side: Side; readonly marks: readonly SheetMark[]; readonly height: number }) {
  const width = (height * chart.width) / chart.height;
  // The name of the side stands between the legs, which are not in the middle of the drawing.
  const aside = width * 0.17;
  const here = marks.filter(({ place }) => place === side || place === 'middle');
  const marked = (kind: SheetMark['kind']): readonly ChartPart[] =>
    chart.parts.filter(({ part }) => here.some((mark) => mark.part === part && mark.kind === kind));
  const absent = marked('absent');
  const present = chart.parts.filter((part) => !absent.includes(part));
  return (
    <View style={{ width, height }}>
      <Svg width={width} height={height} viewBox={chart.viewBox}>
        <G transform={side === 'right' ? `translate(${chart.width} 0) scale(-1 1)` : 'translate(0 0)'}>
          <Path d={chart.farLimbs.join(' ')} fill={PALE} stroke={GREY} strokeWidth={2} />
          <Path d={chart.nearLimbs.join(' ')} fill={PAPER} stroke={GREY} strokeWidth={3} />
          <Path d={chart.eye} fill={INK} />
          <Path d={present.map(({ d }) => d).join(' ')} fill={PAPER} stroke={INK} strokeWidth={4} />
          <Path d={chart.outline} stroke={INK} strokeWidth={6} fill="none" />
          {absent.map(({ part, d }) => (
            <Path key={part} d={d} fill={PAPER} stroke={INK} strokeWidth={6} strokeDasharray="6 10" />
          ))}
          {marked('wound').map((part) => (
            <CrossedOut key={part.part} part={part} />
          ))}
        </G>
      </Svg>
      <View style={{ position: 'absolute', bottom: 2, left: side === 'left' ? aside : 0, right: side === 'right' ? aside : 0, alignItems: 'center' }}>
        <Words size={14} weight={700} leading={1}>{side === 'left' ? 'LEFT' : 'RIGHT'}</Words>
      </View>
    </View>
  );
}

function CrossedOut({ part: { part, d } }: { readonly part: ChartPart }) {
  const known = strokes.get(part) ?? { hatch: hatchPath(d, { slope: 1, gap: 17 }), cross: crossPath(d) };
  strokes.set(part, known);
  return (
    <>
      <Path d={d} fill={PAPER} stroke={INK} strokeWidth={9} />
      <Path d={known.hatch} stroke={INK} strokeWidth={5} fill="none" />
      <Path d={known.cross} stroke={PAPER} strokeWidth={30} fill="none" />
      <Path d={known.cross} stroke={INK} strokeWidth={18} fill="none" />
    </>
  );
}
