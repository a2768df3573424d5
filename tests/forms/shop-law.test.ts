import { describe, expect, test } from 'vitest';
import { checkForm, firstShopSettings, lawFormValues, lawReader, parseLawForm, settingsFormSchema, shopLawSchema, shopSettingsSchema } from '@/lib/forms';
import { LAW_CHOICES, LAW_POINTS, NO_PLACE, type ShopLaw, isChoicePoint } from '@/lib/law';

const first = firstShopSettings({ name: 'Pine Ridge', unit: 'lb', currency: 'USD', paper: 'letter', nameCountry: 'us', timeZone: 'America/Denver' });
const reader = lawReader(first);
const parse = (typed: Readonly<Record<string, string>>, before: ShopLaw = NO_PLACE) => parseLawForm(typed, { before, reader });

/** A place, and a change at every point. */
const everything: ShopLaw = {
  packId: 'us-michigan',
  changes: {
    ...Object.fromEntries(LAW_POINTS.filter(isChoicePoint).map((point) => [point, { value: LAW_CHOICES[point][0], reason: `told of ${point}` }])),
    coldCelsiusTenths: { value: 40, reason: 'birds too' },
    keepRecordDays: { value: 730, reason: 'our accountant' },
  },
};

describe('stored law', () => {
  test('settings stored before there was any have no place chosen', () => {
    const { law, ...stored } = first;
    expect(law).toEqual(NO_PLACE);
    expect(checkForm(shopSettingsSchema, stored)).toEqual({ ok: true, value: first });
  });

  test('what is stored reads back as itself', () => {
    expect(checkForm(shopSettingsSchema, structuredClone({ ...first, law: everything }))).toEqual({ ok: true, value: { ...first, law: everything } });
  });

  test('a pack that is no longer shipped can still be read', () => {
    expect(checkForm(shopLawSchema, { packId: 'atlantis', changes: {} })).toMatchObject({ ok: true });
  });

  test.each([
    ['no reason', { pooling: { value: 'allowed', reason: ' ' } }],
    ['a reason of 201 characters', { pooling: { value: 'allowed', reason: 'x'.repeat(201) } }],
    ['a value of another point', { pooling: { value: 'wanted', reason: 'so' } }],
    ['half a day', { keepRecordDays: { value: 0.5, reason: 'so' } }],
    ['11 °C', { coldCelsiusTenths: { value: 110, reason: 'so' } }],
  ])('%s is refused', (_, changes) => {
    expect(checkForm(shopLawSchema, { packId: 'careful', changes })).toMatchObject({ ok: false });
  });

  test('the settings’ own form has no law in it', () => {
    const read = checkForm(settingsFormSchema, { ...first, law: everything });
    expect(read.ok && Object.keys(read.value)).not.toContain('law');
  });
});

describe('the form of the law', () => {
  test.each([
    ['in pounds', reader],
    ['in kilograms', lawReader({ unit: 'kg', locale: 'de-DE' })],
  ])('%s, what it shows reads back as itself', (_, shown) => {
    for (const law of [NO_PLACE, everything]) expect(parseLawForm(lawFormValues(law, shown), { before: NO_PLACE, reader: shown })).toEqual({ ok: true, value: law });
  });

  test('a temperature is read in either unit, blanks and hidden characters of a reason go', () => {
    expect(parse({ packId: 'eu', 'value.coldCelsiusTenths': ' 4 °C ', 'reason.coldCelsiusTenths': ' we take\u202E  birds ' })).toEqual({
      ok: true,
      value: { packId: 'eu', changes: { coldCelsiusTenths: { value: 40, reason: 'we take birds' } } },
    });
    expect(parse({ packId: 'eu', 'value.coldCelsiusTenths': '41', 'reason.coldCelsiusTenths': 'so' })).toMatchObject({ value: { changes: { coldCelsiusTenths: { value: 50 } } } });
  });

  test('a point put back to the place loses its change and the reason it had', () => {
    const typed = { ...lawFormValues(everything, reader), 'value.pooling': '' };
    const { pooling, ...rest } = everything.changes;
    expect(pooling).toBeDefined();
    expect(parse(typed, everything)).toEqual({ ok: true, value: { packId: 'us-michigan', changes: rest } });
  });

  test.each([
    ['packId', 'atlantis', 'Choose a place from the list'],
    ['packId', '', 'Choose a place from the list'],
    ['value.pooling', 'wanted', 'Choose one from the list'],
    ['value.coldCelsiusTenths', 'cold', 'Write the temperature as a number, for example 40 °F.'],
    ['value.coldCelsiusTenths', '60', 'Enter 32.0 °F to 50.0 °F'],
    ['value.keepRecordDays', '0', 'Enter 1 day to 7305 days'],
    ['value.keepRecordDays', '7306', 'Enter 1 day to 7305 days'],
    ['value.keepRecordDays', 'a year', 'Enter a whole number of days, for example 365'],
    ['reason.pooling', '', 'Say why this differs from the place, for example who told you and when'],
    ['reason.pooling', 'x'.repeat(201), 'Shorten this to 200 characters'],
  ])('%s %j is refused in a sentence at the field', (field, typed, sentence) => {
    expect(parse({ ...lawFormValues(everything, reader), [field]: typed })).toEqual({ ok: false, formErrors: [], fieldErrors: { [field]: sentence } });
  });

  test('a new reason without a value is not thrown away but asked back', () => {
    expect(parse({ packId: 'eu', 'value.pooling': '', 'reason.pooling': 'the inspector says so' })).toEqual({
      ok: false,
      formErrors: [],
      fieldErrors: { 'value.pooling': 'Say what holds instead, or empty the reason' },
    });
  });
});
