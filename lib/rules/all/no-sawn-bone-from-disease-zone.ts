import { CUTS, TARGETS, keepsBone } from '@/lib/cuts';
import type { InstructionLine } from '@/lib/instructions';
import { diseaseWords, isSuspect } from '../disease';
import { exampleLine, exampleOrder } from '../example-order';
import { takenOff, withoutItsBone } from '../bone-out';
import { mend } from '../mend';
import { type RuleExamples, type RuleReason, type RuledOrder, type Suggestion, defineRule } from '../rule';
import { lineWords, partOfLine, sentence } from '../wording';

/** A line that takes the saw, or holds the spine, where that may not be. */
type Barred = { readonly line: InstructionLine; readonly how: 'sawn' | 'spine' };

function sawnOrSpinal({ instructions, circumstances }: RuledOrder): readonly Barred[] {
  if (!diseaseWords(circumstances)) return [];
  const { law } = circumstances;
  // While a test is open, and after a bad one, no place's word makes it safe.
  const isOpen = isSuspect(circumstances);
  return instructions.lines.flatMap((line): readonly Barred[] => {
    if (CUTS[line.cut].bone === 'sawn' && (isOpen || law.sawnBoneFromZone === 'not-allowed')) return [{ line, how: 'sawn' }];
    const isSpine = keepsBone(line.cut) && TARGETS[line.target].spinal;
    return isSpine && (isOpen || law.spineFromZone === 'not-allowed') ? [{ line, how: 'spine' }] : [];
  });
}

function suggestions({ line }: Barred, order: RuledOrder): readonly Suggestion[] {
  // A shank needs no saw to be whole, and keeps its bone.
  const closest =
    line.cut === 'shank-slices'
      ? mend(order, {
          label: `${sentence(lineWords({ ...line, cut: 'shank-on-bone' }, order.words))} instead`,
          consequence: 'No saw is used: the shank is freed at the joint.',
          edits: [{ kind: 'set-cut', lineId: line.id, cut: 'shank-on-bone' }],
        })
      : withoutItsBone(line, order);
  return [...closest, ...takenOff(line, order)];
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const noSawnBoneFromDiseaseZoneReason: RuleReason = {
  topic: 'health',
  why: 'Chronic wasting disease gathers in the brain, the spine, the spleen and the lymph nodes. A saw through bone spreads what is in it over the meat and the bench, and the spine itself is what most places forbid to carry. Meat taken off the bone with a knife is the same meat. The local rule and the local authority decide.',
  source: 'Michigan State University Extension, processor protocol, 2022; parts that may move: Missouri 3 CSR 10-4.135',
};

export const noSawnBoneFromDiseaseZone = defineRule<Barred>({
  id: 'no-sawn-bone-from-disease-zone',
  severity: 'stop',
  title: 'No sawn bone and no spine',
  ground: 'safety',
  stages: ['order', 'receiving', 'cutting'],
  check: sawnOrSpinal,
  keyOf: ({ line }) => line.id,
  place: ({ line }) => ({ kind: 'line', lineId: line.id }),
  part: ({ line }) => partOfLine(line),
  cause: ({ line }) => `bone of ${line.id}`,
  message: ({ line, how }, { circumstances, words }) => {
    const animal = diseaseWords(circumstances) ?? '';
    const wish = lineWords(line, words);
    return how === 'sawn'
      ? `No bone is sawn on ${animal}, and ${wish} would take the saw; your local rule decides.`
      : `No spine goes home with ${animal}, and ${wish} would hold it; your local rule decides.`;
  },
  suggestions,
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const noSawnBoneFromDiseaseZoneExamples = (): RuleExamples => ({
  valid: [
    exampleOrder({ lines: [exampleLine('a', 'loin', 'chops'), exampleLine('b', 'neck', 'on-the-bone')] }),
    exampleOrder({
      lines: [exampleLine('a', 'haunch', 'on-the-bone'), exampleLine('b', 'loin', 'medallions')],
      circumstances: { diseaseZone: true },
    }),
    exampleOrder({ lines: [exampleLine('a', 'loin', 'chops')], circumstances: { test: 'negative' } }),
  ],
  invalid: [
    {
      order: exampleOrder({
        lines: [
          exampleLine('a', 'loin', 'chops', { side: 'left' }),
          exampleLine('b', 'neck', 'on-the-bone'),
          exampleLine('c', 'hind-shank', 'shank-slices'),
          exampleLine('d', 'rib-rack', 'rack'),
        ],
        circumstances: { diseaseZone: true },
      }),
      messages: [
        'No bone is sawn on an animal from a disease zone, and left loin chops on the bone would take the saw; your local rule decides.',
        'No spine goes home with an animal from a disease zone, and neck whole on the bone would hold it; your local rule decides.',
        'No bone is sawn on an animal from a disease zone, and hind shank in sawn slices would take the saw; your local rule decides.',
        'No bone is sawn on an animal from a disease zone, and rib rack on the bone would take the saw; your local rule decides.',
      ],
    },
    {
      order: exampleOrder({ lines: [exampleLine('a', 'saddle', 'on-the-bone')], circumstances: { test: 'pending' } }),
      messages: ['No spine goes home with an animal whose disease test is not back, and saddle whole on the bone would hold it; your local rule decides.'],
    },
    {
      order: exampleOrder({
        lines: [exampleLine('a', 'loin', 'chops')],
        circumstances: { diseaseZone: true, test: 'positive' },
        words: { country: 'us', unit: 'lb' },
      }),
      messages: ['No bone is sawn on an animal that tested positive, and backstrap bone-in chops would take the saw; your local rule decides.'],
    },
  ],
});
