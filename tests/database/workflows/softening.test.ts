import { expect, test } from 'vitest';
import { AccessRefused } from '@/lib/access';
import { database } from '@/lib/db/client';
import { readShop } from '@/lib/db/shop';
import { placeOrder, readHunterOrder } from '@/lib/workflows/hunter-orders';
import { saveRuleChanges, saveShopSettings } from '@/lib/workflows/shop-settings';
import { counter, line, orderForm, owner, useShop } from './shop-at-work';

useShop();

const twice = { lines: [line('haunch', 'on-the-bone', '', 1), line('topside', 'joint', '', 2)] };
const softened = { 'severity.muscle-promised-twice': 'ask', 'reason.muscle-promised-twice': 'We call whoever sends it' };

const shopNow = async () => {
  const shop = await readShop(database());
  if (!shop) throw new Error('No shop');
  return shop;
};

test('a softened stop lets an order be sent, and the order still says it', async () => {
  expect(await placeOrder(orderForm(twice))).toMatchObject({ ok: false });
  expect(await saveRuleChanges(owner, softened, 1)).toMatchObject({ ok: true });
  const placed = await placeOrder(orderForm(twice));
  if (!placed.ok) throw new Error(placed.message);
  const order = await readHunterOrder(placed.token);
  expect(order?.assessment.findings.filter(({ ruleId }) => ruleId === 'muscle-promised-twice').map(({ severity }) => severity)).toEqual(['ask']);
  expect(order?.shop.ruleChanges).toEqual({ 'muscle-promised-twice': { severity: 'ask', reason: 'We call whoever sends it' } });
});

test('it is recorded who softened what, and why', async () => {
  await saveRuleChanges(owner, softened, 1);
  const [entry] = await database().auditEntry.findMany({ where: { action: 'rules-changed' } });
  expect(entry).toMatchObject({ actorName: owner.name, before: { ruleChanges: {} }, after: { ruleChanges: { 'muscle-promised-twice': { severity: 'ask', reason: 'We call whoever sends it' } } } });
});

test('neither page of the settings wipes what the other holds', async () => {
  await saveRuleChanges(owner, softened, 1);
  const { ruleChanges, ...typed } = (await shopNow()).settings;
  expect(await saveShopSettings(owner, { ...typed, phone: '555 0142' }, 2)).toMatchObject({ ok: true, value: { ruleChanges } });
  expect((await shopNow()).settings).toMatchObject({ phone: '555 0142', ruleChanges: { 'muscle-promised-twice': { severity: 'ask' } } });
  expect(await saveRuleChanges(owner, {}, 3)).toMatchObject({ ok: true, value: { ruleChanges: {} } });
  expect(await shopNow()).toMatchObject({ version: 4, settings: { phone: '555 0142', ruleChanges: {} } });
});

test('over newer settings nothing is saved, and a missing reason is asked for at its field', async () => {
  await saveRuleChanges(owner, softened, 1);
  expect(await saveRuleChanges(owner, {}, 1)).toMatchObject({ ok: false, formErrors: [expect.stringMatching(/^Somebody else saved the settings/)] });
  expect(await saveRuleChanges(owner, { ...softened, 'reason.muscle-promised-twice': '' }, 2)).toMatchObject({
    ok: false,
    fieldErrors: { 'reason.muscle-promised-twice': expect.stringMatching(/^Say why/) },
  });
  expect(await shopNow()).toMatchObject({ version: 2, settings: { ruleChanges: { 'muscle-promised-twice': { severity: 'ask' } } } });
});

test('safety rules stay as they are whatever is sent, and only the owner may soften any', async () => {
  expect(await saveRuleChanges(owner, { 'severity.wait-for-test-result': 'off', 'reason.wait-for-test-result': 'No time' }, 1)).toMatchObject({ ok: true, value: { ruleChanges: {} } });
  await expect(saveRuleChanges(counter, softened, 2)).rejects.toThrow(AccessRefused);
});
