import { describe, expect, test } from 'vitest';
import { checkForm, firstShopSettings, newStaffSchema, setUpSchema, shopSettingsSchema } from '@/lib/forms';

const asked = {
  name: 'Pine Ridge',
  unit: 'lb',
  currency: 'USD',
  paper: 'letter',
  nameCountry: 'us',
  timeZone: 'America/Denver',
} as const;

describe('shop settings', () => {
  test('what is stored reads back as itself', () => {
    const settings = firstShopSettings(asked);
    expect(settings.locale).toBe('en-US');
    expect(checkForm(shopSettingsSchema, structuredClone(settings))).toEqual({ ok: true, value: settings });
  });

  test('a form is read: lines of places to a list, days from text, blanks and hidden characters away', () => {
    const typed = {
      ...firstShopSettings(asked),
      name: '  Pine \u202E Ridge\t ',
      address: ' 1 Mill Road \r\n\r\n\r\n\r\nElk Fork ',
      diseaseZones: 'Rio Blanco\r\n\r\n  Unit  12 \nRio Blanco',
      collectWithinDays: ' 10 ',
    };
    const read = checkForm(shopSettingsSchema, typed);
    expect(read).toMatchObject({
      ok: true,
      value: {
        name: 'Pine Ridge',
        address: '1 Mill Road\n\nElk Fork',
        diseaseZones: ['Rio Blanco', 'Unit 12'],
        collectWithinDays: 10,
      },
    });
  });

  test('ways of hanging and trimming are read from a form, and are as usual in settings stored before there were any', () => {
    const { hangDays, hangHide, closeTrim, ...stored } = firstShopSettings(asked);
    expect(checkForm(shopSettingsSchema, stored)).toMatchObject({ ok: true, value: { hangDays, hangHide, closeTrim } });
    expect(checkForm(shopSettingsSchema, { ...stored, hangDays: '10', hangHide: 'on', closeTrim: 'on' })).toMatchObject({
      ok: true,
      value: { hangDays: 10, hangHide: 'on', closeTrim: true },
    });
    expect(checkForm(shopSettingsSchema, { ...stored, hangDays: '' })).toMatchObject({ ok: true, value: { hangDays: null } });
  });

  test.each([
    ['name', ' ', 'Enter the name of the shop'],
    ['name', 'x'.repeat(81), 'Shorten this to 80 characters'],
    ['unit', undefined, 'Choose pounds or kilograms'],
    ['currency', 'XXX', 'Choose a currency'],
    ['paper', 'a3', 'Choose the paper in your printer'],
    ['nameCountry', '', 'Choose whose words you use for cuts'],
    ['timeZone', 'Moon/Base', 'Choose a time zone from the list'],
    ['timeZone', '', 'Choose a time zone from the list'],
    ['collectWithinDays', 'soon', 'Enter a whole number of days, for example 7'],
    ['collectWithinDays', '0', 'Enter at least 1 day'],
    ['cookGameTo', '120 F', 'Choose a cooking temperature'],
    ['hangDays', 'a week', 'Enter a whole number of days, for example 7'],
    ['hangDays', '90', 'Enter at most 60 days'],
  ])('%s %j is refused in a sentence at the field', (field, typed, sentence) => {
    expect(checkForm(shopSettingsSchema, { ...firstShopSettings(asked), [field]: typed })).toEqual({
      ok: false,
      formErrors: [],
      fieldErrors: { [field]: sentence },
    });
  });
});

describe('people', () => {
  test('a user name is kept in small letters', () => {
    const read = checkForm(newStaffSchema, { name: 'Bo', userName: ' Bo.K ', role: 'cutter', password: 'kettle orbit lantern moss' });
    expect(read).toMatchObject({ ok: true, value: { userName: 'bo.k' } });
  });

  test('each thing left out is named at its field, once', () => {
    expect(checkForm(newStaffSchema, {})).toEqual({
      ok: false,
      formErrors: [],
      fieldErrors: {
        name: 'Enter a name',
        userName: 'Enter a user name',
        role: 'Choose what this person does here',
        password: 'Enter a password',
      },
    });
  });

  test('set-up refuses a password made of the names it asks for', () => {
    const read = checkForm(setUpSchema, {
      ...asked,
      code: 'X',
      shopName: 'Pine Ridge',
      ownerName: 'Ada Lovett',
      userName: 'ada',
      password: 'ada lovett pine ridge',
    });
    expect(read).toMatchObject({ ok: false, fieldErrors: { password: expect.stringContaining('made of names') } });
  });
});
