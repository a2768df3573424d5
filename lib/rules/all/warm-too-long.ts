import { type TemperatureUnit, formatTemperature } from '@/lib/units';
import { exampleOrder } from '../example-order';
import { type RuleExamples, type RuleReason, type RuledOrder, defineRule } from '../rule';

type Warm = { readonly celsiusTenths: number; readonly daysAgo: number; readonly coldTenths: number };

/** A carcass loses its own warmth in a night in the cold; a day after the kill it should be near it. Judgement. */
const COOLED_AFTER_DAYS = 1;
const MARGIN_TENTHS = 20;

function warm({ circumstances: { celsiusTenths, killedDaysAgo, conditions, law } }: RuledOrder): readonly Warm[] {
  const coldTenths = law.coldCelsiusTenths;
  if (celsiusTenths === null || killedDaysAgo === null || killedDaysAgo < COOLED_AFTER_DAYS || conditions.includes('sour')) return [];
  return celsiusTenths > coldTenths + MARGIN_TENTHS ? [{ celsiusTenths, daysAgo: killedDaysAgo, coldTenths }] : [];
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const warmTooLongReason: RuleReason = {
  topic: 'condition',
  why: 'What makes meat sour grows fast in the warm and hardly at all at 41 F (5 C). A carcass that has not cooled by the day after the kill was not opened, propped or chilled in time. It may still be good: the owner smells along the bone, decides, and writes down what was found. Your local code decides what may be taken in.',
  source: 'FDA Food Code, 41 F (5 C); in the EU 7 C for large game, (EC) 853/2004, Annex III, Section IV',
};

export const warmTooLong = defineRule<Warm>({
  id: 'warm-too-long',
  severity: 'ask',
  title: 'Still warm the day after',
  ground: 'safety',
  stages: ['receiving'],
  whom: 'shop',
  check: warm,
  keyOf: () => 'warm',
  place: () => ({ kind: 'field', field: 'animal' }),
  part: () => null,
  message: ({ celsiusTenths, daysAgo, coldTenths }, { words }) => {
    const unit: TemperatureUnit = words.unit === 'lb' ? 'F' : 'C';
    const read = (tenths: number): string => formatTemperature(tenths, unit);
    return `It reads ${read(celsiusTenths)} ${daysAgo === 1 ? 'the day' : `${daysAgo} days`} after the kill, and should be at ${read(coldTenths)}: smell along the bone before it is taken in.`;
  },
  noSuggestionBecause: 'Somebody has to look at it; nothing in the instructions changes it.',
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const warmTooLongExamples = (): RuleExamples => ({
  valid: [
    exampleOrder({ stage: 'receiving', circumstances: { celsiusTenths: 250, killedDaysAgo: 0 } }),
    exampleOrder({ stage: 'receiving', circumstances: { celsiusTenths: 60, killedDaysAgo: 2 } }),
    exampleOrder({ stage: 'receiving' }),
  ],
  invalid: [
    {
      order: exampleOrder({ stage: 'receiving', circumstances: { celsiusTenths: 150, killedDaysAgo: 2 } }),
      messages: ['It reads 59.0 °F 2 days after the kill, and should be at 41.0 °F: smell along the bone before it is taken in.'],
    },
    {
      order: exampleOrder({ stage: 'receiving', circumstances: { celsiusTenths: 124, killedDaysAgo: 1 }, words: { country: 'uk', unit: 'kg' } }),
      messages: ['It reads 12.4 °C the day after the kill, and should be at 5.0 °C: smell along the bone before it is taken in.'],
    },
  ],
});
