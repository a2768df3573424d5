import { readTissueKey } from '@/lib/carcass';
import { CUTS } from '@/lib/cuts';
import type { Edit, Instructions } from '@/lib/instructions';
import { type Plan, type PlannedLine, forecastPieces } from '@/lib/plan';
import { formatWeight } from '@/lib/units';
import { exampleLine, exampleOrder } from '../example-order';
import { afterEdits, mend } from '../mend';
import { type RuleExamples, type RuleReason, type RuledOrder, type Suggestion, defineRule } from '../rule';

type Packets = { readonly count: number };

/** As many as one customer carries and one table wraps without a word; judgement. */
const MOST_PACKETS = 80;
const TIMES_LARGER = [2, 3, 4, 6] as const;

function packetsOf({ mince, stewPackGrams }: Instructions, plan: Plan): number {
  const lines = plan.lines.reduce((sum, planned) => sum + packetsOfLine(planned, plan), 0);
  return lines + Math.ceil(plan.mince.likely / mince.packGrams) + Math.ceil(plan.pools.stewing.likely / stewPackGrams);
}

/** A slice as thick as most ask for, where the butcher is to see. Judgement. */
const USUAL_SLICE = { kind: 'thickness', thicknessMm: 25 } as const;

function packetsOfLine({ line, packed, pieces }: PlannedLine, plan: Plan): number {
  if (pieces.packets) return pieces.packets.likely;
  if (CUTS[line.cut].sizing !== 'thickness' || line.size.kind !== 'as-seen-fit') return 0;
  const muscles = plan.ledger.filter(({ lineId, key }) => lineId === line.id && readTissueKey(key).kind === 'muscle');
  return forecastPieces({ ...line, size: USUAL_SLICE }, packed, muscles).packets?.likely ?? 0;
}

/** Packets of mince and stewing meat, and of every line that says how it is packed, so many times larger. */
function larger({ lines, mince, stewPackGrams }: Instructions, times: number): readonly Edit[] {
  return [
    { kind: 'set-pool-pack', pool: 'mince', packGrams: mince.packGrams * times },
    { kind: 'set-pool-pack', pool: 'stew', packGrams: stewPackGrams * times },
    ...lines.flatMap(({ id, pack }): readonly Edit[] => {
      if (pack.kind === 'pieces') return [{ kind: 'set-pack', lineId: id, pack: { kind: 'pieces', pieces: pack.pieces * times } }];
      return pack.kind === 'weight' ? [{ kind: 'set-pack', lineId: id, pack: { kind: 'weight', grams: pack.grams * times } }] : [];
    }),
  ];
}

function familyPacks(order: RuledOrder): readonly Suggestion[] {
  for (const times of TIMES_LARGER) {
    const edits = larger(order.instructions, times);
    const after = afterEdits(order, edits);
    const count = packetsOf(after.instructions, after.plan);
    if (count > MOST_PACKETS) continue;
    const grams = after.instructions.mince.packGrams;
    return mend(order, {
      label: `Family packs: about ${count} packets`,
      consequence: `Packets hold ${times === 2 ? 'twice' : `${times} times`} as much; ground and stewing meat ${formatWeight(grams, order.words.unit)} each.`,
      edits,
    });
  }
  return [];
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const manyPacketsReason: RuleReason = {
  topic: 'packing-and-bill',
  why: 'Small packets suit a deer. An elk or a moose in packets of a pound is two hundred of them to wrap, label, freeze and carry home, and wrapping is often charged by the packet. Packets for a family meal are half as many or fewer.',
  source: 'common practice, no source; where it begins is judgement',
};

export const manyPackets = defineRule<Packets>({
  id: 'many-packets',
  severity: 'ask',
  title: 'A great many small packets',
  ground: 'trade',
  stages: ['order', 'receiving', 'cutting'],
  check: ({ instructions, plan }) => {
    const count = packetsOf(instructions, plan);
    return count > MOST_PACKETS ? [{ count }] : [];
  },
  keyOf: () => 'packets',
  place: () => ({ kind: 'field', field: 'mince' }),
  part: () => null,
  message: ({ count }) => `Packed as you asked, this animal makes about ${count} packets.`,
  suggestions: (_, order) => [
    ...familyPacks(order),
    ...mend(order, {
      label: 'Small packets are right',
      consequence: 'Packed as you asked; the price list says whether packets are charged.',
      edits: [{ kind: 'agree', key: 'many-packets|packets' }],
    }),
  ],
});

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const manyPacketsExamples = (): RuleExamples => ({
  valid: [exampleOrder(), exampleOrder({ facts: { speciesId: 'elk', weight: null }, instructions: { mince: { addedFat: 'none', fatPercent: 0, packGrams: 2_268, shape: 'bulk' } } })],
  invalid: [
    {
      order: exampleOrder({
        lines: [exampleLine('a', 'loin', 'medallions', { size: { kind: 'thickness', thicknessMm: 25 }, pack: { kind: 'pieces', pieces: 1 } })],
        facts: { speciesId: 'elk', sex: 'male', weight: { grams: 250_000, basis: 'field-dressed' } },
      }),
      messages: ['Packed as you asked, this animal makes about 330 packets.'],
    },
  ],
});
