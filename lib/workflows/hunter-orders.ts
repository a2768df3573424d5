import { createHash, randomUUID } from 'node:crypto';
import { mayOrder } from '@/lib/auth/order-throttle';
import { makeFormKey, orderLinkFor, orderLinkHash } from '@/lib/auth/order-link';
import { authSecret } from '@/lib/auth/secret';
import { recordAudit } from '@/lib/db/audit';
import { now } from '@/lib/db/clock';
import { database, withTransaction } from '@/lib/db/client';
import { orConflict } from '@/lib/db/conflicts';
import { type StoredOrder, createOrder, listAudit, loadOrder, nextInCounter } from '@/lib/db/orders';
import { readShop } from '@/lib/db/shop';
import { latestTariff } from '@/lib/db/tariffs';
import { type NameBook, type TargetId, nameBook, targetName } from '@/lib/cuts';
import { type PlanView, planView } from '@/lib/documents';
import { type OrderFormShop, type OrderFormValues, type ShopSettings, capital, formValuesOf, parseOrderForm, pricedSpecies } from '@/lib/forms';
import { type ArrivalDetails, type Assessment, animalWords, assessOrder, firstStop, formatOrderNumber, isChangeable, isForHunter, makeOrderNumber, packRows, searchKeyOf, stateWords, timelineWords } from '@/lib/orders';
import type { Tariff } from '@/lib/pricing';
import type { Currency } from '@/lib/units';
import { assessStored } from './assess-stored';
import { type ChangeOutcome, answerWithOption, changeWholeOrder, withWaysOut } from './change-order';
import { type InvoicePapers, invoicePapersOf } from './invoice-papers';
import { type Outcome, type Refusal, refuse, refuseFields } from './outcome';
import { shopView } from './shop-view';
import { type WhereItWent, whereItWent } from './where-it-went';

/** A hunter's link opens for a year and a day after it was made. */
const LINK_DAYS = 366;
/** Numbers start here, so that all have five digits before the check digit. */
const FIRST_NUMBER = 10_000;
const SENT_BEFORE = 'This form was sent already, with other answers. Your order stands as it was first sent; open its link to change it, or start a new order.';

/** What the hunter's pages know of the shop. */
export type HunterShop = OrderFormShop & {
  readonly name: string;
  readonly phone: string;
  readonly address: string;
  readonly questionsContact: string;
  /** Where a target is whose name here means another muscle elsewhere. */
  readonly places: NameBook['targets'];
  readonly currency: Currency;
  readonly tariff: Tariff;
  readonly cookGameTo: ShopSettings['cookGameTo'];
  readonly timeZone: string;
};

/** One order as its hunter sees it. Holds nothing that is the shop's own business. */
export type HunterOrder = {
  readonly number: string;
  readonly numberText: string;
  readonly state: StoredOrder['state'];
  readonly stateWords: string;
  readonly isChangeable: boolean;
  readonly version: number;
  readonly instructionVersion: number;
  readonly animal: StoredOrder['animal'];
  readonly animalWords: string;
  readonly hunterName: string;
  readonly shop: HunterShop;
  readonly assessment: Assessment;
  readonly planView: PlanView;
  readonly went: WhereItWent | null;
  readonly instructions: StoredOrder['instructions'];
  readonly values: OrderFormValues;
  readonly questions: readonly {
    readonly id: number;
    readonly ruleId: string;
    readonly message: string;
    readonly options: readonly { readonly label: string; readonly consequence: string; readonly figure?: { readonly target: TargetId; readonly name: string } | undefined }[];
    readonly answeredAt: Date | null;
    readonly answer: string | null;
  }[];
  readonly hangingGrams: number | null;
  readonly packed: readonly { readonly label: string; readonly grams: number; readonly packages: number }[];
  readonly invoice: { readonly title: string; readonly totalText: string; readonly dueText: string; readonly isPaid: boolean } | null;
  readonly timeline: readonly { readonly at: Date; readonly words: string }[];
};

/** The shop as hunters see it with a fresh key for one form, or null before set-up. */
export async function openOrderForm(): Promise<(HunterShop & { readonly formKey: string }) | null> {
  const shop = await readShop(database());
  return shop ? { ...(await hunterShop(shop.settings)), formKey: makeFormKey() } : null;
}

/**
 * Books an order. The same form sent twice answers with the same link; the same key with other answers is refused.
 * A stop refuses; questions may be sent open. New orders from one network address are counted; null is not counted.
 */
export async function placeOrder(
  values: OrderFormValues,
  address: string | null = null,
): Promise<{ readonly ok: true; readonly token: string } | (Refusal & { readonly values: OrderFormValues })> {
  const shop = await readShop(database());
  if (!shop) return { ...refuse('This shop is not open for orders yet.'), values };
  const view = await shopView(shop.settings);
  const parsed = parseOrderForm(values, view);
  if (!parsed.ok) return { ...refuseFields(parsed.fieldErrors), values };
  const { animal, instructions, hunter, formKey } = parsed.value;
  const link = orderLinkFor(formKey, authSecret());
  const formDigest = createHash('sha256').update(JSON.stringify({ animal, instructions, hunter })).digest('hex');
  // A lost answer is given again before any rule: a zone added since must not refuse what is booked.
  if ((await loadOrder(database(), { formKey }))?.formDigest === formDigest) return { ok: true, token: link.token };
  const stop = firstStop(assessOrder({ stage: 'order', animal, arrival: null, hangingGrams: null, instructions, hunterName: hunter.name }, view).findings);
  if (stop) return { ...refuse(withWaysOut(stop)), values };

  const tariff = await latestTariff(database());
  const at = now();
  const booked = await orConflict(
    () =>
      withTransaction(async (transaction) => {
        // Looked up inside the transaction: a second sending must not use up a number.
        const earlier = await loadOrder(transaction, { formKey });
        if (earlier) return earlier.formDigest === formDigest ? null : SENT_BEFORE;
        const wait = address === null ? null : await mayOrder(transaction, address, at);
        if (wait !== null) return wait;
        const number = makeOrderNumber(FIRST_NUMBER + (await nextInCounter(transaction, 'order')));
        const id = randomUUID();
        await createOrder(transaction, {
          id,
          number,
          hunter,
          searchKey: searchKeyOf({ number, name: hunter.name, phone: hunter.phone, tag: '', licence: '' }),
          animal,
          instructions,
          linkHash: link.hash,
          linkExpiresAt: new Date(at.getTime() + LINK_DAYS * 86_400_000),
          formKey,
          formDigest,
          tariffId: tariff.id,
          by: hunter.name,
        });
        await recordAudit(transaction, { kind: 'hunter', orderId: id }, 'order-placed', { orderId: id, after: { number } });
        return null;
      }),
    { formKey: 'sent-twice' as const },
  );
  if (booked.ok && booked.value !== null) return { ...refuse(booked.value), values };
  return { ok: true, token: link.token };
}

/** The order behind a private link, or null: unknown, expired and mistyped links look the same. */
export async function readHunterOrder(token: string): Promise<HunterOrder | null> {
  const order = await orderByToken(token);
  if (!order) return null;
  const shop = await readShop(database());
  if (!shop) return null;
  const view = await shopView(shop.settings);
  const assessment = assessStored(order, view);
  const weighed = new Map(order.weighings.map((one) => [one.lineKey, one]));
  const papers = invoicePapersOf(order, shop.settings);
  const facts = { ...order.animal, ...(order.arrival ? { sex: order.arrival.sex, ageClass: order.arrival.ageClass } : {}) };
  return {
    number: order.number,
    numberText: formatOrderNumber(order.number),
    state: order.state,
    stateWords: stateWords(order.state),
    isChangeable: isChangeable(order.state),
    version: order.version,
    instructionVersion: order.instructionVersion,
    animal: order.animal,
    animalWords: animalWords(facts, view.species),
    hunterName: order.hunter.name,
    shop: {
      ...(await hunterShop(shop.settings, order.tariff)),
      found: order.arrival ? { arrival: whatWasFound(order.arrival), hangingGrams: order.hangingGrams } : undefined,
    },
    assessment,
    planView: planView(assessment.plan, view),
    went: whereItWent(order, assessment, view),
    instructions: order.instructions,
    values: formValuesOf(order, view),
    questions: order.questions.map(({ id, ruleId, message, options, answeredAt, answer }) => ({
      id,
      ruleId,
      message,
      options: options.map(({ label, consequence, target }) => ({
        label,
        consequence,
        figure: target && { target, name: capital(targetName(target, view.country)) },
      })),
      answeredAt,
      answer,
    })),
    hangingGrams: order.hangingGrams,
    packed: packRows(order.instructions, assessment.plan, view.country).flatMap((row) => {
      const one = weighed.get(row.lineKey);
      return one ? [{ label: row.label, grams: one.grams, packages: one.packages }] : [];
    }),
    invoice: papers
      ? {
          title: papers.document.title,
          totalText: papers.document.total,
          dueText: papers.due,
          isPaid: papers.dueMinor === 0,
        }
      : null,
    timeline: (await listAudit(database(), order.id))
      .filter((entry) => isForHunter(entry.action))
      .map((entry) => ({ at: entry.at, words: timelineWords(entry.action) })),
  };
}

/** Changes an order through its link, until the knife starts. */
export async function changeOrder(token: string, baseVersion: number, values: OrderFormValues): Promise<ChangeOutcome> {
  const order = await orderByToken(token);
  if (!order) return refuse('That link does not open an order.');
  return changeWholeOrder({ kind: 'hunter', orderId: order.id }, { number: order.number }, { baseVersion, values, reason: 'changed by the hunter' });
}

/** Answers a question through the order's link. */
export async function answerQuestion(token: string, questionId: number, optionIndex: number): Promise<Outcome> {
  const order = await orderByToken(token);
  if (!order) return refuse('That link does not open an order.');
  return answerWithOption({ kind: 'hunter', orderId: order.id }, { number: order.number }, { questionId, optionIndex });
}

/** The invoice behind a private link, or null while there is none. */
export async function hunterInvoice(token: string): Promise<InvoicePapers | null> {
  const order = await orderByToken(token);
  const shop = order ? await readShop(database()) : null;
  return order && shop ? invoicePapersOf(order, shop.settings) : null;
}

async function orderByToken(token: string): Promise<StoredOrder | null> {
  const linkHash = orderLinkHash(token);
  return linkHash === null ? null : loadOrder(database(), { linkHash, openAt: now() });
}

/** Of an arrival, what the forecast reads. Papers and the counter's own notes stay in the shop. */
function whatWasFound(arrival: ArrivalDetails): ArrivalDetails {
  return { ...arrival, licence: '', tag: '', sampleNumber: '', note: '' };
}

async function hunterShop(settings: ShopSettings, booked?: Tariff): Promise<HunterShop> {
  const view = await shopView(settings);
  const tariff = booked ?? (await latestTariff(database())).tariff;
  return {
    ...view,
    species: pricedSpecies(tariff, view.species),
    name: settings.name,
    phone: settings.phone,
    address: settings.address,
    questionsContact: settings.questionsContact,
    places: nameBook(settings.nameCountry).targets,
    currency: settings.currency,
    cookGameTo: settings.cookGameTo,
    timeZone: settings.timeZone,
    tariff,
  };
}

