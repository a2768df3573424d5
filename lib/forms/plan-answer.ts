import { z } from 'zod';
import { type AnimalFacts, PARTS, readTissueKey } from '@/lib/carcass';
import { CUT_IDS, TARGET_IDS } from '@/lib/cuts';
import { type Instructions, LINE_SIDES, PRODUCT_IDS, applyEdits } from '@/lib/instructions';
import type { Assessment } from '@/lib/orders';
import { POOLS, type PoolId } from '@/lib/plan';
import { FINDING_FIELDS, DEFERENCE, type Finding, SEVERITIES } from '@/lib/rules';
import { type FullInstructions, fullInstructionsSchema } from './plan-request';

// What other programs are told. The order of the keys is part of it; what is not named here stays ours.

const grams = z.int().min(0);
export const rangeSchema = z
  .strictObject({ low: grams, likely: grams, high: grams })
  .describe('One in ten comes to less than low, one in ten to more than high. likely is exact in itself: what is divided sums to it.');
const chance = z.number().min(0).max(1).describe('0 to 1, in thousandths.');
const pools = <Each extends z.ZodType>(each: Each): z.ZodObject<Record<PoolId, Each>, z.core.$strict> =>
  // Every pool is a key; fromEntries forgets that.
  z.strictObject(Object.fromEntries(POOLS.map((pool) => [pool, each])) as Record<PoolId, Each>);

const finding = z.strictObject({
  ruleId: z.string(),
  severity: z.enum(SEVERITIES).describe('stop: it cannot or may not be done. ask: choose. note: worth knowing.'),
  title: z.string(),
  message: z.string(),
  place: z
    .discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('line'), lineId: z.string() }),
      z.strictObject({ kind: z.literal('part'), part: z.enum(PARTS) }),
      z.strictObject({ kind: z.literal('field'), field: z.enum(FINDING_FIELDS) }),
    ])
    .describe('What it is about.'),
  suggestions: z.array(
    z.strictObject({
      label: z.string(),
      consequence: z.string(),
      instructions: fullInstructionsSchema.describe('Yours with this change made: send them instead.'),
    }),
  ),
});

export const planAnswerSchema = z.strictObject({
  hanging: rangeSchema.describe('Weight of what came, skinned.'),
  basedOn: z.enum(['weight', 'girth', 'species']).describe('What the hanging weight was told from.'),
  lines: z.array(
    z.strictObject({
      id: z.string(),
      target: z.enum(TARGET_IDS),
      side: z.enum(LINE_SIDES),
      cut: z.enum(CUT_IDS),
      packed: rangeSchema,
      chanceOfAsked: chance.nullable().describe('How likely it packs the amount asked; null where none was.'),
    }),
  ),
  pools: pools(rangeSchema).describe('Where meat goes that no line packs.'),
  products: z.array(
    z.strictObject({
      productId: z.enum(PRODUCT_IDS),
      askedGrams: grams,
      gameGrams: rangeSchema.describe('Own meat that goes in.'),
      addedGrams: grams.describe('Bought meat that goes in besides, at likely.'),
      finished: rangeSchema,
      chanceOfAsked: chance,
    }),
  ),
  mince: rangeSchema.describe('Own meat left for plain mince.'),
  packedTotal: rangeSchema.describe('All that goes home of the own meat.'),
  tissues: z
    .array(
      z.strictObject({
        id: z.string().describe('Its place and name, such as left:topside.'),
        part: z.enum(PARTS).nullable(),
        kind: z.enum(['muscle', 'bone', 'cover', 'drying']),
        grams,
        woundGrams: grams.describe('Of those, what a wound costs.'),
        lineId: z.string().nullable().describe('The line that has it.'),
        packed: grams,
        pools: pools(grams),
      }),
    )
    .describe('Every gram of hanging.likely in exactly one place: packed and pools sum to grams.'),
  findings: z.array(finding).describe('Worst first.'),
  species: z.strictObject({ id: z.string(), name: z.string() }),
  units: z.literal('grams'),
  notLegalAdvice: z.string(),
});

export type PlanAnswer = z.output<typeof planAnswerSchema>;

/** The answer to a plan request: what was worked out, in the words and the order other programs rely on. */
export function planAnswer({ facts, plan, findings }: Assessment, instructions: Instructions): PlanAnswer {
  const { forecast } = plan;
  const lost = new Map(forecast.tissues.map(({ key, woundGrams }) => [key, woundGrams]));
  return {
    hanging: forecast.hanging,
    basedOn: basisOf(facts),
    lines: plan.lines.map(({ line, packed, chance }) => ({
      id: line.id,
      target: line.target,
      side: line.side,
      cut: line.cut,
      packed,
      chanceOfAsked: chance === null ? null : inThousandths(chance),
    })),
    pools: plan.pools,
    products: plan.products.map(({ productId, askedGrams, gameGrams, addedGrams, finished, chance }) => ({
      productId,
      askedGrams,
      gameGrams,
      addedGrams,
      finished,
      chanceOfAsked: inThousandths(chance),
    })),
    mince: plan.mince,
    packedTotal: plan.packedTotal,
    tissues: plan.ledger.map(({ key, grams, lineId, packed, pools }) => {
      const { part, kind } = readTissueKey(key);
      return { id: key, part, kind, grams, woundGrams: lost.get(key) ?? 0, lineId, packed, pools };
    }),
    findings: findings.map((one) => toldFinding(one, instructions)),
    species: { id: forecast.species.id, name: forecast.species.name },
    units: 'grams',
    notLegalAdvice: DEFERENCE,
  };
}

function toldFinding({ ruleId, severity, title, message, place, suggestions }: Finding, instructions: Instructions): PlanAnswer['findings'][number] {
  return {
    ruleId,
    severity,
    title,
    message,
    place,
    suggestions: suggestions.map(({ label, consequence, edits }) => ({
      label,
      consequence,
      instructions: toldInstructions(applyEdits(instructions, edits)),
    })),
  };
}

/** Instructions as a request can hold them: without what concerns only the shop's own book. */
export function toldInstructions(instructions: Instructions): FullInstructions {
  const { note: _note, agreed: _agreed, wantedBy: _wantedBy, isPriorityStated: _isStated, ...told } = instructions;
  const { taxidermist: _taxidermist, ...keep } = told.keep;
  return structuredClone({ ...told, keep }) as FullInstructions;
}

function basisOf({ weight, girthMm }: AnimalFacts): PlanAnswer['basedOn'] {
  if (weight) return 'weight';
  return girthMm ? 'girth' : 'species';
}

/** A probability in whole thousandths, half up, but certain only where it is. */
function inThousandths(chance: number): number {
  const rounded = Math.round(chance * 1_000) / 1_000;
  if (rounded === 1 && chance < 1) return 0.999;
  return rounded === 0 && chance > 0 ? 0.001 : rounded;
}
