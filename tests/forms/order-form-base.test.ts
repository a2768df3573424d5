import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { PUBLISHED_SPECIES } from '@/lib/carcass';
import { type LineValues, type OrderFormValues, blankOrderForm, formAsItStands, readBase, writtenBase } from '@/lib/forms';
import { defaultTariff } from '@/seed/default-tariff';
import { anyOrderForm } from './any-form';

const shop = { unit: 'lb', locale: 'en-US', country: 'us', species: PUBLISHED_SPECIES, tariff: defaultTariff } as const;
const line = (id: string, target: LineValues['target'], cut: LineValues['cut'], asked = ''): LineValues => ({ id, target, cut, side: 'both', size: 'fit', pack: 'fit', asked });
const opened: OrderFormValues = {
  ...blankOrderForm('form-key-1'),
  lines: [line('line-1', 'loin', 'medallions'), line('line-2', 'topside', 'joint')],
  rest: 'mince',
  note: 'one\ntwo',
  hunter: { name: 'Dale Hoskins', phone: '555 010 0123', email: '' },
};
const brought = (typed: OrderFormValues, now: OrderFormValues) => formAsItStands(typed, { version: 1, values: opened }, { version: 2, values: now }, shop);

test('what a form was opened on is read back as it was written; anything else is nothing', () => {
  fc.assert(
    fc.property(anyOrderForm, (values) => {
      expect(readBase(3, writtenBase({ version: 3, values }))).toEqual({ version: 3, values });
    }),
  );
  for (const text of ['', '{', 'null', '{"a":1}', null]) expect(readBase(3, text)).toBeUndefined();
});

describe('a form brought to the order as it stands', () => {
  test('is that order where nothing was typed, and what was typed where nothing else was changed', () => {
    fc.assert(
      fc.property(anyOrderForm, anyOrderForm, (one, other) => {
        const base = { version: 1, values: one };
        const now = { version: 2, values: { ...other, formKey: one.formKey } };
        expect(formAsItStands(one, base, now, shop).values.lines).toEqual(other.lines);
        expect(readBack(formAsItStands(one, base, now, shop).values)).toEqual(readBack(now.values));
        expect(readBack(formAsItStands(other, base, { version: 2, values: one }, shop).values)).toEqual(readBack(other));
      }),
    );
  });

  test('keeps what was typed beside what others changed, and lists what they changed', () => {
    const typed = { ...opened, noPork: true, note: 'one\r\ntwo', hunter: { ...opened.hunter, name: 'Dale H.' } };
    const now = { ...opened, rest: 'stew', note: 'three', hunter: { ...opened.hunter, name: 'D. Hoskins' } };
    expect(brought(typed, now)).toMatchObject({
      step: 'edit',
      base: { version: 2, values: now },
      values: { noPork: true, rest: 'stew', note: 'three', hunter: { name: 'Dale H.', phone: '555 010 0123' } },
      changedMeanwhile: [
        { label: 'Everything you have not named', answer: expect.stringContaining('stew meat') },
        { label: 'Name', answer: 'D. Hoskins' },
        { label: 'Note to the shop', answer: 'three' },
      ],
    });
  });

  test('keeps lines typed, takes over lines changed, and gives one added by both an id of its own', () => {
    const typed = { ...opened, lines: [line('line-1', 'loin', 'medallions', '3 lb'), ...opened.lines.slice(1), line('line-3', 'fillet', 'whole')] };
    const now = { ...opened, lines: [opened.lines[0], line('line-3', 'hind-shank', 'diced')].flatMap((one) => one ?? []) };
    expect(brought(typed, now).values.lines).toEqual([
      line('line-1', 'loin', 'medallions', '3 lb'),
      line('line-3', 'hind-shank', 'diced'),
      line('line-4', 'fillet', 'whole'),
    ]);
    expect(brought(typed, now).changedMeanwhile).toEqual([{ label: 'Both hind shanks', answer: 'stew meat' }, { label: 'Both top rounds', answer: 'taken off' }]);
    expect(brought({ ...opened, lines: [] }, { ...opened, rest: 'stew' }).values).toMatchObject({ lines: [], rest: 'stew' });
  });

  test('is the order as it stands where nobody knows what the form was opened on', () => {
    const now = { version: 2, values: { ...opened, rest: 'stew' } };
    expect(formAsItStands({ ...opened, noPork: true }, undefined, now, shop).values).toEqual(now.values);
  });
});

/** As a form: the ends of lines count as one character. */
function readBack(values: OrderFormValues): unknown {
  return JSON.parse(JSON.stringify({ ...values, lines: values.lines.length }).replaceAll('\\r\\n', '\\n'));
}
