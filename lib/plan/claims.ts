import { ANATOMY, SIDES, type TissueKey, readTissueKey, tissueIn, tissueKey } from '@/lib/carcass';
import { TARGETS, keepsBone } from '@/lib/cuts';
import { type InstructionLine, placesOfLine } from '@/lib/instructions';

/**
 * The tissues one line claims: the muscles of its target on its side, and with bone left in or sawn also the
 * bones and the cover over them.
 *
 * @example haunch, left, whole on the bone -> left:hind-shank, ..., left:haunch-bone, left:haunch-cover
 */
export function claimsOf(line: Pick<InstructionLine, 'target' | 'side' | 'cut'>): readonly TissueKey[] {
  const target = TARGETS[line.target];
  const tissues = keepsBone(line.cut)
    ? [...target.muscles, ...target.bones, ...target.covers]
    : target.muscles;
  // What lies across the middle, such as the frame of a bird, is claimed once by a cut of both halves.
  return [...new Set(placesOfLine(line).flatMap((place) => tissues.map((tissue) => tissueIn(place, tissue))))];
}

/** A muscle or bone promised to more than one line. */
export type DoubleClaim = {
  readonly key: TissueKey;
  /** Lines in the order they were written; the first keeps the tissue. */
  readonly lineIds: readonly string[];
};

/**
 * Who gets each tissue, and which were promised twice. A thing is claimed at most once: the first line keeps it.
 * What is not there is claimed by nobody, and a bone or cover goes only with meat of its own part: the spine a loin
 * was taken from in the field is no chop.
 */
export function settleClaims(
  lines: readonly InstructionLine[],
  isPresent: (key: TissueKey) => boolean = () => true,
): {
  readonly owner: ReadonlyMap<TissueKey, InstructionLine>;
  readonly doubles: readonly DoubleClaim[];
} {
  const claimants = new Map<TissueKey, InstructionLine[]>();
  for (const line of lines) {
    for (const { key, needs } of claimsWithNeeds(line)) {
      if (!isPresent(key) || (needs !== null && !needs.some(isPresent))) continue;
      const list = claimants.get(key);
      if (list) list.push(line);
      else claimants.set(key, [line]);
    }
  }
  const owner = new Map<TissueKey, InstructionLine>();
  const doubles: DoubleClaim[] = [];
  for (const [key, list] of claimants) {
    const [first] = list;
    if (first) owner.set(key, first);
    if (list.length > 1) doubles.push({ key, lineIds: list.map((line) => line.id) });
  }
  return { owner, doubles };
}

/** A tissue and, of a bone or cover, the meat of which some has to be there for it to go along. */
type Claim = { readonly key: TissueKey; readonly needs: readonly TissueKey[] | null };

/** Lines are never changed in place, and every suggestion settles all of them anew. */
const CLAIMS = new WeakMap<InstructionLine, readonly Claim[]>();

function claimsWithNeeds(line: InstructionLine): readonly Claim[] {
  const known = CLAIMS.get(line);
  if (known) return known;
  const claims = claimsOf(line).map((key): Claim => ({ key, needs: needsOf(line, key) }));
  CLAIMS.set(line, claims);
  return claims;
}

function needsOf(line: InstructionLine, key: TissueKey): readonly TissueKey[] | null {
  const { kind, part, place } = readTissueKey(key);
  if (kind === 'muscle') return null;
  const { muscles } = TARGETS[line.target];
  const ofPart = muscles.filter((muscle) => ANATOMY[muscle].part === part);
  // The frame of a bird has no meat of its own: it goes with whatever sits on it.
  if (ofPart.length === 0) return muscles.flatMap((muscle) => SIDES.map((side) => tissueKey(side, muscle)));
  return ofPart.map((muscle) => tissueKey(place, muscle));
}
