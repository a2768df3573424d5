import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkForm, firstShopSettings, shopSettingsSchema, termsEntries, termsOf } from '@/lib/forms';
import { allergensText, readAllergens } from '@/lib/forms/allergen-words';
import { ALLERGENS } from '@/lib/instructions';
import { PLAIN_TERMS } from '@/lib/rules';

const first = firstShopSettings({ name: 'Pine Ridge', unit: 'lb', currency: 'USD', paper: 'letter', nameCountry: 'us', timeZone: 'America/Denver' });

function read(changes: Record<string, unknown>): unknown {
  return checkForm(shopSettingsSchema, { ...first, ...changes });
}

describe("the shop's terms", () => {
  test('a shop that has said nothing has plain terms, and so has one whose settings are older than they', () => {
    const { mixedOnly, allergens, plainDays, madeDays, madeUntil, mostFatPercent, ...older } = first;
    expect(termsOf(first)).toEqual(PLAIN_TERMS);
    expect(checkForm(shopSettingsSchema, older)).toEqual({ ok: true, value: { ...older, mixedOnly, allergens, plainDays, madeDays, madeUntil, mostFatPercent } });
  });

  test('a form is read: ticks to a list, words to allergens, an empty box to nothing said', () => {
    const typed = { plainDays: '14', madeDays: '', madeUntil: '2026-12-12', mostFatPercent: '25', mixedOnly: { jerky: 'on', 'deer-jam': 'on' }, allergens: { 'fresh-sausage': ' Wheat; soya ', jerky: 'None', 'snack-sticks': '' } };
    expect(read(typed)).toMatchObject({
      ok: true,
      value: { plainDays: 14, madeDays: null, madeUntil: '2026-12-12', mostFatPercent: 25, mixedOnly: ['jerky'], allergens: { 'fresh-sausage': ['gluten', 'soy'], jerky: [] } },
    });
    expect(read(typed)).not.toHaveProperty('value.allergens.snack-sticks');
  });

  test('the inputs hold what is stored, and what they hold is read as it was stored', () => {
    const stored = { plainDays: 14, madeDays: 28, madeUntil: null, mostFatPercent: 25, mixedOnly: ['jerky'] as const, allergens: { jerky: [], 'fresh-sausage': ['milk', 'tree-nuts'] as const } };
    expect(termsEntries(stored)).toMatchObject({ plainDays: '14', madeUntil: '', 'mixedOnly.jerky': 'on', 'allergens.jerky': 'none', 'allergens.fresh-sausage': 'milk, tree nuts', 'allergens.snack-sticks': '' });
    expect(read(stored)).toMatchObject({ ok: true, value: stored });
  });

  test.each([
    [{ madeDays: 'a month' }, { madeDays: 'Enter a whole number of days, for example 10' }],
    [{ plainDays: '0' }, { plainDays: 'Enter at least 1 day' }],
    [{ plainDays: '400' }, { plainDays: 'Enter at most 365 days' }],
    [{ madeUntil: '2026-02-30' }, { madeUntil: 'Choose a day, or leave it empty' }],
    [{ mostFatPercent: '80' }, { mostFatPercent: 'Enter at most 50 percent' }],
    [{ allergens: { jerky: 'none, soy' } }, { 'allergens.jerky': 'Write "none" alone, or what is in it' }],
    [
      { allergens: { jerky: 'soy, cinnamon' } },
      { 'allergens.jerky': '"cinnamon" is not among the foods people must avoid. The words are: milk, egg, gluten, soy, mustard, celery, sesame, peanut, tree nuts, sulphites, fish, crustaceans, molluscs, lupin, or none' },
    ],
  ])('%j is refused in a sentence at the field', (typed, fieldErrors) => {
    expect(read(typed)).toEqual({ ok: false, formErrors: [], fieldErrors });
  });
});

describe('allergens in words', () => {
  test.each([
    ['Soya, wheat and milk', ['milk', 'gluten', 'soy']],
    ['SHRIMP / oysters', ['crustaceans', 'molluscs']],
    ['nuts, Tree-nuts, pecans.', ['tree-nuts']],
    ['sulfites', ['sulphites']],
    [' none ', []],
    ['  ', null],
  ])('%j reads as %j', (text, value) => {
    expect(readAllergens(text)).toEqual({ ok: true, value });
  });

  test('what is written is read as it was, and nothing typed throws', () => {
    fc.assert(fc.property(fc.subarray([...ALLERGENS]), (some) => void expect(readAllergens(allergensText(some))).toEqual({ ok: true, value: some })));
    fc.assert(fc.property(fc.string(), (text) => void readAllergens(text)));
  });
});
