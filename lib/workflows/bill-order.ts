import { type StaffActor, requirePermission } from '@/lib/access';
import { recordAudit } from '@/lib/db/audit';
import { now } from '@/lib/db/clock';
import { orConflict } from '@/lib/db/conflicts';
import { insertInvoice, insertPayment } from '@/lib/db/invoices';
import { type StoredOrder, loadOrder, nextInCounter } from '@/lib/db/orders';
import { buildInvoice } from '@/lib/documents';
import { type FormEntries, type OrderFormShop, type ShopSettings, licenceWord, nestEntries, parsePaymentForm, textAt } from '@/lib/forms';
import { type Assessment, addedGramsOf, animalWords, billFacts, canStep, packRows, stateWords, stepFrom } from '@/lib/orders';
import { type Bill, priceOrder } from '@/lib/pricing';
import { formatDay, formatMoney } from '@/lib/units';
import { assessStored } from './assess-stored';
import { changing, orderForChange, refuseStop, refuseWithin, saveChange } from './change-order';
import { dayIn, momentWords } from './clock';
import { invoicePapersOf } from './invoice-papers';
import { type Outcome, refuse, refuseFields } from './outcome';
import { shopSettings } from './shop-settings';
import { shopView } from './shop-view';
import { whereItWent } from './where-it-went';

/** The bill of an order: on its weighings once there are any, on the likely forecast before. */
export function billOf(order: StoredOrder, assessment: Assessment, shop: OrderFormShop): Bill {
  return priceOrder(
    billFacts({
      speciesId: order.animal.speciesId,
      instructions: order.instructions,
      arrival: order.arrival,
      form: order.animal.form,
      hangingGrams: assessment.plan.forecast.hanging.likely,
      rows: packRows(order.instructions, assessment.plan, shop.country),
      weighings: order.weighings.length > 0 ? order.weighings : null,
      level: 'likely',
      payments: order.invoice?.payments ?? [],
    }),
    order.tariff,
  );
}

/** Issues the invoice of a packed animal under the next number of the year's series; it never changes afterwards. A stop refuses. */
export async function issueInvoice(actor: StaffActor, number: string, baseVersion: number): Promise<Outcome> {
  requirePermission(actor, 'invoice.issue');
  const settings = await shopSettings();
  const shop = await shopView(settings);
  const at = now();
  const done = await changing(async (transaction) => {
    const order = await orderForChange(transaction, { number }, baseVersion);
    if (order.invoice) refuseWithin('The invoice has been issued already.');
    if (!canStep(order.state, 'bill')) refuseWithin(`This animal is ${stateWords(order.state)}; the invoice follows once it is packed and weighed.`);
    const assessment = assessStored(order, shop, 'billing');
    refuseStop(assessment, 'The invoice is not issued.');
    const bill = billOf(order, assessment, shop);
    const [unpriced] = bill.unpriced;
    if (unpriced) refuseWithin(`The price list has no price for ${unpriced.id}. Add it under Prices, then issue the invoice.`);
    const series = dayIn(settings.timeZone, at).slice(0, 4);
    const invoiceNumber = await nextInCounter(transaction, `invoice:${series}`);
    const title = `Invoice ${series}-${String(invoiceNumber).padStart(4, '0')}`;
    await insertInvoice(transaction, {
      series,
      number: invoiceNumber,
      orderId: order.id,
      document: documentOf(order, { settings, shop, assessment, bill, title, issued: momentWords(at, settings) }),
      currency: bill.currency,
      totalMinor: bill.totalMinor,
      lines: bill.lines,
      by: actor.name,
    });
    await saveChange(transaction, order, { state: stepFrom(order.state, 'bill'), readyAt: at });
    await recordAudit(transaction, actor, 'invoice-issued', { orderId: order.id, after: { title, totalMinor: bill.totalMinor } });
  });
  return done.ok ? { ok: true } : done;
}

function documentOf(
  order: StoredOrder,
  made: {
    readonly settings: ShopSettings;
    readonly shop: OrderFormShop;
    readonly assessment: Assessment;
    readonly bill: Bill;
    readonly title: string;
    readonly issued: string;
  },
): ReturnType<typeof buildInvoice> {
  const { settings, shop, assessment, bill } = made;
  const rows = packRows(order.instructions, assessment.plan, shop.country);
  const weighed = new Map(order.weighings.map((one) => [one.lineKey, one]));
  const packed = rows.flatMap((row) => {
    const one = weighed.get(row.lineKey);
    return one ? [{ label: row.label, grams: one.grams, packages: one.packages, row }] : [];
  });
  return buildInvoice({
    title: made.title,
    isEstimate: false,
    issued: made.issued,
    shop: { name: settings.name, address: settings.address, phone: settings.phone, unit: shop.unit, locale: shop.locale, cookGameTo: settings.cookGameTo, storageCaution: settings.storageCaution },
    number: order.number,
    hunter: order.hunter.name,
    animal: animalWords({ ...order.animal, ...(order.arrival && { sex: order.arrival.sex, ageClass: order.arrival.ageClass }) }, shop.species),
    origin: order.arrival ? `Tag ${order.arrival.tag}, ${licenceWord(shop.country)} ${order.arrival.licence}, killed ${formatDay(order.arrival.killedOn, shop.locale)}, ${order.arrival.killedWhere}` : '',
    bill,
    packed,
    plan: assessment.plan,
    went: whereItWent(order, assessment, shop),
    addedGrams: packed.reduce((sum, { row, grams }) => sum + addedGramsOf(row, grams), 0),
  });
}

/**
 * Records money received towards an invoice. The same payment form sent twice is one payment and answers the same; with
 * another amount, or for another animal, it is refused.
 */
export async function takePayment(actor: StaffActor, number: string, entries: FormEntries): Promise<Outcome> {
  requirePermission(actor, 'payment.take');
  const settings = await shopSettings();
  const fields = [...entries];
  const formKey = textAt(nestEntries(fields), 'formKey');
  const paid = await orConflict(
    () =>
      changing(async (transaction) => {
        const order = (await loadOrder(transaction, { number })) ?? refuseWithin('That order is not here any more.');
        const papers = invoicePapersOf(order, settings);
        if (!order.invoice || !papers) return refuseWithin('There is no invoice yet. Issue it first.');
        const earlier = order.invoice.payments.find((payment) => payment.formKey === formKey);
        const dueMinor = papers.dueMinor + (earlier?.amountMinor ?? 0);
        if (dueMinor === 0) return refuseWithin('This invoice is paid already.');
        const parsed = parsePaymentForm(fields, { currency: order.tariff.currency, locale: settings.locale, dueMinor });
        if (!parsed.ok) return parsed.fieldErrors;
        if (earlier) {
          const isSame = earlier.amountMinor === parsed.value.amountMinor && earlier.method === parsed.value.method;
          return isSame ? null : refuseWithin('This payment was taken already, with other figures. It stands as it was first sent; load the page again for a further one.');
        }
        await insertPayment(transaction, { invoiceId: order.invoice.id, ...parsed.value, by: actor.name });
        await saveChange(transaction, order);
        await recordAudit(transaction, actor, 'payment-taken', {
          orderId: order.id,
          after: { amount: formatMoney(parsed.value.amountMinor, order.tariff.currency, settings.locale), method: parsed.value.method },
        });
        return null;
      }),
    { formKey: 'of-another-animal' as const },
  );
  if (!paid.ok) return refuse('This page was used already for another animal. Load it again, then take the payment.');
  if (!paid.value.ok) return paid.value;
  return paid.value.value ? refuseFields(paid.value.value) : { ok: true };
}
