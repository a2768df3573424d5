import { PLACED_TARGETS, type TargetId } from '@/lib/cuts';
import { type ChartMuscleId, type ChartPartId, carcassChart } from './carcass-chart';
import { AITCH_BONE, BLADE_BONE, INNER_SEAMS, INNER_TOPSIDE, SPINE, SPINE_FEATHERS } from './inner-shapes';

/** A window on the carcass: upper left corner and width, in units of the chart. All have the same proportions. */
type View = { readonly x: number; readonly y: number; readonly width: number; readonly part: ChartPartId; readonly face: 'outside' | 'inside' };

const VIEWS = {
  haunch: { x: 366, y: 162, width: 300, part: 'haunch', face: 'outside' },
  innerHaunch: { x: 366, y: 162, width: 300, part: 'haunch', face: 'inside' },
  back: { x: 284, y: 150, width: 246, part: 'loin', face: 'inside' },
  shoulder: { x: 96, y: 166, width: 336, part: 'shoulder', face: 'outside' },
  neck: { x: 8, y: 14, width: 336, part: 'neck', face: 'outside' },
  ribs: { x: 244, y: 164, width: 282, part: 'ribs', face: 'outside' },
} as const satisfies Readonly<Record<string, View>>;

type Shown = { readonly view: View; readonly marked: readonly string[] };

/** Pixels of the picture at its own size. */
export const MUSCLE_DRAWING = { width: 160, height: 140 } as const;

function muscle(id: ChartMuscleId): string {
  return carcassChart.muscles.find((shape) => shape.muscle === id)?.d ?? '';
}

function part(id: ChartPartId): string {
  return carcassChart.parts.find((shape) => shape.part === id)?.d ?? '';
}

function shownFor(target: TargetId): Shown | null {
  switch (target) {
    case 'haunch':
      return { view: VIEWS.haunch, marked: [part('haunch')] };
    case 'hind-shank':
    case 'rump':
    case 'thick-flank':
    case 'silverside':
    case 'salmon-cut':
      return { view: VIEWS.haunch, marked: [muscle(target)] };
    case 'topside':
      return { view: VIEWS.innerHaunch, marked: [INNER_TOPSIDE] };
    case 'loin':
    case 'fillet':
      return { view: VIEWS.back, marked: [muscle(target)] };
    case 'saddle':
      return { view: VIEWS.back, marked: [muscle('loin'), muscle('fillet')] };
    case 'shoulder':
      return { view: VIEWS.shoulder, marked: [part('shoulder')] };
    case 'blade':
    case 'fore-shank':
      return { view: VIEWS.shoulder, marked: [muscle(target)] };
    case 'neck':
      return { view: VIEWS.neck, marked: [part('neck')] };
    case 'ribs':
      return { view: VIEWS.ribs, marked: [part('ribs')] };
    case 'rib-rack':
      return { view: VIEWS.ribs, marked: [muscle('ribs')] };
    case 'flank':
      return { view: VIEWS.ribs, marked: [muscle('flank')] };
    default:
      return null;
  }
}

// Colours of the look: an image has its own style and sees none of the page's.
const STYLE = `
.far{fill:#ded5c2;stroke:#9c917f}.near{fill:#eae4d5;stroke:#9c917f}.body{fill:#f6f1e4}.part{fill:#ece1c9}
.seam,.edge{fill:none;stroke:#191510;stroke-linejoin:round}.bone{fill:#fffefa;stroke:#191510}.hidden{fill:none;stroke:#191510}
.mark{fill:#b98a5a}.hatch{stroke:#4b3524}.ring{fill:none;stroke:#191510;stroke-linejoin:round}
@media (prefers-color-scheme:dark){
.far{fill:#221e18;stroke:#6c6252}.near{fill:#2b261e;stroke:#6c6252}.body{fill:#332d24}.part{fill:#40382c}
.seam,.edge,.ring,.hidden{stroke:#f4eee1}.bone{fill:#14110d;stroke:#f4eee1}.mark{fill:#7d5a30}.hatch{stroke:#e3cba7}}`;

function path(name: string, d: string, more = ''): string {
  return `<path class="${name}" d="${d}"${more}/>`;
}

/** Seams of the part that is looked at: its muscles, as they lie on the face that is seen. */
function seams({ part: seen, face }: View, width: number): string {
  const line = ` stroke-width="${width}"`;
  if (seen === 'haunch' && face === 'inside') return INNER_SEAMS.map((d) => path('seam', d, line)).join('') + path('bone', AITCH_BONE, line);
  const own = carcassChart.muscles.filter((shape) => shape.part === seen && !shape.isInside).map(({ d }) => path('seam', d, line));
  if (seen === 'loin') return [...own, path('seam', muscle('fillet'), line), path('hidden', carcassChart.ribLines, ` stroke-width="${width * 0.6}"`)].join('');
  if (seen === 'shoulder') return [...own, path('hidden', BLADE_BONE, ` stroke-width="${width * 0.8}" stroke-dasharray="${width * 4} ${width * 3}"`)].join('');
  if (seen === 'ribs') return [...own, path('hidden', carcassChart.ribLines, ` stroke-width="${width * 0.6}"`)].join('');
  return own.join('');
}

/**
 * A small picture of where a target is: the carcass from its left side, the inside of it for what lies there, with the seams
 * of the part and the target hatched within a heavy line. SVG that follows a light or dark screen; its words stand beside it
 * on the page. Null of a bird, which is not drawn.
 */
export function muscleDrawing(target: TargetId): string | null {
  const shown = shownFor(target);
  if (!shown) return null;
  const { view, marked } = shown;
  const { width, height } = MUSCLE_DRAWING;
  const unit = view.width / width;
  const seam = ` stroke-width="${(1.1 * unit).toFixed(2)}"`;
  const edge = ` stroke-width="${(1.7 * unit).toFixed(2)}"`;
  const step = (5 * unit).toFixed(2);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${view.x} ${view.y} ${view.width} ${(view.width * height) / width}" width="${width}" height="${height}">`,
    `<style>${STYLE}</style>`,
    `<pattern id="h" width="${step}" height="${step}" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path class="hatch" d="M0 0V${step}" stroke-width="${(2 * unit).toFixed(2)}"/></pattern>`,
    path('far', carcassChart.farLimbs.join(' '), seam),
    path('near', carcassChart.nearLimbs.join(' '), seam),
    path('body', carcassChart.outline),
    path('part', part(view.part)),
    ...marked.flatMap((d) => [path('mark', d), `<path d="${d}" fill="url(#h)"/>`]),
    ...carcassChart.parts.filter(({ part: id }) => id !== 'fillet').map(({ d }) => path('seam', d, seam)),
    seams(view, 1.1 * unit),
    path('edge', carcassChart.outline, edge),
    ...marked.map((d) => path('ring', d, ` stroke-width="${(2.6 * unit).toFixed(2)}"`)),
    ...(view.part === 'loin' ? [path('bone', SPINE_FEATHERS, seam), path('bone', SPINE, seam)] : []),
    '</svg>',
  ].join('');
}

/** Targets that have a picture. */
export const DRAWN_TARGETS: readonly TargetId[] = PLACED_TARGETS.filter((target) => shownFor(target) !== null);
