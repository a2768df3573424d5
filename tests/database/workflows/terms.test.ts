import { expect, test } from 'vitest';
import { atMoment } from '@/lib/db/clock';
import { openOrderForm, readHunterOrder } from '@/lib/workflows/hunter-orders';
import { currentShop, saveShopSettings } from '@/lib/workflows/shop-settings';
import { noon, owner, place, useShop } from './shop-at-work';

useShop({ hangDays: 6, mixedOnly: ['jerky'], allergens: { jerky: ['soy'] }, madeDays: 28, mostFatPercent: 25 });

const terms = { hangDays: 6, mixedOnly: ['jerky'], allergens: { jerky: ['soy'] }, plainDays: null, madeDays: 28, madeUntil: null, mostFatPercent: 25 };

test("a phone is told the shop's terms and its day, so that it finds what the server finds", async () => {
  expect(await atMoment(noon, () => openOrderForm())).toMatchObject({ terms, today: '2026-11-20' });
  const { token } = await place();
  expect((await atMoment(noon, () => readHunterOrder(token)))?.shop).toMatchObject({ terms, today: '2026-11-20' });
});

test('the day is the one in the shop, not in Greenwich', async () => {
  expect(await atMoment(new Date('2026-11-21T03:30:00Z'), () => openOrderForm())).toMatchObject({ today: '2026-11-20' });
});

test('what is saved as terms is what rules then read', async () => {
  const shop = await currentShop();
  if (!shop) throw new Error('No shop');
  const typed = { ...shop.settings, mixedOnly: {}, allergens: { jerky: 'none', 'fresh-sausage': 'Wheat, mustard' }, madeUntil: '2026-12-12' };
  expect(await saveShopSettings(owner, typed, shop.version)).toMatchObject({ ok: true });
  expect(await openOrderForm()).toMatchObject({ terms: { ...terms, mixedOnly: [], allergens: { jerky: [], 'fresh-sausage': ['gluten', 'mustard'] }, madeUntil: '2026-12-12' } });
});
