export { doubtOf, lineDoubtOf, type Doubt } from './doubt';
export { PRIOR_ANIMALS, learnSpecies, type Learned, type LearnedShare } from './learn-species';
export { ARRIVAL_BASES, observe, ownRawGrams, type ArrivalBasis, type Observation, type Weighed } from './observation';
