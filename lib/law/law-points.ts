/** What a place allows, as the rules read it. A zone is a disease zone the shop lists in its settings. */
export type LawPoints = {
  /** Whether bone of an animal from a zone may be sawn. */
  readonly sawnBoneFromZone: 'allowed' | 'not-allowed';
  /** Whether the spine of a zone animal, or meat on it, may go home. */
  readonly spineFromZone: 'allowed' | 'not-allowed';
  /** Whether bones of a zone animal may go home for stock or dogs. */
  readonly looseBonesFromZone: 'allowed' | 'not-allowed';
  /** In which form the head of a zone animal may go home. */
  readonly headFromZone: 'allowed' | 'clean-skull-plate-only' | 'not-allowed';
  /** What may cross a state or country border. */
  readonly overBorder: 'anything' | 'no-spine-no-head' | 'boned-and-clean-plate-only';
  /** Whether a hunter's meat may go into one batch with other people's. */
  readonly pooling: 'allowed' | 'not-allowed';
  /** Of which animals a disease sample is wanted before the knife. */
  readonly testWanted: 'never' | 'adults-from-zone' | 'all-from-zone';
  /** Whether boar and other carriers are sampled for trichinella. */
  readonly trichinellaTest: 'never' | 'wanted';
  /** Received and held at or below, in tenths of a degree Celsius. */
  readonly coldCelsiusTenths: number;
  /** How long an entry of the book is kept, in days; the note of the point says from which event. */
  readonly keepRecordDays: number;
};

export type LawPoint = keyof LawPoints;

/** The points that are chosen from a list. */
export type LawChoicePoint = Exclude<LawPoint, 'coldCelsiusTenths' | 'keepRecordDays'>;

/** The points that are figures. */
export type LawFigurePoint = Exclude<LawPoint, LawChoicePoint>;

/** What can be chosen at each point, from the freest to the most careful. */
export const LAW_CHOICES = {
  sawnBoneFromZone: ['allowed', 'not-allowed'],
  spineFromZone: ['allowed', 'not-allowed'],
  looseBonesFromZone: ['allowed', 'not-allowed'],
  headFromZone: ['allowed', 'clean-skull-plate-only', 'not-allowed'],
  overBorder: ['anything', 'no-spine-no-head', 'boned-and-clean-plate-only'],
  pooling: ['allowed', 'not-allowed'],
  testWanted: ['never', 'adults-from-zone', 'all-from-zone'],
  trichinellaTest: ['never', 'wanted'],
} as const satisfies { readonly [P in LawChoicePoint]: readonly LawPoints[P][] };

/** The least and the most a figure can be: cold in tenths of a degree Celsius (0 to 10 °C), keeping in days. */
export const LAW_LIMITS = {
  coldCelsiusTenths: { least: 0, most: 100 },
  keepRecordDays: { least: 1, most: 7305 },
} as const satisfies Record<LawFigurePoint, { readonly least: number; readonly most: number }>;

/** Every point, in the order it is shown. */
export const LAW_POINTS = [
  'sawnBoneFromZone',
  'spineFromZone',
  'looseBonesFromZone',
  'headFromZone',
  'testWanted',
  'overBorder',
  'pooling',
  'trichinellaTest',
  'coldCelsiusTenths',
  'keepRecordDays',
] as const satisfies readonly LawPoint[];

/** Tells whether a point is chosen from a list rather than a figure. */
export function isChoicePoint(point: LawPoint): point is LawChoicePoint {
  return Object.hasOwn(LAW_CHOICES, point);
}
