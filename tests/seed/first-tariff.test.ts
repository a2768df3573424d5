import { expect, test } from 'vitest';
import { PUBLISHED_IDS } from '@/lib/carcass';
import { checkTariff } from '@/lib/pricing';
import { firstTariff, tariffFor } from '@/seed/default-tariff';

test.each(['us', 'uk'] as const)('the first price list of a shop in the %s is sound, and for animals there are', (country) => {
  const tariff = firstTariff(country);
  expect(checkTariff(tariff)).toEqual([]);
  const menu = tariff.base.flatMap(({ speciesIds }) => speciesIds);
  expect(menu.length).toBeGreaterThan(5);
  for (const id of menu) expect(PUBLISHED_IDS).toContain(id);
});

test('a base price for no animal of the menu is left out', () => {
  expect(tariffFor(['elk']).base.map(({ id, speciesIds }) => [id, speciesIds])).toEqual([['elk', ['elk']]]);
});
