import { antlersOnAnAntlerlessAnimal } from './all/antlers-on-an-antlerless-animal';
import { belowBatchMinimum } from './all/below-batch-minimum';
import { bonedMeatHasNoNames } from './all/boned-meat-has-no-names';
import { capeAfterSkinning } from './all/cape-after-skinning';
import { jointLargerThanTheMuscle } from './all/joint-larger-than-the-muscle';
import { leadNearTheWound } from './all/lead-near-the-wound';
import { moreThanTheAnimalGives } from './all/more-than-the-animal-gives';
import { musclePromisedTwice } from './all/muscle-promised-twice';
import { noBonesHomeFromDiseaseZone } from './all/no-bones-home-from-disease-zone';
import { noSawnBoneFromDiseaseZone } from './all/no-sawn-bone-from-disease-zone';
import { partNotDelivered } from './all/part-not-delivered';
import { partWithoutDestination } from './all/part-without-destination';
import { porkInANoPorkOrder } from './all/pork-in-a-no-pork-order';
import { probablyShort } from './all/probably-short';
import { setAsideForNothing } from './all/set-aside-for-nothing';
import { sliceTooThinOrTooThick } from './all/slice-too-thin-or-too-thick';
import { smallAnimalManyCuts } from './all/small-animal-many-cuts';
import { waitForTestResult } from './all/wait-for-test-result';
import { woundedPartKeptWhole } from './all/wounded-part-kept-whole';
import type { Rule } from './rule';

/** Every rule there is, in the order their findings are read when severity and part are the same. */
export const RULES: readonly Rule[] = [
  waitForTestResult,
  noSawnBoneFromDiseaseZone,
  noBonesHomeFromDiseaseZone,
  porkInANoPorkOrder,
  musclePromisedTwice,
  moreThanTheAnimalGives,
  belowBatchMinimum,
  bonedMeatHasNoNames,
  partNotDelivered,
  woundedPartKeptWhole,
  probablyShort,
  jointLargerThanTheMuscle,
  setAsideForNothing,
  sliceTooThinOrTooThick,
  antlersOnAnAntlerlessAnimal,
  capeAfterSkinning,
  partWithoutDestination,
  leadNearTheWound,
  smallAnimalManyCuts,
];
