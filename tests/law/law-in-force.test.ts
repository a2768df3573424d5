import { expect, test } from 'vitest';
import { CAREFUL, LAW_PACKS, NO_PLACE, lawInForce } from '@/lib/law';

test('with no place chosen, the careful figures hold', () => {
  expect(lawInForce(NO_PLACE)).toEqual(CAREFUL.points);
});

test.each(LAW_PACKS.map((pack) => [pack.place, pack] as const))('%s: without a change, its own figures hold', (_, pack) => {
  expect(lawInForce({ packId: pack.id, changes: {} })).toEqual(pack.points);
});

test('a change holds over the pack, and only at its point', () => {
  const changes = { keepRecordDays: { value: 730, reason: 'our accountant asks two years' } };
  expect(lawInForce({ packId: 'us-michigan', changes })).toEqual({ ...lawInForce({ packId: 'us-michigan', changes: {} }), keepRecordDays: 730 });
});

test('a change stays when its pack is no longer shipped; the rest is careful', () => {
  const changes = { pooling: { value: 'allowed', reason: 'the inspector says so' } } as const;
  expect(lawInForce({ packId: 'atlantis', changes })).toEqual({ ...CAREFUL.points, pooling: 'allowed' });
});
