import { expect, test } from 'vitest';
import { makeOrderLink, orderLinkHash } from '@/lib/auth/order-link';

test('a link’s secret is 16 random bytes, and no two are alike', () => {
  const tokens = Array.from({ length: 1000 }, () => makeOrderLink().token);
  expect(new Set(tokens).size).toBe(1000);
  for (const token of tokens) expect(Buffer.from(token, 'base64url')).toHaveLength(16);
  // Every bit is set about half the time.
  const bytes = tokens.map((token) => Buffer.from(token, 'base64url'));
  for (let bit = 0; bit < 128; bit += 1) {
    const set = bytes.filter((one) => ((one[bit >> 3] ?? 0) >> (bit & 7)) & 1).length;
    expect(set).toBeGreaterThan(400);
    expect(set).toBeLessThan(600);
  }
});

test('what is stored is the SHA-256 of the secret and does not hold it', () => {
  const { token, hash } = makeOrderLink();
  expect(hash).toMatch(/^[0-9a-f]{64}$/);
  expect(orderLinkHash(token)).toBe(hash);
  expect(hash).not.toContain(token);
});

test('a worked example', () => {
  // printf AAAAAAAAAAAAAAAAAAAAAA | sha256sum
  expect(orderLinkHash('AAAAAAAAAAAAAAAAAAAAAA')).toBe('8a5bdb4cc15164126c6ef2668de9dd240d299ce6397a42c95a9411b93d080ed8');
});

test.each(['', 'short', 'A'.repeat(21), 'A'.repeat(23), '../../etc/passwd', 'AAAAAAAAAAAAAAAAAAAAA=', 'AAAAAAAAAAAAAAAAAAAAA\n'])(
  '%j cannot be a secret of ours',
  (token) => {
    expect(orderLinkHash(token)).toBeNull();
  },
);
