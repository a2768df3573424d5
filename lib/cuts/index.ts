export { CUTS, CUT_IDS, cutsOf, keepsBone, type Cut, type CutId, type TrimSplit } from './cuts';
export {
  NAME_COUNTRIES,
  cutName,
  minceName,
  partName,
  pluralOf,
  sidedName,
  targetName,
  type NameCountry,
} from './names';
export { USUAL_CUTS, isUsual } from './usual';
export { muscleLengthMm, muscleThicknessMm } from './muscle-shape';
export { gramsPerPerson } from './person-portion';
export { TARGETS, TARGET_IDS, knifeOrder, targetsOfPart, targetsOfPlan, type Target, type TargetId } from './targets';
