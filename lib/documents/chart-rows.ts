import { type BodyPlan, type PartId, isSidedPart, partsOf } from '@/lib/carcass';
import { type NameCountry, partName, sidedName } from '@/lib/cuts';
import type { PartStanding, PartState } from './plan-view';

/** One part of the chart and its row in the list below it. */
export type ChartRow = {
  readonly part: PartId;
  /** `both` where the halves are alike, `middle` for the neck. */
  readonly side: 'left' | 'right' | 'both' | 'middle';
  readonly state: PartState;
  readonly name: string;
  readonly label: string;
  readonly detail?: string;
};

/** Rows of the chart from how the parts stand: a pair that stands alike is one row. Null: nothing is known of the animal yet. */
export function chartRows(standings: readonly PartStanding[] | null, country: NameCountry, plan: BodyPlan = 'four-legged'): readonly ChartRow[] {
  return partsOf(plan).flatMap((part): readonly ChartRow[] => {
    const name = partName(part, country);
    const label = part === 'ribs' ? 'Ribs, flank' : capital(name);
    const pair = standings?.filter((one) => one.part === part) ?? [];
    const [left, right] = pair;
    const alike = { part, side: isSidedPart(part) ? 'both' : 'middle', name: capital(sidedName(name, isSidedPart(part) ? 'both' : 'middle')), label } as const;
    if (!left) return [{ ...alike, name: capital(name), state: 'undecided' }];
    if (!right || (left.state === right.state && left.detail === right.detail)) return [{ ...alike, state: left.state, detail: left.detail }];
    return pair.map((one) => ({ part, side: one.place, state: one.state, name: capital(one.name), label, detail: one.detail }));
  });
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
