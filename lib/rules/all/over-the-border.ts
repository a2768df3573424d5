import { keepsBone, TARGETS } from '@/lib/cuts';
import { type InstructionLine, PLAIN_INSTRUCTIONS } from '@/lib/instructions';
import { CAREFUL } from '@/lib/law';
import { withoutItsBone } from '../bone-out';
import { isBoneMissing, missingPlaces } from '../delivered';
import { exampleLine, exampleOrder } from '../example-order';
import { mend } from '../mend';
import { type RuleExamples, type RuleReason, type RuledOrder, type Suggestion, defineRule } from '../rule';
import { lineWords, partOfLine } from '../wording';

/** What may not cross a border: a cut on the bone, loose bones, or a head. */
type Held = { readonly of: 'line'; readonly line: InstructionLine } | { readonly of: 'bones' } | { readonly of: 'head' };

function held(order: RuledOrder): readonly Held[] {
  const { instructions, circumstances, plan } = order;
  const { overBorder: limit } = circumstances.law;
  // What is carried there is about deer and their kind; a bird has no spine anybody looks for.
  if (!instructions.overBorder || limit === 'anything' || plan.forecast.species.plan === 'bird') return [];
  const isBarred = (line: InstructionLine): boolean => keepsBone(line.cut) && (limit === 'boned-and-clean-plate-only' || TARGETS[line.target].spinal);
  const lines = instructions.lines
    .filter((line) => isBarred(line) && missingPlaces(line, order).length === 0 && !isBoneMissing(line, order))
    .map((line): Held => ({ of: 'line', line }));
  return [
    ...lines,
    ...(instructions.keep.bones ? [{ of: 'bones' } as const] : []),
    ...(instructions.keep.antlers === 'whole-head' ? [{ of: 'head' } as const] : []),
  ];
}

function suggestions(data: Held, order: RuledOrder): readonly Suggestion[] {
  const stays = mend(order, {
    label: 'It stays on this side',
    consequence: 'Taken off: over the border. What is written stays as it is.',
    edits: [{ kind: 'set-over-border', overBorder: false }],
  });
  if (data.of === 'bones') {
    return [...mend(order, { label: 'No bones', consequence: 'The bones stay here.', edits: [{ kind: 'set-keep', item: 'bones', keep: false }] }), ...stays];
  }
  if (data.of === 'head') {
    const to = order.circumstances.sex === 'female' ? 'none' : 'skull-plate';
    return [
      ...mend(order, {
        label: to === 'none' ? 'Leave the head' : 'Antlers on a cleaned skull plate',
        consequence: to === 'none' ? 'The whole head stays here.' : 'Bone cleaned of all tissue; the rest of the head stays here.',
        edits: [{ kind: 'set-antlers', antlers: to }],
      }),
      ...stays,
    ];
  }
  return [...withoutItsBone(data.line, order), ...stays];
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const overTheBorderReason: RuleReason = {
  topic: 'paper-and-law',
  why: 'Many states and countries let deer and their kind come in only as boned or wrapped meat, a hide without its head, antlers on a cleaned skull plate and finished mounts, so that no disease travels with brain and spine. It is checked on the road. The rule of the place you go to counts as well as that of the place you come from; look it up, or ask its wildlife authority.',
  source: 'parts that may move: Missouri 3 CSR 10-4.135 and near-identical elsewhere; what this shop goes by is on its page of the law',
};

export const overTheBorder = defineRule<Held>({
  id: 'over-the-border',
  severity: 'stop',
  title: 'Not over the border like this',
  ground: 'law',
  stages: ['order', 'receiving', 'cutting'],
  check: held,
  keyOf: (data) => (data.of === 'line' ? data.line.id : data.of),
  place: (data) => (data.of === 'line' ? { kind: 'line', lineId: data.line.id } : { kind: 'field', field: 'keep' }),
  part: (data) => (data.of === 'line' ? partOfLine(data.line) : null),
  cause: (data) => (data.of === 'line' ? `bone of ${data.line.id}` : `${data.of} to keep`),
  message: (data, { words }) => {
    if (data.of === 'bones') return 'You take it over a border, and loose bones may not cross it; the rules of both places decide.';
    if (data.of === 'head') return 'You take it over a border, and a whole head may not cross it; the rules of both places decide.';
    return `You take it over a border, and ${lineWords(data.line, words)} may not cross it; the rules of both places decide.`;
  },
  suggestions,
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const overTheBorderExamples = (): RuleExamples => {
  const keep = { ...PLAIN_INSTRUCTIONS.keep, bones: true, antlers: 'whole-head' } as const;
  const lines = [exampleLine('a', 'loin', 'chops'), exampleLine('b', 'haunch', 'on-the-bone', { side: 'left' })];
  const law = { ...CAREFUL.points, overBorder: 'no-spine-no-head' } as const;
  return {
    valid: [
      exampleOrder({ lines, instructions: { keep }, facts: { sex: 'male' } }),
      exampleOrder({ lines: [exampleLine('a', 'loin', 'medallions')], instructions: { overBorder: true } }),
      exampleOrder({ lines, instructions: { overBorder: true }, circumstances: { law: { ...law, overBorder: 'anything' } } }),
    ],
    invalid: [
      {
        order: exampleOrder({ lines, instructions: { overBorder: true, keep }, facts: { sex: 'male' } }),
        messages: [
          'You take it over a border, and loin chops on the bone may not cross it; the rules of both places decide.',
          'You take it over a border, and left haunch whole on the bone may not cross it; the rules of both places decide.',
          'You take it over a border, and loose bones may not cross it; the rules of both places decide.',
          'You take it over a border, and a whole head may not cross it; the rules of both places decide.',
        ],
      },
      {
        order: exampleOrder({ lines, instructions: { overBorder: true }, circumstances: { law } }),
        messages: ['You take it over a border, and loin chops on the bone may not cross it; the rules of both places decide.'],
      },
    ],
  };
};
