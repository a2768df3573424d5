import { expect, test } from 'vitest';
import { AccessRefused, type Permission, type StaffActor, rolesWith } from '@/lib/access';
import { database } from '@/lib/db/client';
import { answerQuestion, changeOrder, hunterInvoice, readHunterOrder } from '@/lib/workflows/hunter-orders';
import { addPerson, givePassword, loadPeople, setPersonDisabled } from '@/lib/workflows/people';
import { readTariff, saveTariff } from '@/lib/workflows/prices';
import { saveLaw, saveShopSettings } from '@/lib/workflows/shop-settings';
import { issueInvoice, takePayment } from '@/lib/workflows/bill-order';
import { answerForHunter, changeInstructions } from '@/lib/workflows/change-for-hunter';
import { findOrders } from '@/lib/workflows/find-orders';
import { handOver } from '@/lib/workflows/hand-over';
import { savePacking } from '@/lib/workflows/pack-order';
import { cuttingSheets, invoicePapers } from '@/lib/workflows/print-papers';
import { readOrder } from '@/lib/workflows/read-order';
import { receiveAnimal, recordHanging } from '@/lib/workflows/receive-animal';
import { takeStep } from '@/lib/workflows/take-step';
import { defaultTariff } from '@/seed/default-tariff';
import { arrivalForm, counter, cutter, invoiced, open, orderForm, owner, place, useShop } from './shop-at-work';

useShop();

const nobody = '999995';
/** Every workflow that takes a member of staff, by name, with the permission it asks for. */
const workflows: Readonly<Record<string, { readonly needs: Permission; readonly run: (actor: StaffActor) => Promise<unknown> }>> = {
  findOrders: { needs: 'order.find', run: (actor) => findOrders(actor, {}) },
  readOrder: { needs: 'order.read', run: (actor) => readOrder(actor, nobody) },
  receiveAnimal: { needs: 'order.receive', run: async (actor) => receiveAnimal(actor, nobody, 1, await arrivalForm((await place()).number)) },
  recordHanging: { needs: 'order.receive', run: (actor) => recordHanging(actor, nobody, 1, '90') },
  hang: { needs: 'order.receive', run: (actor) => takeStep(actor, nobody, 1, 'hang') },
  hold: { needs: 'order.receive', run: (actor) => takeStep(actor, nobody, 1, 'hold') },
  free: { needs: 'order.receive', run: (actor) => takeStep(actor, nobody, 1, 'free') },
  startCutting: { needs: 'bench.start', run: (actor) => takeStep(actor, nobody, 1, 'start-cutting') },
  cancel: { needs: 'order.write', run: (actor) => takeStep(actor, nobody, 1, 'cancel') },
  answerForHunter: { needs: 'order.answer', run: (actor) => answerForHunter(actor, nobody, 1, 0) },
  changeInstructions: { needs: 'order.write', run: (actor) => changeInstructions(actor, nobody, 1, orderForm(), 'called') },
  savePacking: { needs: 'pack.weigh', run: (actor) => savePacking(actor, nobody, 1, []) },
  issueInvoice: { needs: 'invoice.issue', run: (actor) => issueInvoice(actor, nobody, 1) },
  takePayment: { needs: 'payment.take', run: (actor) => takePayment(actor, nobody, []) },
  handOver: { needs: 'order.release', run: (actor) => handOver(actor, nobody, 1, []) },
  cuttingSheets: { needs: 'sheet.print', run: (actor) => cuttingSheets(actor, [nobody]) },
  invoicePapers: { needs: 'prices.read', run: (actor) => invoicePapers(actor, nobody) },
  readTariff: { needs: 'prices.read', run: (actor) => readTariff(actor) },
  saveTariff: { needs: 'prices.write', run: (actor) => saveTariff(actor, 999, defaultTariff) },
  saveShopSettings: { needs: 'shop.settings', run: (actor) => saveShopSettings(actor, {}, 1) },
  saveLaw: { needs: 'shop.settings', run: (actor) => saveLaw(actor, {}, 1) },
  loadPeople: { needs: 'staff.manage', run: (actor) => loadPeople(actor) },
  addPerson: { needs: 'staff.manage', run: (actor) => addPerson(actor, {}) },
  setPersonDisabled: { needs: 'staff.manage', run: (actor) => setPersonDisabled(actor, 'x', true) },
  givePassword: { needs: 'staff.manage', run: (actor) => givePassword(actor, 'x', '') },
};

test.each(Object.entries(workflows))('%s asks for its permission before anything else', async (_, { needs, run }) => {
  for (const actor of [owner, counter, cutter]) {
    const refusal = await run(actor).then(
      () => null,
      (error: unknown) => error,
    );
    if (rolesWith(needs).includes(actor.role)) expect(refusal).toBeNull();
    else expect(refusal).toMatchObject({ name: 'AccessRefused', permission: needs });
  }
});

test('a cutter cannot take in, bill, take money, hand over or read prices', async () => {
  const forbidden = ['receiveAnimal', 'recordHanging', 'issueInvoice', 'takePayment', 'handOver', 'invoicePapers', 'readTariff', 'changeInstructions', 'answerForHunter', 'cancel'];
  for (const name of forbidden) await expect(workflows[name]?.run(cutter)).rejects.toBeInstanceOf(AccessRefused);
});

test('a refused one leaves nothing behind', async () => {
  const { number } = await place();
  const before = await database().auditEntry.count();
  const values = await arrivalForm(number);
  await expect(receiveAnimal(cutter, number, 1, values)).rejects.toBeInstanceOf(AccessRefused);
  await expect(takeStep(cutter, number, 1, 'cancel')).rejects.toBeInstanceOf(AccessRefused);
  expect(await open(number)).toMatchObject({ state: 'booked', version: 1 });
  expect(await database().auditEntry.count()).toBe(before);
});

test('a cutter reads an order without its money', async () => {
  const { number } = await invoiced();
  const seen = await readOrder(cutter, number);
  expect(seen).toMatchObject({ bill: null, invoice: null, state: 'ready' });
  expect(JSON.stringify(seen)).not.toMatch(/Minor|\$\d/);
  expect((await readOrder(counter, number))?.bill).not.toBeNull();
});

test('a link opens its own order and no other, and nothing through it is the shop’s own business', async () => {
  const [mine, other] = [await invoiced({ note: 'mine' }), await invoiced({ note: 'of the other' })];
  const seen = await readHunterOrder(mine.token);
  expect(seen?.number).toBe(mine.number);
  const text = JSON.stringify(seen);
  expect(text).not.toContain(other.number);
  expect(text).not.toContain('of the other');
  for (const inside of ['Ilse', 'Tomasz', 'linkHash', 'formDigest', mine.token]) expect(text).not.toContain(inside);
  expect((await hunterInvoice(mine.token))?.document.order).not.toBe((await hunterInvoice(other.token))?.document.order);
});

test('a link that is none changes and answers nothing', async () => {
  await place();
  for (const token of ['', 'A'.repeat(22), 'not a link']) {
    expect(await changeOrder(token, 1, orderForm())).toMatchObject({ ok: false, message: 'That link does not open an order.' });
    expect(await answerQuestion(token, 1, 0)).toMatchObject({ ok: false, message: 'That link does not open an order.' });
    expect(await hunterInvoice(token)).toBeNull();
  }
});
