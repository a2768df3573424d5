import { type ArrivalDetails, type DescribedAnimal, type OrderState, ORDER_STATES, type Weighing } from '@/lib/orders';
import { type QuestionOption, storedAnimal, storedArrival, storedInstructions, storedOptions } from '@/lib/forms';
import type { Instructions } from '@/lib/instructions';
import type { Tariff } from '@/lib/pricing';
import type { Database, DatabaseTransaction } from './client';
import { now } from './clock';
import type { Prisma } from './generated/sqlite/client';

type Client = Database | DatabaseTransaction;

export type StoredQuestion = {
  readonly id: number;
  readonly findingKey: string;
  readonly ruleId: string;
  readonly message: string;
  readonly options: readonly QuestionOption[];
  readonly askedAt: Date;
  readonly answeredAt: Date | null;
  readonly answer: string | null;
};

export type StoredInvoice = {
  readonly id: number;
  readonly series: string;
  readonly number: number;
  readonly document: unknown;
  readonly totalMinor: number;
  readonly issuedAt: Date;
  readonly payments: readonly { readonly amountMinor: number; readonly method: string; readonly formKey: string; readonly paidAt: Date; readonly takenBy: string }[];
};

/** One order with all that hangs on it, its Json checked and typed. */
export type StoredOrder = {
  readonly id: string;
  readonly number: string;
  readonly state: OrderState;
  readonly version: number;
  readonly hunter: { readonly name: string; readonly phone: string; readonly email: string };
  readonly animal: DescribedAnimal;
  readonly instructions: Instructions;
  readonly instructionVersion: number;
  readonly versions: readonly { readonly number: number; readonly at: Date; readonly by: string; readonly reason: string }[];
  readonly arrival: ArrivalDetails | null;
  readonly hangingGrams: number | null;
  readonly receivedAt: Date | null;
  readonly questions: readonly StoredQuestion[];
  readonly weighings: readonly Weighing[];
  readonly invoice: StoredInvoice | null;
  readonly handover: { readonly collectedBy: string; readonly handedOverAt: Date; readonly handedOverBy: string; readonly boxes: number } | null;
  readonly tariff: Tariff;
  readonly createdAt: Date;
  readonly formKey: string;
  readonly formDigest: string;
};

const WHOLE = {
  instructions: { orderBy: { number: 'desc' } },
  arrival: true,
  questions: { where: { withdrawnAt: null }, orderBy: { id: 'asc' } },
  packedLines: { orderBy: { id: 'asc' } },
  invoice: { include: { payments: { orderBy: { id: 'asc' } } } },
  handover: true,
  tariff: true,
} as const satisfies Prisma.OrderInclude;

type Row = Prisma.OrderGetPayload<{ include: typeof WHOLE }>;

export type OrderKey =
  | { readonly number: string }
  | { readonly formKey: string }
  /** A link's hash, and the moment at which it must not have expired. */
  | { readonly linkHash: string; readonly openAt: Date };

/** One order by its number, its link's hash or its form's key, or null. */
export async function loadOrder(client: Client, by: OrderKey): Promise<StoredOrder | null> {
  const where = 'linkHash' in by ? { linkHash: by.linkHash, linkExpiresAt: { gt: by.openAt } } : by;
  const row = await client.order.findUnique({ where, include: WHOLE });
  return row ? typed(row) : null;
}

function typed(row: Row): StoredOrder {
  const [latest] = row.instructions;
  if (!latest) throw new Error(`Order ${row.number} has no instructions`);
  return {
    id: row.id,
    number: row.number,
    state: stateOf(row.state),
    version: row.version,
    hunter: { name: row.hunterName, phone: row.hunterPhone, email: row.hunterEmail },
    animal: storedAnimal.parse(row.animal),
    instructions: storedInstructions.parse(latest.instructions),
    instructionVersion: latest.number,
    versions: row.instructions.map(({ number, createdAt, createdBy, reason }) => ({ number, at: createdAt, by: createdBy, reason })),
    arrival: row.arrival ? storedArrival.parse(row.arrival.details) : null,
    hangingGrams: row.arrival?.hangingGrams ?? null,
    receivedAt: row.arrival?.receivedAt ?? null,
    questions: row.questions.map((question) => ({ ...question, options: storedOptions.parse(question.options) })),
    weighings: row.packedLines.map(({ lineKey, grams, packages }) => ({ lineKey, grams, packages })),
    invoice: row.invoice,
    handover: row.handover,
    // Written only by set-up and by the price page, both of which check it.
    tariff: row.tariff.tariff as unknown as Tariff,
    createdAt: row.createdAt,
    formKey: row.formKey,
    formDigest: row.formDigest,
  };
}

export type NewOrder = {
  readonly id: string;
  readonly number: string;
  readonly hunter: StoredOrder['hunter'];
  readonly searchKey: string;
  readonly animal: DescribedAnimal;
  readonly instructions: Instructions;
  readonly linkHash: string;
  readonly linkExpiresAt: Date;
  readonly formKey: string;
  readonly formDigest: string;
  readonly tariffId: number;
  readonly by: string;
};

/** Saves a new order with version 1 of its instructions. Throws on a form key, number or link that is there already. */
export async function createOrder(transaction: DatabaseTransaction, order: NewOrder): Promise<void> {
  await transaction.order.create({
    data: {
      id: order.id,
      number: order.number,
      state: 'booked',
      speciesId: order.animal.speciesId,
      hunterName: order.hunter.name,
      hunterPhone: order.hunter.phone,
      hunterEmail: order.hunter.email,
      searchKey: order.searchKey,
      animal: order.animal,
      linkHash: order.linkHash,
      linkExpiresAt: order.linkExpiresAt,
      formKey: order.formKey,
      formDigest: order.formDigest,
      tariffId: order.tariffId,
      createdAt: now(),
      instructions: {
        create: { number: 1, instructions: order.instructions, reason: 'as sent', createdAt: now(), createdBy: order.by },
      },
    },
  });
}

export type OrderChange = {
  readonly state?: OrderState;
  readonly animal?: DescribedAnimal;
  readonly hunter?: StoredOrder['hunter'];
  readonly searchKey?: string;
  readonly readyAt?: Date;
};

/**
 * Changes an order that still stands at `baseVersion`, and moves its version on. False when somebody changed it in
 * between: nothing is changed then.
 */
export async function changeOrderRow(
  transaction: DatabaseTransaction,
  order: { readonly id: string; readonly version: number },
  change: OrderChange = {},
): Promise<boolean> {
  const { hunter, ...rest } = change;
  const { count } = await transaction.order.updateMany({
    where: { id: order.id, version: order.version },
    data: {
      ...rest,
      ...(hunter && { hunterName: hunter.name, hunterPhone: hunter.phone, hunterEmail: hunter.email }),
      version: { increment: 1 },
    },
  });
  return count === 1;
}

/** Adds the next version of the instructions; earlier ones stay as they were. */
export async function addInstructionVersion(
  transaction: DatabaseTransaction,
  version: { readonly orderId: string; readonly number: number; readonly instructions: Instructions; readonly reason: string; readonly by: string },
): Promise<void> {
  const { by, ...data } = version;
  await transaction.instructionVersion.create({ data: { ...data, createdAt: now(), createdBy: by } });
}

/** Saves what came in, over what was saved before. */
export async function saveArrival(
  transaction: DatabaseTransaction,
  arrival: { readonly orderId: string; readonly details: ArrivalDetails; readonly hangingGrams: number | null; readonly by: string },
): Promise<void> {
  const { orderId, details, hangingGrams, by } = arrival;
  await transaction.arrival.upsert({
    where: { orderId },
    create: { orderId, details, hangingGrams, receivedAt: now(), receivedBy: by },
    update: { details, hangingGrams },
  });
}

/** Puts questions to the hunter. */
export async function addQuestions(
  transaction: DatabaseTransaction,
  orderId: string,
  questions: readonly { readonly findingKey: string; readonly ruleId: string; readonly message: string; readonly options: readonly QuestionOption[] }[],
): Promise<void> {
  for (const { options, ...question } of questions) {
    // Read-only arrays are the same Json.
    await transaction.question.create({ data: { orderId, ...question, askedAt: now(), options: options as unknown as Prisma.InputJsonValue } });
  }
}

/** Records an answer to a question that is still open. False when it was answered or withdrawn already. */
export async function answerOpenQuestion(transaction: DatabaseTransaction, id: number, answer: string, at: Date): Promise<boolean> {
  const { count } = await transaction.question.updateMany({
    where: { id, answeredAt: null, withdrawnAt: null },
    data: { answer, answeredAt: at },
  });
  return count === 1;
}

/** Takes back open questions whose finding no longer stands. */
export async function withdrawQuestions(transaction: DatabaseTransaction, ids: readonly number[], at: Date): Promise<void> {
  if (ids.length > 0) {
    await transaction.question.updateMany({ where: { id: { in: [...ids] }, answeredAt: null }, data: { withdrawnAt: at } });
  }
}

/** Saves the packing table as it stands now; rows not named are gone. */
export async function replaceWeighings(
  transaction: DatabaseTransaction,
  orderId: string,
  weighings: readonly Weighing[],
  by: string,
): Promise<void> {
  await transaction.packedLine.deleteMany({ where: { orderId, lineKey: { notIn: weighings.map((one) => one.lineKey) } } });
  for (const { lineKey, grams, packages } of weighings) {
    await transaction.packedLine.upsert({
      where: { orderId_lineKey: { orderId, lineKey } },
      create: { orderId, lineKey, grams, packages, packedAt: now(), packedBy: by },
      update: { grams, packages, packedAt: now(), packedBy: by },
    });
  }
}

/** Saves who carried it away. */
export async function saveHandover(
  transaction: DatabaseTransaction,
  handover: { readonly orderId: string; readonly collectedBy: string; readonly address: string; readonly tagReturned: boolean; readonly boxes: number; readonly by: string },
): Promise<void> {
  const { by, ...data } = handover;
  await transaction.handover.create({ data: { ...data, handedOverAt: now(), handedOverBy: by } });
}

/** Moves a count on by one and returns it, 1 at first. Gapless as long as the transaction around it is kept. */
export async function nextInCounter(transaction: DatabaseTransaction, name: string): Promise<number> {
  const { value } = await transaction.counter.upsert({
    where: { name },
    create: { name, value: 1 },
    update: { value: { increment: 1 } },
  });
  return value;
}

/** Counts the orders of each state. */
export async function countByState(client: Client): Promise<Readonly<Record<OrderState, number>>> {
  const groups = await client.order.groupBy({ by: ['state'], _count: { _all: true } });
  const counts = Object.fromEntries(ORDER_STATES.map((state) => [state, 0])) as Record<OrderState, number>;
  for (const group of groups) counts[stateOf(group.state)] = group._count._all;
  return counts;
}

export type OrderListRow = {
  readonly number: string;
  readonly state: OrderState;
  readonly hunterName: string;
  readonly animal: DescribedAnimal;
  readonly arrival: ArrivalDetails | null;
  readonly hangingGrams: number | null;
  readonly createdAt: Date;
  readonly openQuestions: number;
};

/** A page of orders whose search key holds every term in one of its spellings, in some states, oldest or newest first. */
export async function listOrders(
  client: Client,
  query: { readonly terms: readonly (readonly string[])[]; readonly states: readonly OrderState[] | null; readonly newestFirst: boolean; readonly skip: number; readonly take: number },
): Promise<{ readonly rows: readonly OrderListRow[]; readonly total: number }> {
  const where: Prisma.OrderWhereInput = {
    AND: query.terms.map((spellings) => ({ OR: spellings.map((term) => ({ searchKey: { contains: term } })) })),
    ...(query.states && { state: { in: [...query.states] } }),
  };
  const [total, found] = await Promise.all([
    client.order.count({ where }),
    client.order.findMany({
      where,
      orderBy: [{ createdAt: query.newestFirst ? 'desc' : 'asc' }, { number: query.newestFirst ? 'desc' : 'asc' }],
      skip: query.skip,
      take: query.take,
      select: {
        number: true,
        state: true,
        hunterName: true,
        animal: true,
        createdAt: true,
        arrival: { select: { details: true, hangingGrams: true } },
        _count: { select: { questions: { where: { answeredAt: null, withdrawnAt: null } } } },
      },
    }),
  ]);
  return {
    total,
    rows: found.map((row) => ({
      number: row.number,
      state: stateOf(row.state),
      hunterName: row.hunterName,
      animal: storedAnimal.parse(row.animal),
      arrival: row.arrival ? storedArrival.parse(row.arrival.details) : null,
      hangingGrams: row.arrival?.hangingGrams ?? null,
      createdAt: row.createdAt,
      openQuestions: row._count.questions,
    })),
  };
}

/** What was done to one order, oldest first. */
export async function listAudit(
  client: Client,
  orderId: string,
): Promise<readonly { readonly at: Date; readonly actorName: string; readonly action: string; readonly reason: string }[]> {
  const entries = await client.auditEntry.findMany({ where: { orderId }, orderBy: { id: 'asc' }, select: { at: true, actorName: true, action: true, after: true } });
  return entries.map(({ after, ...entry }) => ({ ...entry, reason: reasonIn(after) }));
}

/** Why a step was taken, where somebody wrote it down; '' where nobody did. */
function reasonIn(after: Prisma.JsonValue): string {
  if (typeof after !== 'object' || after === null || Array.isArray(after)) return '';
  return typeof after['reason'] === 'string' ? after['reason'] : '';
}

/** Tags are numbered anew each licence year: older orders may carry the same one. */
const TAG_YEAR_DAYS = 270;

/** The number of another order of this licence year that carries the same legal tag, or null. */
export async function hasSameTag(client: Client, tagKey: string, exceptId: string): Promise<string | null> {
  const since = new Date(now().getTime() - TAG_YEAR_DAYS * 86_400_000);
  const other = await client.order.findFirst({
    where: { id: { not: exceptId }, state: { notIn: ['cancelled'] }, createdAt: { gte: since }, searchKey: { contains: ` =${tagKey} ` } },
    select: { number: true },
  });
  return other?.number ?? null;
}

function stateOf(text: string): OrderState {
  const state = ORDER_STATES.find((one) => one === text);
  if (!state) throw new Error(`Not a state of an order: ${text}`);
  return state;
}
