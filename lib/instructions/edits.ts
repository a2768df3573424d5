import { CUTS, type CutId, type TargetId } from '@/lib/cuts';
import type { CalendarDay } from '@/lib/units';
import type { Allergen } from './allergens';
import {
  type AddedFat,
  type AntlerChoice,
  type InstructionLine,
  type Instructions,
  type LineSide,
  type MinceShape,
  type Mixing,
  type PackSize,
  type PieceSize,
  type ProductId,
  type RestChoice,
  type Share,
  usualSide,
} from './instructions';

/** One machine-applicable change: what a suggestion does when it is tapped. Plain data, so that it can be stored and sent. */
export type Edit =
  | { readonly kind: 'remove-line'; readonly lineId: string }
  | { readonly kind: 'set-cut'; readonly lineId: string; readonly cut: CutId }
  | { readonly kind: 'set-side'; readonly lineId: string; readonly side: LineSide }
  | { readonly kind: 'set-asked'; readonly lineId: string; readonly askedGrams: number | null }
  | { readonly kind: 'set-size'; readonly lineId: string; readonly size: PieceSize }
  | { readonly kind: 'add-line'; readonly target: TargetId; readonly side: LineSide; readonly cut: CutId }
  | { readonly kind: 'set-rest'; readonly rest: RestChoice }
  | { readonly kind: 'set-fat'; readonly addedFat: AddedFat; readonly fatPercent: number }
  | { readonly kind: 'set-product'; readonly productId: ProductId; readonly gameGrams: number }
  | { readonly kind: 'set-antlers'; readonly antlers: AntlerChoice }
  | { readonly kind: 'set-keep'; readonly item: 'heart' | 'liver' | 'bones' | 'cape' | 'hide'; readonly keep: boolean }
  | { readonly kind: 'set-no-pork'; readonly noPork: boolean }
  | { readonly kind: 'set-pack'; readonly lineId: string; readonly pack: PackSize }
  | { readonly kind: 'set-pool-pack'; readonly pool: 'mince' | 'stew'; readonly packGrams: number }
  | { readonly kind: 'set-mince-shape'; readonly shape: MinceShape }
  | { readonly kind: 'set-boneless'; readonly boneless: boolean }
  | { readonly kind: 'set-mixing'; readonly mixing: Mixing }
  | { readonly kind: 'set-avoid'; readonly avoid: readonly Allergen[] }
  | { readonly kind: 'set-shares'; readonly shares: readonly Share[] }
  | { readonly kind: 'set-wanted-by'; readonly wantedBy: CalendarDay | null }
  | { readonly kind: 'set-over-border'; readonly overBorder: boolean }
  | { readonly kind: 'set-taxidermist'; readonly taxidermist: string }
  | { readonly kind: 'serve-first'; readonly productId: ProductId }
  | { readonly kind: 'agree'; readonly key: string }
  | { readonly kind: 'set-note'; readonly note: string };

/** A line as the form starts it: as the butcher sees fit, no amount named. */
export function newLine(id: string, target: TargetId, cut: CutId, side: LineSide = usualSide(target)): InstructionLine {
  return { id, target, side, cut, size: { kind: 'as-seen-fit' }, pack: { kind: 'as-seen-fit' }, askedGrams: null };
}

/** The first free 'line-n' from one above the count, so that ids stay the same on the phone and on the server. */
export function nextLineId(lines: readonly Pick<InstructionLine, 'id'>[]): string {
  let n = lines.length + 1;
  const taken = new Set(lines.map((line) => line.id));
  while (taken.has(`line-${n}`)) n += 1;
  return `line-${n}`;
}

/**
 * Applies edits in order and returns new instructions. An edit of a line that is gone does nothing, so that a
 * suggestion tapped late is harmless. A size that the new cut cannot have goes back to 'as seen fit'.
 */
export function applyEdits(instructions: Instructions, edits: readonly Edit[]): Instructions {
  return edits.reduce(applyEdit, instructions);
}

function applyEdit(now: Instructions, edit: Edit): Instructions {
  const change = (lineId: string, next: (line: InstructionLine) => InstructionLine): Instructions => ({
    ...now,
    lines: now.lines.map((line) => (line.id === lineId ? next(line) : line)),
  });
  switch (edit.kind) {
    case 'remove-line':
      return { ...now, lines: now.lines.filter((line) => line.id !== edit.lineId) };
    case 'set-cut':
      return change(edit.lineId, (line) => ({ ...line, cut: edit.cut, ...fitted(line, edit.cut) }));
    case 'set-side':
      return change(edit.lineId, (line) => ({ ...line, side: edit.side }));
    case 'set-asked':
      return change(edit.lineId, (line) => ({ ...line, askedGrams: edit.askedGrams }));
    case 'set-size':
      return change(edit.lineId, (line) => ({ ...line, size: fitsSizing(edit.size, line.cut) ? edit.size : line.size }));
    case 'add-line':
      return { ...now, lines: [...now.lines, newLine(nextLineId(now.lines), edit.target, edit.cut, edit.side)] };
    case 'set-rest':
      return { ...now, rest: edit.rest };
    case 'set-fat':
      return { ...now, mince: { ...now.mince, addedFat: edit.addedFat, fatPercent: edit.fatPercent } };
    case 'set-product': {
      // Its place in the order stays: the order is who is served first.
      const product = { productId: edit.productId, gameGrams: edit.gameGrams };
      const isThere = now.products.some(({ productId }) => productId === edit.productId);
      const products = isThere ? now.products.map((one) => (one.productId === edit.productId ? product : one)) : [...now.products, product];
      return { ...now, products: products.filter(({ gameGrams }) => gameGrams > 0) };
    }
    case 'set-antlers':
      return { ...now, keep: { ...now.keep, antlers: edit.antlers } };
    case 'set-keep':
      return { ...now, keep: { ...now.keep, [edit.item]: edit.keep } };
    case 'set-no-pork':
      return { ...now, noPork: edit.noPork };
    case 'set-pack':
      return change(edit.lineId, (line) => ({ ...line, pack: fitsPacking(edit.pack, line.cut) ? edit.pack : line.pack }));
    case 'set-pool-pack':
      return edit.pool === 'stew' ? { ...now, stewPackGrams: edit.packGrams } : { ...now, mince: { ...now.mince, packGrams: edit.packGrams } };
    case 'set-mince-shape':
      return { ...now, mince: { ...now.mince, shape: edit.shape } };
    case 'set-boneless':
      return { ...now, boneless: edit.boneless };
    case 'set-mixing':
      return { ...now, mixing: edit.mixing };
    case 'set-avoid':
      return { ...now, avoid: edit.avoid };
    case 'set-shares':
      return { ...now, shares: edit.shares };
    case 'set-wanted-by':
      return { ...now, wantedBy: edit.wantedBy };
    case 'set-over-border':
      return { ...now, overBorder: edit.overBorder };
    case 'set-taxidermist':
      return { ...now, keep: { ...now.keep, taxidermist: edit.taxidermist } };
    case 'serve-first': {
      const first = now.products.filter(({ productId }) => productId === edit.productId);
      return { ...now, isPriorityStated: true, products: [...first, ...now.products.filter((one) => !first.includes(one))] };
    }
    case 'agree':
      return now.agreed.includes(edit.key) ? now : { ...now, agreed: [...now.agreed, edit.key] };
    case 'set-note':
      return { ...now, note: edit.note };
  }
}

function fitted(line: InstructionLine, cut: CutId): Pick<InstructionLine, 'size' | 'pack'> {
  return {
    size: fitsSizing(line.size, cut) ? line.size : { kind: 'as-seen-fit' },
    pack: fitsPacking(line.pack, cut) ? line.pack : { kind: 'as-seen-fit' },
  };
}

function fitsPacking(pack: PackSize, cut: CutId): boolean {
  return pack.kind === 'as-seen-fit' || pack.kind === CUTS[cut].packing;
}

function fitsSizing(size: PieceSize, cut: CutId): boolean {
  const { sizing } = CUTS[cut];
  switch (size.kind) {
    case 'as-seen-fit':
      return true;
    case 'thickness':
      return sizing === 'thickness';
    case 'weight':
    case 'people':
      return sizing === 'joint';
  }
}
