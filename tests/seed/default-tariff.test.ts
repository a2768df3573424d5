import { expect, test } from 'vitest';
import { PUBLISHED_IDS, publishedSpecies } from '@/lib/carcass';
import { defaultTariff } from '@/seed/default-tariff';

/** Published, but not hunted where the first price list is from: a shop ticks them itself. */
const NOT_ON_THE_MENU = ['impala'];

test('every species but those of other continents has one base price, and no price is for a species nobody knows', () => {
  const priced = defaultTariff.base.flatMap(({ speciesIds }) => speciesIds);
  expect(priced.toSorted()).toEqual(PUBLISHED_IDS.filter((id) => !NOT_ON_THE_MENU.includes(id)).toSorted());
});

test('a bird has a flat price with its plucking in it, and no bird is priced as a deer', () => {
  for (const { charge, includes, speciesIds } of defaultTariff.base) {
    const plans = new Set(speciesIds.map((id) => publishedSpecies(id).plan));
    expect(plans.size).toBe(1);
    if (plans.has('bird')) expect({ kind: charge.kind, includes }).toEqual({ kind: 'flat', includes: ['skinning'] });
  }
});
