import { type PartPlace, readTissueKey } from '@/lib/carcass';
import { formatWeight } from '@/lib/units';
import { exampleOrder } from '../example-order';
import { type RuleExamples, type RuleReason, type RuledOrder, defineRule } from '../rule';
import { partsNoun, sentence } from '../wording';

type Lost = { readonly wounds: readonly PartPlace[]; readonly lostGrams: number; readonly meatGrams: number };

/** Below this share of its meat nobody is told; judgement. */
const WORTH_TELLING_PER_100 = 4;

function lost({ plan }: RuledOrder): readonly Lost[] {
  const muscles = plan.forecast.tissues.filter(({ key }) => readTissueKey(key).kind === 'muscle');
  const lostGrams = muscles.reduce((sum, { woundGrams }) => sum + woundGrams, 0);
  const meatGrams = muscles.reduce((sum, { grams }) => sum + grams, 0);
  const { wounds } = plan.forecast.facts;
  return wounds.length > 0 && lostGrams * 100 >= meatGrams * WORTH_TELLING_PER_100 ? [{ wounds, lostGrams, meatGrams }] : [];
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const woundsCostMeatReason: RuleReason = {
  topic: 'condition',
  why: 'A hit part loses what is bruised, full of hair or splintered, from a trim round the hole to the whole part. That meat cannot be given out, so everything cut from the animal is a little less; it is better to hear it before the cutting than to wonder after it.',
  source: 'the forecast of this animal: 15, 50 or 100 percent of a part hit lightly, heavily or lost, judgement; 13.9 percent of shot antelope as a whole, CHEV1971',
};

export const woundsCostMeat = defineRule<Lost>({
  id: 'wounds-cost-meat',
  severity: 'note',
  title: 'What the wounds cost',
  ground: 'trade',
  stages: ['receiving', 'cutting'],
  check: lost,
  keyOf: () => 'wounds',
  place: () => ({ kind: 'field', field: 'animal' }),
  part: () => null,
  message: ({ wounds, lostGrams, meatGrams }, { words }) =>
    `${sentence(partsNoun(wounds, words).text)}: the wounds cost about ${formatWeight(lostGrams, words.unit)} of ${formatWeight(meatGrams, words.unit)} of meat.`,
  noSuggestionBecause: 'It is what happened; the forecast reckons with it.',
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const woundsCostMeatExamples = (): RuleExamples => ({
  valid: [exampleOrder({ stage: 'receiving' }), exampleOrder({ stage: 'receiving', facts: { wounds: [{ part: 'neck', place: 'middle', severity: 'light' }] } })],
  invalid: [
    {
      order: exampleOrder({
        stage: 'receiving',
        facts: { wounds: [{ part: 'shoulder', place: 'left', severity: 'heavy' }, { part: 'shoulder', place: 'right', severity: 'heavy' }] },
      }),
      messages: ['Both shoulders: the wounds cost about 4.5 lb of 45.4 lb of meat.'],
    },
  ],
});
