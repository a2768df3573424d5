import fc from 'fast-check';
import { type AnimalFacts, forecastCarcass, PUBLISHED_SPECIES } from '@/lib/carcass';
import { NAME_COUNTRIES } from '@/lib/cuts';
import { type Instructions } from '@/lib/instructions';
import { planOrder } from '@/lib/plan';
import { PLAIN_CIRCUMSTANCES, type RuledOrder, STAGES, TEST_STATES } from '@/lib/rules';
import { anyFacts } from '../carcass/any-facts';
import { anyInstructions } from '../instructions/any-instructions';

type Around = Pick<RuledOrder, 'stage' | 'words'> & Pick<RuledOrder['circumstances'], 'diseaseZone' | 'test'>;

/** An order of these instructions for this animal, planned. */
export function orderOf(instructions: Instructions, facts: AnimalFacts, around: Around): RuledOrder {
  const { stage, words, diseaseZone, test } = around;
  return {
    stage,
    words,
    instructions,
    plan: planOrder(instructions, forecastCarcass(facts, PUBLISHED_SPECIES)),
    circumstances: { ...PLAIN_CIRCUMSTANCES, diseaseZone, test, sex: facts.sex, form: facts.form },
  };
}

/** Any order the rules can be asked about, at any stage. */
export const anyOrder: fc.Arbitrary<RuledOrder> = fc
  .tuple(
    anyInstructions,
    anyFacts,
    fc.record({
      stage: fc.constantFrom(...STAGES),
      words: fc.record({ country: fc.constantFrom(...NAME_COUNTRIES), unit: fc.constantFrom('lb', 'kg') }),
      diseaseZone: fc.boolean(),
      test: fc.constantFrom(...TEST_STATES),
    }),
  )
  .map(([instructions, facts, around]) => orderOf(instructions, facts, around));
