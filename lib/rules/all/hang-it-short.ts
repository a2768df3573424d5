import { formatWeight } from '@/lib/units';
import { exampleOrder } from '../example-order';
import { PLAIN_TERMS, type RuleExamples, type RuleReason, type RuledOrder, defineRule } from '../rule';

type Short = { readonly why: 'skinned' | 'young'; readonly hangDays: number };

/** Days after which the outside of a skinned carcass is lost to rind, and a small young one only dries. Judgement. */
const MOST_DAYS = { skinned: 3, young: 5 } as const;
const SMALL_HANGING_GRAMS = 25_000;

function short({ plan, circumstances }: RuledOrder): readonly Short[] {
  const hangDays = circumstances.shop.hangDays ?? 0;
  const { facts, hanging } = plan.forecast;
  if (circumstances.form === 'skinned' && hangDays > MOST_DAYS.skinned) return [{ why: 'skinned', hangDays }];
  const isYoung = facts.ageClass === 'young' && hanging.likely < SMALL_HANGING_GRAMS;
  return isYoung && circumstances.form === 'hide-on' && hangDays > MOST_DAYS.young ? [{ why: 'young', hangDays }] : [];
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const hangItShortReason: RuleReason = {
  topic: 'condition',
  why: 'A carcass skinned in the field has a dry crust already, and each day on the rail makes it thicker; it is cut away and thrown out. A fawn or kid is tender as it is and has no fat to keep it moist: long hanging only dries it.',
  source: 'common practice, no source; the days are judgement',
};

export const hangItShort = defineRule<Short>({
  id: 'hang-it-short',
  severity: 'note',
  title: 'A short hanging will do',
  ground: 'trade',
  stages: ['receiving'],
  whom: 'shop',
  check: short,
  keyOf: () => 'hang',
  place: () => ({ kind: 'field', field: 'animal' }),
  part: () => null,
  message: ({ why, hangDays }, { plan, words }) =>
    why === 'skinned'
      ? `It came in skinned, and each of the usual ${hangDays} days dries more of its outside to rind.`
      : `Young, and about ${formatWeight(plan.forecast.hanging.likely, words.unit)} on the rail: it is tender as it is, and ${hangDays} days would only dry it.`,
  noSuggestionBecause: 'It is the shop’s own order of work that changes, not the instructions.',
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const hangItShortExamples = (): RuleExamples => {
  const week = { shop: { ...PLAIN_TERMS, hangDays: 7 } };
  return {
    valid: [
      exampleOrder({ stage: 'receiving', circumstances: week }),
      exampleOrder({ stage: 'receiving', facts: { form: 'skinned' } }),
    ],
    invalid: [
      {
        order: exampleOrder({ stage: 'receiving', facts: { form: 'skinned' }, circumstances: week }),
        messages: ['It came in skinned, and each of the usual 7 days dries more of its outside to rind.'],
      },
      {
        order: exampleOrder({ stage: 'receiving', facts: { ageClass: 'young', speciesId: 'roe-deer', weight: { grams: 10_000, basis: 'hanging' } }, circumstances: week }),
        messages: ['Young, and about 22.0 lb on the rail: it is tender as it is, and 7 days would only dry it.'],
      },
    ],
  };
};
