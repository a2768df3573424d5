export { ageingDays } from './ageing';
export {
  animalWords,
  factsOf,
  isInDiseaseZone,
  type ArrivalDetails,
  type DescribedAnimal,
} from './animal';
export { assessAnimal, assessOrder, findingsOn, isFromZone, type AnimalCase, type Assessment, type OrderFacts, type ShopView } from './assess-order';
export { planAnimal, type AnimalAndWish, type PlannedAnimal } from './order-plan';
export { billFacts, packRows, type PackRow, type Weighing } from './bill-facts';
export {
  formatOrderNumber,
  isOrderNumber,
  makeOrderNumber,
  parseOrderNumber,
  parseScanCode,
  scanCode,
  wholeNumberDigits,
} from './order-number';
export {
  ORDER_STATES,
  ORDER_STEPS,
  TRANSITIONS,
  canStep,
  hasSheet,
  isChangeable,
  stateWords,
  stepFrom,
  stepsFrom,
  type OrderState,
  type OrderStep,
} from './order-states';
export { farOff, lookAgain, rowName } from './look-again';
export { addedGramsOf, balanceOf, type Balance } from './pack-balance';
export { answersTo, firstStop, newQuestions } from './questions';
export { foldForSearch, searchKeyOf, searchTerms, tagKey } from './search-key';
export { isForHunter, timelineWords } from './timeline-words';
