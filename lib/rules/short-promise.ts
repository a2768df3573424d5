import type { PartId } from '@/lib/carcass';
import { TARGETS, targetName } from '@/lib/cuts';
import type { Edit, InstructionLine } from '@/lib/instructions';
import { PRODUCTS, type PlannedProduct } from '@/lib/plan';
import { type Range, formatWeight, formatWeightRange, roundedDown, roundedUp } from '@/lib/units';
import { mayBeMade } from './may-be-made';
import { afterEdits, mend } from './mend';
import type { FindingPlace, RuledOrder, Suggestion } from './rule';
import { type Shortfall, shortfallOfLine, shortfallOfProduct } from './shortfall';
import { lineWords, partOfLine } from './wording';

/** An amount asked and what there is for it. Grams. */
export type ShortPromise = { readonly asked: number; readonly gives: Range } & (
  | { readonly of: 'line'; readonly line: InstructionLine }
  | { readonly of: 'product'; readonly product: PlannedProduct }
);

/** Whether what is probably short is settled by which made thing comes first, which is asked once for all of them. */
function isForPriority({ plan }: RuledOrder): boolean {
  return plan.products.length > 1;
}

/** Promises of an order that fall short in this degree. */
export function shortPromises(order: RuledOrder, degree: Shortfall): readonly ShortPromise[] {
  const lines = order.plan.lines
    .filter((planned) => shortfallOfLine(planned, order) === degree)
    .map(({ line, packed }): ShortPromise => ({ of: 'line', line, asked: line.askedGrams ?? 0, gives: packed }));
  const products = order.plan.products
    .filter((product) => shortfallOfProduct(product, order) === degree && !(degree === 'probable' && isForPriority(order)))
    .map((product): ShortPromise => ({ of: 'product', product, asked: product.askedGrams, gives: product.there }));
  return [...lines, ...products];
}

export function keyOfPromise(data: ShortPromise): string {
  return data.of === 'line' ? data.line.id : data.product.productId;
}

/** Trouble with one product is told once, whatever else is wrong with it. */
export function causeOfPromise(data: ShortPromise): string {
  return data.of === 'line' ? `amount of ${data.line.id}` : `product ${data.product.productId}`;
}

export function placeOfPromise(data: ShortPromise): FindingPlace {
  return data.of === 'line' ? { kind: 'line', lineId: data.line.id } : { kind: 'field', field: 'products' };
}

export function partOfPromise(data: ShortPromise): PartId | null {
  return data.of === 'line' ? partOfLine(data.line) : null;
}

/** '3.0 lb of loin chops on the bone', or '9.0 lb of your meat in fresh sausage'. */
export function askedWords(data: ShortPromise, { words }: RuledOrder): string {
  const asked = formatWeight(data.asked, words.unit);
  return data.of === 'line'
    ? `${asked} of ${lineWords(data.line, words)}`
    : `${asked} of your meat in ${PRODUCTS[data.product.productId].name}`;
}

/** 'this animal gives about 2.5 lb (2.1 to 2.9)', or what is left for grinding. */
export function givesWords(data: ShortPromise, { words }: RuledOrder): string {
  if (data.of === 'line') return `this animal gives ${formatWeightRange(data.gives, words.unit)}`;
  const fromWhole = !PRODUCTS[data.product.productId].from.includes('grinding');
  if (data.gives.high === 0) return fromWhole ? 'no whole muscle is set aside for it' : 'nothing is left for grinding';
  return `what is ${fromWhole ? 'set aside whole' : 'left for grinding'} is ${formatWeightRange(data.gives, words.unit)}`;
}

/** Asks for less: all there is of a line; of a product what nine animals in ten give, or none. */
export function lessSuggestions(data: ShortPromise, order: RuledOrder): readonly Suggestion[] {
  const { unit } = order.words;
  const { low, likely } = data.gives;
  if (data.of === 'line') {
    return mend(order, {
      label: 'Take all there is',
      consequence: `About ${formatWeight(likely, unit)} of ${lineWords(data.line, order.words)}; the amount is taken off.`,
      edits: [{ kind: 'set-asked', lineId: data.line.id, askedGrams: null }],
    });
  }
  const { productId } = data.product;
  const { name } = PRODUCTS[productId];
  const sure = roundedDown(low, unit);
  return [
    ...(productId === 'jerky' && data.gives.high === 0 ? setAsideForJerky(data.asked, order) : []),
    ...(sure > 0 && sure >= data.product.leastGrams
      ? mend(order, {
          label: `Use ${formatWeight(sure, unit)} for it`,
          consequence: `In nine animals of ten there is that much; what is left, likely ${formatWeight(likely - sure, unit)}, stays plain.`,
          edits: [{ kind: 'set-product', productId, gameGrams: sure }],
        })
      : []),
    ...mend(order, {
      label: `Leave out the ${name}`,
      consequence: `Taken off your list: ${name}.`,
      edits: [{ kind: 'set-product', productId, gameGrams: 0 }],
    }),
  ];
}

/** Keeps one leg whole for jerky where nothing is set aside: both of no line, or one of a line that has both. */
function setAsideForJerky(asked: number, order: RuledOrder): readonly Suggestion[] {
  const { unit, country } = order.words;
  const line = order.instructions.lines.find(({ target }) => TARGETS[target].part === 'haunch');
  const isWholeLeg = line?.target === 'haunch' && line.side === 'both';
  if (!mayBeMade('jerky', order) || (line && !isWholeLeg)) return [];
  const leg: Edit = { kind: 'add-line', target: 'haunch', side: 'right', cut: 'set-aside-whole' };
  const edits: readonly Edit[] = line ? [{ kind: 'set-side', lineId: line.id, side: 'left' }, leg] : [leg];
  const there = afterEdits(order, edits).plan.products.find(({ productId }) => productId === 'jerky');
  const sure = roundedDown(there?.there.low ?? 0, unit);
  if (!there || sure === 0 || sure < there.leastGrams) return [];
  const grams = Math.min(sure, Math.max(asked, roundedUp(there.leastGrams, unit)));
  return mend(order, {
    label: `Keep the right ${targetName('haunch', country)} for it`,
    consequence: [
      `${formatWeight(grams, unit)} of it is dried${grams > asked ? ', which is what a batch takes' : grams < asked ? `, not ${formatWeight(asked, unit)}` : ''}.`,
      ...(line ? [`The left one stays as it is: ${lineWords({ ...line, side: 'left' }, order.words)}.`] : []),
    ].join(' '),
    edits: [...edits, { kind: 'set-product', productId: 'jerky', gameGrams: grams }],
  }).filter((suggestion) => isJerkyServed(afterEdits(order, suggestion.edits)));
}

/** Whether the jerky gets its meat: another product may take what a change of a third one set free. */
function isJerkyServed(order: RuledOrder): boolean {
  return order.plan.products.every((product) => product.productId !== 'jerky' || shortfallOfProduct(product, order) !== 'certain');
}
