import { beforeEach, vi } from 'vitest';
import type { Role, StaffActor } from '@/lib/access';
import { database, withTransaction } from '@/lib/db/client';
import { atMoment } from '@/lib/db/clock';
import { createShop } from '@/lib/db/shop';
import { type ArrivalFormValues, type OrderFormValues, type ShopSettings, blankOrderForm, firstShopSettings } from '@/lib/forms';
import { placeOrder, readHunterOrder } from '@/lib/workflows/hunter-orders';
import { issueInvoice } from '@/lib/workflows/bill-order';
import { savePacking } from '@/lib/workflows/pack-order';
import { type StaffOrder, readOrder } from '@/lib/workflows/read-order';
import { receiveAnimal, recordHanging } from '@/lib/workflows/receive-animal';
import { takeStep } from '@/lib/workflows/take-step';
import { defaultTariff } from '@/seed/default-tariff';
import { usePreparedDatabase } from '../prepared-database';

export const owner = staff('owner', 'Ruth');
export const counter = staff('counter', 'Ilse');
export const cutter = staff('cutter', 'Tomasz');

/** The moment of every test that does not say otherwise: noon of a day in the season. */
export const noon = new Date('2026-11-20T17:00:00Z');

/** Gives each test a shop of its own that weighs in pounds, with one disease zone, and nothing in its book. */
export function useShop(changes: Partial<ShopSettings> = {}): void {
  // A test writes some twenty times to a disk that is made to answer for each.
  vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });
  usePreparedDatabase();
  beforeEach(async () => {
    vi.stubEnv('BETTER_AUTH_SECRET', 'a secret for tests that is long enough');
    const settings: ShopSettings = {
      ...firstShopSettings({ name: 'Test Game', unit: 'lb', currency: 'USD', paper: 'letter', nameCountry: 'us', timeZone: 'America/Detroit' }),
      diseaseZones: ['Osmer County'],
      ...changes,
    };
    await withTransaction((transaction) => createShop(transaction, { settings, tariff: defaultTariff, createdBy: owner.name }));
  });
}

let keys = 0;

/** A form that can be sent: a white-tailed doe, all of it ground. */
export function orderForm(changes: Partial<OrderFormValues> = {}): OrderFormValues {
  keys += 1;
  return {
    ...blankOrderForm(`form-key-${keys}`),
    animal: { speciesId: 'white-tailed-deer', sex: 'female', ageClass: 'adult', weight: '', weightBasis: '', girth: '', takenWhere: 'Varley County', diseaseZone: 'no', form: 'hide-on', filletsOut: false },
    rest: 'mince',
    hunter: { name: 'Bo Brandt', phone: '555 0100', email: '' },
    ...changes,
  };
}

/** One line of the form, as seen fit. */
export function line(target: OrderFormValues['lines'][number]['target'], cut: OrderFormValues['lines'][number]['cut'], asked = '', at = 1): OrderFormValues['lines'][number] {
  return { id: `line-${at}`, target, cut, side: 'both', size: 'fit', pack: 'fit', asked };
}

/** Sends a form at noon and gives its link and number. Throws when it is refused. */
export async function place(changes: Partial<OrderFormValues> = {}): Promise<{ token: string; number: string }> {
  const placed = await atMoment(noon, () => placeOrder(orderForm(changes)));
  if (!placed.ok) throw new Error(JSON.stringify(placed));
  const order = await atMoment(noon, () => readHunterOrder(placed.token));
  return { token: placed.token, number: order?.number ?? '' };
}

/** The counter's form, ready to be saved: 120 lb gutted with the hide on, nothing wrong with it. */
export async function arrivalForm(number: string, changes: Partial<ArrivalFormValues> = {}): Promise<ArrivalFormValues> {
  const { arrivalValues } = await open(number);
  return {
    ...arrivalValues,
    licence: 'L-100',
    tag: `T ${number}`,
    killedOn: '2026-11-19',
    killedWhere: 'Varley County',
    weight: '120',
    weightBasis: 'field-dressed',
    test: 'none',
    ...changes,
  };
}

export async function receive(number: string, changes: Partial<ArrivalFormValues> = {}): ReturnType<typeof receiveAnimal> {
  const values = await arrivalForm(number, changes);
  return atMoment(noon, async () => receiveAnimal(counter, number, await versionOf(number), values));
}

/** The order as the shop sees it. Throws where there is none. */
export async function open(number: string): Promise<StaffOrder> {
  const order = await readOrder(owner, number);
  if (!order) throw new Error(`No order ${number}`);
  return order;
}

export async function versionOf(number: string): Promise<number> {
  return (await open(number)).version;
}

/** What the packing table holds when everything comes out as forecast. */
export async function forecastWeights(number: string): Promise<[string, string][]> {
  const { packRows } = await open(number);
  return packRows.flatMap(({ lineKey, expected }): [string, string][] => [
    [`weight.${lineKey}`, `${expected.likely} g`],
    [`packages.${lineKey}`, '2'],
  ]);
}

/** Takes an order as far as the packing table, weighed out as forecast. */
export async function packed(changes: Partial<OrderFormValues> = {}, arrival: Partial<ArrivalFormValues> = {}): Promise<{ token: string; number: string }> {
  const placed = await place(changes);
  const { number } = placed;
  await allGood(receive(number, arrival));
  await allGood(recordHanging(counter, number, await versionOf(number), '96'));
  await allGood(takeStep(cutter, number, await versionOf(number), 'start-cutting'));
  await allGood(savePacking(cutter, number, await versionOf(number), await forecastWeights(number)));
  return placed;
}

/** Takes an order as far as its invoice. */
export async function invoiced(changes: Partial<OrderFormValues> = {}): Promise<{ token: string; number: string }> {
  const placed = await packed(changes);
  await allGood(issueInvoice(counter, placed.number, await versionOf(placed.number)));
  return placed;
}

/** What was recorded of an order, in its order. */
export async function actionsOf(number: string): Promise<readonly string[]> {
  const entries = await database().auditEntry.findMany({ where: { order: { number } }, orderBy: { id: 'asc' } });
  return entries.map((entry) => entry.action);
}

async function allGood(done: Promise<{ readonly ok: boolean }>): Promise<void> {
  const outcome = await done;
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
}

function staff(role: Role, name: string): StaffActor {
  return { kind: 'staff', id: `${role}-1`, name, role };
}
