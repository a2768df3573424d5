import { type StaffActor, can, requirePermission } from '@/lib/access';
import { recordAudit } from '@/lib/db/audit';
import { now } from '@/lib/db/clock';
import { database } from '@/lib/db/client';
import { type StoredOrder, countByState, hasSameTag, listAudit, listOrders, loadOrder, replaceWeighings, saveArrival, saveHandover } from '@/lib/db/orders';
import { type CuttingSheet, type PlanView, buildCuttingSheet, planView } from '@/lib/documents';
import {
  type ArrivalFormValues,
  type FormEntries,
  type OrderFormValues,
  type ShopSettings,
  arrivalValuesOf,
  formValuesOf,
  parseArrivalForm,
  parseHandoverForm,
  parsePackForm,
} from '@/lib/forms';
import {
  type ArrivalDetails,
  type Assessment,
  type OrderState,
  type OrderStep,
  type PackRow,
  animalWords,
  assessOrder,
  canStep,
  formatOrderNumber,
  isFromZone,
  packRows,
  parseOrderNumber,
  parseScanCode,
  searchKeyOf,
  searchTerms,
  stateWords,
  stepFrom,
  stepsFrom,
  tagKey,
  timelineWords,
} from '@/lib/orders';
import type { Bill } from '@/lib/pricing';
import { formatWeight, parseWeight } from '@/lib/units';
import { assessStored, settleQuestions } from './assess-stored';
import { billOf } from './bill-order';
import { answerWithOption, changeWholeOrder, changing, orderForChange, refuseFieldsWithin, refuseWithin, saveChange } from './change-order';
import { dayIn, momentWords } from './clock';
import { type InvoicePapers, invoicePapersOf, paidMinor } from './invoice-papers';
import { type Outcome, refuse, refuseFields } from './outcome';
import { shopSettings } from './shop-settings';
import { shopView } from './shop-view';

const PAGE_SIZE = 50;
const OPEN_STATES: readonly OrderState[] = ['booked', 'received', 'hanging', 'on-hold', 'on-the-bench', 'packed', 'ready'];

export type FoundOrder = {
  readonly number: string;
  readonly numberText: string;
  readonly hunterName: string;
  readonly animalWords: string;
  readonly state: OrderState;
  readonly stateWords: string;
  readonly createdAt: Date;
  readonly openQuestions: number;
  readonly weightText: string;
};

export type FoundOrders = {
  /** The one order meant by a number or a scanned code. */
  readonly exact: string | null;
  /** Set when a scanned sheet is older than the instructions. */
  readonly staleSheet: { readonly printed: number; readonly now: number } | null;
  readonly message: string | null;
  readonly rows: readonly FoundOrder[];
  readonly total: number;
  readonly pages: number;
  readonly counts: Readonly<Record<OrderState, number>>;
};

/** Finds orders by number, scanned code, name, phone or tag, or lists those in a state. 50 to a page. */
export async function findOrders(
  actor: StaffActor,
  query: { readonly text?: string; readonly state?: OrderState | 'open'; readonly page?: number },
): Promise<FoundOrders> {
  requirePermission(actor, 'order.find');
  const text = (query.text ?? '').trim();
  const settings = await shopSettings();
  const meant = text === '' ? null : await orderMeant(text);
  const page = Math.max(1, Math.min(10_000, Math.trunc(query.page ?? 1) || 1));
  const terms = searchTerms(text);
  // A search of which nothing is left to look for finds nobody, not everybody.
  const searched = terms.length > 0 ? null : [];
  const states = text !== '' ? searched : query.state === undefined || query.state === 'open' ? OPEN_STATES : [query.state];
  const newestFirst = text !== '' || query.state === 'collected' || query.state === 'cancelled';
  const [{ rows, total }, counts] = await Promise.all([
    listOrders(database(), { terms, states, newestFirst, skip: (page - 1) * PAGE_SIZE, take: PAGE_SIZE }),
    countByState(database()),
  ]);
  return {
    exact: meant?.number ?? null,
    staleSheet: meant?.staleSheet ?? null,
    // Digits that are no number of ours may well be a telephone.
    message: total > 0 ? null : (meant?.message ?? null),
    total,
    pages: Math.max(1, Math.ceil(total / PAGE_SIZE)),
    counts,
    rows: rows.map((row) => {
      const grams = row.hangingGrams ?? row.arrival?.weight.grams ?? row.animal.weight?.grams ?? null;
      return {
        number: row.number,
        numberText: formatOrderNumber(row.number),
        hunterName: row.hunterName,
        animalWords: animalWords({ ...row.animal, ...(row.arrival && { sex: row.arrival.sex, ageClass: row.arrival.ageClass }) }),
        state: row.state,
        stateWords: stateWords(row.state),
        createdAt: row.createdAt,
        openQuestions: row.openQuestions,
        weightText: grams === null ? '' : formatWeight(grams, settings.unit, settings.locale),
      };
    }),
  };
}

/** The order a number or a scanned code stands for; a sentence where the digits do not add up or nothing has that number. */
async function orderMeant(text: string): Promise<{ number: string | null; staleSheet: FoundOrders['staleSheet']; message: string | null }> {
  const looksLikeNumber = /^#?[\d\s-]{6,8}(v\d{1,3})?$/i.test(text);
  if (!looksLikeNumber) return { number: null, staleSheet: null, message: null };
  const parsed = parseOrderNumber(text);
  if (!parsed.ok) return { number: null, staleSheet: null, message: parsed.message };
  const order = await loadOrder(database(), { number: parsed.value });
  if (!order) return { number: null, staleSheet: null, message: `No animal here has the number ${formatOrderNumber(parsed.value)}.` };
  const scanned = parseScanCode(text);
  const isStale = scanned.ok && scanned.value.sheetVersion < order.instructionVersion;
  return {
    number: order.number,
    staleSheet: isStale ? { printed: scanned.value.sheetVersion, now: order.instructionVersion } : null,
    message: null,
  };
}

/** One order as the shop sees it. */
export type StaffOrder = {
  readonly number: string;
  readonly numberText: string;
  readonly version: number;
  readonly state: OrderState;
  readonly stateWords: string;
  /** Steps that may be taken from here. */
  readonly steps: readonly OrderStep[];
  readonly hunter: StoredOrder['hunter'];
  readonly animal: StoredOrder['animal'];
  readonly animalWords: string;
  readonly arrival: StoredOrder['arrival'];
  readonly arrivalValues: ArrivalFormValues;
  readonly hangingGrams: number | null;
  readonly instructions: StoredOrder['instructions'];
  readonly instructionVersion: number;
  readonly versions: StoredOrder['versions'];
  readonly assessment: Assessment;
  readonly planView: PlanView;
  readonly fromZone: boolean;
  readonly questions: StoredOrder['questions'];
  readonly formValues: OrderFormValues;
  readonly packRows: readonly PackRow[];
  readonly weighings: StoredOrder['weighings'];
  /** Priced on the weighings once packed, on the likely forecast before. Null for who may not read prices. */
  readonly bill: Bill | null;
  readonly invoice: {
    readonly title: string;
    readonly totalMinor: number;
    readonly paidMinor: number;
    readonly dueMinor: number;
    readonly payments: readonly { readonly label: string; readonly amountMinor: number; readonly at: Date; readonly by: string }[];
  } | null;
  readonly handover: { readonly collectedBy: string; readonly at: Date; readonly by: string } | null;
  readonly timeline: readonly { readonly at: Date; readonly words: string; readonly who: string }[];
  readonly shop: ShopSettings;
};

/** One order by its number, or null. */
export async function readOrder(actor: StaffActor, number: string): Promise<StaffOrder | null> {
  requirePermission(actor, 'order.read');
  const order = await loadOrder(database(), { number });
  if (!order) return null;
  const settings = await shopSettings();
  const shop = shopView(settings);
  const assessment = assessStored(order, shop);
  const papers = invoicePapersOf(order, settings);
  const seesMoney = can(actor, 'prices.read');
  return {
    number: order.number,
    numberText: formatOrderNumber(order.number),
    version: order.version,
    state: order.state,
    stateWords: stateWords(order.state),
    steps: stepsFrom(order.state),
    hunter: order.hunter,
    animal: order.animal,
    animalWords: animalWords({ ...order.animal, ...(order.arrival && { sex: order.arrival.sex, ageClass: order.arrival.ageClass }) }),
    arrival: order.arrival,
    arrivalValues: arrivalValuesOf(order.animal, order.arrival, shop),
    hangingGrams: order.hangingGrams,
    instructions: order.instructions,
    instructionVersion: order.instructionVersion,
    versions: order.versions,
    assessment,
    planView: planView(assessment.plan, shop),
    fromZone: isFromZone(order, shop),
    questions: order.questions,
    formValues: formValuesOf(order, shop),
    packRows: packRows(order.instructions, assessment.plan, shop.country),
    weighings: order.weighings,
    bill: seesMoney ? billOf(order, assessment, shop) : null,
    invoice:
      seesMoney && order.invoice && papers
        ? {
            title: papers.document.title,
            totalMinor: order.invoice.totalMinor,
            paidMinor: paidMinor(order),
            dueMinor: papers.dueMinor,
            payments: order.invoice.payments.map((payment) => ({
              label: payment.method,
              amountMinor: payment.amountMinor,
              at: payment.paidAt,
              by: payment.takenBy,
            })),
          }
        : null,
    handover: order.handover
      ? { collectedBy: order.handover.collectedBy, at: order.handover.handedOverAt, by: order.handover.handedOverBy }
      : null,
    timeline: (await listAudit(database(), order.id)).map((entry) => ({ at: entry.at, words: timelineWords(entry.action), who: entry.actorName })),
    shop: settings,
  };
}

/** Takes the animal in, or corrects what was taken down before the knife starts. The rules run on the true weight. */
export async function receiveAnimal(
  actor: StaffActor,
  number: string,
  baseVersion: number,
  values: ArrivalFormValues,
): Promise<{ readonly ok: true; readonly openQuestions: number } | Extract<Outcome, { ok: false }>> {
  requirePermission(actor, 'order.receive');
  const known = await loadOrder(database(), { number });
  if (!known) return refuse('That order is not here any more.');
  const settings = await shopSettings();
  const shop = shopView(settings);
  const parsed = parseArrivalForm(values, { speciesId: known.animal.speciesId, shop, today: dayIn(settings.timeZone, now()) });
  if (!parsed.ok) return refuseFields(parsed.fieldErrors);
  const details = parsed.value;
  const done = await changing(async (transaction) => {
    const order = await orderForChange(transaction, { number }, baseVersion);
    const isFirst = canStep(order.state, 'receive');
    if (!isFirst && order.state !== 'received' && order.state !== 'hanging' && order.state !== 'on-hold') {
      refuseWithin(`This animal is ${stateWords(order.state)}; what came in can no longer be changed.`);
    }
    // Looked up inside the transaction: two counters may hold the same tag at the same moment.
    const sameTag = await hasSameTag(transaction, tagKey(details.tag), order.id);
    if (sameTag) refuseFieldsWithin({ tag: `Animal ${formatOrderNumber(sameTag)} was taken in under this very tag. Look at both tags again.` });
    const hangingGrams = onTheRail(order, details);
    if (hangingGrams !== null && details.weight.basis !== 'boneless' && details.weight.grams < hangingGrams) {
      refuseFieldsWithin({
        weight: `That is less than the ${formatWeight(hangingGrams, shop.unit, shop.locale)} on the rail. Weigh it again, or correct the weight on the rail first.`,
      });
    }
    await saveChange(transaction, order, {
      ...(isFirst && { state: stepFrom(order.state, 'receive') }),
      searchKey: searchKeyOf({ number, name: order.hunter.name, phone: order.hunter.phone, tag: details.tag, licence: details.licence }),
    });
    await saveArrival(transaction, { orderId: order.id, details, hangingGrams, by: actor.name });
    await recordAudit(transaction, actor, isFirst ? 'animal-received' : 'receiving-corrected', {
      orderId: order.id,
      ...(order.arrival && { before: order.arrival }),
      after: details,
    });
    return settleQuestions(transaction, { ...order, arrival: details, hangingGrams }, shop);
  });
  return done.ok ? { ok: true, openQuestions: done.value } : done;
}

/**
 * The weight on the rail after receiving, in grams: what was weighed there, or what came in without hide. A weight that
 * was taken for the one on the rail by mistake goes with its correction.
 */
function onTheRail(order: StoredOrder, { weight }: ArrivalDetails): number | null {
  const before = order.arrival?.weight;
  const isCorrected = before?.grams !== weight.grams || before.basis !== weight.basis;
  if (weight.basis === 'hanging') return isCorrected ? weight.grams : (order.hangingGrams ?? weight.grams);
  return before?.basis === 'hanging' && before.grams === order.hangingGrams ? null : order.hangingGrams;
}

/** Records the weight on the rail, hide, head and lower legs off; the animal then hangs. */
export async function recordHanging(actor: StaffActor, number: string, baseVersion: number, weightText: string): Promise<Outcome> {
  requirePermission(actor, 'order.receive');
  const settings = await shopSettings();
  const shop = shopView(settings);
  const weight = parseWeight(weightText, shop);
  if (!weight.ok) return refuseFields({ weight: weight.message });
  if (weight.value === 0) return refuseFields({ weight: 'Write what the scale shows; it reads more than nothing.' });
  const done = await changing(async (transaction) => {
    const order = await orderForChange(transaction, { number }, baseVersion);
    if (!order.arrival) return refuseWithin('Take the animal in first, then weigh it on the rail.');
    if (order.state !== 'received' && order.state !== 'hanging' && order.state !== 'on-hold') {
      refuseWithin(`This animal is ${stateWords(order.state)}; its weight on the rail can no longer be changed.`);
    }
    const { weight: arrived } = order.arrival;
    if (arrived.basis !== 'boneless' && weight.value > arrived.grams) {
      refuseWithin(
        `${formatWeight(weight.value, shop.unit, shop.locale)} on the rail is more than the ${formatWeight(arrived.grams, shop.unit, shop.locale)} it came in with. Weigh it again, or correct the weight at receiving.`,
      );
    }
    const { likely } = assessStored({ ...order, hangingGrams: null }, shop).plan.forecast.hanging;
    if (arrived.basis !== 'hanging' && weight.value * 2 < likely) {
      refuseWithin(
        `${formatWeight(weight.value, shop.unit, shop.locale)} on the rail is less than half of what it should be, about ${formatWeight(likely, shop.unit, shop.locale)}. Read the scale again, or correct the weight at receiving.`,
      );
    }
    await saveChange(transaction, order, canStep(order.state, 'hang') ? { state: stepFrom(order.state, 'hang') } : {});
    await saveArrival(transaction, { orderId: order.id, details: order.arrival, hangingGrams: weight.value, by: actor.name });
    await recordAudit(transaction, actor, 'weighed-hanging', {
      orderId: order.id,
      before: { hangingGrams: order.hangingGrams },
      after: { hangingGrams: weight.value },
    });
    await settleQuestions(transaction, { ...order, hangingGrams: weight.value }, shop);
  });
  return done.ok ? { ok: true } : done;
}

const STEP_PERMISSION = {
  hang: 'order.receive',
  hold: 'order.receive',
  free: 'order.receive',
  'start-cutting': 'bench.start',
  cancel: 'order.write',
} as const;
type PlainStep = keyof typeof STEP_PERMISSION;

/** Takes a step that asks nothing: hang, hold, lift a hold, start cutting, cancel. The knife does not start while a stop stands. */
export async function takeStep(actor: StaffActor, number: string, baseVersion: number, step: OrderStep): Promise<Outcome> {
  if (!isPlainStep(step)) return refuse('That step has a page of its own.');
  requirePermission(actor, STEP_PERMISSION[step]);
  const shop = shopView(await shopSettings());
  const done = await changing(async (transaction) => {
    const order = await orderForChange(transaction, { number }, baseVersion);
    if (!canStep(order.state, step)) refuseWithin(`This animal is ${stateWords(order.state)}; that step is not open from here.`);
    if (step === 'start-cutting') refuseTheKnife(order, shop);
    // A held animal that never hung still has to be weighed on the rail.
    const state = step === 'free' && order.hangingGrams === null ? 'received' : stepFrom(order.state, step);
    await saveChange(transaction, order, { state });
    await recordAudit(transaction, actor, step, { orderId: order.id, before: { state: order.state }, after: { state } });
  });
  return done.ok ? { ok: true } : done;
}

function isPlainStep(step: OrderStep): step is PlainStep {
  return Object.hasOwn(STEP_PERMISSION, step);
}

function refuseTheKnife(order: StoredOrder, shop: ReturnType<typeof shopView>): void {
  const stop = assessStored(order, shop, 'cutting').findings.find((finding) => finding.severity === 'stop');
  if (stop) refuseWithin(`The knife stays down. ${stop.message}`);
  const open = order.questions.filter((question) => question.answeredAt === null).length;
  if (open > 0) {
    refuseWithin(`The knife stays down: ${open === 1 ? 'one question to the hunter is' : `${open} questions to the hunter are`} still open. Wait for the answer, or call and answer for them.`);
  }
}

/** Answers a question for a hunter who is on the phone. */
export async function answerForHunter(actor: StaffActor, number: string, questionId: number, optionIndex: number): Promise<Outcome> {
  requirePermission(actor, 'order.answer');
  return answerWithOption(actor, { number }, { questionId, optionIndex });
}

/** Changes the instructions for a hunter, with a reason. */
export async function changeInstructions(
  actor: StaffActor,
  number: string,
  baseVersion: number,
  values: OrderFormValues,
  reason: string,
): Promise<Outcome> {
  requirePermission(actor, 'order.write');
  const why = reason.trim().slice(0, 200);
  if (why === '') return refuseFields({ reason: 'Write why it is changed, for example "called, wants mince instead".' });
  return changeWholeOrder(actor, { number }, { baseVersion, values, reason: why });
}

/** Saves what was weighed at the packing table. May be saved again until the invoice is issued. */
export async function savePacking(actor: StaffActor, number: string, baseVersion: number, entries: FormEntries): Promise<Outcome> {
  requirePermission(actor, 'pack.weigh');
  const settings = await shopSettings();
  const shop = shopView(settings);
  const known = await loadOrder(database(), { number });
  if (!known) return refuse('That order is not here any more.');
  const rows = packRows(known.instructions, assessStored(known, shop).plan, shop.country);
  const parsed = parsePackForm(entries, rows.map((row) => row.lineKey), shop);
  if (!parsed.ok) return refuseFields(parsed.fieldErrors);
  if (parsed.value.length === 0) return refuse('Nothing has been weighed yet. Write at least one weight.');
  const done = await changing(async (transaction) => {
    const order = await orderForChange(transaction, { number }, baseVersion);
    if (order.invoice) refuseWithin('The invoice has been issued: its weights stand.');
    if (!canStep(order.state, 'pack') && order.state !== 'packed') {
      refuseWithin(`This animal is ${stateWords(order.state)}; it is weighed out once it has been on the bench.`);
    }
    const tooMuch = massOut(order, rows, parsed.value, shop);
    if (tooMuch) refuseWithin(tooMuch);
    await saveChange(transaction, order, canStep(order.state, 'pack') ? { state: stepFrom(order.state, 'pack') } : {});
    await replaceWeighings(transaction, order.id, parsed.value, actor.name);
    await recordAudit(transaction, actor, 'packed', {
      orderId: order.id,
      before: order.weighings.map((one) => ({ ...one })),
      after: parsed.value.map((one) => ({ ...one })),
    });
  });
  return done.ok ? { ok: true } : done;
}

/** A sentence when more of the hunter's own meat comes out than hung on the rail; null when it can be. */
function massOut(
  order: StoredOrder,
  rows: readonly PackRow[],
  weighed: readonly { readonly lineKey: string; readonly grams: number }[],
  shop: ReturnType<typeof shopView>,
): string | null {
  const hanging = assessStored(order, shop).plan.forecast.hanging.likely;
  const added = new Map(rows.map((row) => [row.lineKey, row]));
  const own = weighed
    .filter((one) => !one.lineKey.startsWith('keep:'))
    .reduce((sum, one) => {
      const row = added.get(one.lineKey);
      const share = row && row.expected.likely > 0 ? row.addedGrams / row.expected.likely : 0;
      return sum + Math.round(one.grams * (1 - share));
    }, 0);
  const words = (grams: number): string => formatWeight(grams, shop.unit, shop.locale);
  return own > hanging
    ? `${words(own)} of own meat is more than the ${words(hanging)} that hung: ${words(own - hanging)} too much. Look for a lug of another animal or a wrong unit, and weigh again.`
    : null;
}

/** Hands the animal over: everything paid, the tag back, who took it. */
export async function handOver(actor: StaffActor, number: string, baseVersion: number, entries: FormEntries): Promise<Outcome> {
  requirePermission(actor, 'order.release');
  const parsed = parseHandoverForm(entries);
  if (!parsed.ok) return refuseFields(parsed.fieldErrors);
  const settings = await shopSettings();
  const done = await changing(async (transaction) => {
    const order = await orderForChange(transaction, { number }, baseVersion);
    if (!canStep(order.state, 'hand-over')) refuseWithin(`This animal is ${stateWords(order.state)}; it is handed over once it is ready.`);
    const papers = invoicePapersOf(order, settings);
    if (!papers) return refuseWithin('There is no invoice yet. Issue it first.');
    if (papers.dueMinor > 0) refuseWithin(`${papers.due} is still due. Take the payment first.`);
    await saveChange(transaction, order, { state: stepFrom(order.state, 'hand-over') });
    await saveHandover(transaction, { orderId: order.id, ...parsed.value, by: actor.name });
    await recordAudit(transaction, actor, 'handed-over', { orderId: order.id, after: parsed.value });
  });
  return done.ok ? { ok: true } : done;
}

/** The cutting sheets of some orders, in the order asked, ready to be drawn. Numbers that are not here are passed over. */
export async function cuttingSheets(
  actor: StaffActor,
  numbers: readonly string[],
): Promise<{ readonly paper: ShopSettings['paper']; readonly sheets: readonly CuttingSheet[] }> {
  requirePermission(actor, 'sheet.print');
  const settings = await shopSettings();
  const shop = shopView(settings);
  const printed = momentWords(now(), settings);
  const orders = await Promise.all(numbers.slice(0, 500).map((number) => loadOrder(database(), { number })));
  return {
    paper: settings.paper,
    sheets: orders.flatMap((order) => (order ? [sheetOf(order, { shop, settings, printed })] : [])),
  };
}

function sheetOf(
  order: StoredOrder,
  { shop, settings, printed }: { readonly shop: ReturnType<typeof shopView>; readonly settings: ShopSettings; readonly printed: string },
): CuttingSheet {
  const { plan } = assessOrder({ stage: 'cutting', animal: order.animal, arrival: order.arrival, hangingGrams: order.hangingGrams, instructions: order.instructions }, shop);
  return buildCuttingSheet({
    number: order.number,
    version: order.instructionVersion,
    printed,
    shop: { ...shop, name: settings.name },
    hunterName: order.hunter.name,
    animal: order.animal,
    arrival: order.arrival,
    hangingGrams: order.hangingGrams,
    fromZone: isFromZone(order, shop),
    instructions: order.instructions,
    plan,
    openQuestions: order.questions.filter((question) => question.answeredAt === null).length,
  });
}

/** The papers of an order's invoice, or null while none is issued. */
export async function invoicePapers(actor: StaffActor, number: string): Promise<InvoicePapers | null> {
  requirePermission(actor, 'prices.read');
  const order = await loadOrder(database(), { number });
  return order ? invoicePapersOf(order, await shopSettings()) : null;
}

export { issueInvoice, takePayment } from './bill-order';
