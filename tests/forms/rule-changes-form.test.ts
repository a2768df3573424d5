import { describe, expect, test } from 'vitest';
import { checkForm, firstShopSettings, parseRuleChanges, ruleChangesValues, shopSettingsSchema } from '@/lib/forms';

const RULES = [
  { id: 'too-much', severity: 'stop', ground: 'trade' },
  { id: 'perhaps', severity: 'ask', ground: 'trade' },
  { id: 'danger', severity: 'stop', ground: 'safety' },
] as const;

describe('the form of softened rules', () => {
  test('reads what was chosen and why, and passes over safety, law and rules nobody knows', () => {
    const typed = {
      'severity.too-much': 'ask',
      'reason.too-much': '  We call  about it ',
      'severity.perhaps': '',
      'reason.perhaps': ' ',
      'severity.danger': 'off',
      'reason.danger': 'never mind',
      'severity.no-such-rule': 'off',
    };
    expect(parseRuleChanges(typed, RULES)).toEqual({ ok: true, value: { 'too-much': { severity: 'ask', reason: 'We call about it' } } });
  });

  test('an empty form softens nothing', () => {
    expect(parseRuleChanges({}, RULES)).toEqual({ ok: true, value: {} });
  });

  test.each([
    [{ 'severity.too-much': 'off' }, 'reason.too-much', 'Say why you do it otherwise: hunters read it on the page of the rule'],
    [{ 'severity.too-much': 'off', 'reason.too-much': 'x'.repeat(201) }, 'reason.too-much', 'Shorten this to 200 characters'],
    [{ 'severity.perhaps': 'ask', 'reason.perhaps': 'why not' }, 'severity.perhaps', 'Choose one of the softer ways'],
    [{ 'severity.perhaps': 'stop', 'reason.perhaps': 'why not' }, 'severity.perhaps', 'Choose one of the softer ways'],
    [{ 'reason.perhaps': 'why not' }, 'severity.perhaps', 'Choose what becomes of this rule, or clear the reason'],
  ])('%j is refused at %s', (typed, field, sentence) => {
    expect(parseRuleChanges(typed, RULES)).toEqual({ ok: false, formErrors: [], fieldErrors: { [field]: sentence } });
  });

  test('holds what is stored, and reads back as it', () => {
    const changes = { 'too-much': { severity: 'note', reason: 'We make do' } } as const;
    const values = ruleChangesValues(changes, RULES);
    expect(values).toEqual({ 'severity.too-much': 'note', 'reason.too-much': 'We make do' });
    expect(parseRuleChanges(values, RULES)).toEqual({ ok: true, value: changes });
  });
});

test('settings stored before rules could be softened read as none softened, and later ones read back as themselves', () => {
  const asked = { name: 'Pine Ridge', unit: 'lb', currency: 'USD', paper: 'letter', nameCountry: 'us', timeZone: 'America/Denver' } as const;
  const { ruleChanges, ...before } = firstShopSettings(asked);
  expect(checkForm(shopSettingsSchema, before)).toMatchObject({ ok: true, value: { ruleChanges } });
  const softened = { ...before, ruleChanges: { 'too-much': { severity: 'off', reason: 'We make do' } } };
  expect(checkForm(shopSettingsSchema, structuredClone(softened))).toEqual({ ok: true, value: softened });
});
