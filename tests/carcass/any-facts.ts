import fc from 'fast-check';
import {
  AGE_CLASSES, type AnimalFacts, DELIVERY_FORMS, PARTS, type PartPlace, SEXES, SIDES, SPECIES_IDS, WEIGHT_BASES, WOUND_SEVERITIES,
  isSidedPart,
} from '@/lib/carcass';

const everyPart: readonly PartPlace[] = PARTS.flatMap((part): PartPlace[] =>
  isSidedPart(part) ? SIDES.map((place) => ({ part, place })) : [{ part, place: 'middle' }],
);

export const anyWeight = fc.record({
  grams: fc.integer({ min: 4_000, max: 400_000 }),
  basis: fc.constantFrom(...WEIGHT_BASES),
});

/** Any animal that can come through the door: some parts may be out of it, some hit, and something always came. */
export const anyFacts: fc.Arbitrary<AnimalFacts> = fc.record({
  speciesId: fc.constantFrom(...SPECIES_IDS),
  sex: fc.constantFrom(...SEXES),
  ageClass: fc.constantFrom(...AGE_CLASSES),
  weight: fc.option(anyWeight, { freq: 3 }),
  form: fc.constantFrom(...DELIVERY_FORMS),
  missing: fc.subarray([...everyPart], { maxLength: 3 }),
  wounds: fc
    .subarray([...everyPart], { maxLength: 3 })
    .chain((parts) => fc.tuple(...parts.map((at) => fc.constantFrom(...WOUND_SEVERITIES).map((severity) => ({ ...at, severity }))))),
});
