import { z } from 'zod';
import type { Doubt, Observation } from '@/lib/learning';
import { now } from './clock';
import type { Database, DatabaseTransaction } from './client';

export const VERDICTS = ['counted', 'doubtful', 'confirmed', 'left-out'] as const;
/** Whether the forecast learns from an animal: unasked, not until somebody says so, because somebody said so, or never. */
export type Verdict = (typeof VERDICTS)[number];

/** The newest animals of a species that are learned from: older ones tell of another season's knife. Keeps reading flat. */
const MOST_LEARNED_FROM = 500;

/** Moved on with every change of what is learned from, so that a reader knows whether what it has is still so. */
const VERSION_COUNTER = 'yields';

const share = z.number().nullable();
const storedTold = z.object({
  observation: z.object({ hangingOfFieldDressed: share, meatOfHanging: share, partOfMeat: z.record(z.string(), z.number()) }),
  doubt: z.object({ of: z.enum(['hanging', 'meat']), expected: z.number(), found: z.number() }).nullable(),
});

/** One doubted animal, for a person to look at. */
export type DoubtedYield = { readonly id: number; readonly orderNumber: string; readonly hunterName: string; readonly speciesId: string; readonly doubt: Doubt };

/** Whether a species learns, and from which moment on its animals count. */
export type LearningSwitch = { readonly isOn: boolean; readonly since: Date | null };

/** Saves what an animal told, in place of what it told before; a verdict given by a person on other weights is void. */
export async function saveYield(
  transaction: DatabaseTransaction,
  { orderId, speciesId, observation, doubt }: { readonly orderId: string; readonly speciesId: string; readonly observation: Observation; readonly doubt: Doubt | null },
): Promise<void> {
  const data = { speciesId, told: { observation: { ...observation }, doubt: doubt && { ...doubt } }, verdict: doubt ? 'doubtful' : 'counted', at: now(), judgedBy: null };
  await transaction.yieldRecord.upsert({ where: { orderId }, create: { orderId, ...data }, update: data });
  await moveOn(transaction);
}

/** A person's word on one animal. False where there is no such record. */
export async function setVerdict(transaction: DatabaseTransaction, id: number, verdict: Verdict, by: string): Promise<boolean> {
  const { count } = await transaction.yieldRecord.updateMany({ where: { id }, data: { verdict, judgedBy: by } });
  if (count > 0) await moveOn(transaction);
  return count > 0;
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
    where: { speciesId, verdict: { in: ['counted', 'confirmed'] }, ...(since && { at: { gte: since } }) },
    orderBy: { id: 'desc' },
    take: MOST_LEARNED_FROM,
    select: { told: true },
  });
  return rows.map(({ told }) => storedTold.parse(told).observation);
}

/** Animals that wait for a person's word, the newest first. */
export async function doubtedYields(client: Database | DatabaseTransaction): Promise<readonly DoubtedYield[]> {
  const rows = await client.yieldRecord.findMany({
    where: { verdict: 'doubtful' },
    orderBy: { id: 'desc' },
    take: 50,
    include: { order: { select: { number: true, hunterName: true } } },
  });
  return rows.flatMap(({ id, speciesId, told, order }) => {
    const { doubt } = storedTold.parse(told);
    return doubt ? [{ id, speciesId, doubt, orderNumber: order.number, hunterName: order.hunterName }] : [];
  });
}
