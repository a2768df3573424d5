export {
  SPOTS,
  spotsOf,
  arrivalValuesOf,
  parseArrivalForm,
  readArrivalForm,
  type ArrivalFormValues,
  type SpotId,
} from './arrival-form';
export { nestEntries, rowsAt, textAt, type FormEntries } from './form-entries';
export { lineLabel, orderAnswers, type Answer, type AnswerGroup } from './order-answers';
export { ORDER_SECTIONS, sectionId, type OrderSection } from './order-sections';
export { formAsItStands, readBase, writtenBase } from './order-form-base';
export { checkOrderForm } from './order-form-check';
export { orderFormEntries } from './order-form-entries';
export { applyIntent, assessForm, findingsOf, mend, withFindings } from './order-form-intents';
export { planForm, type OrderFormShop } from './order-form-plan';
export {
  fieldErrorsOf,
  implausibleWeight,
  orderFormSchema,
  parseOrderForm,
  type FieldErrors,
  type OrderDraft,
} from './order-form-schema';
export { openedForm, refusedForm, type FormBase, type OrderFormState, type OrderFormStep } from './order-form-state';
export { stepOrderForm } from './order-form-steps';
export {
  ageChoices,
  antlerChoices,
  basisChoices,
  capital,
  chosenLabel,
  fatChoices,
  fatPercentChoices,
  formChoices,
  mixingChoices,
  poolPackMenu,
  pricedSpecies,
  productChoices,
  productHint,
  restChoices,
  sexChoices,
  shapeChoices,
  sideChoices,
  speciesChoices,
  squaredOffChoices,
  zoneChoices,
  type HintedChoice,
} from './order-form-words';
export { describedAnimal, describedInstructions, girthUnit } from './order-form-described';
export {
  SHARE_ROWS,
  blankOrderForm,
  planOf,
  readOrderForm,
  type FormShop,
  type LineValues,
  type OrderFormValues,
} from './order-form-values';
export { formValuesOf, withInstructions } from './order-form-written';
export {
  AS_SEEN_FIT,
  packChoices,
  packWords,
  poolPackChoices,
  readPack,
  readSize,
  sizeChoices,
  sizeWords,
  type Choice,
} from './size-choices';
export { storedAnimal, storedArrival, storedInstructions, storedOptions, type QuestionOption } from './stored';
export { licenceWord } from './licence-word';
export { tidyLine } from './tidy-text';
export {
  PAYMENT_METHODS,
  WEIGHTS_ARE_RIGHT,
  parseHandoverForm,
  parsePackForm,
  parsePaymentForm,
  paymentWord,
  saysRight,
  type PackEntry,
  type PaymentMethod,
} from './table-forms';
export { checkForm, refuseField, refuseForm, type FormErrors, type FormOutcome } from './form-outcome';
export { longestPassword, normalizePassword, passwordProblem, shortestPassword } from './password';
export { ruleChoices, type FixedRule, type RuleChoice } from './rule-choices';
export { AS_IT_IS, parseRuleChanges, ruleChangesValues, ruleFields } from './rule-changes-form';
export {
  COOK_TEMPERATURES,
  PAPERS,
  SHOP_LOCALES,
  SHOP_UNITS,
  firstShopSettings,
  isTimeZone,
  settingsFormSchema,
  shopSettingsSchema,
  type ShopSettings,
} from './shop-settings';
export { lawFormValues, lawReader, parseLawForm, shopLawSchema } from './shop-law';
export { termsEntries, termsOf } from './shop-terms';
export { isUserName, newStaffSchema, normalizeUserName, setUpSchema, type NewStaff, type SetUp } from './staff';
export { figureText, weightFigure } from './figure-text';
export { packBalance, type PackBalance } from './pack-balance';
export {
  CHARGE_KINDS,
  GROWING_LISTS,
  applyTariffIntent,
  parseTariffForm,
  priceOfField,
  readTariffForm,
  tariffFormEntries,
  tariffFormValues,
  type BaseValues,
  type ChargeKind,
  type GrowingList,
  type StepValues,
  type TariffFormValues,
} from './tariff-form';
export { answerPlanRequest, parsePlanRequest, type PlanDesk } from './answer-plan-request';
export { planAnswerSchema, toldInstructions, type PlanAnswer } from './plan-answer';
export { LARGEST_PLAN_BYTES, NOT_JSON, NOT_JSON_TYPE, PLAN_EXAMPLES, TOO_LARGE, planOpenApi, planProblemsSchema } from './plan-openapi';
export { type PlanRequest } from './plan-request';
export { type PlanProblem } from './plan-request-words';
export { parseSpeciesFile, type SpeciesFileProblem } from './species-file';
