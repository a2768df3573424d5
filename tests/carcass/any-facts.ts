import fc from 'fast-check';
import {
  AGE_CLASSES, type AnimalFacts, DELIVERY_FORMS, FLESHES, PUBLISHED_IDS, type PartPlace, SEXES, WEIGHT_BASES, WOUND_SEVERITIES,
  isSidedPart, partsOf, placesOf, publishedSpecies,
} from '@/lib/carcass';

export const anyWeight = fc.record({
  grams: fc.integer({ min: 4_000, max: 400_000 }),
  basis: fc.constantFrom(...WEIGHT_BASES),
});

/** Any animal that can come through the door: some parts may be out of it, some hit, and something always came. */
export const anyFacts: fc.Arbitrary<AnimalFacts> = fc.constantFrom(...PUBLISHED_IDS).chain((speciesId) => {
  const everyPart = partsOf(publishedSpecies(speciesId).plan).flatMap((part) => placesOf(isSidedPart(part)).map((place): PartPlace => ({ part, place })));
  return fc.record({
    speciesId: fc.constant(speciesId),
    sex: fc.constantFrom(...SEXES),
    ageClass: fc.constantFrom(...AGE_CLASSES),
    weight: fc.option(anyWeight, { freq: 3 }),
    form: fc.constantFrom(...DELIVERY_FORMS),
    missing: fc.subarray(everyPart, { maxLength: 3 }),
    wounds: fc
      .subarray(everyPart, { maxLength: 3 })
      .chain((parts) => fc.tuple(...parts.map((at) => fc.constantFrom(...WOUND_SEVERITIES).map((severity) => ({ ...at, severity }))))),
    gutShot: fc.boolean(),
    flesh: fc.constantFrom(...FLESHES),
    hung: fc.option(fc.record({ days: fc.integer({ min: 0, max: 30 }), hide: fc.constantFrom('on' as const, 'off' as const) })),
    closeTrim: fc.boolean(),
  });
});
