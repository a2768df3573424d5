export {
  ANATOMY,
  BONES,
  COVERS,
  MUSCLES,
  PARTS,
  SIDES,
  isSidedPart,
  placesOf,
  readTissueKey,
  tissueKey,
  type BoneId,
  type CoverId,
  type MuscleId,
  type PartId,
  type Place,
  type Side,
  type TissueId,
  type TissueKey,
  type TissueKind,
} from './anatomy';
export {
  DELIVERY_FORMS,
  WOUND_LOSS_PER_10K,
  WOUND_SEVERITIES,
  type AnimalFacts,
  type DeliveryForm,
  type PartPlace,
  type Wound,
  type WoundSeverity,
} from './animal-facts';
export { forecastCarcass, isDelivered, rangeOf, type CarcassForecast, type ForecastTissue } from './forecast';
export { impliedLiveGrams, toHanging, typicalHanging, wholeHanging, type UncertainWeight } from './hanging-weight';
export { meanShares, buildShareTree, pruneShareTree, shareMoments, type Moments, type ShareNode } from './share-tree';
export { SOURCES, type SourceKey } from './sources';
export {
  AGE_CLASSES,
  SEXES,
  SPECIES_IDS,
  WEIGHT_BASES,
  type AgeClass,
  type Coefficient,
  type Composition,
  type Sex,
  type Shares,
  type Species,
  type SpeciesId,
  type TypicalWeight,
  type WeightBasis,
} from './species';
export { SPECIES } from './species/registry';
