import { type Range, formatWeight } from '@/lib/units';
import { exampleLine, exampleOrder } from '../example-order';
import { type RuleExamples, type RuleReason, type RuledOrder, defineRule } from '../rule';

type Scraps = { readonly cuts: number; readonly hanging: Range };

/** Judgement: below this a carcass is cut to a simple plan. */
const SMALL_HANGING_GRAMS = 20_000;
const MOST_CUTS = 6;

function scraps({ instructions, plan }: RuledOrder): readonly Scraps[] {
  const cuts = new Set(
    instructions.lines
      .filter(({ cut }) => cut !== 'mince' && cut !== 'leave-out')
      .map(({ target, cut }) => `${target} ${cut}`),
  ).size;
  return cuts > MOST_CUTS && plan.forecast.hanging.likely < SMALL_HANGING_GRAMS ? [{ cuts, hanging: plan.forecast.hanging }] : [];
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const smallAnimalManyCutsReason: RuleReason = {
  topic: 'cutting',
  why: 'Every cut has its own trim and its own packets, and on a small animal some of them come out at a handful. Loins and leg muscles whole, the rest minced or diced, gives more on the plate; but it can all be done.',
  source: 'common practice, no source; where it begins is judgement',
};

export const smallAnimalManyCuts = defineRule<Scraps>({
  id: 'small-animal-many-cuts',
  severity: 'note',
  title: 'Many cuts from a small animal',
  ground: 'trade',
  stages: ['order', 'receiving', 'cutting'],
  check: scraps,
  keyOf: () => 'cuts',
  place: () => ({ kind: 'field', field: 'rest' }),
  part: () => null,
  message: ({ cuts, hanging }, { words }) =>
    `${cuts} different cuts from about ${formatWeight(hanging.likely, words.unit)} on the rail make some very small packets.`,
  noSuggestionBecause: 'It can be cut as asked; which of the cuts matters least only the hunter knows.',
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const smallAnimalManyCutsExamples = (): RuleExamples => ({
  valid: [
    exampleOrder({ lines: manyLines() }),
    exampleOrder({ lines: manyLines().slice(1), facts: { speciesId: 'roe-deer', weight: null } }),
  ],
  invalid: [
    {
      order: exampleOrder({ lines: manyLines(), facts: { speciesId: 'roe-deer', weight: null } }),
      messages: ['7 different cuts from about 30.9 lb on the rail make some very small packets.'],
    },
  ],
});

function manyLines(): readonly ReturnType<typeof exampleLine>[] {
  return [
    exampleLine('a', 'loin', 'medallions'),
    exampleLine('b', 'fillet', 'whole'),
    exampleLine('c', 'topside', 'joint'),
    exampleLine('d', 'rump', 'steaks'),
    exampleLine('e', 'silverside', 'tenderised-steaks'),
    exampleLine('f', 'hind-shank', 'shank-on-bone'),
    exampleLine('g', 'neck', 'diced'),
    exampleLine('h', 'ribs', 'mince'),
  ];
}
