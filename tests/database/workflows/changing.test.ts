import { blankOrderForm } from '@/lib/forms';
import { expect, test } from 'vitest';
import { database } from '@/lib/db/client';
import { atMoment } from '@/lib/db/clock';
import { changeOrder, readHunterOrder } from '@/lib/workflows/hunter-orders';
import { changeInstructions } from '@/lib/workflows/change-for-hunter';
import { findOrders } from '@/lib/workflows/find-orders';
import { takeStep } from '@/lib/workflows/take-step';
import { actionsOf, counter, line, noon, open, orderForm, owner, place, receive, useShop, versionOf } from './shop-at-work';

useShop();

test('a change through the link is the next version; the one before stays', async () => {
  const { token, number } = await place();
  const before = await open(number);
  expect(await changeOrder(token, before.version, { ...before.formValues, rest: 'stew' })).toEqual({ ok: true, isChanged: true });
  const after = await open(number);
  expect(after).toMatchObject({ version: 2, instructionVersion: 2, instructions: { rest: 'stew' } });
  expect(after.versions).toMatchObject([{ number: 2, by: 'The hunter', reason: 'changed by the hunter' }, { number: 1, by: 'Bo Brandt' }]);
  expect(await actionsOf(number)).toEqual(['order-placed', 'instructions-changed']);
});

test('a change of a page read before somebody else changed is refused, and says who did', async () => {
  const { token, number } = await place();
  const { version, formValues } = await open(number);
  await atMoment(noon, () => changeInstructions(counter, number, version, { ...formValues, rest: 'stew' }, 'called, wants stew'));
  const late = await changeOrder(token, version, { ...formValues, noPork: true });
  expect(late).toMatchObject({ ok: false });
  expect(late.ok ? '' : late.message).toContain('changed while you had it open. Ilse did, Nov 20, 2026, 12:00');
  expect((await open(number)).instructions).toMatchObject({ rest: 'stew', noPork: false });
});

test('of two who save the same page at once one is told', async () => {
  const { token, number } = await place();
  const { version, formValues } = await open(number);
  const both = await Promise.all([
    changeOrder(token, version, { ...formValues, rest: 'stew' }),
    changeInstructions(counter, number, version, { ...formValues, noPork: true }, 'called'),
  ]);
  expect(both.filter((one) => one.ok)).toHaveLength(1);
  expect((await open(number)).instructionVersion).toBe(2);
});

test('a change of the name or the animal alone is recorded, and the next person is told of it', async () => {
  const { token, number } = await place();
  const { version, formValues } = await open(number);
  const renamed = { ...formValues, hunter: { ...formValues.hunter, name: 'Bettina Brandt' }, animal: { ...formValues.animal, sex: 'male' } };
  expect(await changeInstructions(owner, number, version, renamed, 'name misheard')).toEqual({ ok: true, isChanged: true });
  expect(await actionsOf(number)).toEqual(['order-placed', 'details-changed']);
  const entry = await database().auditEntry.findFirstOrThrow({ where: { action: 'details-changed' } });
  expect(entry.before).toMatchObject({ hunter: { name: 'Bo Brandt' }, animal: { sex: 'female' } });
  expect(entry.after).toMatchObject({ hunter: { name: 'Bettina Brandt' }, animal: { sex: 'male' } });
  const late = await changeOrder(token, version, formValues);
  expect(late.ok ? '' : late.message).toContain('Ruth did');
  expect((await findOrders(counter, { text: 'bettina' })).total).toBe(1);
});

test('an order saved as it was opened stays as it is, to the gram', async () => {
  const form = orderForm();
  const { token, number } = await place({
    animal: { ...form.animal, weight: '133.37 lb', weightBasis: 'live' },
    lines: [line('loin', 'medallions', '2.25')],
    products: { ...blankOrderForm('').products, 'fresh-sausage': '3 lb 5 oz' },
    mince: { addedFat: 'pork', fatPercent: '0', pack: '454', shape: 'bulk' },
  });
  const before = await open(number);
  expect(await changeOrder(token, before.version, before.formValues)).toEqual({ ok: true, isChanged: false });
  const after = await open(number);
  expect(after.instructions).toEqual(before.instructions);
  expect(after.animal).toEqual(before.animal);
  expect(after).toMatchObject({ version: before.version, instructionVersion: 1 });
  expect(await actionsOf(number)).toEqual(['order-placed']);
});

test('a change that alters nothing is told so, also after receiving, and makes no version', async () => {
  const { token, number } = await place({ lines: [line('loin', 'medallions', '2.25')] });
  await receive(number);
  const before = await open(number);
  const asked = { ...before.formValues, animal: { ...before.formValues.animal, sex: 'male' as const } };
  expect(await changeInstructions(counter, number, before.version, asked, 'called')).toEqual({ ok: true, isChanged: false });
  expect(await changeOrder(token, before.version, before.formValues)).toEqual({ ok: true, isChanged: false });
  expect(await open(number)).toMatchObject({ version: before.version, instructionVersion: 1, versions: before.versions });
});

test('a new stop is refused, and what stood stays', async () => {
  const { token, number } = await place();
  const { version, formValues } = await open(number);
  const refused = await changeOrder(token, version, { ...formValues, lines: [line('loin', 'chops', '90')] });
  expect(refused.ok ? '' : refused.message).toContain('You asked for 90.0 lb of backstrap bone-in chops');
  expect(await open(number)).toMatchObject({ version: 1, instructionVersion: 1 });
});

test('once the knife has started nothing is changed any more', async () => {
  const { token, number } = await place();
  await receive(number);
  expect(await takeStep(counter, number, await versionOf(number), 'start-cutting')).toEqual({ ok: true });
  const { version, formValues } = await open(number);
  for (const done of [
    await changeOrder(token, version, { ...formValues, rest: 'stew' }),
    await changeInstructions(owner, number, version, { ...formValues, rest: 'stew' }, 'called'),
  ]) {
    expect(done.ok ? '' : done.message).toContain('This animal is on the bench: the knife has started');
  }
  expect((await readHunterOrder(token))?.isChangeable).toBe(false);
  expect((await open(number)).instructionVersion).toBe(1);
});

test('a change for a hunter names its reason', async () => {
  const { number } = await place();
  const { version, formValues } = await open(number);
  expect(await changeInstructions(counter, number, version, { ...formValues, rest: 'stew' }, '  ')).toMatchObject({ ok: false, fieldErrors: { reason: expect.any(String) } });
});

test('a booked animal can be cancelled, one that has come cannot', async () => {
  const one = await place();
  expect(await takeStep(counter, one.number, 1, 'cancel')).toEqual({ ok: true });
  expect((await open(one.number)).state).toBe('cancelled');
  const two = await place();
  await receive(two.number);
  expect(await takeStep(counter, two.number, await versionOf(two.number), 'cancel')).toMatchObject({ ok: false });
});
