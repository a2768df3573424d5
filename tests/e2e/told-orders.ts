import { makeFormKey } from '@/lib/auth/order-link';
import { type OrderFormValues, arrivalValuesOf, blankOrderForm } from '@/lib/forms';
import type { StaffActor } from '@/lib/access';
import { placeOrder, readHunterOrder } from '@/lib/workflows/hunter-orders';
import { issueInvoice } from '@/lib/workflows/bill-order';
import { savePacking } from '@/lib/workflows/pack-order';
import { readOrder } from '@/lib/workflows/read-order';
import { receiveAnimal, recordHanging } from '@/lib/workflows/receive-animal';
import { takeStep } from '@/lib/workflows/take-step';

/** An order that is there already when a journey begins. */
export type ToldOrder = { readonly number: string; readonly token: string };

/** A buck whose hunter wants backstrap steaks, one leg on the bone, some sausage, and the rest ground. */
export function buckForm(name: string, changes: (values: OrderFormValues) => void = () => {}): OrderFormValues {
  const values = blankOrderForm(makeFormKey());
  Object.assign(values.animal, {
    speciesId: 'white-tailed-deer',
    sex: 'male',
    ageClass: 'adult',
    weight: '160 lb',
    weightBasis: 'field-dressed',
    takenWhere: 'Alder County',
    diseaseZone: 'no',
    form: 'hide-on',
  });
  values.lines = [
    { id: 'line-1', target: 'loin', side: 'both', cut: 'medallions', size: 't:25', pack: 'n:4', asked: '8.5 lb' },
    { id: 'line-2', target: 'haunch', side: 'left', cut: 'on-the-bone', size: 'fit', pack: 'fit', asked: '' },
    { id: 'line-3', target: 'topside', side: 'right', cut: 'joint', size: 'p:6', pack: 'fit', asked: '' },
  ];
  values.rest = 'mince';
  values.mince = { addedFat: 'pork', fatPercent: '10', pack: '454', shape: 'bulk' };
  values.products['fresh-sausage'] = '4 lb';
  values.keep = { heart: true, liver: false, bones: false, antlers: 'skull-plate', cape: false, hide: false, taxidermist: '' };
  values.hunter = { name, phone: '555 0150', email: '' };
  changes(values);
  return values;
}

/** Places an order as its hunter would. */
export async function told(values: OrderFormValues): Promise<ToldOrder> {
  const placed = await placeOrder(values);
  if (!placed.ok) throw new Error(JSON.stringify(placed));
  const order = await readHunterOrder(placed.token);
  if (!order) throw new Error('The order just placed is not there');
  return { number: order.number, token: placed.token };
}

/** Brings a told order to the bench, or on to its invoice, as the shop would. */
export async function broughtTo(state: 'bench' | 'invoice', { number }: ToldOrder, counter: StaffActor): Promise<void> {
  const version = async (): Promise<number> => (await opened()).version;
  const opened = async () => {
    const order = await readOrder(counter, number);
    if (!order) throw new Error(`No order ${number}`);
    return order;
  };
  const before = await opened();
  const values = {
    ...arrivalValuesOf(before.animal, null, { unit: 'lb', locale: 'en-US' }),
    licence: `L-${number}`,
    tag: `T-${number}`,
    killedOn: '2026-11-20',
    killedWhere: 'Alder County',
    test: 'none',
    weight: '160',
    weightBasis: 'field-dressed',
  };
  done(await receiveAnimal(counter, number, await version(), values));
  done(await recordHanging(counter, number, await version(), '128 lb'));
  done(await takeStep(counter, number, await version(), 'start-cutting'));
  if (state === 'bench') return;
  const rows = (await opened()).packRows;
  const weights = rows.flatMap(({ lineKey, expected }): [string, string][] => [
    [`weight.${lineKey}`, `${(Math.max(expected.likely, 300) / 453.59237).toFixed(2)} lb`],
    [`packages.${lineKey}`, '2'],
  ]);
  done(await savePacking(counter, number, await version(), [...weights, ['weightsAreRight', 'on']]));
  done(await issueInvoice(counter, number, await version()));
}

function done(outcome: { readonly ok: boolean }): void {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome));
}
