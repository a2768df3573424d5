import type { PartId, Place } from '@/lib/carcass';
import type { CutId } from './cuts';
import type { TargetId } from './targets';

/** Whose words people read. The muscle stays the same; see the table of names in DEVELOPERS.md. */
export const NAME_COUNTRIES = ['us', 'uk'] as const;
export type NameCountry = (typeof NAME_COUNTRIES)[number];

type Words = Readonly<Record<NameCountry, string>>;

const TARGET_NAMES: Readonly<Record<TargetId, Words>> = {
  fillet: { us: 'tenderloin', uk: 'fillet' },
  saddle: { us: 'saddle', uk: 'saddle' },
  loin: { us: 'backstrap', uk: 'loin' },
  haunch: { us: 'hind leg', uk: 'haunch' },
  'hind-shank': { us: 'hind shank', uk: 'hind shank' },
  rump: { us: 'top sirloin', uk: 'rump' },
  topside: { us: 'top round', uk: 'topside' },
  'thick-flank': { us: 'sirloin tip', uk: 'thick flank' },
  silverside: { us: 'bottom round', uk: 'silverside' },
  'salmon-cut': { us: 'eye of round', uk: 'salmon cut' },
  shoulder: { us: 'shoulder', uk: 'shoulder' },
  'fore-shank': { us: 'fore shank', uk: 'fore shank' },
  blade: { us: 'shoulder clod', uk: 'blade' },
  neck: { us: 'neck', uk: 'neck' },
  ribs: { us: 'ribs and flank', uk: 'ribs and flank' },
  'rib-rack': { us: 'rib rack', uk: 'rib rack' },
  flank: { us: 'flank', uk: 'flank' },
  'whole-bird': { us: 'whole bird', uk: 'whole bird' },
  'bird-crown': { us: 'bone-in double breast', uk: 'crown' },
  'bird-breast': { us: 'breast', uk: 'breast' },
  'bird-inner-fillet': { us: 'breast tender', uk: 'inner fillet' },
  'bird-leg': { us: 'leg', uk: 'leg' },
  'bird-thigh': { us: 'thigh', uk: 'thigh' },
  'bird-drumstick': { us: 'drumstick', uk: 'drumstick' },
  'bird-wing': { us: 'wing', uk: 'wing' },
};

const PART_NAMES: Readonly<Record<PartId, Words>> = {
  fillet: { us: 'tenderloin', uk: 'fillet' },
  loin: { us: 'back', uk: 'back' },
  haunch: { us: 'hind leg', uk: 'haunch' },
  shoulder: { us: 'shoulder', uk: 'shoulder' },
  neck: { us: 'neck', uk: 'neck' },
  ribs: { us: 'ribs and flank', uk: 'ribs and flank' },
  'bird-breast': { us: 'breast', uk: 'breast' },
  'bird-leg': { us: 'leg', uk: 'leg' },
  'bird-wing': { us: 'wing', uk: 'wing' },
  'bird-frame': { us: 'whole bird', uk: 'whole bird' },
};

const CUT_NAMES: Readonly<Record<CutId, Words>> = {
  'on-the-bone': { us: 'whole on the bone', uk: 'whole on the bone' },
  'boned-and-rolled': { us: 'boned, rolled and tied', uk: 'boned, rolled and tied' },
  joint: { us: 'roast', uk: 'joint' },
  whole: { us: 'left whole', uk: 'left whole' },
  portions: { us: 'portions', uk: 'portions' },
  steaks: { us: 'steaks', uk: 'steaks' },
  'tenderised-steaks': { us: 'tenderized steaks', uk: 'tenderised steaks' },
  medallions: { us: 'medallions', uk: 'medallions' },
  'bacon-wrapped': { us: 'medallions wrapped in bacon', uk: 'medallions wrapped in bacon' },
  butterfly: { us: 'butterfly steaks', uk: 'butterfly steaks' },
  chops: { us: 'bone-in chops', uk: 'chops on the bone' },
  rack: { us: 'rack on the bone', uk: 'rack on the bone' },
  'shank-on-bone': { us: 'whole on the bone', uk: 'whole on the bone' },
  'shank-slices': { us: 'sawn slices', uk: 'sawn slices' },
  diced: { us: 'stew meat', uk: 'diced for stewing' },
  mince: { us: 'ground', uk: 'mince' },
  'set-aside-whole': { us: 'whole, for jerky', uk: 'whole, for jerky' },
  'leave-out': { us: 'leave out', uk: 'leave out' },
};

/** Name of a target in a country's words: 'topside', 'top round'. */
export function targetName(target: TargetId, country: NameCountry): string {
  return TARGET_NAMES[target][country];
}

/** Name of a part of the carcass in a country's words. */
export function partName(part: PartId, country: NameCountry): string {
  return PART_NAMES[part][country];
}

/** Name of a cut in a country's words: 'joint', 'roast'. */
export function cutName(cut: CutId, country: NameCountry): string {
  return CUT_NAMES[cut][country];
}

/** A part or target with its side: 'left haunch', 'both shoulders', 'neck'. */
export function sidedName(name: string, side: Place | 'both'): string {
  if (side === 'middle') return name;
  return side === 'both' ? `both ${pluralOf(name)}` : `${side} ${name}`;
}

/** Plural of a cut's name, where it is not already several: 'haunches', 'legs', 'ribs and flank'. */
export function pluralOf(name: string): string {
  if (name.endsWith('and flank')) return name;
  if (/(ch|sh|ss)$/.test(name)) return `${name}es`;
  if (name.endsWith(' of round')) return name.replace(' of round', 's of round');
  return name.endsWith('s') ? name : `${name}s`;
}

/** What the pool of ground meat is called. */
export function minceName(country: NameCountry): string {
  return country === 'us' ? 'ground meat' : 'mince';
}
