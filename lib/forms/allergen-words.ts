import { ALLERGENS, type Allergen } from '@/lib/instructions';

/** Words for them besides their own, as they stand on a packet of spice mix. */
const OTHER_WORDS: Readonly<Record<Allergen, readonly string[]>> = {
  milk: ['milk powder', 'dairy', 'lactose', 'whey', 'cheese', 'butter', 'cream'],
  egg: ['eggs', 'egg white', 'egg powder'],
  gluten: ['wheat', 'barley', 'rye', 'oats', 'flour', 'rusk', 'breadcrumbs', 'cereals'],
  soy: ['soya', 'soybean', 'soybeans', 'soy protein', 'soya protein'],
  mustard: ['mustard seed', 'mustard powder'],
  celery: ['celeriac', 'celery salt', 'celery powder', 'celery juice'],
  sesame: ['sesame seed', 'sesame seeds'],
  peanut: ['peanuts', 'groundnut', 'groundnuts'],
  'tree-nuts': ['tree nut', 'nut', 'nuts', 'almond', 'almonds', 'hazelnut', 'hazelnuts', 'walnut', 'walnuts', 'pecan', 'pecans', 'pistachio', 'pistachios', 'cashew', 'cashews'],
  sulphites: ['sulphite', 'sulfite', 'sulfites', 'sulphur dioxide', 'sulfur dioxide'],
  fish: ['fish sauce', 'anchovy', 'anchovies'],
  crustaceans: ['crustacean', 'crustacean shellfish', 'shrimp', 'shrimps', 'prawn', 'prawns', 'crab', 'lobster'],
  molluscs: ['mollusc', 'mollusk', 'mollusks', 'mussel', 'mussels', 'oyster', 'oysters', 'oyster sauce'],
  lupin: ['lupine', 'lupins'],
};

const NONE_WORDS: readonly string[] = ['none', 'nothing', 'no allergens'];

const BY_WORD: ReadonlyMap<string, Allergen> = new Map(
  ALLERGENS.flatMap((allergen) => [allergenWord(allergen), ...OTHER_WORDS[allergen]].map((word) => [word, allergen] as const)),
);

/** An allergen as people write it: 'tree nuts'. */
export function allergenWord(allergen: Allergen): string {
  return allergen.replace('-', ' ');
}

/** What was read: a list, empty where it says there is none; null where nothing is said; or what is wrong in a sentence. */
export type ReadAllergens = { readonly ok: true; readonly value: readonly Allergen[] | null } | { readonly ok: false; readonly message: string };

/**
 * Reads what is in a made thing, in any order, each once: commas, semicolons or 'and' between the words.
 *
 * @example readAllergens('Soya, wheat and milk') // { ok: true, value: ['milk', 'gluten', 'soy'] }
 * @example readAllergens('none') // { ok: true, value: [] }
 */
export function readAllergens(text: string): ReadAllergens {
  const words = text.toLowerCase().replaceAll('-', ' ').split(/[,;/&+\n]|\band\b/).map((word) => word.replace(/\s+/g, ' ').replace(/\.$/, '').trim()).filter((word) => word !== '');
  if (words.length === 0) return { ok: true, value: null };
  if (words.every((word) => NONE_WORDS.includes(word))) return { ok: true, value: [] };
  if (words.some((word) => NONE_WORDS.includes(word))) return { ok: false, message: 'Write "none" alone, or what is in it' };
  const unknown = words.find((word) => !BY_WORD.has(word));
  if (unknown !== undefined) {
    return { ok: false, message: `"${unknown.slice(0, 40)}" is not among the foods people must avoid. The words are: ${ALLERGENS.map(allergenWord).join(', ')}, or none` };
  }
  const found = new Set(words.map((word) => BY_WORD.get(word)));
  return { ok: true, value: ALLERGENS.filter((allergen) => found.has(allergen)) };
}

/**
 * Writes what is in a made thing, as `readAllergens` reads it.
 *
 * @example allergensText(['milk', 'tree-nuts']) // 'milk, tree nuts'
 */
export function allergensText(allergens: readonly Allergen[] | undefined): string {
  if (!allergens) return '';
  return allergens.length === 0 ? 'none' : allergens.map(allergenWord).join(', ');
}
