import { CUTS, type CutId } from '@/lib/cuts';
import type { PackSize, PieceSize } from '@/lib/instructions';
import { type WeightUnit, formatThickness, formatWeight } from '@/lib/units';

/** One choice of a menu: what is sent, what is read. */
export type Choice = { readonly value: string; readonly label: string };

/** The honest choice: nobody has to know. */
export const AS_SEEN_FIT = 'fit';

const THICKNESS_MM: Readonly<Record<WeightUnit, readonly number[]>> = {
  lb: [13, 16, 19, 25, 32, 38, 51],
  kg: [12, 15, 20, 25, 30, 40, 50],
};
/** 1, 1 1/2, 2, 3, 4 and 5 lb; round grams for a shop that weighs in kg. */
const JOINT_GRAMS: Readonly<Record<WeightUnit, readonly number[]>> = {
  lb: [454, 680, 907, 1361, 1814, 2268],
  kg: [500, 750, 1000, 1500, 2000, 2500],
};
const PACK_GRAMS: Readonly<Record<WeightUnit, readonly number[]>> = {
  lb: [454, 680, 907, 2268],
  kg: [250, 500, 750, 1000],
};
const PEOPLE = [2, 3, 4, 6, 8, 10];
const PIECES = [1, 2, 3, 4, 6, 8];

/** Sizes a cut can have, 'as the butcher sees fit' first; a current size off the list is kept on it. */
export function sizeChoices(cut: CutId, unit: WeightUnit, current: PieceSize = { kind: 'as-seen-fit' }): readonly Choice[] {
  const { sizing } = CUTS[cut];
  const sizes: readonly PieceSize[] =
    sizing === 'thickness'
      ? THICKNESS_MM[unit].map((thicknessMm) => ({ kind: 'thickness', thicknessMm }))
      : sizing === 'joint'
        ? [
            ...PEOPLE.map((people): PieceSize => ({ kind: 'people', people })),
            ...JOINT_GRAMS[unit].map((grams): PieceSize => ({ kind: 'weight', grams })),
          ]
        : [];
  return withCurrent([{ kind: 'as-seen-fit' } as const, ...sizes], current, sizeCode, (size) => sizeWords(size, unit));
}

/** Packs a cut can be put up in, 'as the butcher sees fit' first. */
export function packChoices(cut: CutId, unit: WeightUnit, current: PackSize = { kind: 'as-seen-fit' }): readonly Choice[] {
  const { packing } = CUTS[cut];
  const packs: readonly PackSize[] =
    packing === 'pieces'
      ? PIECES.map((pieces) => ({ kind: 'pieces', pieces }))
      : packing === 'weight'
        ? PACK_GRAMS[unit].map((grams) => ({ kind: 'weight', grams }))
        : [];
  return withCurrent([{ kind: 'as-seen-fit' } as const, ...packs], current, packCode, (pack) => packWords(pack, unit));
}

/** Packs of mince and stewing meat by weight. Values are grams. */
export function poolPackChoices(unit: WeightUnit): readonly Choice[] {
  return PACK_GRAMS[unit].map((grams) => ({ value: String(grams), label: formatWeight(grams, unit) }));
}

/** A size as the form sends it: 'fit', 't:19', 'w:907', 'p:4'. */
export function sizeCode(size: PieceSize): string {
  switch (size.kind) {
    case 'as-seen-fit':
      return AS_SEEN_FIT;
    case 'thickness':
      return `t:${size.thicknessMm}`;
    case 'weight':
      return `w:${size.grams}`;
    case 'people':
      return `p:${size.people}`;
  }
}

/** A pack as the form sends it: 'fit', 'n:2', 'w:454'. */
export function packCode(pack: PackSize): string {
  switch (pack.kind) {
    case 'as-seen-fit':
      return AS_SEEN_FIT;
    case 'pieces':
      return `n:${pack.pieces}`;
    case 'weight':
      return `w:${pack.grams}`;
  }
}

/** Reads a size for a cut; what the cut cannot have, or makes no sense, is 'as seen fit'. */
export function readSize(code: string, cut: CutId): PieceSize {
  const { sizing } = CUTS[cut];
  const thicknessMm = numberAfter(code, 't', 300);
  const grams = numberAfter(code, 'w', 50_000);
  const people = numberAfter(code, 'p', 50);
  if (sizing === 'thickness' && thicknessMm !== null) return { kind: 'thickness', thicknessMm };
  if (sizing === 'joint' && grams !== null) return { kind: 'weight', grams };
  if (sizing === 'joint' && people !== null) return { kind: 'people', people };
  return { kind: 'as-seen-fit' };
}

/** Reads a pack for a cut; what the cut cannot have is 'as seen fit'. */
export function readPack(code: string, cut: CutId): PackSize {
  const { packing } = CUTS[cut];
  const pieces = numberAfter(code, 'n', 100);
  const grams = numberAfter(code, 'w', 50_000);
  if (packing === 'pieces' && pieces !== null) return { kind: 'pieces', pieces };
  if (packing === 'weight' && grams !== null) return { kind: 'weight', grams };
  return { kind: 'as-seen-fit' };
}

/** A size in words: '3/4 in thick', '2.0 lb each', 'for 4 people'. */
export function sizeWords(size: PieceSize, unit: WeightUnit): string {
  switch (size.kind) {
    case 'as-seen-fit':
      return 'as the butcher sees fit';
    case 'thickness':
      return `${formatThickness(size.thicknessMm, unit === 'lb' ? 'in' : 'mm')} thick`;
    case 'weight':
      return `${formatWeight(size.grams, unit)} each`;
    case 'people':
      return `for ${size.people} people`;
  }
}

/** A pack in words: '2 to a pack', '1.0 lb packs'. */
export function packWords(pack: PackSize, unit: WeightUnit): string {
  switch (pack.kind) {
    case 'as-seen-fit':
      return 'as the butcher sees fit';
    case 'pieces':
      return `${pack.pieces} to a pack`;
    case 'weight':
      return `${formatWeight(pack.grams, unit)} packs`;
  }
}

function numberAfter(code: string, letter: string, most: number): number | null {
  const match = new RegExp(`^${letter}:(\\d{1,6})$`).exec(code);
  const number = Number(match?.[1] ?? 0);
  return number >= 1 && number <= most ? number : null;
}

function withCurrent<Size>(
  sizes: readonly Size[],
  current: Size,
  code: (size: Size) => string,
  words: (size: Size) => string,
): readonly Choice[] {
  const listed = sizes.some((size) => code(size) === code(current)) ? sizes : [...sizes, current];
  return listed.map((size) => ({ value: code(size), label: words(size) }));
}
