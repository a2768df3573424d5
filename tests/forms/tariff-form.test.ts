import { describe, expect, test } from 'vitest';
import { applyTariffIntent, parseTariffForm, priceOfField, readTariffForm, tariffFormEntries, tariffFormValues, type TariffFormValues } from '@/lib/forms';
import { PUBLISHED_IDS } from '@/lib/carcass';
import { defaultTariff as seeded } from '@/seed/default-tariff';

// A form lists the animals in the order of the species; which order they are stored in means nothing.
const defaultTariff = {
  ...seeded,
  base: seeded.base.map((row) => ({ ...row, speciesIds: PUBLISHED_IDS.filter((id) => row.speciesIds.includes(id)) })),
};

const opened = { current: defaultTariff, locale: 'en-US' };
const filled = (): TariffFormValues => structuredClone(tariffFormValues(defaultTariff, 'en-US'));

function errorsOf(change: (values: TariffFormValues) => void): Readonly<Record<string, string>> {
  const values = filled();
  change(values);
  const parsed = parseTariffForm(values, opened);
  return parsed.ok ? {} : parsed.fieldErrors;
}

const baseAt = (values: TariffFormValues, at: number) => {
  const row = values.base[at];
  if (!row) throw new Error(`No base price ${at}`);
  return row;
};

test('a field is told of by the name of its price', () => {
  const values = filled();
  const [base, tax, product] = [baseAt(values, 0).name, values.taxes[0]?.name, values.products[0]?.name];
  expect(['base.0.flat', 'base.0.steps.1.amount', 'taxes.0.rate', 'products.0.rate', 'products.0.added'].map((field) => priceOfField(values, field))).toEqual([base, `${base}, step 2`, tax, product, `${product}, added meat`]);
  baseAt(values, 1).name = ' ';
  expect(priceOfField(values, 'base.1.flat')).toBe('A price without a name');
  expect(['base.99.flat', 'versionId', '__proto__.0.name', ''].map((field) => priceOfField(values, field))).toEqual(['', '', '', '']);
});

describe('a price list that nobody touched', () => {
  test.each(['en-US', 'en-GB', 'de-DE', 'fr-FR', 'sv-SE', 'de-CH'])('comes back as it was, written in the manner of %s', (locale) => {
    expect(parseTariffForm(tariffFormValues(defaultTariff, locale), { current: defaultTariff, locale })).toEqual({ ok: true, value: defaultTariff });
  });

  test('comes back as it was over the wire', () => {
    expect(readTariffForm(tariffFormEntries(filled()))).toMatchObject({ taxes: filled().taxes, perPiece: filled().perPiece, products: filled().products });
    expect(parseTariffForm(readTariffForm(tariffFormEntries(filled())), opened)).toEqual({ ok: true, value: defaultTariff });
  });

  test('keeps a rate of four decimals and a tax of three', () => {
    const fine = { ...defaultTariff, taxes: [{ id: 'sales-tax', name: 'Sales tax', ratePer100k: 8_875 }], products: [{ ...defaultTariff.products[0], ratePer10k: 164_569 }] } as typeof defaultTariff;
    const values = tariffFormValues(fine, 'de-DE');
    expect([values.taxes[0]?.rate, values.products[0]?.rate]).toEqual(['8,875', '16,4569']);
    expect(parseTariffForm(values, { current: fine, locale: 'de-DE' })).toEqual({ ok: true, value: fine });
  });
});

describe('what was typed', () => {
  test('changes the one price it was typed for', () => {
    const values = filled();
    baseAt(values, 0).steps[0] = { upTo: '62.5 lb', amount: '$99' };
    const parsed = parseTariffForm(values, opened);
    expect(parsed.ok && parsed.value.base[0]?.charge).toEqual({
      kind: 'steps',
      steps: [
        { upToHundredths: 62_50, amountMinor: 99_00 },
        { upToHundredths: 100_00, amountMinor: 115_00 },
      ],
      excessRatePer10k: 1_1500,
    });
  });

  test('passes an empty step over, and nothing for the weight above is no charge', () => {
    const values = filled();
    baseAt(values, 0).steps.push({ upTo: ' ', amount: '' });
    baseAt(values, 0).excess = '';
    const parsed = parseTariffForm(values, opened);
    expect(parsed.ok && parsed.value.base[0]?.charge).toMatchObject({ kind: 'steps', steps: [{}, {}], excessRatePer10k: 0 });
  });

  test.each([
    ['a price that is no number', (values: TariffFormValues) => (baseAt(values, 1).flat = 'much'), 'base.1.flat', 'Write the amount as a number, for example 12.50.'],
    ['a tax with a fourth decimal', (values: TariffFormValues) => ((values.taxes[0] ?? { rate: '' }).rate = '6.12345'), 'taxes.0.rate', 'Write the tax as a percentage with up to three decimals, for example 6.'],
    ['a tax above all', (values: TariffFormValues) => ((values.taxes[0] ?? { rate: '' }).rate = '106 %'), 'taxes.0.rate', 'Sales tax is more than 100%. Write 6 for 6%.'],
    ['an empty name', (values: TariffFormValues) => ((values.products[0] ?? { name: '' }).name = ' '), 'products.0.name', 'Give this price a name.'],
    ['no animal', (values: TariffFormValues) => (baseAt(values, 1).species = {}), 'base.1.species', 'Choose the animals Small deer, cut, ground, wrapped and frozen is for.'],
    [
      'the same animal twice',
      (values: TariffFormValues) => (baseAt(values, 2).species['roe-deer'] = true),
      'base.2.species',
      'The same animal has two base prices, Small deer, cut, ground, wrapped and frozen and Elk or another large deer, cut, ground, wrapped and frozen. Leave it in one.',
    ],
    ['a kind nobody knows', (values: TariffFormValues) => (baseAt(values, 0).kind = 'barter'), 'base.0.kind', 'Choose how this price is worked out.'],
  ])('is refused at its field: %s', (_, change, field, sentence) => {
    expect(errorsOf(change)).toMatchObject({ [field]: sentence });
  });

  test('is refused at the step as it was typed, empty ones before it counted', () => {
    const wrong = errorsOf((values) => {
      baseAt(values, 0).steps = [
        { upTo: '100', amount: '115' },
        { upTo: '', amount: '' },
        { upTo: '60', amount: '120' },
      ];
    });
    expect(wrong).toEqual({ 'base.0.steps.2.upTo': 'Each step of Deer, cut, ground, wrapped and frozen goes to a higher weight than the one before.' });
  });
});

describe('the buttons of the form', () => {
  test('add and take away rows and steps', () => {
    const more = applyTariffIntent(applyTariffIntent(filled(), 'add:perWeight') ?? filled(), 'add:base.0.steps');
    expect([more?.perWeight.length, more?.base[0]?.steps.length]).toEqual([3, 3]);
    const less = applyTariffIntent(applyTariffIntent(filled(), 'remove:perWeight.0') ?? filled(), 'remove:base.0.steps.1');
    expect([less?.perWeight.map((row) => row.id), less?.base[0]?.steps]).toEqual([['tenderised-steaks'], [{ upTo: '60', amount: '95.00' }]]);
  });

  test('do nothing where they are not known, and saving is none of them', () => {
    expect(['save', '', 'add:perPiece', 'remove:__proto__.0'].map((intent) => applyTariffIntent(filled(), intent))).toEqual([null, null, null, null]);
  });

  test('an empty new row is told what it lacks, in whole sentences', () => {
    const values = applyTariffIntent(filled(), 'add:perWeight') ?? filled();
    expect(parseTariffForm(values, opened)).toEqual({
      ok: false,
      fieldErrors: {
        'perWeight.2.name': 'Give this price a name.',
        'perWeight.2.rate': 'Write the price as a number with up to four decimals, for example 3.49.',
        'perWeight.2.cuts': 'Choose the cuts this price is for.',
      },
    });
  });

  test('a new row gets an id of its own from its name', () => {
    const values = applyTariffIntent(filled(), 'add:perWeight') ?? filled();
    values.perWeight[2] = { id: '', name: 'Boned and rolled', cuts: { joint: true }, rate: '0.40', tax: '' };
    const parsed = parseTariffForm(values, opened);
    expect(parsed.ok && parsed.value.perWeight[2]).toEqual({ id: 'boned-and-rolled-2', name: 'Boned and rolled', cutIds: ['joint'], ratePer10k: 4_000, taxId: null });
  });

  test('a tax that prices still name cannot be taken away', () => {
    const values = applyTariffIntent(filled(), 'remove:taxes.0') ?? filled();
    expect(parseTariffForm(values, opened)).toEqual({
      ok: false,
      fieldErrors: Object.fromEntries(defaultTariff.products.map(({ name }, at) => [`products.${at}.tax`, `${name} names a tax that is not in the list.`])),
    });
  });
});
