import { expect, test } from 'vitest';
import { database, withTransaction } from '@/lib/db/client';
import { readShop } from '@/lib/db/shop';
import { CAREFUL } from '@/lib/law';
import { saveLaw, saveShopSettings } from '@/lib/workflows/shop-settings';
import { shopView } from '@/lib/workflows/shop-view';
import { counter, cutter, owner, useShop } from './shop-at-work';

useShop();

const michigan = { packId: 'us-michigan', 'value.keepRecordDays': '730', 'reason.keepRecordDays': 'our accountant asks two years' };
const stored = async () => {
  const shop = await withTransaction(readShop);
  if (!shop) throw new Error('No shop');
  return shop;
};

test('a shop that has chosen no place goes by the careful figures', async () => {
  const { settings } = await stored();
  expect((await shopView(settings)).law).toEqual(CAREFUL.points);
});

test('place and changes are saved, hold in what the rules read, and are recorded with who did it', async () => {
  const { settings, version } = await stored();
  expect(await saveLaw(owner, michigan, version)).toMatchObject({ ok: true });
  const after = await stored();
  expect(after.settings).toEqual({
    ...settings,
    law: { packId: 'us-michigan', changes: { keepRecordDays: { value: 730, reason: 'our accountant asks two years' } } },
  });
  expect((await shopView(after.settings)).law).toMatchObject({ keepRecordDays: 730, pooling: 'not-allowed' });
  expect(await database().auditEntry.findMany({ where: { action: 'law-changed' } })).toMatchObject([
    { actorName: owner.name, before: { law: { packId: 'careful' } }, after: { law: { packId: 'us-michigan' } } },
  ]);
});

test('a save of the settings leaves the law as it is, and a save of the law leaves the settings', async () => {
  await saveLaw(owner, michigan, (await stored()).version);
  const lawful = await stored();
  const { law, ...settings } = lawful.settings;
  // As the browser sends them: no law among the fields.
  expect(await saveShopSettings(owner, { ...settings, name: 'Test Game and Sons' }, lawful.version)).toMatchObject({ ok: true, value: { law } });
  const renamed = await stored();
  expect(renamed.settings).toEqual({ ...settings, name: 'Test Game and Sons', law });
  expect(await saveLaw(owner, { packId: 'eu' }, renamed.version)).toMatchObject({ ok: true });
  expect((await stored()).settings).toEqual({ ...settings, name: 'Test Game and Sons', law: { packId: 'eu', changes: {} } });
});

test('settings stored before there was any law are read, saved and given one', async () => {
  const { settings } = await stored();
  const { law, ...old } = settings;
  await withTransaction((transaction) => transaction.shop.update({ where: { id: 1 }, data: { settings: old } }));
  expect((await stored()).settings).toEqual({ ...old, law });
  expect(await saveLaw(owner, michigan, 1)).toMatchObject({ ok: true });
});

test('whoever comes second over the same version is refused, with the law or the settings alike', async () => {
  const { settings, version } = await stored();
  await saveLaw(owner, michigan, version);
  const late = { ok: false, formErrors: [expect.stringContaining('Somebody else saved the settings')] };
  expect(await saveLaw(owner, { packId: 'eu' }, version)).toMatchObject(late);
  expect(await saveShopSettings(owner, settings, version)).toMatchObject(late);
  expect((await stored()).settings.law.packId).toBe('us-michigan');
});

test('a refused form changes nothing', async () => {
  const { version } = await stored();
  expect(await saveLaw(owner, { packId: 'eu', 'value.pooling': 'allowed' }, version)).toMatchObject({ ok: false, fieldErrors: { 'reason.pooling': expect.any(String) } });
  expect(await stored()).toMatchObject({ version, settings: { law: { packId: 'careful' } } });
});

test('only the owner says what the law is', async () => {
  for (const actor of [counter, cutter]) await expect(saveLaw(actor, michigan, 1)).rejects.toMatchObject({ name: 'AccessRefused' });
});
