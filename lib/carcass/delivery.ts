import type { AnimalFacts, PartPlace } from './animal-facts';
import { type TissueKey, readTissueKey } from './anatomy';

/** Whether a tissue came through the door, given the form brought in and the parts that did not come. */
export function isDelivered(facts: Pick<AnimalFacts, 'form' | 'missing'>, key: TissueKey): boolean {
  const { place, part, kind } = readTissueKey(key);
  if (facts.form === 'boned-out' && kind !== 'muscle') return false;
  if (facts.form === 'quartered') {
    if (part === 'neck' || part === 'ribs' || part === 'fillet' || part === 'bird-frame') return false;
    if (part === 'loin' && kind === 'bone') return false;
  }
  // A loin or fillet taken out in the field leaves its bone behind.
  const staysBehind = kind === 'bone' && (part === 'loin' || part === 'fillet');
  return staysBehind || !facts.missing.some((gone: PartPlace) => gone.part === part && gone.place === place);
}
