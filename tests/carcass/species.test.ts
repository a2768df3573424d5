import { describe, expect, it, test } from 'vitest';
import {
  AGE_CLASSES, type Evidence, PUBLISHED_IDS, SOURCES, convertWeight, impliedLiveGrams, partsOf, publishedSpecies, readTissueKey,
  buildShareTree, meanShares, typicalHanging, weightFromGirth,
} from '@/lib/carcass';

const MM_PER_INCH = 25.4;

function evidenceIn(value: unknown): readonly Evidence[] {
  if (typeof value !== 'object' || value === null) return [];
  return [...('why' in value ? [value as Evidence] : []), ...Object.values(value).flatMap(evidenceIn)];
}

describe.each(PUBLISHED_IDS)('the file of a %s', (id) => {
  const species = publishedSpecies(id);

  it('gives every number a reason in whole sentences, and names no source that is not in the list', () => {
    const all = evidenceIn(species);
    expect(all.length).toBeGreaterThan(10);
    for (const { n, source, why } of all) {
      expect(Number.isSafeInteger(n) && n >= 0).toBe(true);
      expect(Object.keys(SOURCES)).toContain(source);
      expect(why).toMatch(/^[A-Z0-9].*\.$/);
      for (const [key] of why.matchAll(/\b[A-Z]{3,}[A-Z_]*\d*\b/g)) expect(Object.keys(SOURCES)).toContain(key);
    }
  });

  it('has a typical weight for each sex and age, the young lightest and no male lighter than its female', () => {
    const grams = (sex: 'male' | 'female', age: (typeof AGE_CLASSES)[number]): number => typicalHanging(species, sex, age).grams;
    for (const age of AGE_CLASSES) expect(grams('male', age)).toBeGreaterThanOrEqual(grams('female', age));
    for (const sex of ['male', 'female'] as const) {
      expect(grams(sex, 'young')).toBeLessThan(grams(sex, 'yearling'));
      expect(grams(sex, 'yearling')).toBeLessThanOrEqual(grams(sex, 'adult'));
    }
    expect(species.typicalWeights).toHaveLength(6);
  });

  it('divides into the parts of its own body and no other', () => {
    const parts = new Set(meanShares(buildShareTree(species.composition)).map(({ key }) => readTissueKey(key).part).filter((part) => part !== null));
    expect([...parts].toSorted()).toEqual([...partsOf(species.plan)].toSorted());
  });

  it('gives less of the living animal at every step down to clean meat, and never less than a fifth', () => {
    const steps = (['field-dressed', 'legs-off', 'hide-on', 'hanging', 'boneless'] as const).map((basis) => convertWeight(species, { grams: 1_000, cv: 0 }, 'live', basis).grams);
    expect(steps).toEqual(steps.toSorted((a, b) => b - a));
    expect(steps.at(-1)).toBeGreaterThan(200);
    expect(steps[0]).toBeLessThan(900);
  });

  it('has ordered girths, each age met first by one rule, heavier with every inch and plausible between its ends', () => {
    for (const { ageClasses, basis, points } of species.girth) {
      expect(points.length).toBeGreaterThanOrEqual(2);
      for (const [at, point] of points.entries()) {
        const next = points[at + 1];
        if (next) expect(next.girthMm > point.girthMm && next.grams > point.grams).toBe(true);
        const live = impliedLiveGrams(species, point.grams, basis);
        expect(live > species.plausibleLiveGrams.from && live < species.plausibleLiveGrams.to).toBe(true);
      }
      for (const ageClass of ageClasses) expect(species.girth.filter((rule) => rule.basis === basis && rule.ageClasses.includes(ageClass))).toHaveLength(1);
    }
  });
});

test('a white-tail is read from the line for dressed weight, which has less to carry, and a cub of a bear from none', () => {
  const at = (id: string, ageClass: 'young' | 'adult' | 'unknown') => weightFromGirth(publishedSpecies(id), { ageClass, girthMm: 36 * MM_PER_INCH })?.basis ?? null;
  expect(at('white-tailed-deer', 'adult')).toBe('field-dressed');
  expect(at('white-tailed-deer', 'unknown')).toBe('field-dressed');
  expect(at('white-tailed-deer', 'young')).toBe('field-dressed');
  expect(at('black-bear', 'adult')).toBe('live');
  expect(at('black-bear', 'young')).toBeNull();
  expect(at('roe-deer', 'adult')).toBeNull();
});
