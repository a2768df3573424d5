import { blankOrderForm } from '@/lib/forms';
import { expect, test } from 'vitest';
import { database, withTransaction } from '@/lib/db/client';
import { atMoment } from '@/lib/db/clock';
import { insertInvoice } from '@/lib/db/invoices';
import { nextInCounter } from '@/lib/db/orders';
import { hunterInvoice, readHunterOrder } from '@/lib/workflows/hunter-orders';
import { issueInvoice, takePayment } from '@/lib/workflows/bill-order';
import { handOver } from '@/lib/workflows/hand-over';
import { savePacking } from '@/lib/workflows/pack-order';
import { invoicePapers } from '@/lib/workflows/print-papers';
import { recordHanging } from '@/lib/workflows/receive-animal';
import { currentShop, saveShopSettings } from '@/lib/workflows/shop-settings';
import { takeStep } from '@/lib/workflows/take-step';
import { saveTariff, readTariff } from '@/lib/workflows/prices';
import { actionsOf, counter, cutter, forecastWeights, invoiced, line, noon, open, owner, packed, place, receive, useShop, versionOf } from './shop-at-work';

useShop();

const payment = (amount: string, formKey: string, method = 'cash'): [string, string][] => [['amount', amount], ['method', method], ['formKey', formKey]];
const right: [string, string] = ['weightsAreRight', 'on'];
const weighed = (lineKey: string, weight: string): [string, string][] => [[`weight.${lineKey}`, weight], [`packages.${lineKey}`, '1']];
const taken: [string, string][] = [['collectedBy', 'Bo Brandt'], ['boxes', '2'], ['tagReturned', 'on']];
const sausage = { lines: [line('loin', 'medallions')], products: { ...blankOrderForm('').products, 'fresh-sausage': '5' }, keep: { heart: true, liver: false, bones: false, antlers: 'none', cape: false, hide: false, taxidermist: '' } };

async function ledger(number: string): Promise<{ totalMinor: number; paidMinor: number; dueMinor: number }> {
  const { invoice } = await open(number);
  if (!invoice) throw new Error('No invoice');
  return { totalMinor: invoice.totalMinor, paidMinor: invoice.paidMinor, dueMinor: invoice.dueMinor };
}

test('what is packed is weighed out row by row, and may be weighed again until the invoice', async () => {
  const { number } = await packed(sausage);
  expect(await open(number)).toMatchObject({ state: 'packed' });
  expect((await open(number)).weighings.map(({ lineKey }) => lineKey)).toEqual(['line-1', 'pool:mince', 'product:fresh-sausage']);
  expect(await savePacking(cutter, number, await versionOf(number), [...weighed('line-1', '4.5'), ...weighed('keep:heart', '1 lb'), right])).toEqual({ ok: true });
  expect((await open(number)).weighings).toEqual([{ lineKey: 'line-1', grams: 2041, packages: 1 }, { lineKey: 'keep:heart', grams: 454, packages: 1 }]);
  await issueInvoice(counter, number, await versionOf(number));
  expect(await savePacking(cutter, number, await versionOf(number), weighed('line-1', '5'))).toMatchObject({ ok: false, message: 'The invoice has been issued: its weights stand.' });
});

test('weights far off the forecast and rows left empty are asked back once, and saved when they are said to be right', async () => {
  const { number } = await packed(sausage);
  const { weighings } = await open(number);
  const odd = [...weighed('line-1', '20'), ...weighed('product:fresh-sausage', '6.7')];
  const asked = await savePacking(cutter, number, await versionOf(number), odd);
  expect(asked).toMatchObject({ ok: false, fieldErrors: { weightsAreRight: expect.stringMatching(/^Look again: both backstraps 20\.0 lb, about 7\.0 lb was expected; nothing was weighed for ground meat\.$/) } });
  expect((await open(number)).weighings).toEqual(weighings);
  expect(await savePacking(cutter, number, await versionOf(number), [...odd, right])).toEqual({ ok: true });
  expect((await open(number)).weighings.map(({ lineKey }) => lineKey)).toEqual(['line-1', 'product:fresh-sausage']);
});

test('an animal that has not been on the bench is not weighed out, and nothing weighed is nothing saved', async () => {
  const { number } = await place();
  await receive(number);
  expect(await savePacking(cutter, number, await versionOf(number), weighed('pool:mince', '40'))).toMatchObject({ ok: false, message: 'This animal is received; it is weighed out once it has been on the bench.' });
  expect(await savePacking(cutter, number, await versionOf(number), [])).toMatchObject({ ok: false });
  expect(await savePacking(cutter, number, await versionOf(number), [['weight.pool:mince', 'a lot'], ['packages.pool:mince', '1e2']])).toMatchObject({
    ok: false,
    fieldErrors: { 'weight.pool:mince': expect.any(String), 'packages.pool:mince': 'Write how many packages, as a whole number.' },
  });
});

test('an invoice is the sum of its lines and the tax, and its figures are those of its paper', async () => {
  const { token, number } = await invoiced(sausage);
  const invoice = await database().invoice.findFirstOrThrow({ include: { lines: true } });
  const { bill } = await open(number);
  const lines = invoice.lines.reduce((sum, one) => sum + one.amountMinor, 0);
  const taxes = (bill?.taxes ?? []).reduce((sum, tax) => sum + tax.amountMinor, 0);
  expect(taxes).toBeGreaterThan(0);
  expect(invoice.totalMinor).toBe(lines + taxes);
  const papers = await invoicePapers(owner, number);
  expect(papers).toMatchObject({ dueMinor: invoice.totalMinor, payments: [], document: { title: 'Invoice 2026-0001', hunter: 'Bo Brandt' } });
  expect(papers?.document.total).toBe(papers?.due);
  expect(await hunterInvoice(token)).toEqual(papers);
  expect((await readHunterOrder(token))?.invoice).toMatchObject({ title: 'Invoice 2026-0001', isPaid: false });
});

test('an issued invoice never changes, whatever becomes of the prices', async () => {
  const { number } = await invoiced();
  const before = await invoicePapers(owner, number);
  const { tariff, versionId } = await readTariff(owner);
  expect(await saveTariff(owner, versionId, { ...tariff, perPiece: tariff.perPiece.map((extra) => ({ ...extra, eachMinor: 99_00 })) })).toEqual({ ok: true });
  expect(await invoicePapers(owner, number)).toEqual(before);
  await expect(database().invoice.updateMany({ data: { totalMinor: 1 } })).rejects.toMatchObject({ code: 'P2003' });
  await expect(database().invoiceLine.deleteMany()).rejects.toMatchObject({ code: 'P2003' });
  expect(await issueInvoice(counter, number, await versionOf(number))).toMatchObject({ ok: false, message: 'The invoice has been issued already.' });
});

test('an order keeps the price list it was booked under', async () => {
  const { number } = await packed();
  const { bill } = await open(number);
  const { tariff, versionId } = await readTariff(owner);
  await saveTariff(owner, versionId, { ...tariff, perPiece: tariff.perPiece.map((extra) => ({ ...extra, eachMinor: 99_00 })) });
  expect((await open(number)).bill).toEqual(bill);
});

test('an animal that is not packed gets no invoice', async () => {
  const { number } = await place();
  expect(await issueInvoice(counter, number, 1)).toMatchObject({ ok: false, message: 'This animal is booked; the invoice follows once it is packed and weighed.' });
  expect(await database().counter.count({ where: { name: { startsWith: 'invoice' } } })).toBe(0);
});

test('eight who issue at once leave no gap between numbers, nor does one that fails halfway', async () => {
  const orders: { number: string }[] = [];
  for (let at = 0; at < 8; at += 1) orders.push(await packed());
  const failing = withTransaction(async (transaction) => {
    const order = await transaction.order.findFirstOrThrow({ where: { number: orders[0]?.number ?? '' } });
    const number = await nextInCounter(transaction, 'invoice:2026');
    await insertInvoice(transaction, { series: '2026', number, orderId: order.id, document: {}, currency: 'USD', totalMinor: 1, lines: [], by: 'Ada' });
    throw new Error('the power went');
  });
  const versions = await Promise.all(orders.map(({ number }) => versionOf(number)));
  const issued = orders.map(({ number }, at) => atMoment(noon, () => issueInvoice(counter, number, versions[at] ?? 0)));
  // Every one of them pressed twice.
  const pressedAgain = orders.map(({ number }, at) => atMoment(noon, () => issueInvoice(owner, number, versions[at] ?? 0)));
  await expect(failing).rejects.toThrow('the power went');
  const done = await Promise.all([...issued, ...pressedAgain]);
  expect(done.filter((one) => one.ok)).toHaveLength(8);
  const numbers = await database().invoice.findMany({ orderBy: { number: 'asc' }, select: { number: true, series: true } });
  expect(numbers).toEqual(Array.from({ length: 8 }, (_, at) => ({ number: at + 1, series: '2026' })));
  expect(await database().counter.findUniqueOrThrow({ where: { name: 'invoice:2026' } })).toMatchObject({ value: 8 });
});

test('the series is the year in the shop, not in Greenwich', async () => {
  const { number } = await packed();
  const newYearsEve = new Date('2027-01-01T02:00:00Z');
  await atMoment(newYearsEve, async () => issueInvoice(counter, number, await versionOf(number)));
  expect(await database().invoice.findFirst()).toMatchObject({ series: '2026', number: 1, issuedAt: newYearsEve });
});

test('a part payment leaves the rest due, and the sum of all is the total', async () => {
  const { number } = await invoiced();
  const { totalMinor } = await ledger(number);
  expect(await takePayment(counter, number, payment('50', 'till-key-1'))).toEqual({ ok: true });
  expect(await ledger(number)).toEqual({ totalMinor, paidMinor: 5_000, dueMinor: totalMinor - 5_000 });
  expect(await takePayment(counter, number, payment(((totalMinor - 5_000) / 100).toFixed(2), 'till-key-2', 'card'))).toEqual({ ok: true });
  expect(await ledger(number)).toEqual({ totalMinor, paidMinor: totalMinor, dueMinor: 0 });
  expect(await takePayment(counter, number, payment('1', 'till-key-3'))).toMatchObject({ ok: false, message: 'This invoice is paid already.' });
  expect((await actionsOf(number)).slice(-2)).toEqual(['payment-taken', 'payment-taken']);
});

test('no more is taken than is due, even by two tills at once', async () => {
  const { number } = await invoiced();
  const { totalMinor } = await ledger(number);
  const over = await takePayment(counter, number, payment(((totalMinor + 1) / 100).toFixed(2), 'till-key-1'));
  expect(over).toMatchObject({ ok: false, fieldErrors: { amount: expect.stringContaining('more than is due') } });
  const whole = (totalMinor / 100).toFixed(2);
  const tills = await Promise.all([takePayment(counter, number, payment(whole, 'till-key-2')), takePayment(owner, number, payment(whole, 'till-key-3'))]);
  expect(tills.filter((one) => one.ok)).toHaveLength(1);
  expect(await ledger(number)).toMatchObject({ paidMinor: totalMinor, dueMinor: 0 });
});

test('the same payment form sent again is one payment, and answers the same, even when it paid all', async () => {
  const { number } = await invoiced();
  const whole = ((await ledger(number)).totalMinor / 100).toFixed(2);
  const sent = await Promise.all([1, 2, 3].map(() => takePayment(counter, number, payment(whole, 'till-key-1'))));
  expect([...sent, await takePayment(counter, number, payment(whole, 'till-key-1'))]).toEqual([1, 2, 3, 4].map(() => ({ ok: true })));
  expect(await database().payment.count()).toBe(1);
});

test('a payment form sent again with another amount, or for another animal, is refused', async () => {
  const [one, two] = [await invoiced(), await invoiced()];
  await takePayment(counter, one.number, payment('20', 'till-key-1'));
  expect(await takePayment(counter, one.number, payment('30', 'till-key-1'))).toMatchObject({ ok: false });
  expect(await takePayment(counter, two.number, payment('20', 'till-key-1'))).toMatchObject({ ok: false });
  expect(await database().payment.findMany()).toMatchObject([{ amountMinor: 2_000 }]);
});

test('nothing is paid before there is an invoice', async () => {
  const { number } = await packed();
  expect(await takePayment(counter, number, payment('20', 'till-key-1'))).toMatchObject({ ok: false, message: 'There is no invoice yet. Issue it first.' });
});

test('an animal is handed over once it is paid, with its tag, and only once', async () => {
  const { number } = await invoiced();
  const { totalMinor } = await ledger(number);
  expect(await handOver(counter, number, await versionOf(number), taken)).toMatchObject({ ok: false, message: expect.stringMatching(/^\$\d+\.\d\d is still due/) });
  await takePayment(counter, number, payment((totalMinor / 100).toFixed(2), 'till-key-1'));
  expect(await handOver(counter, number, await versionOf(number), taken.slice(0, 2))).toMatchObject({ ok: false, fieldErrors: { tagReturned: expect.any(String) } });
  const version = await versionOf(number);
  const done = await Promise.all([handOver(counter, number, version, taken), handOver(owner, number, version, taken)]);
  expect(done.filter((one) => one.ok)).toHaveLength(1);
  expect(await open(number)).toMatchObject({ state: 'collected', steps: [], handover: { collectedBy: 'Bo Brandt' } });
  expect(await database().handover.findMany()).toMatchObject([{ boxes: 2, tagReturned: true }]);
});

test('an animal that is not ready is not handed over, paid or not', async () => {
  const { number } = await packed();
  expect(await handOver(counter, number, await versionOf(number), taken)).toMatchObject({ ok: false, message: 'This animal is packed; it is handed over once it is ready.' });
});

test('the whole way is in the record, in its order, and steps cannot be jumped', async () => {
  const { number } = await invoiced();
  expect(await actionsOf(number)).toEqual(['order-placed', 'animal-received', 'weighed-hanging', 'start-cutting', 'packed', 'invoice-issued']);
  for (const step of ['hang', 'hold', 'free', 'start-cutting', 'cancel', 'pack', 'bill', 'receive', 'hand-over'] as const) {
    expect(await takeStep(owner, number, await versionOf(number), step)).toMatchObject({ ok: false });
  }
  expect(await recordHanging(counter, number, await versionOf(number), '90')).toMatchObject({ ok: false });
  expect(await receive(number, { note: 'late' })).toMatchObject({ ok: false });
  expect((await open(number)).state).toBe('ready');
});

test('weighings as forecast bill what the estimate said', async () => {
  const { number } = await place();
  await receive(number);
  await recordHanging(counter, number, await versionOf(number), '96');
  const estimate = (await open(number)).bill;
  await takeStep(cutter, number, await versionOf(number), 'start-cutting');
  await savePacking(cutter, number, await versionOf(number), await forecastWeights(number));
  expect((await open(number)).bill?.totalMinor).toBe(estimate?.totalMinor);
});

test('a cheque is a check in a shop of the United States, to the counter and on the invoice; elsewhere it is a cheque', async () => {
  const { token, number } = await invoiced();
  await takePayment(counter, number, payment('1', 'till-key-1', 'cheque'));
  const labels = async () => [(await open(number)).invoice?.payments[0]?.label, (await hunterInvoice(token))?.payments[0]?.label.split(',')[0]];
  expect(await labels()).toEqual(['check', 'Paid check']);
  const shop = await currentShop();
  if (!shop) throw new Error('No shop');
  expect(await saveShopSettings(owner, { ...shop.settings, nameCountry: 'uk' }, shop.version)).toMatchObject({ ok: true });
  expect(await labels()).toEqual(['cheque', 'Paid cheque']);
});
