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

type Ink = { readonly far: string; readonly near: string; readonly hide: string; readonly body: string; readonly part: string; readonly line: string; readonly bone: string; readonly mark: string; readonly hatch: string };

/** Which screen a picture is for. */
export type DrawingScheme = 'light' | 'dark';

// Colours of the look. Attributes, not a style: the content policy refuses one, and an image sees none of the page's.
const INKS: Readonly<Record<DrawingScheme, Ink>> = {
  light: { far: '#ded5c2', near: '#eae4d5', hide: '#9c917f', body: '#f6f1e4', part: '#ece1c9', line: '#191510', bone: '#fffefa', mark: '#b98a5a', hatch: '#4b3524' },
  dark: { far: '#221e18', near: '#2b261e', hide: '#6c6252', body: '#332d24', part: '#40382c', line: '#f4eee1', bone: '#14110d', mark: '#7d5a30', hatch: '#e3cba7' },
};

/** One path: what it is filled with and, where it has a line, its colour and width. */
function path(d: string, fill: string, line?: { readonly colour: string; readonly width: number; readonly dashes?: string }): string {
  const stroke = line ? ` stroke="${line.colour}" stroke-width="${line.width.toFixed(2)}"${line.dashes ? ` stroke-dasharray="${line.dashes}"` : ''} stroke-linejoin="round"` : '';
  return `<path d="${d}" fill="${fill}"${stroke}/>`;
}

/** Seams of the part that is looked at: its muscles, as they lie on the face that is seen. */
function seams({ part: seen, face }: View, ink: Ink, width: number): string {
  const line = { colour: ink.line, width };
  if (seen === 'haunch' && face === 'inside') return [...INNER_SEAMS.map((d) => path(d, 'none', line)), path(AITCH_BONE, ink.bone, line)].join('');
  const own = carcassChart.muscles.filter((shape) => shape.part === seen && !shape.isInside).map(({ d }) => path(d, 'none', line));
  const ribs = path(carcassChart.ribLines, 'none', { ...line, width: width * 0.6 });
  if (seen === 'loin') return [...own, path(muscle('fillet'), 'none', line), ribs].join('');
  if (seen === 'shoulder') return [...own, path(BLADE_BONE, 'none', { ...line, dashes: `${(width * 4).toFixed(1)} ${(width * 3).toFixed(1)}` })].join('');
  return seen === 'ribs' ? [...own, ribs].join('') : own.join('');
}

/**
 * A small picture of where a target is: the carcass from its left side, the inside of it for what lies there, with the seams
 * of the part and the target hatched within a heavy line. SVG; its words stand beside it on the page. Null of a bird, which is
 * not drawn.
 */
export function muscleDrawing(target: TargetId, scheme: DrawingScheme = 'light'): string | null {
  const shown = shownFor(target);
  if (!shown) return null;
  const { view, marked } = shown;
  const { width, height } = MUSCLE_DRAWING;
  const ink = INKS[scheme];
  const unit = view.width / width;
  const seam = { colour: ink.line, width: 1.1 * unit };
  const hide = { colour: ink.hide, width: 1.1 * unit };
  const step = (5 * unit).toFixed(2);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${view.x} ${view.y} ${view.width} ${(view.width * height) / width}" width="${width}" height="${height}">`,
    `<pattern id="h" width="${step}" height="${step}" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">${path(`M0 0V${step}`, 'none', { colour: ink.hatch, width: 2 * unit })}</pattern>`,
    path(carcassChart.farLimbs.join(' '), ink.far, hide),
    path(carcassChart.nearLimbs.join(' '), ink.near, hide),
    path(carcassChart.outline, ink.body),
    path(part(view.part), ink.part),
    ...marked.flatMap((d) => [path(d, ink.mark), path(d, 'url(#h)')]),
    ...carcassChart.parts.filter(({ part: id }) => id !== 'fillet').map(({ d }) => path(d, 'none', seam)),
    seams(view, ink, seam.width),
    path(carcassChart.outline, 'none', { ...seam, width: 1.7 * unit }),
    ...marked.map((d) => path(d, 'none', { ...seam, width: 2.6 * unit })),
    ...(view.part === 'loin' ? [path(SPINE_FEATHERS, ink.bone, seam), path(SPINE, ink.bone, seam)] : []),
    '</svg>',
  ].join('');
}

/** Targets that have a picture. */
export const DRAWN_TARGETS: readonly TargetId[] = PLACED_TARGETS.filter((target) => shownFor(target) !== null);
