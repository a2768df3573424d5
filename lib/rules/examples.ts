import { antlersOnAnAntlerlessAnimalExamples } from './all/antlers-on-an-antlerless-animal';
import { belowBatchMinimumExamples } from './all/below-batch-minimum';
import { bonedMeatHasNoNamesExamples } from './all/boned-meat-has-no-names';
import { capeAfterSkinningExamples } from './all/cape-after-skinning';
import { jointLargerThanTheMuscleExamples } from './all/joint-larger-than-the-muscle';
import { leadNearTheWoundExamples } from './all/lead-near-the-wound';
import { moreThanTheAnimalGivesExamples } from './all/more-than-the-animal-gives';
import { musclePromisedTwiceExamples } from './all/muscle-promised-twice';
import { noBonesHomeFromDiseaseZoneExamples } from './all/no-bones-home-from-disease-zone';
import { noSawnBoneFromDiseaseZoneExamples } from './all/no-sawn-bone-from-disease-zone';
import { partNotDeliveredExamples } from './all/part-not-delivered';
import { partWithoutDestinationExamples } from './all/part-without-destination';
import { porkInANoPorkOrderExamples } from './all/pork-in-a-no-pork-order';
import { probablyShortExamples } from './all/probably-short';
import { setAsideForNothingExamples } from './all/set-aside-for-nothing';
import { sliceTooThinOrTooThickExamples } from './all/slice-too-thin-or-too-thick';
import { smallAnimalManyCutsExamples } from './all/small-animal-many-cuts';
import { waitForTestResultExamples } from './all/wait-for-test-result';
import { woundedPartKeptWholeExamples } from './all/wounded-part-kept-whole';
import type { RuleExamples } from './rule';

/** The examples of every rule, by its id. Apart from the registry, so that a form that runs the rules does not carry them. */
export const RULE_EXAMPLES: Readonly<Record<string, () => RuleExamples>> = {
  'antlers-on-an-antlerless-animal': antlersOnAnAntlerlessAnimalExamples,
  'below-batch-minimum': belowBatchMinimumExamples,
  'boned-meat-has-no-names': bonedMeatHasNoNamesExamples,
  'cape-after-skinning': capeAfterSkinningExamples,
  'joint-larger-than-the-muscle': jointLargerThanTheMuscleExamples,
  'lead-near-the-wound': leadNearTheWoundExamples,
  'more-than-the-animal-gives': moreThanTheAnimalGivesExamples,
  'muscle-promised-twice': musclePromisedTwiceExamples,
  'no-bones-home-from-disease-zone': noBonesHomeFromDiseaseZoneExamples,
  'no-sawn-bone-from-disease-zone': noSawnBoneFromDiseaseZoneExamples,
  'part-not-delivered': partNotDeliveredExamples,
  'part-without-destination': partWithoutDestinationExamples,
  'pork-in-a-no-pork-order': porkInANoPorkOrderExamples,
  'probably-short': probablyShortExamples,
  'set-aside-for-nothing': setAsideForNothingExamples,
  'slice-too-thin-or-too-thick': sliceTooThinOrTooThickExamples,
  'small-animal-many-cuts': smallAnimalManyCutsExamples,
  'wait-for-test-result': waitForTestResultExamples,
  'wounded-part-kept-whole': woundedPartKeptWholeExamples,
};
