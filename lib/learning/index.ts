export { doubtOf, type Doubt } from './doubt';
export { PRIOR_ANIMALS, learnSpecies, type Learned, type LearnedShare } from './learn-species';
export { observe, ownRawGrams, type Observation, type Weighed } from './observation';
