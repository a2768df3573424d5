import {
  ANATOMY,
  MUSCLES,
  type MuscleId,
  PARTS,
  type PartId,
  type Place,
  type TissueKey,
  isDelivered,
  isSidedPart,
  placesOf,
  readTissueKey,
  tissueKey,
} from '@/lib/carcass';
import { CUTS, type CutId, type NameCountry, TARGET_IDS, type TargetId, minceName } from '@/lib/cuts';
import type { Edit } from '@/lib/instructions';
import { formatWeight } from '@/lib/units';
import { exampleLine, exampleOrder } from '../example-order';
import { mend } from '../mend';
import { type RuleExamples, type RuleReason, type RuledOrder, type Suggestion, defineRule } from '../rule';
import { cutWords, joined, muscleWords, partWords, sentence, tissueNoun } from '../wording';

/** Undecided muscles of one part on one side or both, or of the whole animal where they lie in more than two parts. */
type Unsaid = {
  readonly part: PartId | null;
  readonly side: Place | 'both';
  readonly keys: readonly TissueKey[];
  readonly grams: number;
};

/** Parts that are asked about one by one; above that the question is about everything. */
const MOST_PARTS = 2;

function unsaid({ plan, circumstances }: RuledOrder): readonly Unsaid[] {
  const keys = plan.undecided;
  if (keys.length === 0) return [];
  const weigh = (some: readonly TissueKey[]): number =>
    plan.ledger.filter((row) => some.includes(row.key)).reduce((sum, row) => sum + row.pools.undecided, 0);
  const parts = PARTS.filter((part) => keys.some((key) => readTissueKey(key).part === part));
  if (parts.length > MOST_PARTS || circumstances.form === 'boned-out') return [{ part: null, side: 'both', keys, grams: weigh(keys) }];
  return parts.flatMap((part) => {
    const at = (place: Place): readonly TissueKey[] =>
      keys.filter((key) => readTissueKey(key).part === part && readTissueKey(key).place === place);
    const [left, right] = [at('left'), at('right')];
    const isAlike = musclesOf(left).join() === musclesOf(right).join();
    const groups: readonly Omit<Unsaid, 'part' | 'grams'>[] =
      isSidedPart(part) && isAlike
        ? [{ side: 'both', keys: [...left, ...right] }]
        : placesOf(isSidedPart(part)).map((place) => ({ side: place, keys: at(place) }));
    return groups.filter((group) => group.keys.length > 0).map((group) => ({ ...group, part, grams: weigh(group.keys) }));
  });
}

function musclesOf(keys: readonly TissueKey[]): readonly MuscleId[] {
  return MUSCLES.filter((muscle) => keys.some((key) => readTissueKey(key).tissue === muscle));
}

/** 'the left shoulder', 'the left topside and rump', 'the rest of the left haunch', 'the loins, haunches and neck'. */
function nameOf({ part, side, keys }: Unsaid, { plan, circumstances, words }: RuledOrder): string {
  if (!part) {
    if (circumstances.form === 'boned-out') return 'the boned meat';
    if (keys.length === plan.forecast.tissues.filter(({ key }) => readTissueKey(key).kind === 'muscle').length) return 'the meat of this animal';
    return joined(PARTS.flatMap((one) => {
      const inPart = keys.filter((key) => readTissueKey(key).part === one);
      return inPart.length > 0 ? [tissueNoun(inPart, words).text] : [];
    }));
  }
  const muscles = musclesOf(keys);
  const place = side === 'both' ? 'left' : side;
  const { facts } = plan.forecast;
  const whole = MUSCLES.filter((muscle) => ANATOMY[muscle].part === part && isDelivered(facts, tissueKey(place, muscle)));
  if (muscles.length === whole.length || muscles.length === 1) return tissueNoun(keys, words).text;
  const sided = side === 'both' ? 'on both sides' : `on the ${side}`;
  if (muscles.length <= 2) return `the ${joined(muscles.map((muscle) => muscleWords(muscle, words)))} ${sided}`;
  return `the rest of ${side === 'both' ? '' : 'the '}${partWords(part, side, words)}`;
}

/** Lines that send these muscles to one cut: the part by name where all of it is unsaid, otherwise muscle by muscle. */
function linesTo(cut: CutId, { part, side, keys }: Unsaid): readonly Edit[] | null {
  const muscles = musclesOf(keys);
  const whole = MUSCLES.filter((muscle) => part && ANATOMY[muscle].part === part);
  const names: readonly string[] = part && muscles.length === whole.length ? [part] : muscles;
  const targets: readonly TargetId[] = TARGET_IDS.filter((id) => names.includes(id) && CUTS[cut].targets.includes(id));
  return targets.length === names.length ? targets.map((target) => ({ kind: 'add-line', target, side, cut })) : null;
}

function suggestions(data: Unsaid, order: RuledOrder): readonly Suggestion[] {
  const { words } = order;
  const mince = minceName(words.country);
  const about = `about ${formatWeight(data.grams, words.unit)}`;
  // Nobody minces a loin or a fillet without having said so.
  const cuts: readonly CutId[] = data.part === 'loin' || data.part === 'fillet' ? ['whole', 'mince'] : ['mince', 'diced'];
  const named = (data.part ? cuts : []).flatMap((cut) => {
    const edits = linesTo(cut, data);
    if (!edits) return [];
    return mend(order, { label: buttonOf(cut, words.country), consequence: `${sentence(nameOf(data, order))} ${cutWords(cut, words)}, ${about}.`, edits });
  });
  return [
    ...named,
    ...mend(order, {
      label: words.country === 'us' ? 'Grind everything not named' : 'Mince everything not named',
      consequence: data.part ? `Whatever you do not name becomes ${mince}.` : `All of it becomes ${mince}, ${about}.`,
      edits: [{ kind: 'set-rest', rest: 'mince' }],
    }),
    ...(data.part
      ? []
      : mend(order, {
          label: 'Dice everything not named',
          consequence: `All of it becomes stewing meat, ${about}, with its trimmings to ${mince}.`,
          edits: [{ kind: 'set-rest', rest: 'stew' }],
        })),
  ];
}

function buttonOf(cut: CutId, country: NameCountry): string {
  if (cut === 'whole') return 'Keep it in one piece';
  if (cut === 'diced') return 'Dice it for stewing';
  return country === 'us' ? 'Grind it' : 'Mince it';
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const partWithoutDestinationReason: RuleReason = {
  topic: 'meat',
  why: 'Something always remains: shoulders, neck, trim. If nobody says what becomes of it, the cutter decides, and it is not always what was wanted. Most hunters have it minced.',
  source: 'common practice, no source',
};

export const partWithoutDestination = defineRule<Unsaid>({
  id: 'part-without-destination',
  severity: 'ask',
  title: 'Nothing is said about some of the meat',
  ground: 'trade',
  stages: ['order', 'receiving', 'cutting'],
  check: unsaid,
  keyOf: ({ part, side }) => (part ? `${side}:${part}` : 'rest'),
  place: ({ part }) => (part ? { kind: 'part', part } : { kind: 'field', field: 'rest' }),
  part: ({ part }) => part,
  message: (data, order) =>
    `Nothing is said ${data.part ? '' : 'yet '}about ${nameOf(data, order)} (about ${formatWeight(data.grams, order.words.unit)}).`,
  suggestions,
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const partWithoutDestinationExamples = (): RuleExamples => ({
  valid: [
    exampleOrder(),
    exampleOrder({
      lines: (['haunch', 'shoulder', 'ribs', 'neck', 'loin', 'fillet'] as const).map((target) => exampleLine(target, target, 'mince')),
      instructions: { rest: 'undecided' },
    }),
  ],
  invalid: [
    {
      order: exampleOrder({ instructions: { rest: 'undecided' } }),
      messages: ['Nothing is said yet about the meat of this animal (about 45.4 lb).'],
    },
    {
      order: exampleOrder({
        lines: [exampleLine('a', 'loin', 'whole', { side: 'left' }), exampleLine('b', 'fillet', 'whole'), exampleLine('c', 'topside', 'joint')],
        instructions: { rest: 'undecided' },
      }),
      messages: ['Nothing is said yet about the right loin, both haunches, both shoulders, the neck and the ribs and flank on both sides (about 35.8 lb).'],
    },
    {
      order: exampleOrder({
        lines: [
          exampleLine('a', 'haunch', 'diced', { side: 'right' }),
          exampleLine('b', 'topside', 'joint', { side: 'left' }),
          exampleLine('c', 'fillet', 'whole'),
          exampleLine('d', 'loin', 'whole', { side: 'right' }),
          ...(['shoulder', 'ribs', 'neck'] as const).map((target) => exampleLine(target, target, 'mince')),
        ],
        instructions: { rest: 'undecided' },
      }),
      messages: [
        'Nothing is said about the left loin (about 3.1 lb).',
        'Nothing is said about the rest of the left haunch (about 7.3 lb).',
      ],
    },
    {
      order: exampleOrder({
        lines: (['haunch', 'ribs', 'neck', 'loin', 'fillet'] as const).map((target) => exampleLine(target, target, 'mince')),
        instructions: { rest: 'undecided' },
        words: { country: 'us', unit: 'kg' },
      }),
      messages: ['Nothing is said about both shoulders (about 4.12 kg).'],
    },
    {
      order: exampleOrder({
        lines: [
          exampleLine('f', 'flank', 'mince'),
          exampleLine('s', 'silverside', 'steaks'),
          exampleLine('r', 'rump', 'steaks'),
          exampleLine('t', 'topside', 'joint'),
          exampleLine('c', 'salmon-cut', 'whole'),
          ...(['shoulder', 'neck', 'loin', 'fillet'] as const).map((target) => exampleLine(target, target, 'mince')),
        ],
        instructions: { rest: 'undecided' },
      }),
      messages: [
        'Nothing is said about the hind shank and thick flank on both sides (about 6.4 lb).',
        'Nothing is said about the rib meat on both sides (about 3.3 lb).',
      ],
    },
    {
      order: exampleOrder({ instructions: { rest: 'undecided' }, facts: { form: 'boned-out' } }),
      messages: ['Nothing is said yet about the boned meat (about 45.4 lb).'],
    },
  ],
});
