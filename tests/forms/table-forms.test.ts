import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { PAYMENT_METHODS, parseHandoverForm, parsePackForm, parsePaymentForm, paymentWord } from '@/lib/forms';
import { hostileTexts } from './any-form';

const pounds = { unit: 'lb', locale: 'en-US' } as const;
const due = { currency: 'USD', locale: 'en-US', dueMinor: 10_000 } as const;

describe('the packing table', () => {
  const keys = ['line-1', 'pool:mince', 'keep:heart'];

  test('reads weights and packages by row; a row left empty, or weighing nothing, is not packed', () => {
    const typed: [string, string][] = [['weight.line-1', '3 lb 4 oz'], ['packages.line-1', '3'], ['weight.pool:mince', ' 12.5 '], ['packages.pool:mince', '9'], ['weight.keep:heart', '0']];
    expect(parsePackForm(typed, keys, pounds)).toEqual({
      ok: true,
      value: [{ lineKey: 'line-1', grams: 1474, packages: 3 }, { lineKey: 'pool:mince', grams: 5670, packages: 9 }],
    });
    expect(parsePackForm([], keys, pounds)).toEqual({ ok: true, value: [] });
  });

  test('knows only its own rows', () => {
    expect(parsePackForm([['weight.line-9', '3'], ['weight.__proto__', '3'], ['weight.constructor', '3']], keys, pounds)).toEqual({ ok: true, value: [] });
  });

  test('weighs in the unit and the writing of the shop', () => {
    expect(parsePackForm([['weight.line-1', '1,25'], ['packages.line-1', '2']], keys, { unit: 'kg', locale: 'de-DE' })).toMatchObject({ value: [{ grams: 1250 }] });
  });

  test.each(['-3', '1e2', 'NaN', '2 000 000 lb', 'three', '0x10', '5000'])('does not take the weight %s', (typed) => {
    expect(parsePackForm([['weight.line-1', typed]], keys, pounds)).toMatchObject({ ok: false, fieldErrors: { 'weight.line-1': expect.stringMatching(/^Write /) } });
  });

  test.each(['', '0', '-1', '1.5', '1e2', '0x10', '1000', 'two', 'NaN', ' 3 3 '])('does not take %s packages', (typed) => {
    expect(parsePackForm([['weight.line-1', '3'], ['packages.line-1', typed]], keys, pounds)).toEqual({
      ok: false,
      fieldErrors: { 'packages.line-1': 'Write how many packages, as a whole number.' },
    });
  });

  test('asks for the weight of a row whose packages were counted', () => {
    expect(parsePackForm([['packages.line-1', '3']], keys, pounds)).toEqual({ ok: false, fieldErrors: { 'weight.line-1': 'Write the weight as a number, for example 12.5 lb.' } });
  });
});

test('a cheque is spelled as in the country, and the other ways of paying are the same', () => {
  expect(PAYMENT_METHODS.map((method) => paymentWord(method, 'us'))).toEqual(['cash', 'card', 'check', 'transfer']);
  expect(PAYMENT_METHODS.map((method) => paymentWord(method, 'uk'))).toEqual(['cash', 'card', 'cheque', 'transfer']);
});

describe('a payment', () => {
  const sent = (amount: string, method = 'cash', formKey = 'till-key-1'): [string, string][] => [['amount', amount], ['method', method], ['formKey', formKey]];

  test.each([['100', 10_000], ['100.00', 10_000], ['$99.99', 9_999], ['0.01', 1], [' 50 ', 5_000]])('of %s is %i cents', (typed, amountMinor) => {
    expect(parsePaymentForm(sent(typed), due)).toEqual({ ok: true, value: { amountMinor, method: 'cash', formKey: 'till-key-1' } });
  });

  test.each([
    ['100.01', 'That is more than is due. Write what goes towards this invoice and give the rest back.'],
    ['0', 'Write an amount above nothing.'],
  ])('of %s is not taken: %s', (typed, sentence) => {
    expect(parsePaymentForm(sent(typed), due)).toEqual({ ok: false, fieldErrors: { amount: sentence } });
  });

  test.each(['', '-50', '1e3', 'NaN', '10.001', 'fifty', '٥٠', '9'.repeat(60)])('of %j is not read as an amount', (typed) => {
    expect(parsePaymentForm(sent(typed), due)).toMatchObject({ ok: false, fieldErrors: { amount: expect.any(String) } });
  });

  test('says how it was paid, and comes from a page that knows its place', () => {
    expect(parsePaymentForm(sent('50', 'shells'), due)).toEqual({ ok: false, fieldErrors: { method: 'Choose how it was paid.' } });
    expect(parsePaymentForm(sent('50', 'toString'), due)).toMatchObject({ ok: false });
    expect(parsePaymentForm(sent('50', 'cash', 'short'), due)).toEqual({ ok: false, fieldErrors: { amount: 'This page has lost its place. Load it again.' } });
  });

  test('is never above what is due, whatever is typed', () => {
    const anything = fc.oneof(fc.constantFrom(...hostileTexts), fc.string(), fc.double().map(String), fc.integer().map(String));
    fc.assert(
      fc.property(anything, fc.integer({ min: 1, max: 1_000_000 }), (typed, dueMinor) => {
        const parsed = parsePaymentForm(sent(typed), { ...due, dueMinor });
        if (!parsed.ok) return;
        const { amountMinor } = parsed.value;
        expect(Number.isSafeInteger(amountMinor) && amountMinor >= 1 && amountMinor <= dueMinor).toBe(true);
      }),
    );
  });
});

describe('a handover', () => {
  const sent = (changes: Readonly<Record<string, string>> = {}): [string, string][] =>
    Object.entries({ collectedBy: 'Bo Brandt', address: '', boxes: '2', tagReturned: 'on', ...changes });

  test('names who took it, how many boxes, and that the tag is with it', () => {
    expect(parseHandoverForm(sent({ collectedBy: ' Bo\u202E Brandt ' }))).toEqual({ ok: true, value: { collectedBy: 'Bo Brandt', address: '', boxes: 2, tagReturned: true } });
  });

  test.each([
    [{ collectedBy: ' ' }, 'collectedBy', 'Write the name of who takes it away, up to 80 characters.'],
    [{ collectedBy: 'x'.repeat(81) }, 'collectedBy', 'Write the name of who takes it away, up to 80 characters.'],
    [{ address: 'x'.repeat(201) }, 'address', 'The address has room for 200 characters.'],
    [{ boxes: '' }, 'boxes', 'Count the boxes and write how many.'],
    [{ boxes: '0' }, 'boxes', 'Count the boxes and write how many.'],
    [{ boxes: '1e1' }, 'boxes', 'Count the boxes and write how many.'],
    [{ boxes: '0x5' }, 'boxes', 'Count the boxes and write how many.'],
    [{ boxes: '-2' }, 'boxes', 'Count the boxes and write how many.'],
    [{ boxes: '201' }, 'boxes', 'Count the boxes and write how many.'],
    [{ tagReturned: '' }, 'tagReturned', 'The legal tag or its number goes back with the meat. Tick it when it is in the box.'],
  ] as const)('with %j is not taken', (changes, field, sentence) => {
    expect(parseHandoverForm(sent(changes))).toEqual({ ok: false, fieldErrors: { [field]: sentence } });
  });
});
