export {
  SPOTS,
  parseArrivalForm,
  readArrivalForm,
  type ArrivalFormValues,
  type SpotId,
} from './arrival-form';
export { nestEntries, rowsAt, textAt, type FormEntries } from './form-entries';
export { applyIntent, assessForm, findingsOf, mend, type OrderFormShop } from './order-form-intents';
export {
  fieldErrorsOf,
  implausibleWeight,
  orderFormSchema,
  parseOrderForm,
  type FieldErrors,
  type OrderDraft,
} from './order-form-schema';
export {
  blankOrderForm,
  describedAnimal,
  describedInstructions,
  readOrderForm,
  withInstructions,
  type FormShop,
  type LineValues,
  type OrderFormValues,
} from './order-form-values';
export {
  AS_SEEN_FIT,
  packChoices,
  packWords,
  poolPackChoices,
  sizeChoices,
  sizeWords,
  type Choice,
} from './size-choices';
export { storedAnimal, storedArrival, storedInstructions, storedOptions, type QuestionOption } from './stored';
export {
  PAYMENT_METHODS,
  parseHandoverForm,
  parsePackForm,
  parsePaymentForm,
  type PackEntry,
  type PaymentMethod,
} from './table-forms';
export { checkForm, refuseField, refuseForm, type FormErrors, type FormOutcome } from './form-outcome';
export { longestPassword, normalizePassword, passwordProblem, shortestPassword } from './password';
export {
  COOK_TEMPERATURES,
  PAPERS,
  SHOP_LOCALES,
  SHOP_UNITS,
  firstShopSettings,
  isTimeZone,
  shopSettingsSchema,
  type ShopSettings,
} from './shop-settings';
export { isUserName, newStaffSchema, normalizeUserName, setUpSchema, type NewStaff, type SetUp } from './staff';
