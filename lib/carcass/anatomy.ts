/** The two halves of a carcass. */
export const SIDES = ['left', 'right'] as const;
export type Side = (typeof SIDES)[number];

/** Where a tissue lies: one of the halves, or across the midline. */
export type Place = Side | 'middle';

/** How a body is built, which decides its parts and the way a knife goes: everything with four legs, and birds. */
export const BODY_PLANS = ['four-legged', 'bird'] as const;
export type BodyPlan = (typeof BODY_PLANS)[number];

/** Regions of the chart: what a wound hits, what is missing at the door, what a hunter decides about. */
export const PARTS = [
  'fillet', 'loin', 'haunch', 'shoulder', 'neck', 'ribs',
  'bird-breast', 'bird-leg', 'bird-wing', 'bird-frame',
] as const;
export type PartId = (typeof PARTS)[number];

/** What a seam frees. */
export const MUSCLES = [
  'fillet', 'loin',
  'hind-shank', 'rump', 'topside', 'thick-flank', 'silverside', 'salmon-cut',
  'fore-shank', 'blade',
  'neck',
  'rib-meat', 'flank',
  'bird-breast', 'bird-inner-fillet', 'bird-thigh', 'bird-drumstick', 'bird-wing',
] as const;
export type MuscleId = (typeof MUSCLES)[number];

export const BONES = [
  'haunch-bone', 'hind-shank-bone', 'spine', 'shoulder-bone', 'fore-shank-bone', 'neck-bone', 'rib-bone',
  'bird-breast-bone', 'bird-leg-bone', 'bird-wing-bone', 'bird-frame-bone',
] as const;
export type BoneId = (typeof BONES)[number];

/** Fat, membrane and dried rind lying over a part; the skin of a bird. */
export const COVERS = [
  'haunch-cover', 'loin-cover', 'shoulder-cover', 'neck-cover', 'ribs-cover',
  'bird-breast-skin', 'bird-leg-skin', 'bird-wing-skin', 'bird-frame-skin',
] as const;
export type CoverId = (typeof COVERS)[number];

export type TissueId = MuscleId | BoneId | CoverId | 'drying';

/** One tissue at one place, such as `left:topside`. Drying is a loss of the whole carcass: `middle:drying`. */
export type TissueKey = `${Place}:${TissueId}`;

export type TissueKind = 'muscle' | 'bone' | 'cover' | 'drying';

type Anatomy = { readonly part: PartId; readonly sided: boolean; readonly kind: Exclude<TissueKind, 'drying'> };

/** Which part each tissue belongs to and whether it comes in a left and a right. Spine is halved by the saw, so it is sided. */
export const ANATOMY: Readonly<Record<Exclude<TissueId, 'drying'>, Anatomy>> = {
  fillet: { part: 'fillet', sided: true, kind: 'muscle' },
  loin: { part: 'loin', sided: true, kind: 'muscle' },
  'hind-shank': { part: 'haunch', sided: true, kind: 'muscle' },
  rump: { part: 'haunch', sided: true, kind: 'muscle' },
  topside: { part: 'haunch', sided: true, kind: 'muscle' },
  'thick-flank': { part: 'haunch', sided: true, kind: 'muscle' },
  silverside: { part: 'haunch', sided: true, kind: 'muscle' },
  'salmon-cut': { part: 'haunch', sided: true, kind: 'muscle' },
  'fore-shank': { part: 'shoulder', sided: true, kind: 'muscle' },
  blade: { part: 'shoulder', sided: true, kind: 'muscle' },
  neck: { part: 'neck', sided: false, kind: 'muscle' },
  'rib-meat': { part: 'ribs', sided: true, kind: 'muscle' },
  flank: { part: 'ribs', sided: true, kind: 'muscle' },
  'haunch-bone': { part: 'haunch', sided: true, kind: 'bone' },
  'hind-shank-bone': { part: 'haunch', sided: true, kind: 'bone' },
  spine: { part: 'loin', sided: true, kind: 'bone' },
  'shoulder-bone': { part: 'shoulder', sided: true, kind: 'bone' },
  'fore-shank-bone': { part: 'shoulder', sided: true, kind: 'bone' },
  'neck-bone': { part: 'neck', sided: false, kind: 'bone' },
  'rib-bone': { part: 'ribs', sided: true, kind: 'bone' },
  'haunch-cover': { part: 'haunch', sided: true, kind: 'cover' },
  'loin-cover': { part: 'loin', sided: true, kind: 'cover' },
  'shoulder-cover': { part: 'shoulder', sided: true, kind: 'cover' },
  'neck-cover': { part: 'neck', sided: false, kind: 'cover' },
  'ribs-cover': { part: 'ribs', sided: true, kind: 'cover' },
  'bird-breast': { part: 'bird-breast', sided: true, kind: 'muscle' },
  'bird-inner-fillet': { part: 'bird-breast', sided: true, kind: 'muscle' },
  'bird-thigh': { part: 'bird-leg', sided: true, kind: 'muscle' },
  'bird-drumstick': { part: 'bird-leg', sided: true, kind: 'muscle' },
  'bird-wing': { part: 'bird-wing', sided: true, kind: 'muscle' },
  'bird-breast-bone': { part: 'bird-breast', sided: true, kind: 'bone' },
  'bird-leg-bone': { part: 'bird-leg', sided: true, kind: 'bone' },
  'bird-wing-bone': { part: 'bird-wing', sided: true, kind: 'bone' },
  'bird-frame-bone': { part: 'bird-frame', sided: false, kind: 'bone' },
  'bird-breast-skin': { part: 'bird-breast', sided: true, kind: 'cover' },
  'bird-leg-skin': { part: 'bird-leg', sided: true, kind: 'cover' },
  'bird-wing-skin': { part: 'bird-wing', sided: true, kind: 'cover' },
  'bird-frame-skin': { part: 'bird-frame', sided: false, kind: 'cover' },
};

const PARTS_OF: Readonly<Record<BodyPlan, readonly PartId[]>> = {
  'four-legged': ['fillet', 'loin', 'haunch', 'shoulder', 'neck', 'ribs'],
  bird: ['bird-breast', 'bird-leg', 'bird-wing', 'bird-frame'],
};

/** The parts of a body, in knife order. */
export function partsOf(plan: BodyPlan): readonly PartId[] {
  return PARTS_OF[plan];
}

/** Places a tissue or part occurs at: both sides, or the middle. */
export function placesOf(sided: boolean): readonly Place[] {
  return sided ? SIDES : ['middle'];
}

/** Whether a part comes in a left and a right; the neck, and the frame of a bird, do not. */
export function isSidedPart(part: PartId): boolean {
  return part !== 'neck' && part !== 'bird-frame';
}

/** The key of a tissue at a place, such as `left:topside`. */
export function tissueKey(place: Place, tissue: TissueId): TissueKey {
  return `${place}:${tissue}`;
}

/** The key of a tissue in a half, or across the middle where it has no halves. */
export function tissueIn(place: Place, tissue: Exclude<TissueId, 'drying'>): TissueKey {
  return tissueKey(ANATOMY[tissue].sided ? place : 'middle', tissue);
}

/** A key taken apart: place, tissue, part and kind. Drying belongs to no part. */
export type ReadTissue = {
  readonly place: Place;
  readonly tissue: TissueId;
  readonly part: PartId | null;
  readonly kind: TissueKind;
};

/** Every key there is, taken apart once: a plan reads some thousands of them. */
const READ: ReadonlyMap<TissueKey, ReadTissue> = new Map([
  ...(Object.entries(ANATOMY) as [Exclude<TissueId, 'drying'>, Anatomy][]).flatMap(([tissue, { part, sided, kind }]) =>
    placesOf(sided).map((place): [TissueKey, ReadTissue] => [tissueKey(place, tissue), { place, tissue, part, kind }]),
  ),
  ['middle:drying', { place: 'middle', tissue: 'drying', part: null, kind: 'drying' }],
]);

/** Splits a key into place, tissue, part and kind. Throws on a tissue at a place where it does not grow. */
export function readTissueKey(key: TissueKey): ReadTissue {
  const read = READ.get(key);
  if (!read) throw new Error(`No such tissue: ${key}`);
  return read;
}
