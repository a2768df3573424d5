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
export { MISLEADING_TERMS, nameBook, type MisleadingName, type MisleadingTerm, type NameBook, type NameMeaning } from './misleading-names';
export { MISLEADING_NAME_SOURCES } from './misleading-name-sources';
export { PLACED_TARGETS, whereItIs } from './where-it-is';
export { USUAL_CUTS, isUsual } from './usual';
export { muscleLengthMm, muscleThicknessMm } from './muscle-shape';
export { gramsPerPerson } from './person-portion';
export { TARGETS, TARGET_IDS, knifeOrder, targetsOfPart, targetsOfPlan, type Target, type TargetId } from './targets';
