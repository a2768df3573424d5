/** Foods a household may have to avoid: the fourteen of the UK and the EU, which hold the nine of 21 USC 321(qq). */
export const ALLERGENS = [
  'milk', 'egg', 'gluten', 'soy', 'mustard', 'celery', 'sesame', 'peanut', 'tree-nuts', 'sulphites', 'fish', 'crustaceans', 'molluscs', 'lupin',
] as const;
export type Allergen = (typeof ALLERGENS)[number];

const NAMES: Readonly<Record<Allergen, string>> = {
  milk: 'milk',
  egg: 'egg',
  gluten: 'gluten',
  soy: 'soy',
  mustard: 'mustard',
  celery: 'celery',
  sesame: 'sesame',
  peanut: 'peanut',
  'tree-nuts': 'tree nuts',
  sulphites: 'sulphites',
  fish: 'fish',
  crustaceans: 'crustaceans',
  molluscs: 'molluscs',
  lupin: 'lupin',
};

/** An allergen as it is said within a sentence: 'tree nuts'. */
export function allergenName(id: Allergen): string {
  return NAMES[id];
}
