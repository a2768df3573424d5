import type { Circumstances } from './rule';

/**
 * Why an animal is handled as from a disease zone, as the end of a sentence; null where it need not be. A negative
 * test does not lift the zone: it is not a guarantee.
 */
export function diseaseWords({ diseaseZone, test }: Circumstances): string | null {
  if (test === 'positive') return 'an animal that tested positive';
  if (test === 'pending') return 'an animal whose disease test is not back';
  return diseaseZone ? 'an animal from a disease zone' : null;
}
