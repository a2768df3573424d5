import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import {
  formatOrderNumber, isOrderNumber, makeOrderNumber, parseOrderNumber, parseScanCode, scanCode,
} from '@/lib/orders/order-number';

const anyNumber = fc.integer({ min: 1, max: 99_999 }).map(makeOrderNumber);
const doesNotAddUp = { ok: false, message: 'That number does not add up: one digit is wrong or two are swapped.' };

describe('an order number', () => {
  it('has five digits and a check digit', () => {
    expect(makeOrderNumber(10_427)).toBe('104277');
    expect(makeOrderNumber(572)).toBe('005724');
    expect(formatOrderNumber('104277')).toBe('10427-7');
  });

  test.each([0, 100_000, 1.5, -3, Number.NaN])('is not made from %d', (sequence) => {
    expect(() => makeOrderNumber(sequence)).toThrow(`not ${sequence}`);
  });

  it('with any one digit wrong does not add up', () => {
    fc.assert(fc.property(anyNumber, (number) => {
      for (let at = 0; at < number.length; at += 1) {
        for (const digit of '0123456789') {
          if (digit === number[at]) continue;
          expect(parseOrderNumber(number.slice(0, at) + digit + number.slice(at + 1))).toEqual(doesNotAddUp);
        }
      }
    }));
  });

  it('with any two neighbours swapped does not add up', () => {
    fc.assert(fc.property(anyNumber, (number) => {
      for (let at = 0; at + 1 < number.length; at += 1) {
        const [left, right] = [number.charAt(at), number.charAt(at + 1)];
        if (left === right) continue;
        expect(parseOrderNumber(number.slice(0, at) + right + left + number.slice(at + 2))).toEqual(doesNotAddUp);
      }
    }));
  });
});

describe('parseOrderNumber', () => {
  test.each(['104277', '10427-7', '10427 7', '10427 - 7', ' 1 0427–7 ', '#10427-7', '104277v2', '104277V12'])('reads %j', (text) => {
    expect(parseOrderNumber(text)).toEqual({ ok: true, value: '104277' });
  });

  test.each(['', '10427', '1042777', 'abc', '10427-x', '=104277', '1'.repeat(200)])('says how to write %j', (text) => {
    expect(parseOrderNumber(text)).toEqual({
      ok: false, message: 'Write the number as it stands on the tag, for example 10427-7.',
    });
  });

  it('says when a number does not add up', () => {
    expect(parseOrderNumber('10427-3')).toEqual(doesNotAddUp);
    expect(parseOrderNumber('000000')).toEqual(doesNotAddUp);
  });

  it('reads what was written', () => {
    fc.assert(fc.property(anyNumber, (number) => {
      expect(parseOrderNumber(formatOrderNumber(number))).toEqual({ ok: true, value: number });
    }));
  });

  it('gives an example that adds up', () => {
    expect(isOrderNumber('104277')).toBe(true);
  });
});

describe('a scan code', () => {
  it('is the number and the version of the sheet', () => {
    expect(scanCode('104277', 2)).toBe('104277V2');
    expect(parseScanCode('104277v2')).toEqual({ ok: true, value: { number: '104277', sheetVersion: 2 } });
  });

  it('holds only what a QR code packs as alphanumeric, and reads back', () => {
    fc.assert(fc.property(anyNumber, fc.integer({ min: 1, max: 999 }), (number, sheetVersion) => {
      const code = scanCode(number, sheetVersion);
      expect(code).toMatch(/^[0-9A-Z]+$/);
      expect(parseScanCode(code)).toEqual({ ok: true, value: { number, sheetVersion } });
    }));
  });

  test.each(['104277', '104277V0', 'V2', ''])('is not %j', (text) => {
    expect(parseScanCode(text)).toEqual({ ok: false, message: 'Scan the code on the sheet, or write the number on the tag.' });
  });

  it('with a wrong digit does not add up', () => {
    expect(parseScanCode('104273V2')).toEqual(doesNotAddUp);
  });

  it('is not made of a wrong number or version', () => {
    expect(() => scanCode('104273', 1)).toThrow('Not an order number: 104273');
    expect(() => scanCode('104277', 0)).toThrow('not 0');
  });
});
