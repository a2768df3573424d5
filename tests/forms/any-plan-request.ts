import fc from 'fast-check';
import { type AnimalFacts, PUBLISHED_SPECIES, impliedLiveGrams, speciesOf } from '@/lib/carcass';
import { targetsOfPlan } from '@/lib/cuts';
import { toldInstructions, type PlanRequest } from '@/lib/forms';
import type { Instructions } from '@/lib/instructions';
import { STAGES, TEST_STATES } from '@/lib/rules';
import { anyFacts } from '../carcass/any-facts';
import { anyInstructions } from '../instructions/any-instructions';

/** Any request that another program can rightly make, with nothing left out: an animal that can be, and a wish for its body. */
export const anyPlanRequest: fc.Arbitrary<PlanRequest> = fc
  .record({
    facts: anyFacts,
    instructions: anyInstructions,
    stage: fc.constantFrom(...STAGES),
    diseaseZone: fc.boolean(),
    test: fc.constantFrom(...TEST_STATES),
    words: fc.record({ country: fc.constantFrom('us' as const, 'uk' as const), unit: fc.constantFrom('lb' as const, 'kg' as const) }, { requiredKeys: [] }),
  })
  .map(({ facts, instructions, stage, diseaseZone, test, words }) => ({
    animal: { ...usual, ...facts, weight: plausible(facts), diseaseZone, test } as PlanRequest['animal'],
    instructions: forBody(instructions, facts),
    stage,
    words,
  }));

const usual = { girthMm: null, gutShot: false, flesh: 'usual', hung: null, closeTrim: false };

/** The weight, where the species can have it. */
function plausible({ speciesId, weight }: AnimalFacts): AnimalFacts['weight'] {
  const species = speciesOf(PUBLISHED_SPECIES, speciesId);
  const { from, to } = species.plausibleLiveGrams;
  const live = weight ? impliedLiveGrams(species, weight.grams, weight.basis) : 0;
  return live >= from && live <= to ? weight : null;
}

/** The wish without the note, which no program sends, and without lines for another body. */
function forBody(instructions: Instructions, { speciesId }: AnimalFacts): PlanRequest['instructions'] {
  const targets = targetsOfPlan(speciesOf(PUBLISHED_SPECIES, speciesId).plan);
  const { lines, ...rest } = toldInstructions(instructions);
  return { ...rest, lines: lines.filter(({ target }) => targets.includes(target)) };
}
