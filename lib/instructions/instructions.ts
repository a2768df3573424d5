import type { Place } from '@/lib/carcass';
import type { CalendarDay } from '@/lib/units';
import type { Allergen } from './allergens';
import { type CutId, TARGETS, type TargetId } from '@/lib/cuts';

export const LINE_SIDES = ['left', 'right', 'both', 'middle'] as const;
/** Which half a line speaks of. Both: each half by itself, except the saddle, which is one piece. */
export type LineSide = (typeof LINE_SIDES)[number];

/** Slices by thickness, joints by weight or by people, or as the butcher sees fit. */
export type PieceSize =
  | { readonly kind: 'as-seen-fit' }
  | { readonly kind: 'thickness'; readonly thicknessMm: number }
  | { readonly kind: 'weight'; readonly grams: number }
  | { readonly kind: 'people'; readonly people: number };

/** What goes in one packet. */
export type PackSize =
  | { readonly kind: 'as-seen-fit' }
  | { readonly kind: 'pieces'; readonly pieces: number }
  | { readonly kind: 'weight'; readonly grams: number };

/** One wish: this part or muscle, this side, this cut. */
export type InstructionLine = {
  readonly id: string;
  readonly target: TargetId;
  readonly side: LineSide;
  readonly cut: CutId;
  readonly size: PieceSize;
  readonly pack: PackSize;
  /** "I want this much of it", grams packed over all its pieces; null where no amount is named. */
  readonly askedGrams: number | null;
};

export const REST_CHOICES = ['mince', 'stew', 'undecided'] as const;
/** What becomes of every muscle that no line names. */
export type RestChoice = (typeof REST_CHOICES)[number];

export const ADDED_FATS = ['none', 'pork', 'beef'] as const;
export type AddedFat = (typeof ADDED_FATS)[number];

export const PRODUCT_IDS = ['fresh-sausage', 'snack-sticks', 'summer-sausage', 'jerky'] as const;
export type ProductId = (typeof PRODUCT_IDS)[number];

export type MadeProduct = {
  readonly productId: ProductId;
  /** The hunter's own meat that goes in, raw, in grams: never the finished weight. */
  readonly gameGrams: number;
};

export const ANTLER_CHOICES = ['none', 'skull-plate', 'whole-head'] as const;
export type AntlerChoice = (typeof ANTLER_CHOICES)[number];

/** What goes home besides meat. */
export type Keepings = {
  readonly heart: boolean;
  readonly liver: boolean;
  readonly bones: boolean;
  readonly antlers: AntlerChoice;
  readonly cape: boolean;
  /** The whole hide, for tanning. */
  readonly hide: boolean;
  /** Who mounts it, or who collects the cape; '' where nobody has been named. */
  readonly taxidermist: string;
};

export const MINCE_SHAPES = ['bulk', 'patties'] as const;
export type MinceShape = (typeof MINCE_SHAPES)[number];

export const MIXINGS = ['own-meat-only', 'may-be-mixed'] as const;
/** Whether made things may come from a batch with other hunters' meat. */
export type Mixing = (typeof MIXINGS)[number];

/** One who has a share of the animal, by what is packed. Given: it goes to a food bank or the like. */
export type Share = { readonly name: string; readonly percent: number; readonly isGiven: boolean };

/** How one animal is to be cut. Kept as numbered versions; never edited in place. */
export type Instructions = {
  readonly lines: readonly InstructionLine[];
  readonly rest: RestChoice;
  /** Pieces squared off a joint: to stewing meat or into the mince. */
  readonly squaredOff: 'stew' | 'mince';
  readonly mince: {
    readonly addedFat: AddedFat;
    /** Fat as a share of the finished mince, in percent. 0 where none is added. */
    readonly fatPercent: number;
    readonly packGrams: number;
    readonly shape: MinceShape;
  };
  readonly stewPackGrams: number;
  /** Served in this order where meat runs short. */
  readonly products: readonly MadeProduct[];
  /** Whether the hunter chose that order, or it is the menu's. */
  readonly isPriorityStated: boolean;
  readonly mixing: Mixing;
  readonly keep: Keepings;
  /** A household that eats no pork: nothing of pork may touch this order. */
  readonly noPork: boolean;
  /** What nobody in the household may eat. */
  readonly avoid: readonly Allergen[];
  /** No bone in any packet. */
  readonly boneless: boolean;
  /** Those who share the animal; empty where it is one person's. */
  readonly shares: readonly Share[];
  readonly wantedBy: CalendarDay | null;
  /** It is taken over a state or country border. */
  readonly overBorder: boolean;
  /** Keys of findings the hunter has said yes to. */
  readonly agreed: readonly string[];
  readonly note: string;
};

/** The places a line speaks of: 'both' is left and right. */
export function placesOfLine(line: Pick<InstructionLine, 'target' | 'side'>): readonly Place[] {
  if (TARGETS[line.target].reach === 'middle') return ['middle'];
  if (TARGETS[line.target].reach === 'both-as-one') return ['left', 'right'];
  return line.side === 'left' || line.side === 'right' ? [line.side] : ['left', 'right'];
}

/** The side a new line starts with: both halves alike, or the middle. */
export function usualSide(target: TargetId): LineSide {
  return TARGETS[target].reach === 'middle' ? 'middle' : 'both';
}

/** Instructions that name nothing and mince everything: what a new order starts from. */
export const PLAIN_INSTRUCTIONS: Instructions = {
  lines: [],
  rest: 'mince',
  squaredOff: 'stew',
  mince: { addedFat: 'none', fatPercent: 0, packGrams: 454, shape: 'bulk' },
  stewPackGrams: 454,
  products: [],
  isPriorityStated: false,
  mixing: 'own-meat-only',
  keep: { heart: false, liver: false, bones: false, antlers: 'none', cape: false, hide: false, taxidermist: '' },
  noPork: false,
  avoid: [],
  boneless: false,
  shares: [],
  wantedBy: null,
  overBorder: false,
  agreed: [],
  note: '',
};
