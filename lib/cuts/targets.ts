import { type BodyPlan, type BoneId, type CoverId, type MuscleId, type PartId, partsOf } from '@/lib/carcass';

/** What a hunter can give an instruction for: a whole part, two parts joined by bone, or one muscle of a part. */
export const TARGET_IDS = [
  'fillet',
  'saddle',
  'loin',
  'haunch',
  'hind-shank',
  'rump',
  'topside',
  'thick-flank',
  'silverside',
  'salmon-cut',
  'shoulder',
  'fore-shank',
  'blade',
  'neck',
  'ribs',
  'rib-rack',
  'flank',
  'whole-bird',
  'bird-crown',
  'bird-breast',
  'bird-inner-fillet',
  'bird-leg',
  'bird-thigh',
  'bird-drumstick',
  'bird-wing',
] as const;
export type TargetId = (typeof TARGET_IDS)[number];

export type Target = {
  /** The part whose card on the form holds it. */
  readonly part: PartId;
  /** One side at a time, across the midline, or both halves as one piece (the saddle). */
  readonly reach: 'sided' | 'middle' | 'both-as-one';
  readonly muscles: readonly MuscleId[];
  readonly bones: readonly BoneId[];
  readonly covers: readonly CoverId[];
  /** Whether its bone is spine, which a disease zone forbids to saw or carry. */
  readonly spinal: boolean;
};

/** Muscles, bones and covers behind every target. Listed in knife order: fillet and loin, then the haunch by its seams. */
export const TARGETS: Readonly<Record<TargetId, Target>> = {
  fillet: { part: 'fillet', reach: 'sided', muscles: ['fillet'], bones: [], covers: [], spinal: false },
  saddle: { part: 'loin', reach: 'both-as-one', muscles: ['loin', 'fillet'], bones: ['spine'], covers: ['loin-cover'], spinal: true },
  loin: { part: 'loin', reach: 'sided', muscles: ['loin'], bones: ['spine'], covers: ['loin-cover'], spinal: true },
  haunch: {
    part: 'haunch',
    reach: 'sided',
    muscles: ['hind-shank', 'rump', 'topside', 'thick-flank', 'silverside', 'salmon-cut'],
    bones: ['haunch-bone', 'hind-shank-bone'],
    covers: ['haunch-cover'],
    spinal: false,
  },
  'hind-shank': { part: 'haunch', reach: 'sided', muscles: ['hind-shank'], bones: ['hind-shank-bone'], covers: [], spinal: false },
  rump: { part: 'haunch', reach: 'sided', muscles: ['rump'], bones: [], covers: [], spinal: false },
  topside: { part: 'haunch', reach: 'sided', muscles: ['topside'], bones: [], covers: [], spinal: false },
  'thick-flank': { part: 'haunch', reach: 'sided', muscles: ['thick-flank'], bones: [], covers: [], spinal: false },
  silverside: { part: 'haunch', reach: 'sided', muscles: ['silverside'], bones: [], covers: [], spinal: false },
  'salmon-cut': { part: 'haunch', reach: 'sided', muscles: ['salmon-cut'], bones: [], covers: [], spinal: false },
  shoulder: {
    part: 'shoulder',
    reach: 'sided',
    muscles: ['fore-shank', 'blade'],
    bones: ['shoulder-bone', 'fore-shank-bone'],
    covers: ['shoulder-cover'],
    spinal: false,
  },
  'fore-shank': { part: 'shoulder', reach: 'sided', muscles: ['fore-shank'], bones: ['fore-shank-bone'], covers: [], spinal: false },
  blade: { part: 'shoulder', reach: 'sided', muscles: ['blade'], bones: [], covers: [], spinal: false },
  neck: { part: 'neck', reach: 'middle', muscles: ['neck'], bones: ['neck-bone'], covers: ['neck-cover'], spinal: true },
  ribs: { part: 'ribs', reach: 'sided', muscles: ['rib-meat', 'flank'], bones: ['rib-bone'], covers: ['ribs-cover'], spinal: false },
  'rib-rack': { part: 'ribs', reach: 'sided', muscles: ['rib-meat'], bones: ['rib-bone'], covers: [], spinal: false },
  flank: { part: 'ribs', reach: 'sided', muscles: ['flank'], bones: [], covers: [], spinal: false },
  'whole-bird': {
    part: 'bird-frame',
    reach: 'both-as-one',
    muscles: ['bird-breast', 'bird-inner-fillet', 'bird-thigh', 'bird-drumstick', 'bird-wing'],
    bones: ['bird-breast-bone', 'bird-leg-bone', 'bird-wing-bone', 'bird-frame-bone'],
    covers: ['bird-breast-skin', 'bird-leg-skin', 'bird-wing-skin', 'bird-frame-skin'],
    spinal: false,
  },
  'bird-crown': {
    part: 'bird-breast',
    reach: 'both-as-one',
    muscles: ['bird-breast', 'bird-inner-fillet'],
    bones: ['bird-breast-bone'],
    covers: ['bird-breast-skin'],
    spinal: false,
  },
  'bird-breast': { part: 'bird-breast', reach: 'sided', muscles: ['bird-breast', 'bird-inner-fillet'], bones: [], covers: [], spinal: false },
  'bird-inner-fillet': { part: 'bird-breast', reach: 'sided', muscles: ['bird-inner-fillet'], bones: [], covers: [], spinal: false },
  'bird-leg': {
    part: 'bird-leg',
    reach: 'sided',
    muscles: ['bird-thigh', 'bird-drumstick'],
    bones: ['bird-leg-bone'],
    covers: ['bird-leg-skin'],
    spinal: false,
  },
  'bird-thigh': { part: 'bird-leg', reach: 'sided', muscles: ['bird-thigh'], bones: [], covers: [], spinal: false },
  'bird-drumstick': { part: 'bird-leg', reach: 'sided', muscles: ['bird-drumstick'], bones: [], covers: [], spinal: false },
  'bird-wing': { part: 'bird-wing', reach: 'sided', muscles: ['bird-wing'], bones: ['bird-wing-bone'], covers: ['bird-wing-skin'], spinal: false },
};

/** Place of a target in the order the knife takes it, from 0. */
export function knifeOrder(target: TargetId): number {
  return TARGET_IDS.indexOf(target);
}

/** Targets on the card of one part, the whole part first. */
export function targetsOfPart(part: PartId): readonly TargetId[] {
  const onCard = TARGET_IDS.filter((id) => TARGETS[id].part === part);
  return [...onCard].sort((a, b) => TARGETS[b].muscles.length - TARGETS[a].muscles.length || knifeOrder(a) - knifeOrder(b));
}

/** Targets of a body, in knife order. */
export function targetsOfPlan(plan: BodyPlan): readonly TargetId[] {
  return TARGET_IDS.filter((id) => partsOf(plan).includes(TARGETS[id].part));
}
