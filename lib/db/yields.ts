import { z } from 'zod';
import { ARRIVAL_BASES, type Doubt, type Observation } from '@/lib/learning';
import { now } from './clock';
import type { Database, DatabaseTransaction } from './client';

export const VERDICTS = ['counted', 'doubtful', 'confirmed', 'left-out'] as const;
/** Whether the forecast learns from an animal: unasked, not until somebody says so, because somebody said so, or never. */
export type Verdict = (typeof VERDICTS)[number];

/** The newest animals of a species that are learned from: older ones tell of another season's knife. Keeps reading flat. */
const MOST_LEARNED_FROM = 500;

/** Moved on with every change of what is learned from, so that a reader knows whether what it has is still so. */
const VERSION_COUNTER = 'yields';

const storedTold = z.object({
  observation: z.object({
    hanging: z.object({ basis: z.enum(ARRIVAL_BASES), share: z.number() }).nullable(),
    meatOfHanging: z.number().nullable(),
    partOfMeat: z.record(z.string(), z.number()),
  }),
  doubt: z
    .discriminatedUnion('of', [
      z.object({ of: z.enum(['hanging', 'meat']), expected: z.number(), found: z.number() }),
      z.object({ of: z.literal('line'), label: z.string(), expectedGrams: z.number(), foundGrams: z.number() }),
    ])
    .nullable(),
});

/** What is odd about an animal; a line by the name it had at the packing table. */
export type StoredDoubt = Exclude<Doubt, { readonly of: 'line' }> | { readonly of: 'line'; readonly label: string; readonly expectedGrams: number; readonly foundGrams: number };

/** One odd animal: it waits for a person's word, or has it. */
export type OddAnimal = {
  readonly id: number;
  readonly orderNumber: string;
  readonly hunterName: string;
  readonly speciesId: string;
  readonly doubt: StoredDoubt;
  readonly verdict: Verdict;
  readonly judgedBy: string | null;
};

/** Whether a species learns, and from which moment on its animals count. */
export type LearningSwitch = { readonly isOn: boolean; readonly since: Date | null };

/** Saves what an animal told, in place of what it told before; a verdict given by a person on other weights is void. */
export async function saveYield(
  transaction: DatabaseTransaction,
  { orderId, speciesId, observation, doubt }: { readonly orderId: string; readonly speciesId: string; readonly observation: Observation; readonly doubt: StoredDoubt | null },
): Promise<void> {
  const data = { speciesId, told: { observation: { ...observation }, doubt: doubt && { ...doubt } }, verdict: doubt ? 'doubtful' : 'counted', at: now(), judgedBy: null };
  await transaction.yieldRecord.upsert({ where: { orderId }, create: { orderId, ...data }, update: data });
  await moveOn(transaction);
}

/** Whether an animal's record is there. */
export async function hasYield(transaction: DatabaseTransaction, orderId: string): Promise<boolean> {
  return (await transaction.yieldRecord.count({ where: { orderId } })) > 0;
}

/** A person's word on an odd animal, and what it was before. Null where there is no such record, or nothing odd about it any more. */
export async function setVerdict(
  transaction: DatabaseTransaction,
  id: number,
  verdict: Verdict,
  by: string,
): Promise<{ readonly orderId: string; readonly before: string } | null> {
  const found = await transaction.yieldRecord.findUnique({ where: { id }, select: { orderId: true, verdict: true } });
  if (!found || found.verdict === 'counted') return null;
  await transaction.yieldRecord.update({ where: { id }, data: { verdict, judgedBy: by } });
  await moveOn(transaction);
  return { orderId: found.orderId, before: found.verdict };
}

/** Switches the learning of a species on or off, or has it begin anew. */
export async function setLearning(transaction: DatabaseTransaction, speciesId: string, data: LearningSwitch): Promise<void> {
  await transaction.speciesLearning.upsert({ where: { speciesId }, create: { speciesId, ...data }, update: data });
  await moveOn(transaction);
}

async function moveOn(transaction: DatabaseTransaction): Promise<void> {
  await transaction.counter.upsert({ where: { name: VERSION_COUNTER }, create: { name: VERSION_COUNTER, value: 1 }, update: { value: { increment: 1 } } });
}

/** Grows with every change of what is learned from. */
export async function yieldsVersion(client: Database | DatabaseTransaction): Promise<number> {
  return (await client.counter.findUnique({ where: { name: VERSION_COUNTER }, select: { value: true } }))?.value ?? 0;
}

/** Switches of every species that has one. */
export async function learningSwitches(client: Database | DatabaseTransaction): Promise<ReadonlyMap<string, LearningSwitch>> {
  const rows = await client.speciesLearning.findMany();
  return new Map(rows.map(({ speciesId, isOn, since }) => [speciesId, { isOn, since }]));
}

/** Ids of the species any animal of which was packed. */
export async function packedSpecies(client: Database | DatabaseTransaction): Promise<readonly string[]> {
  const rows = await client.yieldRecord.groupBy({ by: ['speciesId'] });
  return rows.map(({ speciesId }) => speciesId);
}

/** What the animals of a species told that may be learned from, the newest first. */
export async function learnedFrom(client: Database | DatabaseTransaction, speciesId: string, since: Date | null): Promise<readonly Observation[]> {
  const rows = await client.yieldRecord.findMany({
    where: isLearnedFrom(speciesId, since),
    orderBy: { id: 'desc' },
    take: MOST_LEARNED_FROM,
    select: { told: true },
  });
  return rows.map(({ told }) => storedTold.parse(told).observation);
}

/** How many animals of a species are learned from. */
export async function countLearnedFrom(client: Database | DatabaseTransaction, speciesId: string, since: Date | null): Promise<number> {
  return client.yieldRecord.count({ where: isLearnedFrom(speciesId, since), take: MOST_LEARNED_FROM });
}

function isLearnedFrom(speciesId: string, since: Date | null) {
  return { speciesId, verdict: { in: ['counted', 'confirmed'] }, ...(since && { at: { gte: since } }) };
}

/** Most odd animals that are told of at once. */
const MOST_TOLD = 50;

/** Animals that were too odd to learn from, the newest first: those that wait for a person's word, or those that have it. */
export async function oddAnimals(client: Database | DatabaseTransaction, verdicts: readonly Verdict[]): Promise<readonly OddAnimal[]> {
  const rows = await client.yieldRecord.findMany({
    where: { verdict: { in: [...verdicts] } },
    orderBy: { id: 'desc' },
    take: MOST_TOLD,
    include: { order: { select: { number: true, hunterName: true } } },
  });
  return rows.flatMap(({ id, speciesId, told, order, verdict, judgedBy }) => {
    const { doubt } = storedTold.parse(told);
    const known = VERDICTS.find((one) => one === verdict);
    return doubt && known ? [{ id, speciesId, doubt, verdict: known, judgedBy, orderNumber: order.number, hunterName: order.hunterName }] : [];
  });
}
