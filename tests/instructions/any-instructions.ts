import fc from 'fast-check';
import { CUTS, type CutId, TARGETS, TARGET_IDS, type TargetId, cutsOf } from '@/lib/cuts';
import {
  ADDED_FATS, ALLERGENS, ANTLER_CHOICES, MINCE_SHAPES, MIXINGS, PRODUCT_IDS, REST_CHOICES, type InstructionLine, type Instructions, type PackSize, type PieceSize,
} from '@/lib/instructions';

const asSeenFit = fc.constant({ kind: 'as-seen-fit' } as const);

function anySize(cut: CutId): fc.Arbitrary<PieceSize> {
  switch (CUTS[cut].sizing) {
    case 'none':
      return asSeenFit;
    case 'thickness':
      return fc.oneof(asSeenFit, fc.record({ kind: fc.constant('thickness' as const), thicknessMm: fc.integer({ min: 1, max: 120 }) }));
    case 'joint':
      return fc.oneof(
        asSeenFit,
        fc.record({ kind: fc.constant('weight' as const), grams: fc.integer({ min: 100, max: 6_000 }) }),
        fc.record({ kind: fc.constant('people' as const), people: fc.integer({ min: 1, max: 20 }) }),
      );
  }
}

function anyPack(cut: CutId): fc.Arbitrary<PackSize> {
  switch (CUTS[cut].packing) {
    case 'each':
      return asSeenFit;
    case 'pieces':
      return fc.oneof(asSeenFit, fc.record({ kind: fc.constant('pieces' as const), pieces: fc.integer({ min: 1, max: 8 }) }));
    case 'weight':
      return fc.oneof(asSeenFit, fc.record({ kind: fc.constant('weight' as const), grams: fc.constantFrom(250, 454, 907) }));
  }
}

/** A line as the form can send it: a target, a cut it has, a side it comes on. */
export function anyLine(id: string, targets: readonly TargetId[] = TARGET_IDS): fc.Arbitrary<InstructionLine> {
  return fc
    .constantFrom(...targets)
    .chain((target) => fc.record({ target: fc.constant(target), cut: fc.constantFrom(...cutsOf(target)) }))
    .chain(({ target, cut }) => {
      const { reach } = TARGETS[target];
      return fc.record({
        id: fc.constant(id),
        target: fc.constant(target),
        cut: fc.constant(cut),
        side: reach === 'middle' ? fc.constant('middle' as const) : reach === 'both-as-one' ? fc.constant('both' as const) : fc.constantFrom('left', 'right', 'both'),
        size: anySize(cut),
        pack: anyPack(cut),
        askedGrams: fc.option(fc.integer({ min: 1, max: 40_000 }), { freq: 2 }),
      });
    });
}

/** Any instructions the form can send, with up to nine lines that may well want the same meat. */
export const anyInstructions: fc.Arbitrary<Instructions> = fc.record({
  lines: fc.integer({ min: 0, max: 9 }).chain((count) =>
    fc.tuple(...Array.from({ length: count }, (_, at) => anyLine(`line-${at + 1}`))),
  ),
  rest: fc.constantFrom(...REST_CHOICES),
  squaredOff: fc.constantFrom('stew', 'mince'),
  mince: fc.record({
    addedFat: fc.constantFrom(...ADDED_FATS),
    fatPercent: fc.constantFrom(0, 10, 15, 20, 30),
    packGrams: fc.constantFrom(250, 454, 907),
    shape: fc.constantFrom(...MINCE_SHAPES),
  }),
  stewPackGrams: fc.constantFrom(454, 500),
  products: fc
    .shuffledSubarray([...PRODUCT_IDS])
    .chain((ids) => fc.tuple(...ids.map((productId) => fc.record({ productId: fc.constant(productId), gameGrams: fc.integer({ min: 1, max: 60_000 }) })))),
  isPriorityStated: fc.boolean(),
  mixing: fc.constantFrom(...MIXINGS),
  keep: fc.record({
    heart: fc.boolean(),
    liver: fc.boolean(),
    bones: fc.boolean(),
    antlers: fc.constantFrom(...ANTLER_CHOICES),
    cape: fc.boolean(),
    hide: fc.boolean(),
    taxidermist: fc.constantFrom('', 'Nyberg Taxidermy'),
  }),
  noPork: fc.boolean(),
  avoid: fc.subarray([...ALLERGENS]),
  boneless: fc.boolean(),
  shares: fc.array(fc.record({ name: fc.constantFrom('', 'Edda', 'Jonas'), percent: fc.integer({ min: 0, max: 100 }), isGiven: fc.boolean() }), { maxLength: 4 }),
  wantedBy: fc.constantFrom(null, '2026-12-01', '2027-02-01'),
  overBorder: fc.boolean(),
  agreed: fc.constant([]),
  note: fc.constant(''),
});
