import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { formatThickness, parseLength } from '@/lib/units';

describe('parseLength', () => {
  test.each([
    ['1 in', 'mm', 25], ['3/4', 'in', 19], ['3/4', 'mm', 19], ['3/4"', 'in', 19], ['25 mm', 'in', 25], ['25', 'mm', 25],
    ['1', 'in', 25], ['1 1/4 in', 'in', 32], ['1-1/4', 'in', 32], ['1½”', 'in', 38], ['2,5 cm', 'in', 25], ['36 inches', 'in', 914],
  ] as const)('%j in a shop of %s is %i mm', (text, unit, mm) => {
    expect(parseLength(text, { unit })).toEqual({ ok: true, value: mm });
  });

  test.each(['', '0', '-1', 'NaN', 'thick', '3/0', '6 m', '5001 mm', '1'.repeat(99)])(
    '%j comes back as a sentence', (text) => {
      expect(parseLength(text, { unit: 'in' })).toEqual({
        ok: false, message: 'Write the length as a number, for example 3/4 in or 1.5 in.',
      });
      expect(parseLength(text, { unit: 'mm' })).toEqual({
        ok: false, message: 'Write the length as a number, for example 20 mm.',
      });
    },
  );
});

describe('formatThickness', () => {
  test.each([[19, '3/4 in'], [25, '1 in'], [32, '1 1/4 in'], [38, '1 1/2 in'], [13, '1/2 in'], [1, '1/16 in'], [0, '0 in']])(
    '%i mm read %j', (mm, text) => {
      expect(formatThickness(mm, 'in')).toBe(text);
    },
  );

  it('writes whole millimetres as they are', () => {
    expect(formatThickness(19, 'mm')).toBe('19 mm');
  });

  it('keeps every sixteenth of an inch through whole millimetres', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 3000 }), (sixteenths) => {
      const mm = parseLength(`${Math.floor(sixteenths / 16)} ${sixteenths % 16}/16`, { unit: 'in' });
      const again = mm.ok ? parseLength(formatThickness(mm.value, 'in'), { unit: 'in' }) : mm;
      expect(again).toEqual(mm);
      expect(mm.ok && Math.round((mm.value / 25.4) * 16)).toBe(sixteenths);
    }));
  });

  it('refuses a fraction of a millimetre', () => {
    expect(() => formatThickness(1.5, 'in')).toThrow('Not a whole number of millimetres: 1.5');
  });
});
