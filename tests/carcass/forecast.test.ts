import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import {
  ANATOMY,
  type AnimalFacts,
  MUSCLES,
  PARTS,
  PUBLISHED_SPECIES,
  PUBLISHED_IDS,
  WEIGHT_BASES,
  forecastCarcass,
  impliedLiveGrams,
  isDelivered,
  isSidedPart,
  placesOf,
  rangeOf,
  readTissueKey,
  tissueKey,
  toHanging,
  typicalHanging,
  wholeHanging,
  publishedSpecies,
} from '@/lib/carcass';
import { anyFacts } from './any-facts';

const buck: AnimalFacts = {
  speciesId: 'white-tailed-deer',
  sex: 'male',
  ageClass: 'adult',
  weight: { grams: 60_000, basis: 'field-dressed' },
  form: 'hide-on',
  missing: [],
  wounds: [],
};

function gramsOf(facts: AnimalFacts, pick: (key: ReturnType<typeof readTissueKey>) => boolean): number {
  return forecastCarcass(facts, PUBLISHED_SPECIES).tissues.filter(({ key }) => pick(readTissueKey(key))).reduce((sum, one) => sum + one.grams, 0);
}

describe('a tissue key', () => {
  it('is read back as it was made, for every tissue at every place', () => {
    for (const [tissue, { part, kind, sided }] of Object.entries(ANATOMY)) {
      for (const place of placesOf(sided)) {
        expect(readTissueKey(tissueKey(place, tissue as keyof typeof ANATOMY))).toEqual({ place, tissue, part, kind });
      }
    }
    expect(readTissueKey('middle:drying')).toEqual({ place: 'middle', tissue: 'drying', part: null, kind: 'drying' });
  });

  it('puts every muscle in a part, paired where its part is', () => {
    for (const muscle of MUSCLES) expect(ANATOMY[muscle].sided).toBe(isSidedPart(ANATOMY[muscle].part));
    // The frame of a bird is bone and skin.
    expect(PARTS.filter((part) => !MUSCLES.some((muscle) => ANATOMY[muscle].part === part))).toEqual(['bird-frame']);
  });
});

describe('a forecast', () => {
  it('of a roe deer of 16 kg field-dressed hangs 12,810 g', () => {
    expect(forecastCarcass({ ...buck, speciesId: 'roe-deer', weight: { grams: 16_000, basis: 'field-dressed' } }, PUBLISHED_SPECIES).hanging.likely).toBe(12_810);
  });

  it('divides the likely weight to the gram', () => {
    fc.assert(fc.property(anyFacts, (facts) => {
      const { hanging, tissues } = forecastCarcass(facts, PUBLISHED_SPECIES);
      expect(tissues.reduce((sum, one) => sum + one.grams, 0)).toBe(hanging.likely);
      for (const one of tissues) expect(one.woundGrams >= 0 && one.woundGrams <= one.grams).toBe(true);
    }));
  });

  it('keeps low at most likely and likely at most high', () => {
    fc.assert(fc.property(anyFacts, (facts) => {
      const { low, likely, high } = forecastCarcass(facts, PUBLISHED_SPECIES).hanging;
      expect(0 < low && low <= likely && likely <= high).toBe(true);
    }));
  });

  it('holds what was delivered and nothing else', () => {
    fc.assert(fc.property(anyFacts, (facts) => {
      for (const { key } of forecastCarcass(facts, PUBLISHED_SPECIES).tissues) expect(isDelivered(facts, key)).toBe(true);
    }));
  });

  it('is the same for the same animal, every time', () => {
    fc.assert(fc.property(anyFacts, (facts) => {
      expect(forecastCarcass(facts, PUBLISHED_SPECIES)).toEqual(forecastCarcass(facts, PUBLISHED_SPECIES));
    }), { numRuns: 20 });
  });

  it('throws where nothing at all was delivered', () => {
    const everything = PARTS.flatMap((part) => placesOf(isSidedPart(part)).map((place) => ({ part, place })));
    expect(() => forecastCarcass({ ...buck, form: 'boned-out', missing: everything }, PUBLISHED_SPECIES)).toThrow('Nothing was delivered');
  });
});

describe('what comes through the door', () => {
  it('in quarters is legs, shoulders and loins, without spine, neck, ribs and fillets', () => {
    const facts = { ...buck, form: 'quartered' as const };
    expect(gramsOf(facts, ({ part }) => part === 'neck' || part === 'ribs' || part === 'fillet')).toBe(0);
    expect(gramsOf(facts, ({ tissue }) => tissue === 'spine')).toBe(0);
    expect(gramsOf(facts, ({ tissue }) => tissue === 'loin' || tissue === 'haunch-bone')).toBeGreaterThan(0);
  });

  it('boned out is muscle alone', () => {
    expect(gramsOf({ ...buck, form: 'boned-out' }, ({ kind }) => kind !== 'muscle')).toBe(0);
  });

  it('without a loin still has the bone it was on', () => {
    const facts: AnimalFacts = { ...buck, missing: [{ part: 'loin', place: 'left' }] };
    expect(isDelivered(facts, 'left:loin')).toBe(false);
    expect(isDelivered(facts, 'left:spine')).toBe(true);
    expect(isDelivered(facts, 'right:loin')).toBe(true);
  });

  it('weighs less for a part that is missing, where the weight was of the whole animal', () => {
    const missing = [{ part: 'haunch', place: 'left' }] as const;
    expect(forecastCarcass({ ...buck, missing }, PUBLISHED_SPECIES).hanging.likely).toBeLessThan(forecastCarcass(buck, PUBLISHED_SPECIES).hanging.likely);
    const hung = { ...buck, weight: { grams: 48_000, basis: 'hanging' as const } };
    expect(forecastCarcass({ ...hung, missing }, PUBLISHED_SPECIES).hanging.likely).toBe(48_000);
  });

  it('boned out and weighed so is what the scale said', () => {
    expect(forecastCarcass({ ...buck, form: 'boned-out', weight: { grams: 25_000, basis: 'boneless' } }, PUBLISHED_SPECIES).hanging.likely).toBe(25_000);
  });

  it('is known no better boned out than on the bone, where only the whole animal was weighed', () => {
    const meat = (facts: AnimalFacts) => {
      const forecast = forecastCarcass(facts, PUBLISHED_SPECIES);
      return rangeOf(forecast, (key) => (readTissueKey(key).kind === 'muscle' ? 1 : 0), gramsOf(facts, ({ kind }) => kind === 'muscle'));
    };
    const onBone = meat(buck);
    const boned = meat({ ...buck, form: 'boned-out' });
    expect(Math.abs(boned.likely - onBone.likely)).toBeLessThanOrEqual(15);
    expect(Math.abs(boned.low - onBone.low)).toBeLessThanOrEqual(15);
    expect(Math.abs(boned.high - onBone.high)).toBeLessThanOrEqual(15);
  });
});

describe('a wound', () => {
  test.each([
    ['light', 1_500],
    ['heavy', 5_000],
    ['lost', 10_000],
  ] as const)('that is %s costs %i in ten thousand of the muscles of its part, and no bone', (severity, loss) => {
    const { tissues } = forecastCarcass({ ...buck, wounds: [{ part: 'shoulder', place: 'left', severity }] }, PUBLISHED_SPECIES);
    for (const { key, woundLossPer10k } of tissues) {
      const { part, place, kind } = readTissueKey(key);
      expect(woundLossPer10k).toBe(part === 'shoulder' && place === 'left' && kind === 'muscle' ? loss : 0);
    }
  });

  it('counts once where a part is hit twice: the worse of the two', () => {
    const wounds = [{ part: 'neck', place: 'middle', severity: 'light' }, { part: 'neck', place: 'middle', severity: 'heavy' }] as const;
    const { tissues } = forecastCarcass({ ...buck, wounds }, PUBLISHED_SPECIES);
    expect(tissues.find(({ key }) => key === 'middle:neck')?.woundLossPer10k).toBe(5_000);
  });
});

describe('hanging weight', () => {
  it('of a hanging weight is itself', () => {
    expect(toHanging(publishedSpecies('elk'), 100_000, 'hanging', 0.01)).toEqual({ grams: 100_000, cv: 0.01 });
  });

  it('is less certain the further the scale was from the rail', () => {
    for (const id of PUBLISHED_IDS) {
      const [hanging, dressed, live] = (['hanging', 'field-dressed', 'live'] as const).map((basis) => toHanging(publishedSpecies(id), 50_000, basis, 0.005).cv);
      expect(hanging).toBeLessThan(dressed ?? 0);
      expect(dressed).toBeLessThan(live ?? 0);
    }
  });

  it('grows with the weight on every basis', () => {
    fc.assert(fc.property(fc.constantFrom(...PUBLISHED_IDS), fc.constantFrom(...WEIGHT_BASES), fc.integer({ min: 1, max: 300_000 }), (id, basis, grams) => {
      expect(toHanging(publishedSpecies(id), grams + 1, basis, 0).grams).toBeGreaterThan(toHanging(publishedSpecies(id), grams, basis, 0).grams);
    }));
  });

  it('of an animal nobody weighed is that of its class, and wider where sex or age is not known', () => {
    for (const id of PUBLISHED_IDS) {
      const known = typicalHanging(publishedSpecies(id), 'female', 'adult');
      const unknown = typicalHanging(publishedSpecies(id), 'unknown', 'unknown');
      expect(wholeHanging(publishedSpecies(id), { ...buck, speciesId: id, sex: 'female', ageClass: 'adult', weight: null })).toEqual(known);
      expect(unknown.cv).toBeGreaterThan(known.cv);
    }
  });

  it('carried back to the living animal agrees with the weight it came from', () => {
    for (const id of PUBLISHED_IDS) expect(impliedLiveGrams(publishedSpecies(id), 60_000, 'live')).toBe(60_000);
  });

  it('of every typical animal lies within what is plausible for its species', () => {
    for (const id of PUBLISHED_IDS) {
      const { typicalWeights, plausibleLiveGrams } = publishedSpecies(id);
      for (const { grams, basis } of typicalWeights) {
        const live = impliedLiveGrams(publishedSpecies(id), grams.mean, basis);
        expect(live > plausibleLiveGrams.from && live < plausibleLiveGrams.to).toBe(true);
      }
    }
  });
});
