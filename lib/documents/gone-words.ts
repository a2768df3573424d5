import { type DressingPart, type PartId, type PartPlace, isSidedPart } from '@/lib/carcass';
import { cutName, minceName, partName, pluralOf } from '@/lib/cuts';
import { PRODUCTS, type Plan } from '@/lib/plan';
import type { StageBasis } from './animal-stages';
import type { GonePartId } from './gone-parts';
import type { GoesWords } from './where-it-goes';

/** What the way of one animal is told with: its own names, and the words of its body. */
export type GoneWords = {
  /** 'buck', 'fawn', 'white-tailed deer'. */
  readonly animal: string;
  readonly isBird: boolean;
  /** Nothing is missing: the way begins alive. Else it begins at what came. */
  readonly isWhole: boolean;
  readonly form: 'whole' | 'quartered' | 'boned-out';
  /** Parts that did not come and would have, in words: 'both tenderloins and the left shoulder'; '' where all came. */
  readonly without: string;
  /** The weight of what hangs, or came, was read off a scale. */
  readonly isCameMeasured: boolean;
  /** Label of that stage. */
  readonly came: string;
  readonly stage: (basis: StageBasis) => string;
  /** What comes off between two stages: 'head, hide and lower legs'. */
  readonly between: (from: StageBasis, to: StageBasis) => string;
  /** Products that lose weight in the making: 'jerky and snack sticks'; '' where there are none. */
  readonly dries: string;
  readonly part: Readonly<Record<GonePartId, string>>;
};

/** What quarters come without anyway. */
const NOT_IN_QUARTERS: ReadonlySet<PartId> = new Set(['neck', 'ribs', 'fillet', 'bird-frame']);
const STILL_ON: Readonly<Record<StageBasis, readonly DressingPart[]>> = {
  live: ['head', 'hide', 'lower-legs'],
  'field-dressed': ['head', 'hide', 'lower-legs'],
  'legs-off': ['head', 'hide'],
  'hide-on': ['hide'],
  hanging: [],
};
const OUTSIDE = {
  'four-legged': { head: 'head', hide: 'hide', 'lower-legs': 'lower legs', hanging: '' },
  bird: { head: 'head', hide: 'feathers', 'lower-legs': 'feet', hanging: '' },
} as const;
const STAGES: Readonly<Record<'four-legged' | 'bird', Readonly<Record<StageBasis, string>>>> = {
  'four-legged': {
    live: 'Alive',
    'field-dressed': 'Gutted, in the hide',
    'legs-off': 'Gutted, lower legs off',
    'hide-on': 'In the hide, head and lower legs off',
    hanging: 'On the rail',
  },
  bird: {
    live: 'Alive',
    'field-dressed': 'Drawn, in its feathers',
    'legs-off': 'Drawn, feet off',
    'hide-on': 'In its feathers, head and feet off',
    hanging: 'Plucked and drawn',
  },
};

/** Words for one plan. Pure. */
export function goneWords({ forecast: { species, facts }, products }: Plan, { country }: Pick<GoesWords, 'country'>): GoneWords {
  const isBird = species.plan === 'bird';
  const form = facts.form === 'quartered' || facts.form === 'boned-out' ? facts.form : 'whole';
  const gone = facts.missing.filter(({ part }) => form !== 'quartered' || !NOT_IN_QUARTERS.has(part));
  const isWhole = form === 'whole' && gone.length === 0;
  const basis = facts.weight?.basis;
  const dried = products.filter(({ finished, gameGrams, addedGrams }) => finished.likely < gameGrams.likely + addedGrams);
  const dries = listed(dried.map(({ productId }) => PRODUCTS[productId].name));
  const wounds = new Set(facts.wounds.map(({ part, place }) => `${place} ${part}`)).size;
  return {
    animal: animalWord(species, facts),
    isBird,
    isWhole,
    form,
    without: listed(missingWords(gone, country)),
    isCameMeasured: basis === 'hanging' || (basis === 'quarters' && form === 'quartered') || (basis === 'boneless' && form === 'boned-out'),
    came: form === 'quartered' ? 'The quarters, as they came' : form === 'boned-out' ? 'Meat off the bone, as it came' : isWhole ? STAGES[species.plan].hanging : isBird ? 'What came, plucked and drawn' : 'What came, on the rail',
    stage: (stage) => STAGES[species.plan][stage],
    between: (from, to) => {
      const off = STILL_ON[from].filter((part) => !STILL_ON[to].includes(part)).map((part) => OUTSIDE[species.plan][part]);
      return listed(from === 'live' ? ['innards', ...off] : off);
    },
    dries,
    part: {
      innards: 'innards',
      outside: 'head, hide and lower legs',
      bone: 'bone',
      trim: isBird ? 'skin, fat and trim' : 'fat, membrane and trim',
      wounds: wounds === 0 ? 'spoiled by the gut shot' : wounds === 1 ? 'round the wound, not fit to eat' : 'round the wounds, not fit to eat',
      drying: isBird || form !== 'whole' ? 'dried off' : 'dried off on the rail',
      making: `dried off in making ${dries}`,
      cuts: 'cuts',
      stew: cutName('diced', country),
      mince: minceName(country),
      products: 'made from it',
      undecided: 'not decided yet',
    },
  };
}

function animalWord(species: Plan['forecast']['species'], { sex, ageClass }: Plan['forecast']['facts']): string {
  if (ageClass === 'young') return species.youngName;
  return sex === 'unknown' ? species.name : sex === 'male' ? species.maleName : species.femaleName;
}

/** 'both tenderloins', 'the left shoulder', 'the neck'. */
function missingWords(missing: readonly PartPlace[], country: GoesWords['country']): readonly string[] {
  const parts = [...new Set(missing.map(({ part }) => part))];
  return parts.map((part) => {
    const name = partName(part, country);
    const places = [...new Set(missing.filter((one) => one.part === part).map(({ place }) => place))];
    if (!isSidedPart(part)) return `the ${name}`;
    return places.length > 1 ? `both ${pluralOf(name)}` : `the ${places[0] ?? ''} ${name}`;
  });
}

/** 'a', 'a and b', 'a, b and c'. */
export function listed(words: readonly string[]): string {
  return words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}
