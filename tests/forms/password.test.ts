import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { longestPassword, passwordProblem, shortestPassword } from '@/lib/forms';

const about = ['Ada Lovett', 'ada', 'Pine Ridge Deer Processing'];

describe('a new password', () => {
  test.each([
    ['', 'Enter a password'],
    ['fourteen chars', 'Make the password at least 15 characters long: four or five words do well'],
    ['x'.repeat(200), 'Make the password at most 128 characters long'],
    ['Password Password', 'Choose another password: this one is used by many people, so it is tried first'],
    ['correct horse battery staple', 'Choose another password: this one is used by many people, so it is tried first'],
    ['aaaaaaaaaaaaaaaaaaaa', 'Choose another password: this one only repeats itself, which is tried first'],
    ['xyzxyzxyzxyzxyzxyz', 'Choose another password: this one only repeats itself, which is tried first'],
    ['bcdefghijklmnopqrs', 'Choose another password: this one runs along the alphabet or the digits, which is tried first'],
    ['ada lovett gambrel 2026', 'Choose another password: this one is made of names that anybody here knows'],
    ['pineridgedeerprocessing!', 'Choose another password: this one is made of names that anybody here knows'],
  ])('%j is refused with its reason', (password, sentence) => {
    expect(passwordProblem(password, about)).toBe(sentence);
  });

  test.each([
    'kettle orbit lantern moss',
    'four or five words do well',
    'Þórr hefur hamar ok hafra',
    '鹿の肉を紙に包んで凍らせて棚に置く',
    'all small letters and spaces',
    `'; DROP TABLE "StaffMember"; --`,
    'kettle ada orbit lantern',
  ])('%j is taken: no kind of character has to be in it', (password) => {
    expect(passwordProblem(password, about)).toBeNull();
  });

  test('length counts characters as people see them, up to more than 64', () => {
    expect(shortestPassword).toBe(15);
    expect(longestPassword).toBeGreaterThanOrEqual(64);
    const deer = ['🦌', '🍂', '❄', '🔪', '🧊'];
    const alternating = (length: number): string => Array.from({ length }, (_, at) => deer[(at * at + at) % 5] ?? '').map((sign, at) => (at % 7 === 0 ? 'n' : sign)).join('');
    expect(passwordProblem(alternating(14), [])).toMatch(/at least 15/);
    expect(passwordProblem(alternating(15), [])).toBeNull();
    expect(passwordProblem(alternating(128), [])).toBeNull();
  });

  test('any text gets an answer: taken, or one sentence', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 140 }), fc.array(fc.string({ unit: 'grapheme' })), (password, names) => {
        const problem = passwordProblem(password, names);
        expect(problem === null || /^(Enter|Make|Choose) /.test(problem)).toBe(true);
      }),
    );
  });
});
