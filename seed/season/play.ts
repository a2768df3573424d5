import type { StaffActor } from '@/lib/access';
import { SPOTS, blankOrderForm, type OrderFormValues } from '@/lib/forms';
import { makeFormKey } from '@/lib/auth/order-link';
import { database } from '@/lib/db/client';
import { loadOrder } from '@/lib/db/orders';
import { formatOrderNumber } from '@/lib/orders';
import { answerQuestion, changeOrder, placeOrder, readHunterOrder } from '@/lib/workflows/hunter-orders';
import { issueInvoice, takePayment } from '@/lib/workflows/bill-order';
import { answerForHunter, changeInstructions } from '@/lib/workflows/change-for-hunter';
import { handOver } from '@/lib/workflows/hand-over';
import { savePacking } from '@/lib/workflows/pack-order';
import { readOrder } from '@/lib/workflows/read-order';
import { receiveAnimal, recordHanging } from '@/lib/workflows/receive-animal';
import { takeStep } from '@/lib/workflows/take-step';
import { dayIn } from '@/lib/workflows/clock';
import type { Chance } from './chance';
import type { Hunter } from './hunters';
import { counties, demoShop, zoneCounty } from './shop';
import type { Story } from './stories';
import { type Wish, wishes } from './wishes';

/** Something that happens to one animal, so many days before today and at an hour of the shop's clock. */
export type Happening = { readonly daysAgo: number; readonly hour: number; readonly run: (at: Date) => Promise<void> };

/** One animal as the season goes on. Its link and number are known once its order has been sent. */
export type Played = { readonly story: Story; readonly hunter: Hunter; readonly happenings: readonly Happening[]; readonly link: () => string; readonly number: () => string };

export type Crew = { readonly counter: StaffActor; readonly cutter: StaffActor };

const gramsPerPound = 453.59237;
const reached: Readonly<Record<Story['until'], number>> = {
  booked: 0, cancelled: 0, received: 1, hanging: 2, 'on-hold': 2, 'on-the-bench': 3, packed: 4, ready: 5, collected: 6,
};

/** What happens to one animal, from the order to where its story stands, all of it through the program itself. */
export function play(story: Story, hunter: Hunter, { crew, chance, serial }: { readonly crew: Crew; readonly chance: Chance; readonly serial: number }): Played {
  const known = { token: '', number: '' };
  const { counter, cutter } = crew;
  const form = formOf(story, hunter);
  const far = reached[story.until];
  const receivedAgo = story.bookedDaysAgo - 1;
  const benchAgo = receivedAgo - (story.agedDays ?? 6);
  const minute = (serial % 29) / 60;

  const order = async (): Promise<NonNullable<Awaited<ReturnType<typeof readOrder>>>> => {
    const found = await readOrder(counter, known.number);
    if (!found) throw new Error(`No order ${known.number}`);
    return found;
  };
  const version = async (): Promise<number> => (await loadOrder(database(), { number: known.number }))?.version ?? 0;

  const happenings: Happening[] = [];
  const then = (daysAgo: number, hour: number, run: Happening['run']): void => {
    happenings.push({ daysAgo: Math.max(0, daysAgo), hour: hour + minute, run });
  };

  then(story.bookedDaysAgo, chance.whole(7, 20), async () => {
    const placed = must(await placeOrder(form), story);
    known.token = placed.token;
    known.number = (await readHunterOrder(placed.token))?.number ?? '';
  });
  for (const [at, change] of (far === 0 ? (story.changes ?? []) : []).entries()) {
    then(story.bookedDaysAgo - 1, 8 + at, () => changeWish(change));
  }
  if (story.until === 'cancelled') {
    then(story.bookedDaysAgo - 2, 10, async () => void must(await takeStep(counter, known.number, await version(), 'cancel'), story));
  }
  if (far >= 1) {
    then(receivedAgo, 11, async (at) => void must(await receive(at, story.tested ? 'pending' : 'none'), story));
  }
  if (far >= 1 && story.tested) {
    then(receivedAgo, 12, async () => void must(await takeStep(counter, known.number, await version(), 'hold'), story));
  }
  if (far >= 2) then(receivedAgo, 13, weighOnTheRail);
  for (const [at, change] of (far > 0 ? (story.changes ?? []) : []).entries()) {
    then(receivedAgo - 1, 9 + at, () => changeWish(change));
  }
  if (story.answered) then(receivedAgo - 1, 18, answerAll);
  if (story.tested === 'comes-back-negative') {
    then(benchAgo, 6, async (at) => {
      must(await receive(at, 'negative'), story);
      must(await takeStep(counter, known.number, await version(), 'free'), story);
    });
  }
  if (far >= 3) {
    then(benchAgo, 7, async () => {
      // Whoever has not answered by now is called.
      if ((await order()).questions.some((question) => !question.answeredAt)) await answerAll();
      must(await takeStep(cutter, known.number, await version(), 'start-cutting'), story);
    });
  }
  if (far >= 4) then(benchAgo, 14, weighOut);
  if (far >= 5) then(benchAgo - 1, 9, async () => void must(await issueInvoice(counter, known.number, await version()), story));
  if (far >= 5 && (story.paid === 'part' || story.paid === 'in-two')) then(benchAgo - 1, 11, () => pay(chance.whole(3, 6) * 1000, 'cash'));
  if (far === 5 && story.paid === 'whole') then(benchAgo - 1, 12, () => pay(null, 'transfer'));
  if (far >= 6) {
    const collectedAgo = benchAgo - chance.whole(2, 4);
    then(collectedAgo, 15, () => pay(null, chance.pick(['card', 'cash', 'cheque'])));
    then(collectedAgo, 15.2, async () => {
      const boxes = String(1 + Math.floor(story.pounds / 60));
      must(await handOver(counter, known.number, await version(), [['collectedBy', hunter.name], ['address', ''], ['boxes', boxes], ['tagReturned', 'on']]), story);
    });
  }

  return { story, hunter, happenings, link: () => known.token, number: () => formatOrderNumber(known.number) };

  async function changeWish(change: NonNullable<Story['changes']>[number]): Promise<void> {
    const values = { ...(await order()).formValues, ...wanted(wishes[change.wish]) };
    const at = await version();
    const done = change.by === 'hunter' ? await changeOrder(known.token, at, values) : await changeInstructions(counter, known.number, at, values, change.reason);
    must(done, story);
  }

  async function receive(at: Date, test: 'none' | 'pending' | 'negative'): Promise<{ ok: boolean }> {
    const opened = await order();
    const { wounds = {}, missing = [], conditions = ['clean'], ...texts } = story.arrival ?? {};
    const isAgain = opened.arrival !== null;
    return receiveAnimal(counter, known.number, opened.version, {
      ...opened.arrivalValues,
      ...(!isAgain && {
        licence: `HA-${String(20_000 + serial * 37)}`,
        tag: `VC${String(serial + 11).padStart(2, '0')}-${String(4_000 + serial * 13)}`,
        killedOn: dayIn(demoShop.timeZone, new Date(at.getTime() - 86_400_000)),
        killedWhere: story.where === '' ? zoneCounty : (story.where ?? counties[serial % counties.length] ?? zoneCounty),
        diseaseZone: story.tested === undefined ? 'no' : 'yes',
        sex: story.sex,
        ageClass: story.ageClass,
        weight: String(story.pounds),
        weightBasis: story.scaledAs ?? 'field-dressed',
        temperature: String(34 + (serial % 7)),
        wounds: Object.fromEntries(SPOTS.map(({ id }) => [id, wounds[id] ?? ''])),
        missing: { ...opened.arrivalValues.missing, ...Object.fromEntries(missing.map((id) => [id, true])) },
        conditions: Object.fromEntries(conditions.map((id) => [id, true])),
        ...texts,
      }),
      test,
    });
  }

  async function weighOnTheRail(): Promise<void> {
    const { assessment, arrival, version } = await order();
    if (story.scaledAs) return void (await step('hang'));
    const likely = assessment.plan.forecast.hanging.likely * (0.97 + chance.next() * 0.06);
    const grams = Math.min(likely, (arrival?.weight.grams ?? likely) * 0.95);
    must(await recordHanging(counter, known.number, version, pounds(grams)), story);
  }

  async function step(name: 'hang'): Promise<void> {
    if ((await order()).steps.includes(name)) must(await takeStep(counter, known.number, await version(), name), story);
  }

  async function answerAll(): Promise<void> {
    for (let round = 0; round < 12; round += 1) {
      const question = (await order()).questions.find((one) => !one.answeredAt);
      if (!question) return;
      const option = Math.min(story.answered?.option ?? 0, question.options.length - 1);
      must(
        story.answered?.by === 'hunter' ? await answerQuestion(known.token, question.id, option) : await answerForHunter(counter, known.number, question.id, option),
        story,
      );
    }
    throw new Error(`Questions of ${known.number} do not end`);
  }

  async function weighOut(): Promise<void> {
    const { packRows, version } = await order();
    const entries = packRows.flatMap(({ lineKey, expected }): [string, string][] => {
      const grams = expected.likely > 0 ? expected.likely * (0.93 + chance.next() * 0.1) : chance.whole(500, 1400);
      return [
        [`weight.${lineKey}`, pounds(grams)],
        [`packages.${lineKey}`, String(Math.max(1, Math.ceil(grams / 700)))],
      ];
    });
    must(await savePacking(cutter, known.number, version, entries), story);
  }

  /** Pays so many minor units, or all that is due. */
  async function pay(minor: number | null, method: string): Promise<void> {
    const due = (await order()).invoice?.dueMinor ?? 0;
    if (due === 0) return;
    const amount = (Math.min(due, minor ?? due) / 100).toFixed(2);
    must(await takePayment(counter, known.number, [['amount', amount], ['method', method], ['formKey', makeFormKey()]]), story);
  }
}

function formOf(story: Story, hunter: Hunter): OrderFormValues {
  const blank = blankOrderForm(makeFormKey());
  return {
    ...blank,
    animal: {
      speciesId: story.speciesId,
      sex: story.sex,
      ageClass: story.ageClass,
      weight: story.guess?.weight ?? '',
      weightBasis: story.guess?.basis ?? '',
      girth: '',
      takenWhere: story.where ?? '',
      diseaseZone: story.toldZone ?? 'no',
      form: story.form ?? 'hide-on',
      filletsOut: story.filletsOut ?? false,
    },
    ...wanted(wishes[story.wish]),
    hunter: { ...hunter },
  };
}

/** Every wish of the form: what a wish does not name is as on an empty form. */
function wanted(wish: Wish): Omit<OrderFormValues, 'formKey' | 'animal' | 'hunter'> {
  const { formKey: _, animal: __, hunter: ___, ...blank } = blankOrderForm('');
  return { ...blank, ...wish, lines: [...(wish.lines ?? [])], keep: { ...blank.keep, ...wish.keep } };
}

function pounds(grams: number): string {
  return (grams / gramsPerPound).toFixed(1);
}

function must<Value extends { readonly ok: boolean }>(outcome: Value, story: Story): Extract<Value, { ok: true }> {
  if (!outcome.ok) throw new Error(`The season broke off at a ${story.speciesId} wanting ${story.wish}, ${story.until}: ${JSON.stringify({ ...outcome, values: undefined })}`);
  return outcome as Extract<Value, { ok: true }>;
}
