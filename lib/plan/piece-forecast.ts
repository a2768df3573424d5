import { type ForecastTissue, type MuscleId, readTissueKey } from '@/lib/carcass';
import { CUTS, TARGETS, gramsPerPerson, muscleLengthMm } from '@/lib/cuts';
import { type InstructionLine, placesOfLine } from '@/lib/instructions';
import type { Range } from '@/lib/units';

/** What a line comes to on the table. Whole numbers; null where nothing tells. */
export type PieceForecast = {
  /** Slices, joints or whole pieces. */
  readonly pieces: Range | null;
  readonly packets: Range | null;
  /** People it feeds, by the raw weight one is given. */
  readonly people: Range | null;
};

/** One muscle of a line at one place: what is packed of it, in grams. */
export type PackedMuscle = { readonly key: ForecastTissue['key']; readonly packed: number };

const NOTHING: PieceForecast = { pieces: null, packets: null, people: null };

/**
 * Pieces, packets and people of one line, from what it packs of each muscle. A muscle of another weight is longer or shorter by
 * the cube root, a joint heavier or lighter by as much.
 */
export function forecastPieces(line: InstructionLine, packed: Range, muscles: readonly PackedMuscle[]): PieceForecast {
  if (packed.likely <= 0 || CUTS[line.cut].split.packed === 0) return NOTHING;
  const at = (level: keyof Range): { readonly pieces: number | null; readonly packets: number | null } => {
    const scale = packed[level] / packed.likely;
    const pieces = piecesOf(line, muscles.map(({ key, packed: grams }) => ({ key, packed: grams * scale })));
    return { pieces, packets: packetsOf(line, packed[level], pieces) };
  };
  const [low, likely, high] = [at('low'), at('likely'), at('high')];
  const person = gramsPerPerson(line.cut);
  const people = (grams: number): number => Math.max(1, Math.round(grams / person));
  return {
    pieces: rangeOfCounts(low.pieces, likely.pieces, high.pieces),
    packets: rangeOfCounts(low.packets, likely.packets, high.packets),
    people: { low: people(packed.low), likely: people(packed.likely), high: people(packed.high) },
  };
}

function piecesOf(line: InstructionLine, muscles: readonly PackedMuscle[]): number | null {
  const { sizing } = CUTS[line.cut];
  const { size } = line;
  if (sizing === 'thickness') {
    if (size.kind !== 'thickness') return null;
    // A butterfly is cut at twice its finished thickness.
    const slice = size.thicknessMm * (line.cut === 'butterfly' ? 2 : 1);
    return muscles.reduce((count, { key, packed }) => count + Math.floor(muscleLengthMm(readTissueKey(key).tissue as MuscleId, packed) / slice), 0);
  }
  const wholes = wholePieces(line, muscles);
  if (sizing === 'none') return CUTS[line.cut].packing === 'weight' ? null : wholes.length;
  if (size.kind === 'as-seen-fit') return null;
  const each = size.kind === 'people' ? size.people * gramsPerPerson(line.cut) : size.kind === 'weight' ? size.grams : 0;
  return each > 0 ? wholes.reduce((count, grams) => count + Math.max(1, Math.round(grams / each)), 0) : null;
}

/** What could be one piece: a side of the line, or all of it where both halves are joined. Grams of those that are there. */
function wholePieces(line: InstructionLine, muscles: readonly PackedMuscle[]): readonly number[] {
  const places = placesOfLine(line);
  const groups = TARGETS[line.target].reach === 'both-as-one' ? [places] : places.map((place) => [place]);
  return groups
    .map((group) => muscles.filter(({ key }) => (group as readonly string[]).includes(readTissueKey(key).place)).reduce((sum, one) => sum + one.packed, 0))
    .filter((grams) => grams > 0);
}

function packetsOf(line: InstructionLine, grams: number, pieces: number | null): number | null {
  switch (CUTS[line.cut].packing) {
    case 'each':
      return pieces;
    case 'pieces':
      return pieces !== null && line.pack.kind === 'pieces' ? Math.ceil(pieces / line.pack.pieces) : null;
    case 'weight':
      return line.pack.kind === 'weight' ? Math.max(1, Math.ceil(grams / line.pack.grams)) : null;
  }
}

function rangeOfCounts(low: number | null, likely: number | null, high: number | null): Range | null {
  return low === null || likely === null || high === null ? null : { low, likely, high };
}
