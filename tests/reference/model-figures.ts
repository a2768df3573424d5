import {
  type AgeClass, type AnimalFacts, type Sex, type WeightBasis,
  PUBLISHED_SPECIES, convertWeight, forecastCarcass, publishedSpecies, rangeOf, readTissueKey, typicalHanging, weightFromGirth,
} from '@/lib/carcass';
import { ageingDays } from '@/lib/orders/ageing';

/** What the forecast says of a published quantity, in the published unit: likely, and its 10th and 90th percentile. */
export type ModelFigure = { readonly low: number; readonly likely: number; readonly high: number };

export type TissuePick = (tissue: ReturnType<typeof readTissueKey>) => boolean;

export const GRAMS_PER_LB = 453.59237;
const MM_PER_INCH = 25.4;
const Z90 = 1.2815515655446004;
/** Shares are read off an animal that hangs so much; a forecast divides whole grams. */
const READ_AT_GRAMS = 1_000_000;

const muscle: TissuePick = ({ kind }) => kind === 'muscle';
export const ofKind = (...kinds: readonly string[]): TissuePick => ({ kind }) => kinds.includes(kind);
export const ofPart = (...parts: readonly string[]): TissuePick => ({ part, kind }) => part !== null && parts.includes(part) && kind !== 'drying';
export const both = (a: TissuePick, b: TissuePick): TissuePick => (tissue) => a(tissue) && b(tissue);

/** A ratio of means, or a rule, that has no spread of its own. */
export function exactly(likely: number): ModelFigure {
  return { low: likely, likely, high: likely };
}

export function times({ low, likely, high }: ModelFigure, factor: number): ModelFigure {
  const [a, b] = [low * factor, high * factor];
  return { low: Math.min(a, b), likely: likely * factor, high: Math.max(a, b) };
}

export const inLb = (grams: ModelFigure): ModelFigure => times(grams, 1 / GRAMS_PER_LB);
export const inKg = (grams: ModelFigure): ModelFigure => times(grams, 1 / 1_000);

/** What is missing to a hundred: the loss that goes with a yield. */
export function lossOf({ low, likely, high }: ModelFigure): ModelFigure {
  return { low: 100 - high, likely: 100 - likely, high: 100 - low };
}

function spread(likely: number, cv: number): ModelFigure {
  const sigma = Math.sqrt(Math.log1p(cv * cv));
  return { low: likely * Math.exp(-Z90 * sigma), likely, high: likely * Math.exp(Z90 * sigma) };
}

export function animal(facts: Partial<AnimalFacts> & Pick<AnimalFacts, 'speciesId'>): AnimalFacts {
  return { sex: 'male', ageClass: 'adult', weight: null, form: 'hide-on', missing: [], wounds: [], ...facts };
}

/** A weight carried from one basis to another. */
export function carried(speciesId: string, amount: number, from: WeightBasis, to: WeightBasis): ModelFigure {
  const { grams, cv } = convertWeight(publishedSpecies(speciesId), { grams: amount, cv: 0 }, from, to);
  return spread(grams, cv);
}

/** One basis in per cent of another. */
export const percentOf = (speciesId: string, of: WeightBasis, is: WeightBasis): ModelFigure => carried(speciesId, 100, of, is);

/** What an animal that nobody weighed is taken to weigh on a basis, in grams. */
export function typicalOn(speciesId: string, sex: Sex, ageClass: AgeClass, basis: WeightBasis): ModelFigure {
  const species = publishedSpecies(speciesId);
  const row = species.typicalWeights.find((one) => one.sex === sex && one.ageClass === ageClass);
  const known = row
    ? { grams: row.grams.mean, cv: row.grams.sd / row.grams.mean, basis: row.basis }
    : { ...typicalHanging(species, sex, ageClass), basis: 'hanging' as const };
  const { grams, cv } = convertWeight(species, known, known.basis, basis);
  return spread(grams, cv);
}

/** Pounds at a girth in inches. */
export function poundsAtGirth(speciesId: string, ageClass: AgeClass, inches: number, basis: 'live' | 'field-dressed'): ModelFigure {
  const told = weightFromGirth(publishedSpecies(speciesId), { ageClass, girthMm: inches * MM_PER_INCH, basis });
  if (!told) throw new Error(`No girth rule of a ${speciesId}, ${ageClass}, ${basis}`);
  return spread(told.grams / GRAMS_PER_LB, told.cv);
}

/** Grams of some tissues in one animal. */
export function gramsOf(facts: AnimalFacts, pick: TissuePick): ModelFigure {
  const forecast = forecastCarcass(facts, PUBLISHED_SPECIES);
  const likely = forecast.tissues.filter(({ key }) => pick(readTissueKey(key))).reduce((sum, { grams }) => sum + grams, 0);
  return rangeOf(forecast, (key) => (pick(readTissueKey(key)) ? 1 : 0), likely);
}

function hung(speciesId: string, facts: Partial<AnimalFacts> = {}): AnimalFacts {
  return animal({ speciesId, weight: { grams: READ_AT_GRAMS, basis: 'hanging' }, ...facts });
}

/** Some tissues in per cent of what hangs. */
export function percentOfHanging(speciesId: string, pick: TissuePick, facts: Partial<AnimalFacts> = {}): ModelFigure {
  return times(gramsOf(hung(speciesId, facts), pick), 100 / READ_AT_GRAMS);
}

/** Some tissues in per cent of what is on the table when it is cut: all but what has dried away. */
export function percentOfCut(speciesId: string, pick: TissuePick): ModelFigure {
  const cut = gramsOf(hung(speciesId), ofKind('muscle', 'bone', 'cover')).likely;
  return times(gramsOf(hung(speciesId), pick), 100 / cut);
}

/** One pick of tissues over another, without spread. */
export function ratio(speciesId: string, of: TissuePick, to: TissuePick): number {
  return gramsOf(hung(speciesId), of).likely / gramsOf(hung(speciesId), to).likely;
}

/** Parts in per cent of all muscle. */
export const percentOfMeat = (speciesId: string, ...parts: readonly string[]): ModelFigure =>
  exactly(100 * ratio(speciesId, both(muscle, ofPart(...parts)), muscle));

/** Bone in per cent of bone and muscle of a joint. */
export const boneOfJoint = (speciesId: string, ...parts: readonly string[]): ModelFigure =>
  exactly(100 * ratio(speciesId, both(ofKind('bone'), ofPart(...parts)), both(ofKind('bone', 'muscle'), ofPart(...parts))));

/** A joint in per cent of all bone and muscle. */
export const jointOfBoneAndMeat = (speciesId: string, ...parts: readonly string[]): ModelFigure =>
  exactly(100 * ratio(speciesId, both(ofKind('bone', 'muscle'), ofPart(...parts)), ofKind('bone', 'muscle')));

/** Clean meat of an animal of so many grams on a basis. Grams. */
export const bonelessOf = (speciesId: string, grams: number, basis: WeightBasis): ModelFigure =>
  gramsOf(animal({ speciesId, weight: { grams: Math.round(grams), basis } }), muscle);

/** A shot through one shoulder that grazed the ribs behind it. */
export const HEAVY_SHOULDER_LIGHT_RIBS: AnimalFacts['wounds'] = [
  { part: 'shoulder', place: 'left', severity: 'heavy' },
  { part: 'ribs', place: 'left', severity: 'light' },
];

/** Meat that wounds and guts cost an animal. Grams. */
export function lostTo(shot: Partial<AnimalFacts> & Pick<AnimalFacts, 'speciesId'>): ModelFigure {
  const forecast = forecastCarcass(animal(shot), PUBLISHED_SPECIES);
  const likely = forecast.tissues.reduce((sum, { woundGrams }) => sum + woundGrams, 0);
  return rangeOf(forecast, (key, isLost) => (isLost && muscle(readTissueKey(key)) ? 1 : 0), likely);
}

/** Whole days at a steady temperature until 40 degree-days are gathered. */
export function daysTo40(celsius: number): number {
  const days = ageingDays({ targetDegreeDays: 40, celsius });
  if (days === null) throw new Error(`Nothing is gathered at ${celsius} °C`);
  return days;
}
