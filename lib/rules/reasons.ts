import { antlersOnAnAntlerlessAnimalReason } from './all/antlers-on-an-antlerless-animal';
import { belowBatchMinimumReason } from './all/below-batch-minimum';
import { bonedMeatHasNoNamesReason } from './all/boned-meat-has-no-names';
import { capeAfterSkinningReason } from './all/cape-after-skinning';
import { jointLargerThanTheMuscleReason } from './all/joint-larger-than-the-muscle';
import { leadNearTheWoundReason } from './all/lead-near-the-wound';
import { moreThanTheAnimalGivesReason } from './all/more-than-the-animal-gives';
import { musclePromisedTwiceReason } from './all/muscle-promised-twice';
import { noBonesHomeFromDiseaseZoneReason } from './all/no-bones-home-from-disease-zone';
import { noSawnBoneFromDiseaseZoneReason } from './all/no-sawn-bone-from-disease-zone';
import { partNotDeliveredReason } from './all/part-not-delivered';
import { partWithoutDestinationReason } from './all/part-without-destination';
import { porkInANoPorkOrderReason } from './all/pork-in-a-no-pork-order';
import { probablyShortReason } from './all/probably-short';
import { setAsideForNothingReason } from './all/set-aside-for-nothing';
import { sliceTooThinOrTooThickReason } from './all/slice-too-thin-or-too-thick';
import { smallAnimalManyCutsReason } from './all/small-animal-many-cuts';
import { waitForTestResultReason } from './all/wait-for-test-result';
import { woundedPartKeptWholeReason } from './all/wounded-part-kept-whole';
import type { RuleReason } from './rule';

/** Why each rule is there, by its id. Apart from the registry: a page hands a form these words, its script does not carry them. */
export const RULE_REASONS: Readonly<Record<string, RuleReason>> = {
  'antlers-on-an-antlerless-animal': antlersOnAnAntlerlessAnimalReason,
  'below-batch-minimum': belowBatchMinimumReason,
  'boned-meat-has-no-names': bonedMeatHasNoNamesReason,
  'cape-after-skinning': capeAfterSkinningReason,
  'joint-larger-than-the-muscle': jointLargerThanTheMuscleReason,
  'lead-near-the-wound': leadNearTheWoundReason,
  'more-than-the-animal-gives': moreThanTheAnimalGivesReason,
  'muscle-promised-twice': musclePromisedTwiceReason,
  'no-bones-home-from-disease-zone': noBonesHomeFromDiseaseZoneReason,
  'no-sawn-bone-from-disease-zone': noSawnBoneFromDiseaseZoneReason,
  'part-not-delivered': partNotDeliveredReason,
  'part-without-destination': partWithoutDestinationReason,
  'pork-in-a-no-pork-order': porkInANoPorkOrderReason,
  'probably-short': probablyShortReason,
  'set-aside-for-nothing': setAsideForNothingReason,
  'slice-too-thin-or-too-thick': sliceTooThinOrTooThickReason,
  'small-animal-many-cuts': smallAnimalManyCutsReason,
  'wait-for-test-result': waitForTestResultReason,
  'wounded-part-kept-whole': woundedPartKeptWholeReason,
};
