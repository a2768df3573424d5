import { CAREFUL_FINDINGS } from './careful-findings';
import { LAW_POINTS, type LawPoint, type LawPoints } from './law-points';

/** The day the texts behind the packs were read: stored copies of public text, some years old. */
export const READ_ON = '2026-11-25';

/** How far a figure can be trusted: read in a stored copy, as quoted by somebody else, from memory, judged, not read at all. */
export type LawBasis = 'read' | 'second-hand' | 'from-memory' | 'judgement' | 'not-read';

/** Where the value of a point comes from. */
export type LawEvidence = {
  readonly citation: string;
  /** The day it was read, 'YYYY-MM-DD'. */
  readonly readOn: string;
  /** The year of the text that was read; null where it does not say. */
  readonly textYear: number | null;
  readonly basis: LawBasis;
  readonly note: string;
};

/** One place's law as shipped. Never legal advice: the local code and the local authority decide. */
export type LawPack = {
  readonly id: string;
  readonly place: string;
  readonly points: LawPoints;
  readonly evidence: Readonly<Record<LawPoint, LawEvidence>>;
};

/** One point as it was found in a text. */
export type LawFinding<P extends LawPoint = LawPoint> = {
  readonly value: LawPoints[P];
  readonly citation: string;
  readonly note: string;
  /** Left out where the text does not tell its year. */
  readonly textYear?: number;
  /** 'read' where it is left out. */
  readonly basis?: Exclude<LawBasis, 'not-read'>;
};

/** What was read of one place. */
export type PlaceRead = {
  readonly id: string;
  readonly place: string;
  readonly read: { readonly [P in LawPoint]?: LawFinding<P> };
  /** What else was read that touches a point without settling it; said after the note. */
  readonly remarks?: { readonly [P in LawPoint]?: string };
};

/** What the citation of a point says that was not read for a place. */
export const NOT_READ = 'Not read for this place; the careful figure';

/** Makes a pack of what was read of a place: a point that was not read takes the careful value, and says so. */
export function packOf({ id, place, read, remarks = {} }: PlaceRead): LawPack {
  const points: Record<string, LawPoints[LawPoint]> = {};
  const evidence: Partial<Record<LawPoint, LawEvidence>> = {};
  for (const point of LAW_POINTS) {
    const found: LawFinding = read[point] ?? CAREFUL_FINDINGS[point];
    const remark = remarks[point];
    points[point] = found.value;
    evidence[point] = {
      citation: read[point] ? found.citation : NOT_READ,
      readOn: READ_ON,
      textYear: read[point] ? (found.textYear ?? null) : null,
      basis: read[point] ? (found.basis ?? 'read') : 'not-read',
      note: `${read[point] ? found.note : `Where it comes from: ${found.citation}.`}${remark === undefined ? '' : ` ${remark}`}`,
    };
  }
  return { id, place, points: points as LawPoints, evidence: evidence as LawPack['evidence'] };
}
