import type { CutId } from './cuts';
import { type NameCountry, cutName, minceName, targetName } from './names';
import { TARGETS, TARGET_IDS, type TargetId } from './targets';
import { whereItIs } from './where-it-is';

/** One thing a name can mean, as it is put to a person: what the shop calls it, where it is, and which target shows it. */
export type NameMeaning = {
  readonly words: string;
  readonly where: string;
  readonly target?: TargetId;
  /** What it says of the ground meat, where it says that. */
  readonly mince?: 'without-fat' | 'with-fat' | 'patties';
};

/**
 * On which animals a beef word names nothing: 'below-elk' on all that are smaller, 'lean-belly' on all but bear and boar.
 */
export type NotOn = 'below-elk' | 'lean-belly';

export type MisleadingName = {
  readonly term: string;
  /** How it is written, in lower case, a blank for a hyphen; the plural goes without saying. */
  readonly spellings: readonly string[];
  /** Of a cut some animals have not; its meanings are then what comes closest. */
  readonly notOn?: NotOn;
  /** At least two, the likeliest first. */
  readonly meanings: readonly NameMeaning[];
};

/** The misleading names in one country's words. */
export type NameBook = {
  readonly names: readonly MisleadingName[];
  /** Longer phrases in which a name is plain: 'top sirloin'. */
  readonly plain: readonly string[];
  /** Targets whose own name here means another muscle elsewhere, with where they are. */
  readonly targets: Readonly<Partial<Record<TargetId, string>>>;
};

type Meaning = Pick<NameMeaning, 'target' | 'mince'> & { readonly cut?: CutId; readonly says?: string; readonly where?: string };

type Row = {
  readonly meanings: readonly Meaning[];
  /** Where it is written otherwise than the term. */
  readonly spellings?: readonly string[];
  /** Where the word is the shop's own and everyone means one thing by it. */
  readonly clearIn?: NameCountry;
  readonly notOn?: NotOn;
};

// 'MINCE' stands for what ground meat is called. Where each row is from: misleading-name-sources.ts.
const ROWS = {
  'sirloin tip': { meanings: [{ target: 'thick-flank' }, { target: 'rump' }] },
  sirloin: { meanings: [{ target: 'loin' }, { target: 'rump' }] },
  'rump roast': { meanings: [{ target: 'silverside' }, { target: 'rump' }] },
  rump: { meanings: [{ target: 'rump' }, { target: 'silverside' }], clearIn: 'uk' },
  backstrap: {
    spellings: ['backstrap', 'back strap'],
    meanings: [{ target: 'loin' }, { says: 'neck ligament', where: 'the yellow band along the top of the neck, which is not meat' }],
    clearIn: 'us',
  },
  tenderloin: { spellings: ['tenderloin', 'tender loin'], meanings: [{ target: 'fillet' }, { target: 'loin' }] },
  ham: {
    meanings: [
      { target: 'haunch', says: 'fresh hind leg' },
      { target: 'haunch', says: 'cured ham', where: 'the hind leg in salt or brine, perhaps smoked' },
    ],
  },
  cube: {
    spellings: ['cube', 'cubed'],
    meanings: [
      { cut: 'tenderised-steaks', where: 'slices of the hind leg run through the machine' },
      { cut: 'diced', where: 'pieces of a mouthful' },
    ],
  },
  burger: {
    spellings: ['burger', 'hamburger'],
    meanings: [
      { says: 'MINCE without fat', where: 'loose, nothing but game', mince: 'without-fat' },
      { says: 'MINCE with fat', where: 'loose, beef or pork fat in it', mince: 'with-fat' },
      { says: 'patties', where: 'shaped, packed by the piece', mince: 'patties' },
    ],
  },
  chop: { meanings: [{ target: 'loin', cut: 'chops' }, { target: 'loin', cut: 'medallions' }] },
  quarter: {
    meanings: [
      { says: 'one limb', where: 'a hind leg or a shoulder, left or right' },
      { says: 'a fourth of the meat', where: 'by weight, whatever it is cut from' },
    ],
  },
  whole: {
    spellings: ['everything whole', 'all whole', 'all of it whole', 'it all whole'],
    meanings: [
      { says: 'legs and shoulders on the bone', where: 'nothing taken apart' },
      { says: 'muscles in one piece', where: 'boned out along the seams, not sliced' },
    ],
  },
  dressed: {
    spellings: ['dressed weight', 'weight dressed', 'lb dressed', 'pound dressed', 'kg dressed', 'kilo dressed'],
    meanings: [
      { says: 'field-dressed weight', where: 'gutted, with hide, head and legs' },
      { says: 'hanging weight', where: 'on the rail, without hide, head and lower legs' },
      { says: 'boneless weight', where: 'clean meat off the bone' },
      { says: 'finished weight', where: 'what is packed' },
    ],
  },
  'filet mignon': { meanings: [{ target: 'fillet', cut: 'medallions' }, { target: 'loin', cut: 'medallions' }], notOn: 'below-elk' },
  ribeye: { spellings: ['ribeye', 'rib eye'], meanings: [{ target: 'loin', cut: 'steaks' }, { target: 'loin', cut: 'chops' }], notOn: 'below-elk' },
  bacon: {
    meanings: [
      { says: 'formed bacon', where: 'ground meat and fat, pressed, cured and smoked' },
      { target: 'flank', cut: 'boned-and-rolled' },
    ],
    notOn: 'lean-belly',
  },
  brisket: { meanings: [{ target: 'shoulder', cut: 'boned-and-rolled' }, { target: 'flank', cut: 'boned-and-rolled' }], notOn: 'below-elk' },
  hanger: {
    spellings: ['hanger', 'hanger steak', 'hanging tender'],
    meanings: [{ target: 'fillet', cut: 'whole' }, { says: 'MINCE', where: 'a strip too small to pack goes in with the rest' }],
    notOn: 'below-elk',
  },
  'tri-tip': { spellings: ['tri tip', 'tritip'], meanings: [{ target: 'rump', cut: 'joint' }, { target: 'rump', cut: 'steaks' }], notOn: 'below-elk' },
  'flat iron': { spellings: ['flat iron', 'flatiron'], meanings: [{ target: 'blade', cut: 'joint' }, { target: 'blade', cut: 'diced' }], notOn: 'below-elk' },
  'T-bone': {
    spellings: ['t bone', 'tbone', 'porterhouse'],
    meanings: [{ target: 'loin', cut: 'chops' }, { target: 'saddle', cut: 'on-the-bone' }],
    notOn: 'below-elk',
  },
} as const satisfies Readonly<Record<string, Row>>;

/** Names that mean several muscles or things, and beef words that name nothing on a smaller animal. */
export type MisleadingTerm = keyof typeof ROWS;
export const MISLEADING_TERMS: readonly MisleadingTerm[] = Object.keys(ROWS) as MisleadingTerm[];

const PLAIN: readonly string[] = [
  'top sirloin', 'top rump', 'rump steak', 'inner tenderloin', 'inside tenderloin', 'pork tenderloin', 'mock tender', 'pork chop',
  'cube steak', 'cubed steak', 'ice cube', 'burger patty', 'burger patties', 'boneless chop', 'bone in chop', 'chop on the bone',
  'chops on the bone', 'chop up', 'chop it', 'chop the', 'chop them', 'chop all', 'chop into',
  'hind quarter', 'rear quarter', 'back quarter', 'front quarter', 'fore quarter', 'quarter inch', 'quarter in', 'quarter pound',
  'quarter lb', 'quarter pounder', 'quarter of', 'quarter to', 'quarter past', 'three quarter', 'three quarters', 'first quarter',
  'bacon wrapped', 'bacon burger', 'bacon ends', 'bacon cheese', 'with bacon', 'add bacon', 'pork bacon', 'bacon grind', 'bacon fat',
  'field dressed weight', 'coat hanger',
];

function meaningIn(country: NameCountry, { target, cut, says, where, mince }: Meaning): NameMeaning {
  const named = [target && targetName(target, country), cut && cutName(cut, country)].filter((name) => name !== undefined).join(' ');
  return {
    words: says?.replace('MINCE', minceName(country)) ?? named,
    where: where ?? (target && whereItIs(target)) ?? '',
    ...(target && { target }),
    ...(mince && { mince }),
  };
}

/** The misleading names as a shop of this country puts them to people. */
export function nameBook(country: NameCountry): NameBook {
  const rows = Object.entries<Row>(ROWS);
  const isMisleading = (target: TargetId): boolean =>
    TARGETS[target].muscles.length === 1 && rows.some(([term, { notOn }]) => !notOn && ` ${targetName(target, country)} `.includes(` ${term} `));
  return {
    names: rows
      .filter(([, { clearIn }]) => clearIn !== country)
      .map(([term, { spellings, notOn, meanings }]) => ({
        term,
        spellings: spellings ?? [term],
        ...(notOn && { notOn }),
        meanings: meanings.map((meaning) => meaningIn(country, meaning)),
      })),
    plain: PLAIN,
    targets: Object.fromEntries(TARGET_IDS.filter(isMisleading).map((target) => [target, whereItIs(target) ?? ''])),
  };
}
