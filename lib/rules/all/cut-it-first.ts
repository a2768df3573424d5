import { exampleOrder } from '../example-order';
import { PLAIN_TERMS, type RuleExamples, type RuleReason, type RuledOrder, defineRule } from '../rule';
import { joined } from '../wording';

type Hurry = { readonly why: readonly string[]; readonly hangDays: number };

/** Up to so many days nobody counts; judgement. */
const SOON_DAYS = 2;

function hurry({ plan, circumstances: { conditions, shop } }: RuledOrder): readonly Hurry[] {
  const hangDays = shop.hangDays ?? 0;
  if (hangDays <= SOON_DAYS || conditions.includes('sour')) return [];
  const why = [
    ...(plan.forecast.facts.gutShot ? ['gut-shot'] : []),
    ...(['dirty', 'wet', 'warm'] as const).filter((condition) => conditions.includes(condition)),
  ];
  return why.length > 0 ? [{ why, hangDays }] : [];
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const cutItFirstReason: RuleReason = {
  topic: 'condition',
  why: 'Hanging makes clean, dry, cold meat tender. On meat that was soiled, wet or warm the same days are days for whatever is on it to grow. Such an animal is skinned, cleaned, chilled and cut before the others.',
  source: 'MSU Extension and Wyoming: ageing at 34 to 37 F, clean carcasses only; the rest common practice, no source',
};

export const cutItFirst = defineRule<Hurry>({
  id: 'cut-it-first',
  severity: 'ask',
  title: 'Not one to hang',
  ground: 'safety',
  stages: ['receiving'],
  whom: 'shop',
  check: hurry,
  keyOf: () => 'hang',
  place: () => ({ kind: 'field', field: 'animal' }),
  part: () => null,
  message: ({ why, hangDays }) => `It came in ${joined(why)}: cut it first rather than after the usual ${hangDays} days.`,
  noSuggestionBecause: 'It is the shop’s own order of work that changes, not the instructions.',
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const cutItFirstExamples = (): RuleExamples => {
  const shop = { ...PLAIN_TERMS, hangDays: 7 };
  return {
    valid: [
      exampleOrder({ stage: 'receiving', circumstances: { conditions: ['clean'], shop } }),
      exampleOrder({ stage: 'receiving', circumstances: { conditions: ['wet'] } }),
    ],
    invalid: [
      {
        order: exampleOrder({ stage: 'receiving', facts: { gutShot: true }, circumstances: { conditions: ['gut-shot', 'warm'], shop } }),
        messages: ['It came in gut-shot and warm: cut it first rather than after the usual 7 days.'],
      },
    ],
  };
};
