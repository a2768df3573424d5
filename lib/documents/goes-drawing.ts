import { formatWeight } from '@/lib/units';
import type { GonePartId } from './gone-parts';
import { listed } from './gone-words';
import type { GoesWords, GoneAmount, GonePart, WhereItGoes } from './where-it-goes';

/** A piece of a bar, in ten-thousandths of the longest. */
export type DrawnPart = { readonly id: GonePartId; readonly per10k: number };

/** One bar: dark for `per10k`, then what leaves; or made of parts, where it is what goes home. */
export type DrawnStage = { readonly label: string; readonly weight: string; readonly less: string; readonly per10k: number; readonly parts: readonly DrawnPart[]; readonly isHome: boolean };

/** Where an animal goes as plain words and lengths, short enough to stand on a paper and be kept with it. */
export type GoesDrawing = readonly DrawnStage[];

const SHORT: Readonly<Partial<Record<GonePartId, string>>> = { trim: 'trim', wounds: 'wounds', drying: 'drying', making: 'making' };

/** Lengths are rounded half up. Words of a bar: 'about 145.7 lb', 'less head, hide and lower legs'. */
export function goesDrawing({ stages, home }: WhereItGoes, { unit, locale }: Pick<GoesWords, 'unit' | 'locale'>): GoesDrawing {
  const most = Math.max(1, stages[0]?.range.likely ?? 0);
  const length = (grams: number): number => Math.round((grams * 10_000) / most);
  const drawn = ({ id, range }: GonePart): DrawnPart => ({ id, per10k: length(range.likely) });
  const write = ({ range, known }: GoneAmount): string => `${known === 'measured' ? '' : 'about '}${formatWeight(range.likely, unit, locale)}`;
  return stages.map((stage) => {
    const { id, label, range, leaves } = stage;
    const gone = leaves.reduce((sum, part) => sum + part.range.likely, 0);
    const less = leaves.length > 0 ? `less ${listed(leaves.map((part) => SHORT[part.id] ?? part.label))}` : '';
    const isHome = id === 'home';
    return { label, weight: write(stage), less, per10k: length(range.likely - gone), parts: (isHome ? home : leaves).map(drawn), isHome };
  });
}
