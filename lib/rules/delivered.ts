import { type Place, isDelivered, isSidedPart, tissueIn } from '@/lib/carcass';
import { TARGETS, keepsBone } from '@/lib/cuts';
import { type InstructionLine, placesOfLine } from '@/lib/instructions';
import type { RuledOrder } from './rule';
import { partOfLine } from './wording';

/** Places of a line where the part it is cut from did not come. A saddle needs its loins; fillets may be out of it. */
export function missingPlaces(line: InstructionLine, { plan }: RuledOrder): readonly Place[] {
  const part = partOfLine(line);
  const own = TARGETS[line.target].muscles.find((muscle) => part !== 'loin' || muscle === 'loin');
  return placesOfLine(line).filter((place) => own && !isDelivered(plan.forecast.facts, tissueIn(place, own)));
}

/** Whether a line keeps a bone that did not come, though its meat did: chops from quarters. */
export function isBoneMissing(line: InstructionLine, order: RuledOrder): boolean {
  const { facts } = order.plan.forecast;
  return (
    keepsBone(line.cut) &&
    missingPlaces(line, order).length === 0 &&
    placesOfLine(line).some((place) => TARGETS[line.target].bones.some((bone) => !isDelivered(facts, tissueIn(place, bone))))
  );
}

/** Whether a line names a piece of meat that came boned out, where no piece has a name any more. */
export function isNamelessMeat(line: InstructionLine, { circumstances }: RuledOrder): boolean {
  return circumstances.form === 'boned-out' && line.cut !== 'diced' && line.cut !== 'mince';
}

/** The half a line could be cut from instead: delivered and unhurt, and not one of those to avoid. */
export function soundSide(line: InstructionLine, avoid: readonly Place[], order: RuledOrder): 'left' | 'right' | null {
  if (TARGETS[line.target].reach !== 'sided' || !isSidedPart(partOfLine(line))) return null;
  const { wounds } = order.plan.forecast.facts;
  const sound = (['left', 'right'] as const).filter(
    (side) =>
      !avoid.includes(side) &&
      missingPlaces({ ...line, side }, order).length === 0 &&
      !wounds.some((wound) => wound.part === partOfLine(line) && wound.place === side),
  );
  return sound[0] ?? null;
}
