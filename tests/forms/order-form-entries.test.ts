import fc from 'fast-check';
import { expect, test } from 'vitest';
import { nestEntries, rowsAt, textAt } from '@/lib/forms';

test('dotted names become nested values', () => {
  const tree = nestEntries([['animal.sex', 'male'], ['lines.3.cut', 'steaks'], ['lines.0.cut', 'rack'], ['rest', 'mince']]);
  expect(JSON.parse(JSON.stringify(tree))).toEqual({ animal: { sex: 'male' }, lines: { 0: { cut: 'rack' }, 3: { cut: 'steaks' } }, rest: 'mince' });
  expect(rowsAt(tree, 'lines').map((row) => textAt(row, 'cut'))).toEqual(['rack', 'steaks']);
  expect(textAt(tree, 'animal')).toBe('');
  expect(textAt(tree, 'animal.sex.more')).toBe('');
});

test.each(['__proto__.polluted', 'constructor.prototype.polluted', 'a.__proto__.polluted', 'a.constructor.prototype.polluted', 'prototype.polluted', '__proto__', 'lines.__proto__.polluted'])(
  'the name %s reaches into no prototype',
  (name) => {
    const tree = nestEntries([[name, 'yes'], ['a.b', 'c']]);
    expect(Reflect.get({}, 'polluted')).toBeUndefined();
    expect(Reflect.get(Object, 'polluted')).toBeUndefined();
    expect(textAt(tree, name)).toBe('');
    expect(textAt(tree, 'a.b')).toBe('c');
  },
);

test('no name, however odd, changes what every object has', () => {
  const step = fc.oneof(fc.constantFrom('__proto__', 'constructor', 'prototype', 'toString', 'hasOwnProperty', 'length', '', '0'), fc.string({ maxLength: 6 }));
  const name = fc.array(step, { maxLength: 8 }).map((steps) => steps.join('.'));
  const before = Object.getOwnPropertyNames(Object.prototype);
  fc.assert(
    fc.property(fc.array(fc.tuple(name, fc.string({ maxLength: 5 })), { maxLength: 12 }), (entries) => {
      const tree = nestEntries(entries);
      for (const [name] of entries) expect(typeof textAt(tree, name)).toBe('string');
      expect(Object.getOwnPropertyNames(Object.prototype)).toEqual(before);
    }),
  );
});

test('what every object has is not taken for something that was sent', () => {
  const tree = nestEntries([]);
  for (const path of ['toString', 'constructor', '__proto__', 'hasOwnProperty.name']) expect(textAt(tree, path)).toBe('');
  expect(rowsAt(tree, 'constructor')).toEqual([]);
});

test('files, the framework’s own names, and all beyond 2,000 names are passed over; a text ends at 10,000', () => {
  const many = Array.from({ length: 3_000 }, (_, at): [string, string] => [`n${at}`, 'x']);
  const tree = nestEntries([['$ACTION_ID', 'secret'], ['photo', { size: 3 }], ['note', 'x'.repeat(20_000)], ...many]);
  expect(textAt(tree, '$ACTION_ID')).toBe('');
  expect(textAt(tree, 'photo')).toBe('');
  expect(textAt(tree, 'note')).toHaveLength(10_000);
  expect(textAt(tree, 'n1998')).toBe('x');
  expect(textAt(tree, 'n2000')).toBe('');
});

test('a list is read by rising index, and an index that is none is no row', () => {
  const tree = nestEntries([['lines.10.id', 'c'], ['lines.2.id', 'b'], ['lines.1.id', 'a'], ['lines.x.id', 'no'], ['lines.-1.id', 'no'], ['lines.99999.id', 'no'], ['lines.1.5.id', 'no']]);
  expect(rowsAt(tree, 'lines').map((row) => textAt(row, 'id'))).toEqual(['a', 'b', 'c']);
});
