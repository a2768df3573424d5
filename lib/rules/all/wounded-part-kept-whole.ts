import { type PartPlace, type Place, readTissueKey } from '@/lib/carcass';
import { type CutId, cutsOf, cutName } from '@/lib/cuts';
import type { Edit, InstructionLine } from '@/lib/instructions';
import { claimsOf } from '@/lib/plan';
import { isBoneMissing, isNamelessMeat, missingPlaces, soundSide } from '../delivered';
import { exampleLine, exampleOrder } from '../example-order';
import { mend } from '../mend';
import { type RuleExamples, type RuleReason, type RuledOrder, type Suggestion, defineRule } from '../rule';
import { lineWords, partOfLine, partsNoun, sentence } from '../wording';

/** A line that keeps a hit part whole, or cuts one that is lost altogether. */
type Hit = {
  readonly line: InstructionLine;
  readonly places: readonly Place[];
  readonly keys: ReturnType<typeof claimsOf>;
  readonly isLost: boolean;
};

const KEPT_WHOLE: readonly CutId[] = ['on-the-bone', 'boned-and-rolled', 'joint', 'whole', 'portions', 'rack'];
const ANYWAY: readonly CutId[] = ['diced', 'mince', 'leave-out'];

function hits(order: RuledOrder): readonly Hit[] {
  const { wounds } = order.plan.forecast.facts;
  const present = new Set(order.plan.forecast.tissues.map(({ key }) => key));
  return order.instructions.lines.flatMap((line) => {
    if (missingPlaces(line, order).length > 0 || isBoneMissing(line, order) || isNamelessMeat(line, order)) return [];
    const claimed = claimsOf(line).filter((key) => readTissueKey(key).kind === 'muscle' && present.has(key));
    const struckBy = (severities: readonly string[]): typeof claimed =>
      claimed.filter((key) => {
        const { part, place } = readTissueKey(key);
        return wounds.some((wound) => wound.part === part && wound.place === place && severities.includes(wound.severity));
      });
    const lost = struckBy(['lost']);
    // Diced meat comes from whatever is sound, as long as something is.
    const isNothingLeft = line.cut === 'diced' && lost.length === claimed.length;
    const isLost = lost.length > 0 && (isNothingLeft || !ANYWAY.includes(line.cut));
    const keys = isLost ? lost : KEPT_WHOLE.includes(line.cut) ? struckBy(['light', 'heavy']) : [];
    const places = [...new Set(keys.map((key) => readTissueKey(key).place))];
    return keys.length > 0 ? [{ line, places, keys, isLost }] : [];
  });
}

function suggestions({ line, places, isLost }: Hit, order: RuledOrder): readonly Suggestion[] {
  const { words } = order;
  const removed: Edit = { kind: 'remove-line', lineId: line.id };
  const side = soundSide(line, places, order);
  const otherSide = side
    ? mend(order, {
        label: line.side === 'both' ? `Only from the ${side}` : `Take it from the ${side}`,
        consequence: `${sentence(lineWords({ ...line, side }, words))}; the other side goes with what you have not named.`,
        edits: [{ kind: 'set-side', lineId: line.id, side }],
      })
    : [];
  const inPieces = (['medallions', 'diced', 'mince'] as const)
    .filter((cut) => !isLost && cutsOf(line.target).includes(cut))
    .flatMap((cut) =>
      mend(order, {
        label: sentence(lineWords({ ...line, cut }, words)),
        consequence: 'The clean meat is used in pieces; what the wound has spoilt is thrown away.',
        edits: [{ kind: 'set-cut', lineId: line.id, cut }],
      }),
    );
  const saddle =
    line.target === 'saddle'
      ? mend(order, {
          label: `${sentence(cutName('medallions', words.country))} from what is sound`,
          consequence: 'The saddle is not sawn or rolled; loins and fillets are sliced, and the wound is cut out.',
          edits: [
            removed,
            { kind: 'add-line', target: 'loin', side: 'both', cut: 'medallions' },
            ...(missingPlaces({ ...line, target: 'fillet' }, order).length === 0
              ? [{ kind: 'add-line' as const, target: 'fillet' as const, side: 'both' as const, cut: 'medallions' as const }]
              : []),
          ],
        })
      : [];
  return [
    ...otherSide,
    ...inPieces,
    ...(isLost ? [] : saddle),
    ...mend(order, {
      label: 'Take it off the list',
      consequence: `Taken off: ${lineWords(line, words)}; what is sound goes with what you have not named.`,
      edits: [removed],
    }),
  ];
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const woundedPartKeptWholeReason: RuleReason = {
  topic: 'condition',
  why: 'A bullet bruises and splinters far beyond its hole, and lead has been found a foot and a half from it. The cutter cuts wide round a wound, so a joint from that side comes out small, ragged or not at all; in pieces the sound meat is used just as well.',
  source: 'common practice, no source; how far lead travels: Minnesota DNR 2008',
};

export const woundedPartKeptWhole = defineRule<Hit>({
  id: 'wounded-part-kept-whole',
  severity: 'ask',
  title: 'The piece is hit',
  ground: 'trade',
  stages: ['order', 'receiving', 'cutting'],
  check: hits,
  keyOf: ({ line }) => line.id,
  place: ({ line }) => ({ kind: 'line', lineId: line.id }),
  part: ({ line }) => partOfLine(line),
  message: ({ line, keys, isLost }, { words }) => {
    const struck = keys.flatMap((key): readonly PartPlace[] => {
      const { part, place } = readTissueKey(key);
      return part ? [{ part, place }] : [];
    });
    const { text, many } = partsNoun(struck, words);
    return isLost
      ? `${sentence(text)} ${many ? 'are' : 'is'} lost to the wound, and ${lineWords(line, words)} would come from there.`
      : `${sentence(text)} ${many ? 'are' : 'is'} hit and the wound is cut away wide, so ${lineWords(line, words)} will not come out whole.`;
  },
  suggestions,
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const woundedPartKeptWholeExamples = (): RuleExamples => ({
  valid: [
    exampleOrder({ lines: [exampleLine('a', 'shoulder', 'diced')], facts: { wounds: [{ part: 'shoulder', place: 'left', severity: 'heavy' }] } }),
    exampleOrder({
      lines: [exampleLine('a', 'haunch', 'on-the-bone', { side: 'right' })],
      facts: { wounds: [{ part: 'haunch', place: 'left', severity: 'lost' }] },
    }),
  ],
  invalid: [
    {
      order: exampleOrder({
        lines: [exampleLine('a', 'shoulder', 'boned-and-rolled', { side: 'left' }), exampleLine('b', 'rib-rack', 'rack')],
        facts: {
          wounds: [
            { part: 'shoulder', place: 'left', severity: 'heavy' },
            { part: 'shoulder', place: 'right', severity: 'light' },
            { part: 'ribs', place: 'left', severity: 'light' },
          ],
        },
      }),
      messages: [
        'The left shoulder is hit and the wound is cut away wide, so left shoulder boned, rolled and tied will not come out whole.',
        'The left ribs and flank are hit and the wound is cut away wide, so rib rack on the bone will not come out whole.',
      ],
    },
    {
      order: exampleOrder({
        lines: [exampleLine('a', 'saddle', 'on-the-bone'), exampleLine('b', 'haunch', 'steaks')],
        facts: {
          wounds: [
            { part: 'loin', place: 'right', severity: 'light' },
            { part: 'haunch', place: 'left', severity: 'lost' },
          ],
        },
        words: { country: 'us', unit: 'lb' },
      }),
      messages: [
        'The right backstrap is hit and the wound is cut away wide, so saddle whole on the bone will not come out whole.',
        'The left hind leg is lost to the wound, and hind leg steaks would come from there.',
      ],
    },
  ],
});
