import type { Circumstances, RuledOrder } from './rule';

/**
 * Why an animal is handled as from a disease zone, as the end of a sentence; null where it need not be. A negative
 * test does not lift the zone: it is not a guarantee.
 */
export function diseaseWords({ diseaseZone, test }: Circumstances): string | null {
  if (test === 'positive') return 'an animal that tested positive';
  if (test === 'pending') return 'an animal whose disease test is not back';
  return diseaseZone ? 'an animal from a disease zone' : null;
}

/** Whether a test of it is open or came back positive: then a zone's rules count, whatever the place allows. */
export function isSuspect({ test }: Pick<Circumstances, 'test'>): boolean {
  return test === 'pending' || test === 'positive';
}

/** Whether a whole head may not go with the hunter: for a disease, or over a border. */
export function headStays({ circumstances, instructions, plan }: RuledOrder): boolean {
  const isFourLegged = plan.forecast.species.plan === 'four-legged';
  return diseaseWords(circumstances) !== null || (isFourLegged && instructions.overBorder && circumstances.law.overBorder !== 'anything');
}
