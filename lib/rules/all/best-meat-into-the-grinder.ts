import { type TissueKey, readTissueKey } from '@/lib/carcass';
import { CUTS, minceName, targetName } from '@/lib/cuts';
import type { Edit, InstructionLine } from '@/lib/instructions';
import { exampleLine, exampleOrder } from '../example-order';
import { mend } from '../mend';
import { type RuleExamples, type RuleReason, type RuledOrder, defineRule } from '../rule';
import { joined, lineWords, partOfLine, sentence, tissueNoun } from '../wording';

/** Loin or fillet that is ground or dried: by a line, or since no line names it. */
type Best = { readonly keys: readonly TissueKey[]; readonly line: InstructionLine | null };

const BEST = ['fillet', 'loin'] as const;

/** Fillets of a gut-shot animal are nobody's to keep whole. */
function isBest(key: TissueKey, { plan }: RuledOrder): boolean {
  const { tissue } = readTissueKey(key);
  return tissue === 'loin' || (tissue === 'fillet' && !plan.forecast.facts.gutShot);
}

function ground(order: RuledOrder): readonly Best[] {
  const { instructions, plan, circumstances } = order;
  const byLine = instructions.lines
    .filter((line) => (line.target === 'fillet' || line.target === 'loin') && CUTS[line.cut].split.packed === 0 && line.cut !== 'leave-out')
    // Whole muscle that nothing is made of is another rule's to tell.
    .filter(({ cut }) => cut !== 'set-aside-whole' || instructions.products.some(({ productId }) => productId === 'jerky'))
    .map((line): Best => ({ line, keys: plan.ledger.filter(({ lineId, key }) => lineId === line.id && isBest(key, order)).map(({ key }) => key) }));
  // Whoever names nothing at all has said so of the whole animal; boned meat has no names.
  const isForgotten = instructions.lines.length > 0 && instructions.rest === 'mince' && circumstances.form !== 'boned-out';
  const unnamed = isForgotten ? plan.ledger.filter(({ lineId, key, pools }) => lineId === null && isBest(key, order) && pools.grinding > 0).map(({ key }) => key) : [];
  return [...byLine, { line: null, keys: unnamed }].filter(({ keys }) => keys.length > 0);
}

function keyOf({ line, keys }: Best): string {
  return line ? line.id : [...keys].sort().join('+');
}

/** The line as it would be were its meat kept in one piece, or new lines for what nobody named. */
function keptWhole({ line, keys }: Best): readonly Edit[] {
  if (line) return [{ kind: 'set-cut', lineId: line.id, cut: 'whole' }];
  return BEST.flatMap((target): readonly Edit[] => {
    const places = keys.filter((key) => readTissueKey(key).tissue === target).map((key) => readTissueKey(key).place);
    const [only] = places;
    if (!only) return [];
    return [{ kind: 'add-line', target, side: places.length > 1 || only === 'middle' ? 'both' : only, cut: 'whole' }];
  });
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const bestMeatIntoTheGrinderReason: RuleReason = {
  topic: 'meat',
  why: 'The fillets inside the spine and the loins along it are the tenderest meat there is, and the dearest. Once they are ground or dried nothing brings them back. They go that way more often by being forgotten than by being meant, so the trade asks.',
  source: 'common practice, no source',
};

export const bestMeatIntoTheGrinder = defineRule<Best>({
  id: 'best-meat-into-the-grinder',
  severity: 'ask',
  title: 'The best meat would be ground',
  ground: 'trade',
  stages: ['order', 'receiving', 'cutting'],
  check: ground,
  keyOf,
  place: ({ line }) => (line ? { kind: 'line', lineId: line.id } : { kind: 'field', field: 'rest' }),
  part: ({ line }) => (line ? partOfLine(line) : null),
  cause: (data) => `best meat ${keyOf(data)}`,
  message: ({ line, keys }, { words }) => {
    const { text, many } = tissueNoun(keys, words);
    const how = line?.cut === 'set-aside-whole' ? 'would be dried' : `would go into the ${minceName(words.country)}`;
    return line
      ? `${sentence(text)} ${how}, and ${many ? 'they are' : 'it is'} the tenderest meat of the animal.`
      : `You have not said what becomes of ${text}, so ${many ? 'they' : 'it'} ${how}.`;
  },
  suggestions: (data, order) => {
    const { words } = order;
    const names = joined(BEST.filter((muscle) => data.keys.some((key) => readTissueKey(key).tissue === muscle)).map((muscle) => targetName(muscle, words.country)));
    return [
      ...mend(order, {
        label: `Keep the ${names} in one piece`,
        consequence: data.line ? `${sentence(lineWords({ ...data.line, cut: 'whole' }, words))}, to slice or roast at home.` : 'Trimmed and whole, to slice or roast at home.',
        edits: keptWhole(data),
      }),
      ...mend(order, {
        label: data.line?.cut === 'set-aside-whole' ? 'Dry it, I mean it' : `${words.country === 'us' ? 'Grind' : 'Mince'} it, I mean it`,
        consequence: 'It is done as you wrote it.',
        edits: [{ kind: 'agree', key: `best-meat-into-the-grinder|${keyOf(data)}` }],
      }),
    ];
  },
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const bestMeatIntoTheGrinderExamples = (): RuleExamples => ({
  valid: [
    exampleOrder(),
    exampleOrder({ lines: [exampleLine('a', 'fillet', 'whole'), exampleLine('b', 'loin', 'medallions')] }),
    exampleOrder({ lines: [exampleLine('a', 'saddle', 'on-the-bone')] }),
    exampleOrder({ lines: [exampleLine('a', 'haunch', 'on-the-bone')], instructions: { rest: 'undecided' } }),
  ],
  invalid: [
    {
      order: exampleOrder({ lines: [exampleLine('a', 'haunch', 'steaks'), exampleLine('b', 'loin', 'mince', { side: 'left' })], words: { country: 'us', unit: 'lb' } }),
      messages: [
        'The left backstrap would go into the ground meat, and it is the tenderest meat of the animal.',
        'You have not said what becomes of the right backstrap and both tenderloins, so they would go into the ground meat.',
      ],
    },
    {
      order: exampleOrder({ lines: [exampleLine('a', 'loin', 'set-aside-whole'), exampleLine('b', 'fillet', 'whole', { side: 'left' })], instructions: { products: [{ productId: 'jerky', gameGrams: 2_300 }] } }),
      messages: ['Both loins would be dried, and they are the tenderest meat of the animal.', 'You have not said what becomes of the right fillet, so it would go into the mince.'],
    },
  ],
});
