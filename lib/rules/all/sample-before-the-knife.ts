import { CAREFUL } from '@/lib/law';
import { exampleOrder } from '../example-order';
import { mayCarryTrichinella } from '../mixing';
import { type RuleExamples, type RuleReason, type RuledOrder, defineRule } from '../rule';

type Wanted = { readonly for: 'wasting-disease' | 'trichinella'; readonly head: boolean };

function wanted({ circumstances, plan, instructions }: RuledOrder): readonly Wanted[] {
  const { law, test, diseaseZone } = circumstances;
  const { facts, species } = plan.forecast;
  if (test !== 'none' || species.plan === 'bird') return [];
  const head = instructions.keep.cape || instructions.keep.antlers !== 'none';
  if (mayCarryTrichinella(species)) return law.trichinellaTest === 'wanted' ? [{ for: 'trichinella', head }] : [];
  const isGrown = facts.ageClass !== 'young';
  const isWanted = law.testWanted === 'all-from-zone' || (law.testWanted === 'adults-from-zone' && isGrown);
  return diseaseZone && isWanted ? [{ for: 'wasting-disease', head }] : [];
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const sampleBeforeTheKnifeReason: RuleReason = {
  topic: 'paper-and-law',
  why: 'The sample for chronic wasting disease is taken from the lymph nodes of the throat and from the brain stem, the one for trichinella from the diaphragm or the tongue. Once head and carcass are apart, skinned or mounted, it is hard to take and easy to mix up. So it is taken first, numbered, and the animal waits whole for the result. Your local code decides which animals.',
  source: 'test before eating: CDC; hold until the result: Michigan State University Extension, 2022; where a sample is taken: from memory; boar: (EC) 853/2004, Annex III, Section IV; what this shop goes by is on its page of the law',
};

export const sampleBeforeTheKnife = defineRule<Wanted>({
  id: 'sample-before-the-knife',
  severity: 'ask',
  title: 'A sample first',
  ground: 'law',
  stages: ['receiving', 'cutting'],
  whom: 'shop',
  check: wanted,
  keyOf: ({ for: disease }) => disease,
  place: () => ({ kind: 'field', field: 'animal' }),
  part: () => null,
  message: ({ for: disease, head }, { plan }) =>
    disease === 'trichinella'
      ? `No sample of this ${plan.forecast.species.name} is written down: take one for trichinella${head ? ', before head and cape are touched,' : ''} and write its number.`
      : `It is from a disease zone and no sample is written down: take one${head ? ', before head and cape are touched,' : ''} and write its number.`,
  noSuggestionBecause: 'The sample is taken by hand; its number is written at receiving.',
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const sampleBeforeTheKnifeExamples = (): RuleExamples => {
  const law = { ...CAREFUL.points, testWanted: 'adults-from-zone', trichinellaTest: 'wanted' } as const;
  return {
    valid: [
      exampleOrder({ stage: 'receiving', circumstances: { law } }),
      exampleOrder({ stage: 'receiving', circumstances: { law, diseaseZone: true, test: 'pending' } }),
      exampleOrder({ stage: 'receiving', facts: { ageClass: 'young' }, circumstances: { law, diseaseZone: true } }),
      exampleOrder({ stage: 'receiving', circumstances: { law: { ...law, testWanted: 'never' }, diseaseZone: true } }),
    ],
    invalid: [
      {
        order: exampleOrder({ stage: 'receiving', circumstances: { law, diseaseZone: true } }),
        messages: ['It is from a disease zone and no sample is written down: take one and write its number.'],
      },
      {
        order: exampleOrder({ stage: 'receiving', facts: { speciesId: 'wild-boar' }, circumstances: { law } }),
        messages: ['No sample of this wild boar is written down: take one for trichinella and write its number.'],
      },
    ],
  };
};
