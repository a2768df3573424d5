import { CAUTIONS } from '@/lib/rules';

/** How far game is to be cooked, by the shop's own setting: the usual figure, or the stricter local one. */
export function cookingCaution(cookGameTo: string): string {
  return cookGameTo === '165 F' ? 'Cook game to 165 F (74 C) in the middle, ground or whole.' : CAUTIONS['cook-game'].text;
}
