import { diseaseWords, isSuspect } from '../disease';
import { PLAIN_INSTRUCTIONS } from '@/lib/instructions';
import { exampleOrder } from '../example-order';
import { mend } from '../mend';
import { type RuleExamples, type RuleReason, type RuledOrder, type Suggestion, defineRule } from '../rule';

type Carried = 'bones' | 'head' | 'plate';

const WORDS: Readonly<Record<Carried, string>> = { bones: 'Bones do', head: 'A whole head does', plate: 'A skull plate does' };

const { keep: KEPT } = PLAIN_INSTRUCTIONS;

function carried({ instructions, circumstances }: RuledOrder): readonly Carried[] {
  if (!diseaseWords(circumstances)) return [];
  const { bones, antlers } = instructions.keep;
  const { law } = circumstances;
  const isOpen = isSuspect(circumstances);
  return [
    ...(bones && (isOpen || law.looseBonesFromZone === 'not-allowed') ? ['bones' as const] : []),
    ...(antlers === 'whole-head' && (isOpen || law.headFromZone !== 'allowed') ? ['head' as const] : []),
    ...(antlers === 'skull-plate' && law.headFromZone === 'not-allowed' ? ['plate' as const] : []),
  ];
}

function suggestions(what: Carried, order: RuledOrder): readonly Suggestion[] {
  if (what === 'bones') {
    return mend(order, {
      label: 'No bones',
      consequence: 'The bones stay here and are disposed of as the local rule says.',
      edits: [{ kind: 'set-keep', item: 'bones', keep: false }],
    });
  }
  const plate = mend(order, {
    label: 'Antlers on a cleaned skull plate',
    consequence: 'The antlers come home on bone cleaned of all tissue; the rest of the head stays here.',
    edits: [{ kind: 'set-antlers', antlers: 'skull-plate' }],
  });
  const none = mend(order, {
    label: 'Leave the head',
    consequence: 'The whole head stays here and is disposed of as the local rule says.',
    edits: [{ kind: 'set-antlers', antlers: 'none' }],
  });
  const { sex, law } = order.circumstances;
  return sex === 'female' || what === 'plate' || law.headFromZone === 'not-allowed' ? none : [...plate, ...none];
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const noBonesHomeFromDiseaseZoneReason: RuleReason = {
  topic: 'health',
  why: 'Chronic wasting disease is carried in brain, spine and marrow, and most places let only boned meat, a hide without its head and antlers on a cleaned skull plate leave a disease zone. A bone given to a dog or thrown behind a barn can bring it to a new place. The local rule and the local authority decide.',
  source: 'parts that may move: Missouri 3 CSR 10-4.135; Michigan State University Extension, 2022',
};

export const noBonesHomeFromDiseaseZone = defineRule<Carried>({
  id: 'no-bones-home-from-disease-zone',
  severity: 'stop',
  title: 'No bones and no head',
  ground: 'safety',
  stages: ['order', 'receiving', 'cutting'],
  check: carried,
  keyOf: (what) => what,
  place: () => ({ kind: 'field', field: 'keep' }),
  part: () => null,
  cause: (what) => `${what} to keep`,
  message: (what, { circumstances }) =>
    `${WORDS[what]} not go home with ${diseaseWords(circumstances) ?? ''}; your local rule decides.`,
  suggestions,
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const noBonesHomeFromDiseaseZoneExamples = (): RuleExamples => ({
  valid: [
    exampleOrder({ instructions: { keep: { ...KEPT, bones: true, antlers: 'whole-head' } } }),
    exampleOrder({ instructions: { keep: { ...KEPT, antlers: 'skull-plate' } }, circumstances: { diseaseZone: true } }),
  ],
  invalid: [
    {
      order: exampleOrder({
        instructions: { keep: { ...KEPT, bones: true, antlers: 'whole-head' } },
        facts: { sex: 'male' },
        circumstances: { diseaseZone: true },
      }),
      messages: [
        'Bones do not go home with an animal from a disease zone; your local rule decides.',
        'A whole head does not go home with an animal from a disease zone; your local rule decides.',
      ],
    },
    {
      order: exampleOrder({ instructions: { keep: { ...KEPT, antlers: 'whole-head' } }, circumstances: { test: 'pending' } }),
      messages: ['A whole head does not go home with an animal whose disease test is not back; your local rule decides.'],
    },
  ],
});
