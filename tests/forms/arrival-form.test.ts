import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CONDITIONS, SHOT_WITH, AGE_CLASSES, DELIVERY_FORMS, SEXES, PUBLISHED_IDS, WOUND_SEVERITIES, publishedSpecies, PUBLISHED_SPECIES, FLESHES } from '@/lib/carcass';
import { type ArrivalFormValues, SPOTS, spotsOf, arrivalValuesOf, parseArrivalForm, readArrivalForm } from '@/lib/forms';
import { type ArrivalDetails, type DescribedAnimal } from '@/lib/orders';
import { TEST_STATES } from '@/lib/rules';
import { anyFormShop, formShops, hostileTexts } from './any-form';

const pounds = { unit: 'lb', locale: 'en-US', species: PUBLISHED_SPECIES, country: 'us' } as const;
const today = '2026-11-25';
const told: DescribedAnimal = {
  speciesId: 'white-tailed-deer', sex: 'female', ageClass: 'adult', weight: { grams: 70_000, basis: 'live' }, form: 'hide-on',
  takenWhere: 'Varley County', diseaseZone: 'yes', missing: [{ part: 'fillet', place: 'left' }],
};

function filled(changes: Partial<ArrivalFormValues> = {}): ArrivalFormValues {
  return {
    ...arrivalValuesOf(told, null, pounds),
    licence: 'L-1', tag: 'T-1', killedOn: today, weight: '120', weightBasis: 'field-dressed', test: 'none', ...changes,
  };
}

function parsed(changes: Partial<ArrivalFormValues>, shop = pounds): ReturnType<typeof parseArrivalForm> {
  return parseArrivalForm(filled(changes), { speciesId: 'white-tailed-deer', shop, today });
}

test('the form opens with what the hunter told, to be confirmed, and with nothing in the scale’s box', () => {
  expect(arrivalValuesOf(told, null, pounds)).toMatchObject({
    sex: 'female', killedWhere: 'Varley County', diseaseZone: 'yes', weight: '', weightBasis: '', temperature: '', test: '', killedOn: '',
    missing: { 'left-fillet': true, 'right-fillet': false },
  });
});

test('every part has a spot at every place, under one name', () => {
  expect(spotsOf('four-legged').map(({ id }) => id)).toEqual([
    'left-fillet', 'right-fillet', 'left-loin', 'right-loin', 'left-haunch', 'right-haunch', 'left-shoulder', 'right-shoulder', 'middle-neck', 'left-ribs', 'right-ribs',
  ]);
  expect(spotsOf('bird')).toHaveLength(7);
  expect(spotsOf('bird').length + spotsOf('four-legged').length).toBe(SPOTS.length);
});

test('what was found is read part by part', () => {
  const values = readArrivalForm([
    ...Object.entries(filled({})).flatMap(([name, value]): [string, string][] => (typeof value === 'string' ? [[name, value]] : [])),
    ['wounds.left-haunch', 'heavy'], ['wounds.right-ribs', 'dreadful'], ['wounds.tail', 'heavy'], ['missing.middle-neck', 'on'],
    ['conditions.wet', 'on'], ['conditions.haunted', 'on'], ['temperature', '41 F'],
  ]);
  expect(parseArrivalForm(values, { speciesId: 'white-tailed-deer', shop: pounds, today })).toMatchObject({
    ok: true,
    value: {
      wounds: [{ part: 'haunch', place: 'left', severity: 'heavy' }],
      missing: [{ part: 'neck', place: 'middle' }],
      conditions: ['wet'],
      celsiusTenths: 50,
      weight: { grams: 54_431, basis: 'field-dressed' },
    },
  });
});

describe('a form is not taken', () => {
  test.each([
    [{ licence: '' }, 'licence', 'Write the license number. Without it the animal may not be taken in.'],
    [{ licence: 'x'.repeat(41) }, 'licence', 'The license number has room for 40 characters.'],
    [{ tag: '' }, 'tag', 'Write the tag, seal or confirmation number. Without it the animal may not be taken in.'],
    [{ tag: '---' }, 'tag', 'Write the tag, seal or confirmation number. Without it the animal may not be taken in.'],
    [{ killedOn: '' }, 'killedOn', 'Write the day it was killed.'],
    [{ killedOn: '25.11.2026' }, 'killedOn', 'Write the day it was killed.'],
    [{ killedOn: '2026-11-26' }, 'killedOn', 'That day has not come yet. Check the date it was killed.'],
    [{ killedWhere: ' ' }, 'killedWhere', 'Write where it was killed: county, unit or estate.'],
    [{ test: '' }, 'test', 'Say whether a disease sample was taken.'],
    [{ test: 'pending', sampleNumber: ' ' }, 'sampleNumber', 'Write the sample number, so that the result can be matched to this animal.'],
    [{ sex: '' }, 'sex', 'Choose male, female or not known.'],
    [{ ageClass: 'old' }, 'ageClass', 'Choose its age, or not known.'],
    [{ form: '' }, 'form', 'Choose how it came in.'],
    [{ weight: '' }, 'weight', 'Write the weight as a number, for example 12.5 lb.'],
    [{ weight: '0' }, 'weight', 'Write what the scale shows; it reads more than nothing.'],
    [{ weight: '1e9' }, 'weight', 'Write the weight as a number, for example 12.5 lb.'],
    [{ weight: '-120' }, 'weight', 'Write the weight as a number, for example 12.5 lb.'],
    [{ weight: '1200' }, 'weight', 'That would be a white-tailed deer of 1,530.6 lb alive. Weigh it again, or check the kind of weight.'],
    [{ weight: '9000' }, 'weight', 'That is more than any white-tailed deer weighs. Weigh it again, or check the number.'],
    [{ weight: '12' }, 'weight', 'That would be a white-tailed deer of 15.3 lb alive. Weigh it again, or check the kind of weight.'],
    [{ weightBasis: '' }, 'weightBasis', 'Say which weight that is: alive, gutted with the hide on, hanging without hide, or boned.'],
    [{ temperature: 'cold' }, 'temperature', 'Write the temperature as a number, for example 40 °F.'],
    [{ note: 'x'.repeat(501) }, 'note', 'The note has room for 500 characters.'],
  ] as const)('with %j', (changes, field, sentence) => {
    const outcome = parsed(changes);
    expect(outcome.ok ? {} : outcome.fieldErrors).toEqual({ [field]: sentence });
  });
});

test('a licence is spelled as in the country', () => {
  const outcome = parseArrivalForm(filled({ licence: '' }), { speciesId: 'white-tailed-deer', shop: { ...pounds, country: 'uk' }, today });
  expect(outcome).toMatchObject({ ok: false, fieldErrors: { licence: 'Write the licence number. Without it the animal may not be taken in.' } });
});

const anyFound: fc.Arbitrary<{ animal: DescribedAnimal; arrival: ArrivalDetails }> = fc
  .record({
    speciesId: fc.constantFrom(...PUBLISHED_IDS),
    share: fc.double({ min: 0.02, max: 0.98, noNaN: true }),
    sex: fc.constantFrom(...SEXES),
    ageClass: fc.constantFrom(...AGE_CLASSES),
    form: fc.constantFrom(...DELIVERY_FORMS),
    test: fc.constantFrom(...TEST_STATES),
    celsiusTenths: fc.option(fc.integer({ min: -100, max: 300 })),
    flesh: fc.constantFrom(...FLESHES),
    wounds: fc.dictionary(fc.constantFrom(...SPOTS.map(({ id }) => id)), fc.constantFrom(...WOUND_SEVERITIES)),
    missing: fc.subarray([...SPOTS]),
    conditions: fc.subarray([...CONDITIONS]),
    diseaseZone: fc.boolean(),
    shotWith: fc.constantFrom(...SHOT_WITH),
    killedBy: fc.constantFrom('', 'Edda Nyberg'),
    hasTransferNote: fc.boolean(),
  })
  .map(({ speciesId, share, wounds, missing, ...rest }) => {
    const { from, to } = publishedSpecies(speciesId).plausibleLiveGrams;
    return {
      animal: { ...told, speciesId },
      arrival: {
        ...rest,
        licence: 'L-1', tag: 'T-1', killedOn: '2026-11-20', killedWhere: 'Varley County', sampleNumber: 'S-1', note: 'a\nb',
        weight: { grams: Math.round(from + (to - from) * share), basis: 'live' },
        missing: missing.map(({ part, place }) => ({ part, place })),
        wounds: SPOTS.flatMap(({ id, part, place }) => (wounds[id] ? [{ part, place, severity: wounds[id] }] : [])),
      },
    };
  });

test('what was found opens for correction as it was, to the gram and the tenth of a degree', () => {
  fc.assert(
    fc.property(anyFound, anyFormShop, ({ animal, arrival }, shop) => {
      const again = parseArrivalForm(arrivalValuesOf(animal, arrival, shop), { speciesId: animal.speciesId, shop, today });
      expect(again).toEqual({ ok: true, value: arrival });
    }),
    { numRuns: 300 },
  );
});

test.each(hostileTexts.map((text) => [text.slice(0, 20), text]))('the text %j in every field does no harm', (_, text) => {
  const texts = Object.keys(filled()).map((name): [string, string] => [name, text]);
  const spots = SPOTS.flatMap(({ id }): [string, string][] => [[`wounds.${id}`, text], [`missing.${id}`, text]]);
  for (const shop of formShops) {
    const outcome = parseArrivalForm(readArrivalForm([...texts, ...spots]), { speciesId: 'roe-deer', shop, today });
    expect(outcome.ok).toBe(false);
  }
});
