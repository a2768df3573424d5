import type { SpeciesFigures } from '@/lib/carcass';
import { CAUTIONS } from '@/lib/rules';

/**
 * How far game is to be cooked: birds, bear and boar always to the higher figure; other game by the shop's own setting, the usual
 * figure or the stricter local one.
 */
export function cookingCaution(cookGameTo: string, species: Pick<SpeciesFigures, 'cooking'> | null = null): string {
  if (species?.cooking === 'birds-bear-boar') return CAUTIONS['cook-bird-bear'].text;
  return cookGameTo === '165 F' ? 'Cook game to 165 F (74 C) in the middle, ground or whole.' : CAUTIONS['cook-game'].text;
}
