import type { TargetId } from './targets';

export const CUT_IDS = [
  'on-the-bone',
  'boned-and-rolled',
  'joint',
  'whole',
  'portions',
  'steaks',
  'tenderised-steaks',
  'medallions',
  'bacon-wrapped',
  'butterfly',
  'chops',
  'rack',
  'shank-on-bone',
  'shank-slices',
  'diced',
  'mince',
  'set-aside-whole',
  'leave-out',
] as const;
export type CutId = (typeof CUT_IDS)[number];

/** Where the clean meat of a cut goes, in ten-thousandths that sum to 10000. Membrane and sinew are the waste. */
export type TrimSplit = {
  readonly packed: number;
  readonly stewing: number;
  readonly grinding: number;
  readonly waste: number;
  /** Kept in whole pieces for jerky. */
  readonly whole?: number;
};

export type Cut = {
  readonly id: CutId;
  /** What it may be cut from. */
  readonly targets: readonly TargetId[];
  readonly bone: 'out' | 'left-in' | 'sawn';
  readonly split: TrimSplit;
  /** How its size is told: not at all, by the thickness of a slice, or by the joint (weight or people). */
  readonly sizing: 'none' | 'thickness' | 'joint';
  /** How it is put up: by pieces, by weight, or each by itself. */
  readonly packing: 'pieces' | 'weight' | 'each';
  /** What is put on that is not game, and its share of the finished weight in ten-thousandths. */
  readonly adds?: { readonly what: 'pork'; readonly per10k: number };
  /** What the cutter reads. */
  readonly action: string;
  readonly source: string;
};

const PRACTICE = 'common practice, no source; the split is judgement';
const HAUNCH_MUSCLES: readonly TargetId[] = ['rump', 'topside', 'thick-flank', 'silverside'];
const ANY_MEAT: readonly TargetId[] = [
  'haunch',
  'hind-shank',
  ...HAUNCH_MUSCLES,
  'salmon-cut',
  'loin',
  'fillet',
  'shoulder',
  'fore-shank',
  'blade',
  'neck',
  'ribs',
  'flank',
  'bird-breast',
  'bird-inner-fillet',
  'bird-leg',
  'bird-thigh',
  'bird-drumstick',
  'bird-wing',
];

/** What the shop's menu can offer. Keyed on muscles, so that a country's words can change without touching a rule. */
export const CUTS: Readonly<Record<CutId, Cut>> = {
  'on-the-bone': {
    id: 'on-the-bone',
    targets: ['haunch', 'shoulder', 'saddle', 'neck', 'whole-bird', 'bird-crown', 'bird-leg', 'bird-wing'],
    bone: 'left-in',
    split: { packed: 10_000, stewing: 0, grinding: 0, waste: 0 },
    sizing: 'none',
    packing: 'each',
    action: 'WHOLE ON BONE',
    source: PRACTICE,
  },
  'boned-and-rolled': {
    id: 'boned-and-rolled',
    targets: ['haunch', 'shoulder', 'saddle', 'neck', 'flank'],
    bone: 'out',
    split: { packed: 9_200, stewing: 0, grinding: 600, waste: 200 },
    sizing: 'joint',
    packing: 'each',
    action: 'BONE, ROLL & TIE',
    source: PRACTICE,
  },
  joint: {
    id: 'joint',
    targets: [...HAUNCH_MUSCLES, 'blade'],
    bone: 'out',
    split: { packed: 8_400, stewing: 1_000, grinding: 400, waste: 200 },
    sizing: 'joint',
    packing: 'each',
    action: 'SEAM, SQUARE & TIE',
    source: 'common practice, no source: squared-off pieces to stewing, a handful of trim to mince; the split is judgement',
  },
  whole: {
    id: 'whole',
    targets: ['loin', 'fillet', 'salmon-cut', 'bird-breast', 'bird-inner-fillet', 'bird-thigh'],
    bone: 'out',
    split: { packed: 9_600, stewing: 0, grinding: 200, waste: 200 },
    sizing: 'none',
    packing: 'each',
    action: 'WHOLE, SILVERSKIN OFF',
    source: PRACTICE,
  },
  portions: {
    id: 'portions',
    targets: ['loin'],
    bone: 'out',
    split: { packed: 9_600, stewing: 0, grinding: 200, waste: 200 },
    sizing: 'joint',
    packing: 'each',
    action: 'CUT IN PORTIONS',
    source: PRACTICE,
  },
  steaks: {
    id: 'steaks',
    targets: ['haunch', ...HAUNCH_MUSCLES, 'loin'],
    bone: 'out',
    split: { packed: 8_200, stewing: 1_000, grinding: 600, waste: 200 },
    sizing: 'thickness',
    packing: 'pieces',
    action: 'STEAKS',
    source: PRACTICE,
  },
  'tenderised-steaks': {
    id: 'tenderised-steaks',
    targets: ['haunch', ...HAUNCH_MUSCLES],
    bone: 'out',
    split: { packed: 8_600, stewing: 600, grinding: 600, waste: 200 },
    sizing: 'thickness',
    packing: 'pieces',
    action: 'STEAKS, TENDERISE',
    source: PRACTICE,
  },
  medallions: {
    id: 'medallions',
    targets: ['loin', 'fillet', 'salmon-cut'],
    bone: 'out',
    split: { packed: 9_400, stewing: 0, grinding: 400, waste: 200 },
    sizing: 'thickness',
    packing: 'pieces',
    action: 'MEDALLIONS',
    source: PRACTICE,
  },
  'bacon-wrapped': {
    id: 'bacon-wrapped',
    targets: ['loin', 'fillet'],
    bone: 'out',
    split: { packed: 9_400, stewing: 0, grinding: 400, waste: 200 },
    sizing: 'thickness',
    packing: 'pieces',
    // A rasher of about 28 g round a medallion of about 110 g. Judgement.
    adds: { what: 'pork', per10k: 2_000 },
    action: 'MEDALLIONS, WRAP IN BACON',
    source: PRACTICE,
  },
  butterfly: {
    id: 'butterfly',
    targets: ['loin'],
    bone: 'out',
    split: { packed: 9_400, stewing: 0, grinding: 400, waste: 200 },
    sizing: 'thickness',
    packing: 'pieces',
    action: 'BUTTERFLY (CUT DOUBLE)',
    source: 'common practice, no source: cut at twice the finished thickness',
  },
  chops: {
    id: 'chops',
    targets: ['loin'],
    bone: 'sawn',
    split: { packed: 9_700, stewing: 0, grinding: 200, waste: 100 },
    sizing: 'thickness',
    packing: 'pieces',
    action: 'CHOPS, SAW',
    source: PRACTICE,
  },
  rack: {
    id: 'rack',
    targets: ['rib-rack'],
    bone: 'sawn',
    split: { packed: 9_600, stewing: 0, grinding: 400, waste: 0 },
    sizing: 'none',
    packing: 'each',
    action: 'RACK, SAW',
    source: PRACTICE,
  },
  'shank-on-bone': {
    id: 'shank-on-bone',
    targets: ['hind-shank', 'fore-shank'],
    bone: 'left-in',
    split: { packed: 9_600, stewing: 0, grinding: 200, waste: 200 },
    sizing: 'none',
    packing: 'each',
    action: 'SHANK WHOLE ON BONE',
    source: PRACTICE,
  },
  'shank-slices': {
    id: 'shank-slices',
    targets: ['hind-shank', 'fore-shank'],
    bone: 'sawn',
    split: { packed: 9_600, stewing: 0, grinding: 200, waste: 200 },
    sizing: 'thickness',
    packing: 'pieces',
    action: 'SHANK IN SLICES, SAW',
    source: PRACTICE,
  },
  diced: {
    id: 'diced',
    targets: ANY_MEAT,
    bone: 'out',
    split: { packed: 8_700, stewing: 0, grinding: 1_100, waste: 200 },
    sizing: 'none',
    packing: 'weight',
    action: 'DICE FOR STEW',
    source: PRACTICE,
  },
  mince: {
    id: 'mince',
    targets: ANY_MEAT,
    bone: 'out',
    split: { packed: 0, stewing: 0, grinding: 9_800, waste: 200 },
    sizing: 'none',
    packing: 'weight',
    action: 'TO MINCE',
    source: PRACTICE,
  },
  'set-aside-whole': {
    id: 'set-aside-whole',
    targets: ['haunch', ...HAUNCH_MUSCLES, 'loin'],
    bone: 'out',
    split: { packed: 0, stewing: 0, grinding: 700, waste: 200, whole: 9_100 },
    sizing: 'none',
    packing: 'weight',
    action: 'WHOLE MUSCLE FOR JERKY',
    source: PRACTICE,
  },
  'leave-out': {
    id: 'leave-out',
    targets: ['ribs', 'flank', 'neck', 'hind-shank', 'fore-shank', 'bird-leg', 'bird-wing'],
    bone: 'out',
    split: { packed: 0, stewing: 0, grinding: 0, waste: 10_000 },
    sizing: 'none',
    packing: 'each',
    action: 'LEAVE OUT',
    source: PRACTICE,
  },
};

/** Cuts that can be made from a target, in menu order. */
export function cutsOf(target: TargetId): readonly CutId[] {
  return CUT_IDS.filter((id) => CUTS[id].targets.includes(target));
}

/** Whether a cut takes the bone of its target with it. */
export function keepsBone(cut: CutId): boolean {
  return CUTS[cut].bone !== 'out';
}
