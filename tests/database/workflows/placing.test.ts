import { createHash } from 'node:crypto';
import { expect, test, vi } from 'vitest';
import { database } from '@/lib/db/client';
import { atMoment } from '@/lib/db/clock';
import type { OrderFormValues } from '@/lib/forms';
import { isOrderNumber } from '@/lib/orders';
import { openOrderForm, placeOrder, readHunterOrder } from '@/lib/workflows/hunter-orders';
import { line, noon, orderForm, place, useShop } from './shop-at-work';

useShop();

test('an order sent gets a number with its check digit, version 1 as sent, and one line in the record', async () => {
  const { token, number } = await place();
  expect(isOrderNumber(number)).toBe(true);
  expect(number.slice(0, 5)).toBe('10001');
  const order = await database().order.findUniqueOrThrow({ where: { number }, include: { instructions: true, audit: true } });
  expect(order).toMatchObject({ state: 'booked', version: 1, createdAt: noon });
  expect(order.instructions).toMatchObject([{ number: 1, reason: 'as sent', createdBy: 'Bo Brandt' }]);
  expect(order.audit).toMatchObject([{ action: 'order-placed', actorKind: 'hunter', actorId: order.id, at: noon }]);
  expect((await readHunterOrder(token))?.hunterName).toBe('Bo Brandt');
});

test('of the link only its hash is stored, nowhere its secret', async () => {
  const { token, number } = await place();
  const order = await database().order.findUniqueOrThrow({ where: { number }, include: { instructions: true, audit: true } });
  expect(order.linkHash).toBe(createHash('sha256').update(token).digest('hex'));
  expect(JSON.stringify(order)).not.toContain(token);
});

test('a form sent 50 times at once is one order with one link and one number', async () => {
  const form = orderForm();
  const answers = await Promise.all(Array.from({ length: 50 }, () => placeOrder(form)));
  const tokens = new Set(answers.map((answer) => (answer.ok ? answer.token : answer.message)));
  expect(tokens.size).toBe(1);
  expect(await database().order.count()).toBe(1);
  expect(await database().auditEntry.count()).toBe(1);
  expect(await database().counter.findMany()).toEqual([{ name: 'order', value: 1 }]);
}, 30_000);

test('a form sent again with other answers is refused, and the order stands as it was first sent', async () => {
  const form = orderForm();
  await placeOrder(form);
  const other = { ...form, hunter: { ...form.hunter, name: 'Someone Else' } };
  const again = await placeOrder(other);
  expect(again).toMatchObject({ ok: false, values: other });
  expect(again.ok ? '' : again.message).toContain('sent already, with other answers');
  expect(await database().order.findMany()).toMatchObject([{ hunterName: 'Bo Brandt' }]);
});

test('a stop refuses an order and uses up no number', async () => {
  const stopped = orderForm({ lines: [line('loin', 'chops', '90')] });
  const answer = await placeOrder(stopped);
  expect(answer).toMatchObject({ ok: false, values: stopped });
  expect(answer.ok ? '' : answer.message).toMatch(/^You asked for 90\.0 lb of backstrap bone-in chops; .* Choose one of the ways out/);
  expect(await database().counter.count()).toBe(0);
});

test('an order with a question still open may be sent', async () => {
  const { number } = await place({ rest: 'undecided' });
  expect(await database().order.count({ where: { number } })).toBe(1);
  expect(await database().question.count()).toBe(0);
});

test('what is missing is said at its field', async () => {
  const form = orderForm();
  const answer = await placeOrder({ ...form, animal: { ...form.animal, speciesId: '' }, hunter: { ...form.hunter, phone: 'none' } });
  expect(answer).toMatchObject({
    ok: false,
    message: '2 answers need mending.',
    fieldErrors: { 'animal.speciesId': 'Choose which animal it is.', 'hunter.phone': 'Write a phone number the shop can call, such as 555 010 0147.' },
  });
});

test('numbers have no gaps, refused and repeated sendings among them', async () => {
  const forms = Array.from({ length: 12 }, () => orderForm());
  await Promise.all([...forms, ...forms].map((form) => placeOrder(form)));
  await placeOrder(orderForm({ lines: [line('loin', 'chops', '90')] }));
  await place();
  const numbers = await database().order.findMany({ select: { number: true }, orderBy: { number: 'asc' } });
  expect(numbers.map(({ number }) => Number(number.slice(0, 5)))).toEqual(Array.from({ length: 13 }, (_, at) => 10_001 + at));
}, 30_000);

test('a link opens for a year and a day, and not afterwards', async () => {
  const { token } = await place();
  const after = (days: number) => new Date(noon.getTime() + days * 86_400_000);
  expect(await atMoment(after(365), () => readHunterOrder(token))).not.toBeNull();
  expect(await atMoment(after(366), () => readHunterOrder(token))).toBeNull();
});

test('foreign, mistyped and empty links open nothing', async () => {
  const { token } = await place();
  const other = `${token.startsWith('A') ? 'B' : 'A'}${token.slice(1)}`;
  for (const wrong of [other, '', `${token} `, token.slice(1), '../../etc/passwd', "' OR 1=1 --", 'x'.repeat(10_000)]) {
    expect(await readHunterOrder(wrong)).toBeNull();
  }
});

test('each opened form has a key of its own', async () => {
  const [one, two] = await Promise.all([openOrderForm(), openOrderForm()]);
  expect(one?.formKey).toMatch(/^[A-Za-z0-9_-]{22}$/);
  expect(one?.formKey).not.toBe(two?.formKey);
});

test('marks that turn the direction of writing do not get into the book', async () => {
  const form = orderForm({ hunter: { name: 'Bo \u202Etdnarb\u202C\u0000 Brandt', phone: '555 0100', email: '' }, note: 'Line one\r\nline\u2066 two' });
  const placed = await placeOrder({ ...form, animal: { ...form.animal, takenWhere: 'Varley\u202E County\nand on' } });
  expect(placed.ok).toBe(true);
  const order = await database().order.findFirstOrThrow({ include: { instructions: true } });
  expect(order.hunterName).toBe('Bo tdnarb Brandt');
  expect(order.animal).toMatchObject({ takenWhere: 'Varley County and on' });
  expect(order.instructions[0]?.instructions).toMatchObject({ note: 'Line one\nline two' });
});

test('after twenty new orders of one network address in an hour the next wait, and lose nothing that was typed', async () => {
  vi.spyOn(console, 'warn').mockImplementation(() => {});
  const send = (form: OrderFormValues, address: string | null, minutes = 0) =>
    atMoment(new Date(noon.getTime() + minutes * 60_000), () => placeOrder(form, address));
  const first = orderForm();
  expect((await send(first, '203.0.113.7')).ok).toBe(true);
  for (let more = 0; more < 20; more += 1) {
    // One sent again is not counted, with the same answers or with others.
    expect((await send(first, '203.0.113.7')).ok).toBe(true);
    expect((await send({ ...first, note: 'other' }, '203.0.113.7')).ok).toBe(false);
    expect((await send(orderForm(), '203.0.113.7')).ok).toBe(true);
  }
  const late = orderForm();
  expect(await send(late, '203.0.113.7')).toEqual({
    ok: false,
    message: 'Many orders came from your network just now, so this one was not sent. Everything you filled in is still here. Try again in 30 seconds.',
    fieldErrors: {},
    values: late,
  });
  expect((await send(first, '203.0.113.7')).ok).toBe(true);
  expect(await database().order.count()).toBe(21);
  expect((await send(orderForm(), '203.0.113.8')).ok).toBe(true);
  expect((await send(orderForm(), null)).ok).toBe(true);
  expect((await send(late, '203.0.113.7', 1)).ok).toBe(true);
  expect((await send(orderForm(), '203.0.113.7', 1)).ok).toBe(false);
});

test('an address that orders all day starts anew with each hour', async () => {
  for (let hour = 0; hour < 3; hour += 1) {
    for (let minute = 0; minute < 60; minute += 3) {
      const at = new Date(noon.getTime() + (hour * 60 + minute) * 60_000);
      expect((await atMoment(at, () => placeOrder(orderForm(), '203.0.113.7'))).ok).toBe(true);
    }
  }
});
