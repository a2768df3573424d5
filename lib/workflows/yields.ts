import { type StaffActor, requirePermission } from '@/lib/access';
import { speciesOf } from '@/lib/carcass';
import { recordAudit } from '@/lib/db/audit';
import { now } from '@/lib/db/clock';
import { type DatabaseTransaction, database, withTransaction } from '@/lib/db/client';
import type { StoredOrder } from '@/lib/db/orders';
import {
  type LearningSwitch, type OddAnimal, type StoredDoubt, type Verdict,
  countLearnedFrom, hasYield, learnedFrom, learningSwitches, oddAnimals, packedSpecies, saveYield, setLearning, setVerdict,
} from '@/lib/db/yields';
import { type Learned, type Doubt, type Weighed, doubtOf, learnSpecies, lineDoubtOf, observe, ownRawGrams } from '@/lib/learning';
import { type Plan, isProductId } from '@/lib/plan';
import type { PackRow, Weighing } from '@/lib/orders';
import { priorBook } from './species-book';
import { type Outcome, refuse } from './outcome';

/** Keeps what a packed animal told of its kind, in the transaction that keeps its weights. */
export async function recordYield(
  transaction: DatabaseTransaction,
  order: StoredOrder,
  plan: Plan,
  { rows, weighings }: { readonly rows: readonly PackRow[]; readonly weighings: readonly Weighing[] },
): Promise<void> {
  // Saved again with the same weights: a person's word on them stands.
  if (areSameWeights(order.weighings, weighings) && (await hasYield(transaction, order.id))) return;
  const weighed = weighedOf(order, plan, weighings);
  const observation = observe(plan, weighed);
  const { species } = plan.forecast;
  const { isOn, since } = (await learningSwitches(transaction)).get(species.id) ?? LEARNS_FROM_ALL;
  const ownAnimals = isOn ? await countLearnedFrom(transaction, species.id, since) : 0;
  const doubt = doubtOf(observation, species, ownAnimals) ?? lineDoubtOf(plan, weighed);
  await saveYield(transaction, { orderId: order.id, speciesId: species.id, observation, doubt: doubt && named(doubt, rows) });
}

const LEARNS_FROM_ALL: LearningSwitch = { isOn: true, since: null };

function areSameWeights(before: readonly Weighing[], after: readonly Weighing[]): boolean {
  return before.length === after.length && after.every(({ lineKey, grams }) => before.some((one) => one.lineKey === lineKey && one.grams === grams));
}

function named(doubt: Doubt, rows: readonly PackRow[]): StoredDoubt {
  if (doubt.of !== 'line') return doubt;
  const { lineId, ...rest } = doubt;
  return { ...rest, label: rows.find(({ lineKey }) => lineKey === lineId)?.label ?? lineId };
}

function weighedOf({ arrival, hangingGrams, instructions }: StoredOrder, plan: Plan, weighings: readonly Weighing[]): Weighed {
  const lines = new Map(instructions.lines.flatMap(({ id }) => weighings.filter(({ lineKey }) => lineKey === id).map(({ grams }) => [id, grams] as const)));
  const pooled = weighings.flatMap(({ lineKey, grams }): number[] => {
    if (lineKey === 'pool:stew') return [ownRawGrams({ kind: 'stew' }, grams, instructions)];
    if (lineKey === 'pool:mince') return [ownRawGrams({ kind: 'mince' }, grams, instructions)];
    const productId = lineKey.slice('product:'.length);
    return lineKey.startsWith('product:') && isProductId(productId) ? [ownRawGrams({ kind: 'product', productId }, grams, instructions)] : [];
  });
  const pools = [plan.pools.stewing.likely > 0, plan.mince.likely > 0, ...plan.products.map(({ finished }) => finished.likely > 0)].filter(Boolean).length;
  return {
    arrived: arrival?.weight ?? null,
    railGrams: hangingGrams,
    lines,
    // A pool that should have given something and was not weighed makes the whole untold.
    pooledGrams: pooled.length >= pools ? pooled.reduce((sum, grams) => sum + grams, 0) : null,
  };
}

/** What a shop has learned of one species, and whether it goes on. */
export type SpeciesYield = { readonly speciesId: string; readonly name: string; readonly learned: Learned; readonly learning: LearningSwitch };

export type OddYieldOf = Omit<OddAnimal, 'speciesId'> & { readonly animal: string };

export type YieldsView = {
  readonly species: readonly SpeciesYield[];
  /** Waiting for a person's word. */
  readonly doubted: readonly OddYieldOf[];
  /** Those that have it: it can be taken back. */
  readonly judged: readonly OddYieldOf[];
};

/** Published figures, the shop's own animals and what comes of both, for every species it has packed; and what waits for a word. */
export async function readYields(actor: StaffActor): Promise<YieldsView> {
  requirePermission(actor, 'yields.read');
  const client = database();
  const [switches, ids, doubted, judged] = await Promise.all([
    learningSwitches(client), packedSpecies(client), oddAnimals(client, ['doubtful']), oddAnimals(client, ['confirmed', 'left-out']),
  ]);
  const species = await Promise.all(
    Object.keys(priorBook()).filter((id) => ids.includes(id)).map(async (speciesId): Promise<SpeciesYield> => {
      const published = speciesOf(priorBook(), speciesId);
      const learning = switches.get(speciesId) ?? LEARNS_FROM_ALL;
      return { speciesId, name: published.name, learning, learned: learnSpecies(published, await learnedFrom(client, speciesId, learning.since)) };
    }),
  );
  const withName = ({ speciesId, ...rest }: OddAnimal): OddYieldOf => ({ ...rest, animal: priorBook()[speciesId]?.name ?? speciesId });
  return { species, doubted: doubted.map(withName), judged: judged.map(withName) };
}

/** Counts a doubted animal after all, or leaves it out for good. */
export async function judgeYield(actor: StaffActor, id: number, verdict: Extract<Verdict, 'confirmed' | 'left-out'>): Promise<Outcome> {
  requirePermission(actor, 'yields.judge');
  const found = await withTransaction(async (transaction) => {
    const judged = await setVerdict(transaction, id, verdict, actor.name);
    if (!judged) return false;
    await recordAudit(transaction, actor, 'yield-judged', { orderId: judged.orderId, before: { id, verdict: judged.before }, after: { id, verdict } });
    return true;
  });
  return found ? { ok: true } : refuse('That animal is not in the list any more.');
}

/** Switches the learning of a species on or off, or begins it anew from today's animals. */
export async function switchLearning(actor: StaffActor, speciesId: string, to: 'on' | 'off' | 'anew'): Promise<Outcome> {
  requirePermission(actor, 'yields.judge');
  if (!Object.hasOwn(priorBook(), speciesId)) return refuse('There is no such animal.');
  await withTransaction(async (transaction) => {
    const before = (await learningSwitches(transaction)).get(speciesId) ?? LEARNS_FROM_ALL;
    const after = to === 'anew' ? { isOn: true, since: now() } : { ...before, isOn: to === 'on' };
    await setLearning(transaction, speciesId, after);
    await recordAudit(transaction, actor, 'learning-switched', {
      before: { speciesId, isOn: before.isOn, since: before.since?.toISOString() ?? null },
      after: { speciesId, isOn: after.isOn, since: after.since?.toISOString() ?? null },
    });
  });
  return { ok: true };
}
