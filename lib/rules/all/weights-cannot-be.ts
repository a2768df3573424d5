import { keepsBone } from '@/lib/cuts';
import { formatWeight } from '@/lib/units';
import { exampleLine, exampleOrder } from '../example-order';
import { type RuleExamples, type RuleReason, type RuledOrder, defineRule } from '../rule';

/** Two weighings of which the later is more than the earlier can give. Grams. */
type Impossible = { readonly what: 'hanging' | 'packed' | 'boneless'; readonly grams: number; readonly of: number };

/**
 * The most of a hanging four-legged carcass that leaves it without a bone. Judgement: of a lean fallow deer, the most our
 * forecasts give, fewer than one in ten thousand lie above it.
 */
const MOST_BONELESS_PER_100 = 85;

function impossible({ instructions, plan, circumstances: { weights } }: RuledOrder): readonly Impossible[] {
  const { brought, hangingGrams, ownPackedGrams } = weights;
  if (hangingGrams !== null && brought !== null && brought.basis !== 'boneless' && hangingGrams > brought.grams) {
    return [{ what: 'hanging', grams: hangingGrams, of: brought.grams }];
  }
  const from = hangingGrams ?? brought?.grams ?? null;
  if (ownPackedGrams === null || from === null) return [];
  if (ownPackedGrams > from) return [{ what: 'packed', grams: ownPackedGrams, of: from }];
  const isBoneless = hangingGrams !== null && plan.forecast.species.plan === 'four-legged' && !instructions.lines.some(({ cut }) => keepsBone(cut));
  return isBoneless && ownPackedGrams * 100 > from * MOST_BONELESS_PER_100 ? [{ what: 'boneless', grams: ownPackedGrams, of: from }] : [];
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const weightsCannotBeReason: RuleReason = {
  topic: 'packing-and-bill',
  why: 'An animal only ever gets lighter: gutted, skinned, hung, boned, trimmed, packed. Where a later weight is more than an earlier one can give, a scale was read wrong, a tare forgotten, or somebody else’s meat is in the tub. Found at the table it is weighed again in a minute; found on the bill it costs the customer’s trust.',
  source: 'mass is conserved; boneless at most 85 percent of hanging: common practice, no source',
};

export const weightsCannotBe = defineRule<Impossible>({
  id: 'weights-cannot-be',
  severity: 'stop',
  title: 'More out than in',
  ground: 'safety',
  stages: ['receiving', 'cutting', 'packing'],
  whom: 'shop',
  check: impossible,
  keyOf: ({ what }) => what,
  place: () => ({ kind: 'field', field: 'animal' }),
  part: () => null,
  message: ({ what, grams, of }, { words: { unit } }) => {
    const [later, earlier] = [formatWeight(grams, unit), formatWeight(of, unit)];
    switch (what) {
      case 'hanging':
        return `${later} on the rail is more than the ${earlier} it came in with: weigh it again.`;
      case 'packed':
        return `${later} of its own meat is packed, ${formatWeight(grams - of, unit)} more than the ${earlier} that hung: look for a wrong lug, or weigh again.`;
      case 'boneless':
        return `${later} without a bone is more than ${earlier} on the rail can give: look for a wrong lug, or weigh again.`;
    }
  },
  noSuggestionBecause: 'Only the scale can answer.',
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const weightsCannotBeExamples = (): RuleExamples => {
  const weights = { brought: { grams: 45_359, basis: 'field-dressed' }, hangingGrams: 30_000, ownPackedGrams: null } as const;
  return {
    valid: [
      exampleOrder({ stage: 'receiving', circumstances: { weights } }),
      exampleOrder({ stage: 'packing', circumstances: { weights: { ...weights, ownPackedGrams: 20_000 } } }),
      exampleOrder({ stage: 'packing', lines: [exampleLine('a', 'haunch', 'on-the-bone')], circumstances: { weights: { ...weights, ownPackedGrams: 26_000 } } }),
    ],
    invalid: [
      {
        order: exampleOrder({ stage: 'receiving', circumstances: { weights: { ...weights, hangingGrams: 46_000 } } }),
        messages: ['101.4 lb on the rail is more than the 100.0 lb it came in with: weigh it again.'],
      },
      {
        order: exampleOrder({ stage: 'packing', circumstances: { weights: { ...weights, ownPackedGrams: 35_443 } } }),
        messages: ['78.1 lb of its own meat is packed, 12.0 lb more than the 66.1 lb that hung: look for a wrong lug, or weigh again.'],
      },
      {
        order: exampleOrder({ stage: 'packing', circumstances: { weights: { ...weights, ownPackedGrams: 27_000 } } }),
        messages: ['59.5 lb without a bone is more than 66.1 lb on the rail can give: look for a wrong lug, or weigh again.'],
      },
    ],
  };
};
