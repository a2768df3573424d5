import type { TissueKey } from '@/lib/carcass';
import { type Plan, type PlannedProduct, planOrder, settleClaims } from '@/lib/plan';
import { type Edit, applyEdits } from '@/lib/instructions';
import { type WeightUnit, formatWeight, roundedDown, roundedUp } from '@/lib/units';
import type { RuledOrder, Suggestion } from './rule';
import { type Shortfall, isBelowBatch, shortfallOfLine, shortfallOfProduct } from './shortfall';
import { lineWords, madeWords, sentence } from './wording';

const WORSE: Readonly<Record<Shortfall, number>> = { none: 0, probable: 1, certain: 2 };

/** The same order after a suggestion was tapped, planned anew. */
export function afterEdits(order: RuledOrder, edits: readonly Edit[]): RuledOrder {
  const instructions = applyEdits(order.instructions, edits);
  return { ...order, instructions, plan: planOrder(instructions, order.plan.forecast) };
}

/**
 * A suggestion made safe to tap: none where it would promise meat twice anew; and where it leaves a named amount
 * shorter than before, that amount is lowered with it, and the consequence says so.
 */
export function mend(order: RuledOrder, suggestion: Suggestion): readonly Suggestion[] {
  const { lines: linesAfter, products: productsAfter } = applyEdits(order.instructions, suggestion.edits);
  const { present, pairs } = standing(order.plan);
  const { doubles } = settleClaims(linesAfter, (key) => present.has(key));
  if (doubles.some(({ lineIds }) => somePair(lineIds, (pair) => !pairs.has(pair)))) return [];
  // Planning anew is the dear part. Only a named amount can fall short, and a product not while meat is promised twice.
  const isProductMeasured = productsAfter.length > 0 && doubles.length === 0;
  if (!isProductMeasured && linesAfter.every(({ askedGrams }) => askedGrams === null)) return [suggestion];

  const after = afterEdits(order, suggestion.edits);
  const lines = after.plan.lines.filter((planned) => {
    const was = order.plan.lines.find(({ line }) => line.id === planned.line.id);
    return WORSE[shortfallOfLine(planned, after)] > (was ? WORSE[shortfallOfLine(was, order)] : 0);
  });
  const products = after.plan.products.filter((planned) => {
    const was = order.plan.products.find(({ productId }) => productId === planned.productId);
    const isWorse = WORSE[shortfallOfProduct(planned, after)] > (was ? WORSE[shortfallOfProduct(was, order)] : 0);
    return isWorse || (isBelowBatch(planned, after) && !(was && isBelowBatch(was, order)));
  });
  const { unit } = order.words;
  return [
    {
      label: suggestion.label,
      consequence: [
        suggestion.consequence,
        ...lines.map(({ line }) => `The amount asked of ${lineWords(line, order.words)} is taken off.`),
        ...products.map((product) =>
          sureFor(product, unit) === 0
            ? `${sentence(madeWords(product.productId))} taken off your list.`
            : `${sentence(madeWords(product.productId))} made of ${formatWeight(sureFor(product, unit), unit)} of your meat.`,
        ),
      ].join(' '),
      edits: [
        ...suggestion.edits,
        ...lines.map(({ line }): Edit => ({ kind: 'set-asked', lineId: line.id, askedGrams: null })),
        ...products.map((product): Edit => ({
          kind: 'set-product',
          productId: product.productId,
          gameGrams: sureFor(product, unit),
        })),
      ],
    },
  ];
}

/** Own meat that nine animals in ten have for a product, or the smallest batch where less was asked; nothing where that makes none. */
function sureFor({ askedGrams, there, leastGrams }: PlannedProduct, unit: WeightUnit): number {
  const sure = roundedDown(there.low, unit);
  if (sure < leastGrams) return 0;
  return askedGrams < leastGrams ? Math.min(sure, roundedUp(leastGrams, unit)) : sure;
}

type Standing = { readonly present: ReadonlySet<TissueKey>; readonly pairs: ReadonlySet<string> };

const STANDING = new WeakMap<Plan, Standing>();

/** What came, and which pairs of lines clash already: worked out once a plan, read by every suggestion. */
function standing(plan: Plan): Standing {
  const known = STANDING.get(plan);
  if (known) return known;
  const pairs = new Set<string>();
  for (const { lineIds } of plan.doubles) somePair(lineIds, (pair) => !pairs.add(pair));
  const made = { present: new Set(plan.forecast.tissues.map(({ key }) => key)), pairs };
  STANDING.set(plan, made);
  return made;
}

/** Whether some pair of these lines, named whatever their order, passes the test. */
function somePair(lineIds: readonly string[], test: (pair: string) => boolean): boolean {
  return lineIds.some((id, at) => lineIds.slice(at + 1).some((other) => test(id < other ? `${id}+${other}` : `${other}+${id}`)));
}
