import { type NameCountry, partName } from '@/lib/cuts';
import type { Learned, LearnedShare } from '@/lib/learning';
import { type WeightUnit, formatWeight, writeDecimal } from '@/lib/units';

/** One mark on the axis of a share, with the range around it, in hundredths of the axis. A single animal has no range. */
export type YieldMark = {
  readonly of: 'published' | 'yours' | 'now';
  readonly at: number;
  readonly range: { readonly from: number; readonly to: number } | null;
};

/** One share of a species, ready to read: in words, and as marks on one axis. */
export type YieldRow = {
  readonly key: LearnedShare['of'];
  readonly name: string;
  readonly published: string;
  readonly yours: string;
  readonly now: string;
  readonly marks: readonly YieldMark[];
};

/** What is odd about an animal: a share, or one row of the packing table by the name it had there. */
export type OddYield =
  | { readonly of: 'hanging' | 'meat'; readonly expected: number; readonly found: number }
  | { readonly of: 'line'; readonly label: string; readonly expectedGrams: number; readonly foundGrams: number };

/** 90th percentile of the standard normal: eight in ten lie between minus and plus this many deviations. */
const Z90 = 1.2816;
/** Room beside the outermost marks, of the axis. */
const MARGIN = 0.12;
/** The shortest axis, so that a hair's breadth does not look like a difference. */
const SHORTEST_AXIS = 0.02;
/** A weight in the wrong unit is off by 2.2; with the animal's own difference, by about this much. */
const WRONG_UNIT = { from: 1.9, to: 2.55 };

type Shown = { readonly mean: number; readonly sd: number | null };

/**
 * What a shop has learned of a species, a row a share: published, its own animals, and what the forecast goes by now, which is what
 * was published while learning is off.
 */
export function yieldRows(learned: Learned, words: { readonly country: NameCountry; readonly locale: string; readonly isOn: boolean }): readonly YieldRow[] {
  return learned.shares.map((share) => {
    const { of, prior, own } = share;
    const now = words.isOn ? share.result : prior;
    const shown: readonly (readonly [YieldMark['of'], Shown])[] = [
      ['published', prior],
      ...(own.mean === null ? [] : ([['yours', { mean: own.mean, sd: own.sd }], ['now', now]] as const)),
    ];
    return {
      key: of,
      name: shareName(of, words.country),
      published: shareWords(prior, words.locale),
      yours: own.mean === null ? 'none yet' : `${shareWords({ mean: own.mean, sd: own.sd }, words.locale)}, ${animalsWords(own.animals)}`,
      now: shareWords(now, words.locale),
      marks: marksOf(shown),
    };
  });
}

/**
 * Why an animal is not learned from until somebody says that it is right.
 *
 * @example oddYieldWords({ of: 'meat', expected: 0.56, found: 0.25 }, { unit: 'lb', locale: 'en-US' })
 * // 'The meat came to 25.0% of what hung; about 56.0% was to be expected. Kilograms may have been written as pounds.'
 */
export function oddYieldWords(odd: OddYield, { unit, locale }: { readonly unit: WeightUnit; readonly locale: string }): string {
  switch (odd.of) {
    case 'hanging':
      return `It hung at ${percent(odd.found, locale)} of what came in; about ${percent(odd.expected, locale)} was to be expected.${unitHint(odd.found / odd.expected)}`;
    case 'meat':
      return `The meat came to ${percent(odd.found, locale)} of what hung; about ${percent(odd.expected, locale)} was to be expected.${unitHint(odd.found / odd.expected)}`;
    case 'line':
      return `${odd.label}: ${formatWeight(odd.foundGrams, unit, locale)} was weighed; about ${formatWeight(odd.expectedGrams, unit, locale)} was to be expected.${unitHint(odd.foundGrams / odd.expectedGrams)}`;
  }
}

function unitHint(factor: number): string {
  if (factor >= WRONG_UNIT.from && factor <= WRONG_UNIT.to) return ' Pounds may have been written as kilograms.';
  if (1 / factor >= WRONG_UNIT.from && 1 / factor <= WRONG_UNIT.to) return ' Kilograms may have been written as pounds.';
  return '';
}

function shareName(of: LearnedShare['of'], country: NameCountry): string {
  switch (of) {
    case 'field-dressed':
      return 'Field-dressed, of what it weighed live';
    case 'hanging':
      return 'On the rail, of field-dressed';
    case 'meat':
      return 'Clean meat, of what hung';
    default:
      return `${capital(partName(of, country))}, of the clean meat`;
  }
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function animalsWords(count: number): string {
  return count === 1 ? '1 animal' : `${count} animals`;
}

/** A share in percent with one decimal, half up. */
function percent(share: number, locale: string): string {
  return `${writeDecimal(Math.round(share * 1000), { decimals: 1, locale })}%`;
}

/** Mean, and where eight in ten lie, in whole percent. */
function shareWords({ mean, sd }: Shown, locale: string): string {
  const range = rangeOf({ mean, sd });
  return range ? `${percent(mean, locale)} (${Math.round(range.from * 100)} to ${Math.round(range.to * 100)})` : percent(mean, locale);
}

function rangeOf({ mean, sd }: Shown): { readonly from: number; readonly to: number } | null {
  return sd === null ? null : { from: Math.max(0, mean - Z90 * sd), to: Math.min(1, mean + Z90 * sd) };
}

function marksOf(shown: readonly (readonly [YieldMark['of'], Shown])[]): readonly YieldMark[] {
  const ends = shown.flatMap(([, one]) => [one.mean, ...Object.values(rangeOf(one) ?? {})]);
  const middle = (Math.min(...ends) + Math.max(...ends)) / 2;
  const across = Math.max(SHORTEST_AXIS, Math.max(...ends) - Math.min(...ends)) * (1 + 2 * MARGIN);
  const at = (share: number): number => Math.round(10_000 * ((share - middle) / across + 0.5)) / 100;
  return shown.map(([of, one]) => {
    const range = rangeOf(one);
    return { of, at: at(one.mean), range: range && { from: at(range.from), to: at(range.to) } };
  });
}
