export {
  addDays,
  addMonths,
  daysBetween,
  formatDay,
  formatNearDay,
  isCalendarDay,
  type CalendarDay,
} from './calendar-day';
export { formatThickness, parseLength, type LengthUnit } from './length';
export {
  currencies,
  formatMoney,
  formatRate,
  isCurrency,
  minorDigits,
  parseMoney,
  parseRate,
  type Currency,
} from './money';
export { writeDecimal } from './number-format';
export { type Range } from './range';
export { type Result } from './result';
export { allocateByLargestRemainder, roundHalfUp, scaleHalfUp } from './rounding';
export {
  celsiusTenthsOf,
  fahrenheitTenthsOf,
  formatTemperature,
  parseTemperature,
  type TemperatureUnit,
} from './temperature';
export {
  formatWeighedQuantity,
  formatWeight,
  formatWeightRange,
  heaviestGrams,
  parseWeight,
  weighedQuantity,
  type WeightUnit,
} from './weight';
export { roundedDown, roundedUp } from './written-weight';
