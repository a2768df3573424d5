import fc from 'fast-check';
import { expect, test } from 'vitest';
import { PUBLISHED_SPECIES } from '@/lib/carcass';
import { blankOrderForm, checkOrderForm, orderAnswers, orderFormEntries, readOrderForm, refusedForm, stepOrderForm, type OrderFormValues } from '@/lib/forms';
import { CAREFUL } from '@/lib/law';
import { defaultTariff } from '@/seed/default-tariff';
import { anyOrderForm, formShops } from './any-form';

const shop = { unit: 'lb', locale: 'en-US', country: 'us', diseaseZones: [], law: CAREFUL.points, species: PUBLISHED_SPECIES } as const;
const doe: OrderFormValues = {
  ...blankOrderForm('form-key-1'),
  animal: { ...blankOrderForm('').animal, speciesId: 'white-tailed-deer', sex: 'female', ageClass: 'adult', weight: '120', weightBasis: 'field-dressed', diseaseZone: 'no', form: 'hide-on' },
  rest: 'mince',
  hunter: { name: 'Dale Hoskins', phone: '555 010 0123', email: '' },
};
const after = (values: OrderFormValues, ...intents: readonly string[]): OrderFormValues =>
  intents.reduce((now, intent) => stepOrderForm(now, intent, 'edit', shop).values, values);

test('what the check page carries in hidden inputs is read back as it was', () => {
  fc.assert(
    fc.property(anyOrderForm, (values) => {
      expect(readOrderForm(orderFormEntries(values))).toEqual(values);
    }),
  );
});

test('an added line is where the hunter stands next, a line taken off leaves them at its part', () => {
  const added = stepOrderForm(doe, 'add:topside', 'edit', shop);
  expect(added.focus).toBe('line-1');
  expect(stepOrderForm(added.values, 'remove:line-1', 'edit', shop)).toMatchObject({ focus: 'part-haunch', values: { lines: [] } });
});

test('the usual way names what is not ground anyway, once', () => {
  const usual = after(doe, 'usual');
  expect(usual.lines.map(({ target, cut }) => `${target} ${cut}`)).toEqual([
    'fillet whole', 'loin medallions', 'topside joint', 'thick-flank joint', 'silverside steaks', 'rump steaks',
  ]);
  expect(after(usual, 'usual')).toEqual(usual);
});

test('a finding mended on the check page leads back to the check page, mended in the form it leads to its line or part', () => {
  const clash = after(doe, 'add:loin', 'add:saddle');
  const mendIt = 'mend:muscle-promised-twice|line-1+line-2#0';
  expect(stepOrderForm(clash, mendIt, 'check', shop)).toMatchObject({ step: 'check', focus: null });
  const inForm = stepOrderForm(clash, mendIt, 'edit', shop);
  expect(inForm.values.lines).toHaveLength(1);
  expect(inForm).toMatchObject({ step: 'edit', focus: 'part-loin' });
});

test('checking reads the answers over where nothing is missing, and keeps every word where something is', () => {
  expect(checkOrderForm(doe, shop)).toMatchObject({ step: 'check', fieldErrors: {} });
  const nameless = { ...doe, hunter: { ...doe.hunter, name: '' } };
  expect(checkOrderForm(nameless, shop)).toMatchObject({ step: 'edit', values: nameless, fieldErrors: { 'hunter.name': expect.any(String) } });
});

test('what is missing is listed in the order of the form, what concerns all of it first', () => {
  const refused = refusedForm(doe, { 'hunter.name': 'c', 'animal.sex': 'b', '': 'a' });
  expect(Object.keys(refused.fieldErrors)).toEqual(['', 'animal.sex', 'hunter.name']);
});

test('whatever was typed, each button and the answers can be drawn', () => {
  const intent = fc.constantFrom('usual', 'refresh', 'change:who', 'add:neck', 'add:nothing', 'remove:line-1', 'first:jerky', 'first:x', 'mend:x#0', 'mend:', ':', '');
  fc.assert(
    fc.property(anyOrderForm, intent, fc.constantFrom(...formShops), (values, press, where) => {
      const { values: next } = stepOrderForm(values, press, 'edit', where);
      // The other two sections, and who mounts the cape, repeat what was typed, word for word.
      const ours = orderAnswers({ ...next, keep: { ...next.keep, taxidermist: '' } }, { ...where, tariff: defaultTariff }).filter(({ section }) => section !== 'animal' && section !== 'who');
      const words = JSON.stringify(ours);
      expect(words).not.toMatch(/undefined|NaN/);
    }),
  );
});
