import { type StaffActor, requirePermission } from '@/lib/access';
import { speciesOf } from '@/lib/carcass';
import { recordAudit } from '@/lib/db/audit';
import { now } from '@/lib/db/clock';
import { type DatabaseTransaction, database, withTransaction } from '@/lib/db/client';
import type { StoredOrder } from '@/lib/db/orders';
import { type LearningSwitch, type Verdict, doubtedYields, learnedFrom, learningSwitches, packedSpecies, saveYield, setLearning, setVerdict } from '@/lib/db/yields';
import { type Learned, type Observation, doubtOf, learnSpecies, observe, ownRawGrams } from '@/lib/learning';
import { type Plan, isProductId } from '@/lib/plan';
import type { Weighing } from '@/lib/orders';
import { priorBook } from './species-book';
import { type Outcome, refuse } from './outcome';

/** Keeps what a packed animal told of its kind, in the transaction that keeps its weights. */
export async function recordYield(transaction: DatabaseTransaction, order: StoredOrder, plan: Plan, weighings: readonly Weighing[]): Promise<void> {
  const observation = observationOf(order, plan, weighings);
  const { species } = plan.forecast;
  await saveYield(transaction, { orderId: order.id, speciesId: species.id, observation, doubt: doubtOf(observation, species) });
}

function observationOf({ arrival, hangingGrams, instructions }: StoredOrder, plan: Plan, weighings: readonly Weighing[]): Observation {
  const lines = new Map(instructions.lines.flatMap(({ id }) => weighings.filter(({ lineKey }) => lineKey === id).map(({ grams }) => [id, grams] as const)));
  const pooled = weighings.flatMap(({ lineKey, grams }): number[] => {
    if (lineKey === 'pool:stew') return [ownRawGrams({ kind: 'stew' }, grams, instructions)];
    if (lineKey === 'pool:mince') return [ownRawGrams({ kind: 'mince' }, grams, instructions)];
    const productId = lineKey.slice('product:'.length);
    return lineKey.startsWith('product:') && isProductId(productId) ? [ownRawGrams({ kind: 'product', productId }, grams, instructions)] : [];
  });
  const pools = [plan.pools.stewing.likely > 0, plan.mince.likely > 0, ...plan.products.map(({ finished }) => finished.likely > 0)].filter(Boolean).length;
  return observe(plan, {
    fieldDressedGrams: arrival?.weight.basis === 'field-dressed' ? arrival.weight.grams : null,
    railGrams: hangingGrams,
    lines,
    // A pool that should have given something and was not weighed makes the whole untold.
    pooledGrams: pooled.length >= pools ? pooled.reduce((sum, grams) => sum + grams, 0) : null,
  });
}

/** What a shop has learned of one species, and whether it goes on. */
export type SpeciesYield = { readonly speciesId: string; readonly name: string; readonly learned: Learned; readonly learning: LearningSwitch };

export type YieldsView = {
  readonly species: readonly SpeciesYield[];
  readonly doubted: readonly { readonly id: number; readonly orderNumber: string; readonly hunterName: string; readonly animal: string; readonly doubt: { readonly of: 'hanging' | 'meat'; readonly expected: number; readonly found: number } }[];
};

/** Published figures, the shop's own animals and what comes of both, for every species it has packed; and what waits for a word. */
export async function readYields(actor: StaffActor): Promise<YieldsView> {
  requirePermission(actor, 'yields.read');
  const client = database();
  const [switches, ids, doubted] = await Promise.all([learningSwitches(client), packedSpecies(client), doubtedYields(client)]);
  const species = await Promise.all(
    Object.keys(priorBook()).filter((id) => ids.includes(id)).map(async (speciesId): Promise<SpeciesYield> => {
      const published = speciesOf(priorBook(), speciesId);
      const learning = switches.get(speciesId) ?? { isOn: true, since: null };
      return { speciesId, name: published.name, learning, learned: learnSpecies(published, await learnedFrom(client, speciesId, learning.since)) };
    }),
  );
  return { species, doubted: doubted.map(({ speciesId, ...rest }) => ({ ...rest, animal: priorBook()[speciesId]?.name ?? speciesId })) };
}

/** Counts a doubted animal after all, or leaves it out for good. */
export async function judgeYield(actor: StaffActor, id: number, verdict: Extract<Verdict, 'confirmed' | 'left-out'>): Promise<Outcome> {
  requirePermission(actor, 'yields.judge');
  const found = await withTransaction(async (transaction) => {
    if (!(await setVerdict(transaction, id, verdict, actor.name))) return false;
    await recordAudit(transaction, actor, 'yield-judged', { after: { id, verdict } });
    return true;
  });
  return found ? { ok: true } : refuse('That animal is not in the list any more.');
}

/** Switches the learning of a species on or off, or begins it anew from today's animals. */
export async function switchLearning(actor: StaffActor, speciesId: string, to: 'on' | 'off' | 'anew'): Promise<Outcome> {
  requirePermission(actor, 'yields.judge');
  if (!Object.hasOwn(priorBook(), speciesId)) return refuse('There is no such animal.');
  await withTransaction(async (transaction) => {
    const before = (await learningSwitches(transaction)).get(speciesId) ?? { isOn: true, since: null };
    const after = to === 'anew' ? { isOn: true, since: now() } : { ...before, isOn: to === 'on' };
    await setLearning(transaction, speciesId, after);
    await recordAudit(transaction, actor, 'learning-switched', {
      before: { speciesId, isOn: before.isOn, since: before.since?.toISOString() ?? null },
      after: { speciesId, isOn: after.isOn, since: after.since?.toISOString() ?? null },
    });
  });
  return { ok: true };
}
