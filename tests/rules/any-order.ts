import fc from 'fast-check';
import { type AnimalFacts, CONDITIONS, forecastCarcass, PUBLISHED_SPECIES, SHOT_WITH } from '@/lib/carcass';
import { NAME_COUNTRIES } from '@/lib/cuts';
import { ALLERGENS, type Instructions, PRODUCT_IDS } from '@/lib/instructions';
import { LAW_CHOICES, type LawPoints } from '@/lib/law';
import { planOrder } from '@/lib/plan';
import { type Circumstances, PLAIN_CIRCUMSTANCES, type RuledOrder, type ShopTerms, STAGES, TEST_STATES } from '@/lib/rules';
import { anyFacts } from '../carcass/any-facts';
import { anyInstructions } from '../instructions/any-instructions';

type Around = Pick<RuledOrder, 'stage' | 'words'> & Pick<Circumstances, 'diseaseZone' | 'test'> & Partial<Circumstances>;

/** An order of these instructions for this animal, planned. */
export function orderOf(instructions: Instructions, facts: AnimalFacts, around: Around): RuledOrder {
  const { stage, words, ...circumstances } = around;
  return {
    stage,
    words,
    instructions,
    plan: planOrder(instructions, forecastCarcass(facts, PUBLISHED_SPECIES)),
    circumstances: { ...PLAIN_CIRCUMSTANCES, ...circumstances, sex: facts.sex, form: facts.form },
  };
}

const anyTerms: fc.Arbitrary<ShopTerms> = fc.record({
  hangDays: fc.constantFrom(null, 2, 7, 21),
  mixedOnly: fc.subarray([...PRODUCT_IDS]),
  allergens: fc.dictionary(fc.constantFrom(...PRODUCT_IDS), fc.subarray([...ALLERGENS])),
  plainDays: fc.constantFrom(null, 0, 7),
  madeDays: fc.constantFrom(null, 3, 28),
  madeUntil: fc.constantFrom(null, '2026-10-01', '2027-01-15'),
  mostFatPercent: fc.constantFrom(20, 30),
});

const anyLaw: fc.Arbitrary<LawPoints> = fc.record({
  sawnBoneFromZone: fc.constantFrom(...LAW_CHOICES.sawnBoneFromZone),
  spineFromZone: fc.constantFrom(...LAW_CHOICES.spineFromZone),
  looseBonesFromZone: fc.constantFrom(...LAW_CHOICES.looseBonesFromZone),
  headFromZone: fc.constantFrom(...LAW_CHOICES.headFromZone),
  overBorder: fc.constantFrom(...LAW_CHOICES.overBorder),
  pooling: fc.constantFrom(...LAW_CHOICES.pooling),
  testWanted: fc.constantFrom(...LAW_CHOICES.testWanted),
  trichinellaTest: fc.constantFrom(...LAW_CHOICES.trichinellaTest),
  coldCelsiusTenths: fc.constantFrom(50, 70),
  keepRecordDays: fc.constant(366),
});

const grams = fc.option(fc.integer({ min: 1, max: 90_000 }));

const anyCircumstances: fc.Arbitrary<Partial<Circumstances>> = fc.record({
  conditions: fc.subarray([...CONDITIONS]),
  shotWith: fc.constantFrom(...SHOT_WITH),
  killedDaysAgo: fc.constantFrom(null, 0, 2, 30),
  celsiusTenths: fc.constantFrom(null, 30, 150),
  hunterName: fc.constantFrom('', 'Edda Nyberg', 'Edda & Jonas Nyberg', 'Edda and Mirela and Jonas', ' & ', '🦌 / 🔪'),
  killedBy: fc.constantFrom('', 'Jonas Tveit'),
  hasTransferNote: fc.boolean(),
  weights: fc.record({ brought: fc.option(fc.record({ grams: fc.integer({ min: 1, max: 90_000 }), basis: fc.constantFrom('field-dressed', 'boneless') })), hangingGrams: grams, ownPackedGrams: grams }),
  today: fc.constantFrom(null, '2026-11-25'),
  shop: anyTerms,
  law: anyLaw,
});

/** Any order the rules can be asked about, at any stage. */
export const anyOrder: fc.Arbitrary<RuledOrder> = fc
  .tuple(
    anyInstructions,
    anyFacts,
    anyCircumstances,
    fc.record({
      stage: fc.constantFrom(...STAGES),
      words: fc.record({ country: fc.constantFrom(...NAME_COUNTRIES), unit: fc.constantFrom('lb', 'kg') }),
      diseaseZone: fc.boolean(),
      test: fc.constantFrom(...TEST_STATES),
    }),
  )
  .map(([instructions, facts, circumstances, around]) => orderOf(instructions, facts, { ...circumstances, ...around }));
