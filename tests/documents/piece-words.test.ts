import { expect, test } from 'vitest';
import { pieceWords } from '@/lib/documents';

const even = (count: number) => ({ low: count, likely: count, high: count });

test.each([
  [{ pieces: { low: 13, likely: 14, high: 15 }, packets: null, people: { low: 5, likely: 6, high: 6 } }, '13 to 15 pieces, feeds about 6'],
  [{ pieces: even(1), packets: even(1), people: even(2) }, '1 piece, feeds about 2'],
  [{ pieces: even(8), packets: even(2), people: null }, '8 pieces, 2 packets'],
  [{ pieces: null, packets: null, people: null }, ''],
])('%o is %j', (pieces, words) => {
  expect(pieceWords(pieces)).toBe(words);
});
