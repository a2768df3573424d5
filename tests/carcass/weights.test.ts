import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import {
  type AnimalFacts,
  PUBLISHED_IDS,
  PUBLISHED_SPECIES,
  type SpeciesFigures,
  WEIGHED_CV,
  WEIGHT_BASES,
  type WeightBasis,
  convertWeight,
  forecastCarcass,
  impliedLiveGrams,
  isDelivered,
  logNormalMoments,
  publishedSpecies,
  toHanging,
  typicalHanging,
  weightFromGirth,
  wholeHanging,
  buildShareTree,
} from '@/lib/carcass';
import { correlationOf } from './drawn-animals';
import { chanceFrom, shareDrawer } from './carcass-draws';

const anyId = fc.constantFrom(...PUBLISHED_IDS);
const anyBasis = fc.constantFrom(...WEIGHT_BASES);
const fourLegged = PUBLISHED_IDS.filter((id) => publishedSpecies(id).plan === 'four-legged');

/** The spread that a step alone brings. */
function spreadOf(species: SpeciesFigures, from: WeightBasis, to: WeightBasis): number {
  return convertWeight(species, { grams: 50_000, cv: 0 }, from, to).cv;
}

function gramsOn(species: SpeciesFigures, basis: WeightBasis, liveGrams = 60_000): number {
  return convertWeight(species, { grams: liveGrams, cv: 0 }, 'live', basis).grams;
}

describe('a weight carried from one basis to another', () => {
  it('and back is what it was, between any two', () => {
    fc.assert(fc.property(anyId, anyBasis, anyBasis, fc.integer({ min: 1, max: 400_000 }), (id, from, to, grams) => {
      const there = convertWeight(publishedSpecies(id), { grams, cv: 0 }, from, to).grams;
      expect(convertWeight(publishedSpecies(id), { grams: there, cv: 0 }, to, from).grams / grams).toBeCloseTo(1, 12);
    }));
  });

  it('is the same by way of a third', () => {
    fc.assert(fc.property(anyId, anyBasis, anyBasis, anyBasis, (id, from, by, to) => {
      const species = publishedSpecies(id);
      const between = convertWeight(species, { grams: 50_000, cv: 0 }, from, by);
      const direct = convertWeight(species, { grams: 50_000, cv: 0 }, from, to);
      expect(convertWeight(species, between, by, to).grams / direct.grams).toBeCloseTo(1, 12);
    }));
  });

  it('to its own basis keeps weight and spread', () => {
    fc.assert(fc.property(anyId, anyBasis, (id, basis) => {
      expect(convertWeight(publishedSpecies(id), { grams: 51_234, cv: 0.07 }, basis, basis)).toEqual({ grams: 51_234, cv: 0.07 });
    }));
  });

  it('is known no better for being carried, and as well back as there', () => {
    fc.assert(fc.property(anyId, anyBasis, anyBasis, fc.double({ min: 0, max: 0.5, noNaN: true }), (id, from, to, cv) => {
      const species = publishedSpecies(id);
      const carried = convertWeight(species, { grams: 50_000, cv }, from, to).cv;
      expect(carried).toBeGreaterThanOrEqual(cv);
      expect(convertWeight(species, { grams: 50_000, cv }, to, from).cv).toBeCloseTo(carried, 12);
    }));
  });

  // Quarters have bone, clean meat has that of neck, ribs and fillets: neither is always the heavier.
  test.each(fourLegged)('falls with each step from the living animal, and a cut carcass is less than it hung: %s', (id) => {
    const species = publishedSpecies(id);
    const toRail = (['live', 'field-dressed', 'legs-off', 'hide-on', 'hanging'] as const).map((basis) => gramsOn(species, basis));
    toRail.slice(1).forEach((grams, at) => expect(grams).toBeLessThan(toRail[at] ?? 0));
    for (const cut of ['quarters', 'boneless'] as const) expect(gramsOn(species, cut)).toBeLessThan(gramsOn(species, 'hanging'));
  });

  it('never grows on the way, of a bird neither', () => {
    for (const id of PUBLISHED_IDS) {
      const onEach = (['live', 'field-dressed', 'legs-off', 'hide-on', 'hanging', 'boneless'] as const).map((basis) => gramsOn(publishedSpecies(id), basis));
      expect(onEach).toEqual(onEach.toSorted((a, b) => b - a));
    }
  });

  test.each(fourLegged)('is known worse the further it is carried: %s', (id) => {
    const species = publishedSpecies(id);
    WEIGHT_BASES.forEach((from, at) => {
      WEIGHT_BASES.slice(at + 1).forEach((to, after) => {
        for (const between of WEIGHT_BASES.slice(at + 1, at + 1 + after)) {
          expect(spreadOf(species, from, to)).toBeGreaterThan(spreadOf(species, from, between));
        }
      });
    });
    // From where the scale stood nearer to the rail, the rail is known better.
    const toRail = WEIGHT_BASES.slice(0, WEIGHT_BASES.indexOf('hanging')).map((basis) => spreadOf(species, basis, 'hanging'));
    toRail.slice(1).forEach((cv, index) => expect(cv).toBeLessThan(toRail[index] ?? 0));
  });

  test.each(fourLegged)('above the rail does not pass through the spread of the rail: %s', (id) => {
    const species = publishedSpecies(id);
    const above = WEIGHT_BASES.slice(1, WEIGHT_BASES.indexOf('hanging'));
    for (const from of above) {
      for (const to of above.filter((basis) => basis !== from)) {
        expect(spreadOf(species, from, to)).toBeLessThan(Math.hypot(spreadOf(species, from, 'hanging'), spreadOf(species, 'hanging', to)));
      }
    }
    // Lower legs are 2 to 3% of an animal; head, hide and legs together a fifth.
    expect(spreadOf(species, 'field-dressed', 'legs-off')).toBeLessThan(0.5 * spreadOf(species, 'field-dressed', 'hanging'));
  });

  test.each(fourLegged)('from quarters to clean meat is known as carcasses drawn say, and not as two that have nothing in common: %s', (id) => {
    const species = publishedSpecies(id);
    const { columns, next } = shareDrawer(buildShareTree(species.composition), 20_000, chanceFrom(20_261_125));
    next();
    const total = (counts: (key: Parameters<typeof isDelivered>[1]) => boolean): Float64Array => {
      const sum = new Float64Array(20_000);
      for (const [key, { sound }] of columns) if (counts(key)) sound.forEach((share, at) => { sum[at] = (sum[at] ?? 0) + share; });
      return sum;
    };
    const quarters = total((key) => isDelivered({ form: 'quartered', missing: [] }, key));
    const meat = total((key) => isDelivered({ form: 'boned-out', missing: [] }, key));
    const ratios = meat.map((grams, at) => grams / (quarters[at] ?? 0));
    const mean = ratios.reduce((sum, one) => sum + one, 0) / ratios.length;
    const sd = Math.sqrt(ratios.reduce((sum, one) => sum + (one - mean) ** 2, 0) / ratios.length);
    expect(correlationOf(quarters, meat)).toBeGreaterThan(0);
    // The standard error of a spread of 20,000 draws is 0.5% of it; the ratio is taken to the first order.
    expect(Math.abs(spreadOf(species, 'quarters', 'boneless') / (sd / mean) - 1)).toBeLessThan(0.03);
    expect(Math.abs(gramsOn(species, 'boneless') / gramsOn(species, 'quarters') / mean - 1)).toBeLessThan(0.005);
  });

  it('stands for a live weight, in whole grams', () => {
    fc.assert(fc.property(anyId, anyBasis, fc.integer({ min: 1_000, max: 400_000 }), (id, basis, grams) => {
      const live = impliedLiveGrams(publishedSpecies(id), grams, basis);
      expect(Number.isInteger(live)).toBe(true);
      expect(Math.abs(gramsOn(publishedSpecies(id), basis, live) - grams)).toBeLessThanOrEqual(0.5);
    }));
  });
});

describe('an animal of which only its kind is known', () => {
  it('weighs what the classes that fit weigh, each counted alike, with their spread within and between', () => {
    const species: SpeciesFigures = {
      ...publishedSpecies('red-deer'),
      typicalWeights: [
        { sex: 'male', ageClass: 'adult', basis: 'hanging', grams: { mean: 70_000, sd: 10_000 } },
        { sex: 'female', ageClass: 'adult', basis: 'hanging', grams: { mean: 50_000, sd: 6_000 } },
      ],
    };
    const { grams, cv } = typicalHanging(species, 'unknown', 'adult');
    expect(grams).toBe(60_000);
    // Within: (10^2 + 6^2) / 2 = 68; between: 10^2. Square root of 168 over 60.
    expect(cv).toBeCloseTo(Math.sqrt(168) / 60, 12);
    const buck = typicalHanging(species, 'male', 'unknown');
    expect(buck.grams).toBe(70_000);
    expect(buck.cv).toBeCloseTo(1 / 7, 12);
    expect(() => typicalHanging(species, 'male', 'young')).toThrow('No typical weight for red-deer, male, young');
  });
});

/** Two rules: grown animals by three points on the live weight, and fawns by two on what is dressed. */
const measured: SpeciesFigures = {
  ...publishedSpecies('white-tailed-deer'),
  girth: [
    {
      ageClasses: ['yearling', 'adult', 'unknown'], basis: 'live', cv: 0.08,
      points: [{ girthMm: 700, grams: 30_000 }, { girthMm: 900, grams: 60_000 }, { girthMm: 1_000, grams: 90_000 }],
    },
    { ageClasses: ['young'], basis: 'field-dressed', cv: 0.1, points: [{ girthMm: 500, grams: 10_000 }, { girthMm: 700, grams: 22_000 }] },
  ],
};

describe('a girth', () => {
  test.each([
    ['at a point', 700, 30_000],
    ['at the point in the middle', 900, 60_000],
    ['at the last point', 1_000, 90_000],
    ['between the first two', 800, 45_000],
    ['between the last two', 950, 75_000],
    ['above the last, on the line of the last two', 1_100, 120_000],
    ['below the first, on the line of the first two', 600, 15_000],
  ] as const)('%s tells the weight on the straight line', (_, girthMm, grams) => {
    expect(weightFromGirth(measured, { ageClass: 'adult', girthMm })?.grams).toBeCloseTo(grams, 6);
  });

  it('where the line has fallen to nothing tells nothing', () => {
    expect(weightFromGirth(measured, { ageClass: 'adult', girthMm: 500 })).toBeNull();
    expect(weightFromGirth(measured, { ageClass: 'adult', girthMm: 300 })).toBeNull();
  });

  it('grows the weight', () => {
    fc.assert(fc.property(fc.integer({ min: 510, max: 2_000 }), (girthMm) => {
      const [smaller, larger] = [girthMm, girthMm + 1].map((mm) => weightFromGirth(measured, { ageClass: 'unknown', girthMm: mm })?.grams ?? 0);
      expect(larger).toBeGreaterThan(smaller ?? 0);
    }));
  });

  it('is read by the rule of its age, on its basis and with its spread', () => {
    expect(weightFromGirth(measured, { ageClass: 'young', girthMm: 600 })).toEqual({ grams: 16_000, cv: 0.1, basis: 'field-dressed' });
    expect(weightFromGirth(measured, { ageClass: 'young', girthMm: 600, basis: 'field-dressed' })?.grams).toBe(16_000);
  });

  it('without a rule for the age or on the basis asked tells nothing', () => {
    expect(weightFromGirth({ ...measured, girth: [] }, { ageClass: 'adult', girthMm: 900 })).toBeNull();
    expect(weightFromGirth({ ...measured, girth: measured.girth.slice(0, 1) }, { ageClass: 'young', girthMm: 900 })).toBeNull();
    expect(weightFromGirth(measured, { ageClass: 'young', girthMm: 600, basis: 'live' })).toBeNull();
  });
});

describe('the best that is known of the weight', () => {
  const facts: AnimalFacts = {
    speciesId: 'white-tailed-deer', sex: 'male', ageClass: 'adult', weight: { grams: 55_000, basis: 'field-dressed' }, girthMm: 900,
    form: 'hide-on', missing: [], wounds: [],
  };

  it('is a weight before a girth', () => {
    expect(wholeHanging(measured, facts)).toEqual(toHanging(measured, 55_000, 'field-dressed', WEIGHED_CV));
  });

  it('is a girth before the kind', () => {
    expect(wholeHanging(measured, { ...facts, weight: null })).toEqual(toHanging(measured, 60_000, 'live', 0.08));
  });

  it('is the kind where nothing was measured, or the girth tells nothing', () => {
    const ofKind = typicalHanging(measured, 'male', 'adult');
    for (const girthMm of [null, undefined, 300]) expect(wholeHanging(measured, { ...facts, weight: null, girthMm })).toEqual(ofKind);
    expect(wholeHanging({ ...measured, girth: [] }, { ...facts, weight: null })).toEqual(ofKind);
  });

  it('is what the forecast hangs on the rail', () => {
    const book = { ...PUBLISHED_SPECIES, 'white-tailed-deer': measured };
    for (const known of [facts, { ...facts, weight: null }, { ...facts, weight: null, girthMm: null }]) {
      const { grams, cv } = wholeHanging(measured, known);
      const { base, hanging } = forecastCarcass(known, book);
      expect(base).toEqual({ grams, cv });
      expect(hanging.likely).toBe(Math.round(grams));
      expect(logNormalMoments(base.grams, base.cv).mean).toBeGreaterThanOrEqual(base.grams);
    }
  });
});
