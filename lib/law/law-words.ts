import { type TemperatureUnit, formatDay, formatTemperature } from '@/lib/units';
import type { LawBasis, LawEvidence } from './law-pack';
import { type LawChoicePoint, type LawPoint, type LawPoints, isChoicePoint } from './law-points';

/** What stands wherever a pack or a point of it is shown. */
export const NOT_ADVICE =
  'This is not legal advice. It is what we read on the day named, in copies that may be old. Your local code and the local authority decide; ask them, and enter here what they say.';

/** How figures and days are written. */
export type LawReader = { readonly unit: TemperatureUnit; readonly locale: string };

const POINT_WORDS: Readonly<Record<LawPoint, string>> = {
  sawnBoneFromZone: 'Sawing bone of an animal from a disease zone',
  spineFromZone: 'Spine of a zone animal, or meat on it, going home',
  looseBonesFromZone: 'Bones of a zone animal for stock or dogs',
  headFromZone: 'Head of a zone animal going home',
  overBorder: 'What may cross a state or country border',
  pooling: 'One hunter’s meat in a batch with other people’s',
  testWanted: 'Disease sample before the knife',
  trichinellaTest: 'Trichinella test of boar, bear and other carriers',
  coldCelsiusTenths: 'Received and held at or below',
  keepRecordDays: 'Days an entry of the book is kept',
};

const YES_NO = { allowed: 'Allowed', 'not-allowed': 'Not allowed' } as const;

const VALUE_WORDS: { readonly [P in LawChoicePoint]: Readonly<Record<LawPoints[P], string>> } = {
  sawnBoneFromZone: YES_NO,
  spineFromZone: YES_NO,
  looseBonesFromZone: YES_NO,
  headFromZone: { ...YES_NO, 'clean-skull-plate-only': 'Antlers on a clean skull plate only' },
  overBorder: {
    anything: 'Anything',
    'no-spine-no-head': 'Anything but spine and head',
    'boned-and-clean-plate-only': 'Boned meat and a clean skull plate only',
  },
  pooling: YES_NO,
  testWanted: { never: 'Of none', 'adults-from-zone': 'Of grown animals from a zone', 'all-from-zone': 'Of all animals from a zone' },
  trichinellaTest: { never: 'Not wanted', wanted: 'Wanted' },
};

const BASIS_WORDS: Readonly<Record<LawBasis, string>> = {
  read: '',
  'second-hand': 'as quoted by somebody else',
  'from-memory': 'in part from memory',
  judgement: 'our own judgement of it',
  'not-read': 'nothing found for this place',
};

/** A point in plain words. */
export function pointWords(point: LawPoint): string {
  return POINT_WORDS[point];
}

/**
 * The value of a point in plain words.
 *
 * @example valueWords('coldCelsiusTenths', 50, { unit: 'F', locale: 'en-US' }) // '41.0 °F'
 */
export function valueWords(point: LawPoint, value: LawPoints[LawPoint], { unit, locale }: LawReader): string {
  if (point === 'coldCelsiusTenths') return formatTemperature(Number(value), unit, locale);
  if (point === 'keepRecordDays') return `${new Intl.NumberFormat(locale, { useGrouping: false }).format(Number(value))} ${value === 1 ? 'day' : 'days'}`;
  const words: Readonly<Record<string, string>> = isChoicePoint(point) ? VALUE_WORDS[point] : {};
  return words[value] ?? String(value);
}

/**
 * When and how a point was read.
 *
 * @example evidenceWords({ ..., readOn: '2026-11-25', textYear: 2022, basis: 'second-hand' }, 'en-US')
 *   // 'Nov 25, 2026, text of 2022, as quoted by somebody else'
 */
export function evidenceWords({ readOn, textYear, basis }: LawEvidence, locale: string): string {
  return [formatDay(readOn, locale), textYear === null ? '' : `text of ${textYear}`, BASIS_WORDS[basis]].filter((part) => part !== '').join(', ');
}
