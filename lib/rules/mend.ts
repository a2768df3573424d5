import { type DoubleClaim, PRODUCTS, planOrder, settleClaims } from '@/lib/plan';
import { type Edit, applyEdits } from '@/lib/instructions';
import { type WeightUnit, formatWeight, scaleHalfUp } from '@/lib/units';
import type { RuledOrder, Suggestion } from './rule';
import { type Shortfall, shortfallOfLine, shortfallOfProduct } from './shortfall';
import { lineWords, sentence } from './wording';

/** Millionths of a gram. Source: NIST Special Publication 811, appendix B. */
const TENTH_OF_A_POUND = 45_359_237;

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
  const present = new Set(order.plan.forecast.tissues.map(({ key }) => key));
  const before = new Set(clashingPairs(order.plan.doubles));
  const { doubles } = settleClaims(linesAfter, (key) => present.has(key));
  if (clashingPairs(doubles).some((pair) => !before.has(pair))) return [];
  // Planning anew is the dear part, and only a named amount can fall short.
  if (productsAfter.length === 0 && linesAfter.every(({ askedGrams }) => askedGrams === null)) return [suggestion];

  const after = afterEdits(order, suggestion.edits);
  const lines = after.plan.lines.filter((planned) => {
    const was = order.plan.lines.find(({ line }) => line.id === planned.line.id);
    return WORSE[shortfallOfLine(planned, after)] > (was ? WORSE[shortfallOfLine(was, order)] : 0);
  });
  const products = after.plan.products.filter((planned) => {
    const was = order.plan.products.find(({ productId }) => productId === planned.productId);
    return WORSE[shortfallOfProduct(planned, after)] > (was ? WORSE[shortfallOfProduct(was, order)] : 0);
  });
  const { unit } = order.words;
  return [
    {
      label: suggestion.label,
      consequence: [
        suggestion.consequence,
        ...lines.map(({ line }) => `The amount asked of ${lineWords(line, order.words)} is taken off.`),
        ...products.map(({ productId, gameGrams }) =>
          `${sentence(PRODUCTS[productId].name)} is made of ${formatWeight(roundedDown(gameGrams.low, unit), unit)} of your meat.`,
        ),
      ].join(' '),
      edits: [
        ...suggestion.edits,
        ...lines.map(({ line }): Edit => ({ kind: 'set-asked', lineId: line.id, askedGrams: null })),
        ...products.map(({ productId, gameGrams }): Edit => ({
          kind: 'set-product',
          productId,
          gameGrams: roundedDown(gameGrams.low, unit),
        })),
      ],
    },
  ];
}

/**
 * The largest weight a person would write that is not above this: tenths of a pound, or steps of 50 g.
 *
 * @example roundedDown(9321, 'lb') // 9299, which is 20.5 lb
 */
export function roundedDown(grams: number, unit: WeightUnit): number {
  if (unit === 'kg') return Math.floor(grams / 50) * 50;
  const tenths = Math.floor((grams * 1_000_000) / TENTH_OF_A_POUND);
  return scaleHalfUp({ value: tenths, times: TENTH_OF_A_POUND, over: 1_000_000 });
}

function clashingPairs(doubles: readonly DoubleClaim[]): readonly string[] {
  return doubles.flatMap(({ lineIds }) =>
    lineIds.flatMap((id, at) => lineIds.slice(at + 1).map((other) => [id, other].sort().join('+'))),
  );
}
