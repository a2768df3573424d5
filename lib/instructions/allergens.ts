/** Foods a household may have to avoid: the fourteen of the UK and EU, which hold the nine of the US (21 USC 321(qq)). */
export const ALLERGENS = [
  'milk', 'egg', 'gluten', 'soy', 'mustard', 'celery', 'sesame', 'peanut', 'tree-nuts', 'sulphites', 'fish', 'crustaceans', 'molluscs', 'lupin',
] as const;
export type Allergen = (typeof ALLERGENS)[number];
