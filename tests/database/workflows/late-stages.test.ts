import { expect, test, vi } from 'vitest';
import { database } from '@/lib/db/client';
import { blankOrderForm, findingsOf, storedArrival } from '@/lib/forms';
import { ORDER_STATES } from '@/lib/orders';
import type { FindingPlace, Rule, TestState } from '@/lib/rules';
import { stageOf } from '@/lib/workflows/assess-stored';
import { issueInvoice, takePayment } from '@/lib/workflows/bill-order';
import { handOver } from '@/lib/workflows/hand-over';
import { savePacking } from '@/lib/workflows/pack-order';
import { readHunterOrder } from '@/lib/workflows/hunter-orders';
import { readOrder } from '@/lib/workflows/read-order';
import { counter, cutter, invoiced, line, open, owner, packed, place, receive, useShop, versionOf } from './shop-at-work';

// Rules of these tests alone, so that each late stage has one that speaks.
vi.mock('@/lib/rules/registry', async (original) => {
  const { RULES } = await original<typeof import('@/lib/rules/registry')>();
  const { defineRule } = await import('@/lib/rules/rule');
  const made = { title: 'Made up', ground: 'trade', whom: 'shop', place: (): FindingPlace => ({ kind: 'field', field: 'animal' }), part: () => null, noSuggestionBecause: 'It is made up.' } as const;
  const note = defineRule<string>({ ...made, id: 'packed-note', severity: 'note', stages: ['packing'], check: () => ['all'], keyOf: (one) => one, message: () => 'It is packed.' });
  const noBill = defineRule<string>({
    ...made,
    id: 'no-bill',
    severity: 'stop',
    stages: ['billing'],
    check: ({ circumstances: { hunterName } }) => (hunterName === 'Nobody' ? [hunterName] : []),
    keyOf: (name) => name,
    message: (name) => `${name} is sent no bill.`,
  });
  return { RULES: [...RULES, note, noBill] satisfies readonly Rule[] };
});

useShop();

const sausage = { lines: [line('loin', 'medallions')], products: { ...blankOrderForm('').products, 'fresh-sausage': '5' } };
const weighed = (lineKey: string, weight: string): [string, string][] => [[`weight.${lineKey}`, weight], [`packages.${lineKey}`, '1']];
const right: [string, string] = ['weightsAreRight', 'on'];
const taken: [string, string][] = [['collectedBy', 'Bo Brandt'], ['boxes', '2'], ['tagReturned', 'on']];

async function paid(): Promise<string> {
  const { number } = await invoiced();
  const due = ((await open(number)).invoice?.dueMinor ?? 0) / 100;
  expect(await takePayment(counter, number, [['amount', due.toFixed(2)], ['method', 'cash'], ['formKey', 'till-key-1']])).toEqual({ ok: true });
  return number;
}

/** The laboratory answers after the knife. */
async function resultIs(number: string, result: TestState): Promise<void> {
  const { arrival } = await open(number);
  const details = storedArrival.parse({ ...arrival, test: result });
  await database().arrival.updateMany({ where: { order: { number } }, data: { details } });
}

test('an order is asked about at the stage of what comes next', async () => {
  const { number } = await packed();
  const { arrival } = await open(number);
  const stages = ORDER_STATES.map((state) => [state, stageOf({ state, arrival: state === 'booked' || state === 'cancelled' ? null : arrival })]);
  expect(Object.fromEntries(stages)).toEqual({
    booked: 'order', cancelled: 'order', received: 'receiving', hanging: 'receiving', 'on-hold': 'receiving', 'on-the-bench': 'cutting', packed: 'packing', ready: 'release', collected: 'release',
  });
  // While it is taken in, it has come and is still booked.
  expect(stageOf({ state: 'booked', arrival })).toBe('receiving');
});

test('what is for the shop to settle is not asked of the hunter, on their form neither, and stands on the order once', async () => {
  const { token, number } = await place();
  expect(await receive(number, { killedBy: 'Tom Ash' })).toEqual({ ok: true, openQuestions: 0 });
  const order = await open(number);
  expect(order.assessment.findings.filter(({ ruleId }) => ruleId === 'somebody-elses-animal')).toMatchObject([{ whom: 'shop', severity: 'ask' }]);
  expect(order.questions).toEqual([]);
  const hunters = await readHunterOrder(token);
  if (!hunters) throw new Error('No order');
  expect(findingsOf(hunters.values, hunters.shop)).toEqual([]);
});

test('weights against which a stop stands are not saved, said to be right or not; its sentence is told once', async () => {
  const { number } = await packed(sausage);
  const before = (await open(number)).weighings;
  const refused = await savePacking(cutter, number, await versionOf(number), [...weighed('line-1', '50'), ...weighed('pool:mince', '46.5'), right]);
  expect(refused).toEqual({ ok: false, message: 'The weights are not saved. 96.5 lb of its own meat is packed, 0.50 lb more than the 96.0 lb that hung: look for a wrong lug, or weigh again.', fieldErrors: {} });
  expect((await open(number)).weighings).toEqual(before);
  // Of the sausage a quarter is pork, which never hung.
  expect(await savePacking(cutter, number, await versionOf(number), [...weighed('line-1', '74'), ...weighed('product:fresh-sausage', '7'), right])).toEqual({ ok: true });
});

test('what is worth knowing of the packing is saved and shown, for the shop', async () => {
  const { number } = await packed();
  expect((await open(number)).assessment.findings).toMatchObject([{ ruleId: 'packed-note', whom: 'shop' }]);
});

test('a stop before the bill refuses the invoice, and takes no number', async () => {
  const { number } = await packed({ hunter: { name: 'Nobody', phone: '555 0100', email: '' } });
  expect((await readOrder(owner, number, 'billing'))?.assessment.findings).toMatchObject([{ ruleId: 'no-bill' }]);
  expect(await issueInvoice(counter, number, await versionOf(number))).toMatchObject({ ok: false, message: 'The invoice is not issued. Nobody is sent no bill.' });
  expect(await open(number)).toMatchObject({ state: 'packed', invoice: null });
  expect(await database().counter.count({ where: { name: { startsWith: 'invoice' } } })).toBe(0);
});

test.each([
  ['pending', 'It is not handed over. The disease test of this animal is not back, so its meat stays here until it is.'],
  ['positive', 'It is not handed over. The disease test of this animal came back positive, so its meat is not handed over; the local authority says what becomes of it.'],
] as const)('an animal whose test is %s is not handed over, and is once it is negative', async (result, message) => {
  const number = await paid();
  await resultIs(number, result);
  expect((await open(number)).assessment.findings).toMatchObject([{ ruleId: 'wait-for-test-result', whom: 'shop', severity: 'stop' }]);
  expect(await handOver(counter, number, await versionOf(number), taken)).toMatchObject({ ok: false, message });
  expect((await open(number)).state).toBe('ready');
  await resultIs(number, 'negative');
  expect(await handOver(counter, number, await versionOf(number), taken)).toEqual({ ok: true });
  expect((await open(number)).state).toBe('collected');
});
