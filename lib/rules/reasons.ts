import { afterTheLastBatchReason } from './all/after-the-last-batch';
import { allergenInAProductReason } from './all/allergen-in-a-product';
import { antlersOnAnAntlerlessAnimalReason } from './all/antlers-on-an-antlerless-animal';
import { belowBatchMinimumReason } from './all/below-batch-minimum';
import { bestMeatIntoTheGrinderReason } from './all/best-meat-into-the-grinder';
import { boneInABonelessOrderReason } from './all/bone-in-a-boneless-order';
import { bonedMeatHasNoNamesReason } from './all/boned-meat-has-no-names';
import { butterflyIsCutDoubleReason } from './all/butterfly-is-cut-double';
import { capeAfterSkinningReason } from './all/cape-after-skinning';
import { capeShortensTheNeckReason } from './all/cape-shortens-the-neck';
import { capeTakesHalfTheHideReason } from './all/cape-takes-half-the-hide';
import { capeWithNowhereToGoReason } from './all/cape-with-nowhere-to-go';
import { cutItFirstReason } from './all/cut-it-first';
import { dirtyNeedsCleaningReason } from './all/dirty-needs-cleaning';
import { frozenCannotBeSeamedReason } from './all/frozen-cannot-be-seamed';
import { gutShotSpoilsTheInsideReason } from './all/gut-shot-spoils-the-inside';
import { hangItShortReason } from './all/hang-it-short';
import { jerkyOfAWormCarrierReason } from './all/jerky-of-a-worm-carrier';
import { jointLargerThanTheMuscleReason } from './all/joint-larger-than-the-muscle';
import { killedLongAgoReason } from './all/killed-long-ago';
import { leadNearTheWoundReason } from './all/lead-near-the-wound';
import { madeOnlyMixedReason } from './all/made-only-mixed';
import { manyPacketsReason } from './all/many-packets';
import { moreFatThanTheShopAddsReason } from './all/more-fat-than-the-shop-adds';
import { moreThanTheAnimalGivesReason } from './all/more-than-the-animal-gives';
import { musclePromisedTwiceReason } from './all/muscle-promised-twice';
import { nameMeansTwoThingsReason } from './all/name-means-two-things';
import { noBonesHomeFromDiseaseZoneReason } from './all/no-bones-home-from-disease-zone';
import { noSawnBoneFromDiseaseZoneReason } from './all/no-sawn-bone-from-disease-zone';
import { noteAgainstAChoiceReason } from './all/note-against-a-choice';
import { notFoodAnyMoreReason } from './all/not-food-any-more';
import { notIntoASharedBatchReason } from './all/not-into-a-shared-batch';
import { overTheBorderReason } from './all/over-the-border';
import { pairsDoNotDivideReason } from './all/pairs-do-not-divide';
import { partNotDeliveredReason } from './all/part-not-delivered';
import { partWithoutDestinationReason } from './all/part-without-destination';
import { pattiesWithoutFatReason } from './all/patties-without-fat';
import { pelletsInTheMeatReason } from './all/pellets-in-the-meat';
import { porkInANoPorkOrderReason } from './all/pork-in-a-no-pork-order';
import { probablyShortReason } from './all/probably-short';
import { sampleBeforeTheKnifeReason } from './all/sample-before-the-knife';
import { setAsideForNothingReason } from './all/set-aside-for-nothing';
import { sharesDoNotAddUpReason } from './all/shares-do-not-add-up';
import { skullPlateSpoilsTheMountReason } from './all/skull-plate-spoils-the-mount';
import { sliceTooThinOrTooThickReason } from './all/slice-too-thin-or-too-thick';
import { smallAnimalManyCutsReason } from './all/small-animal-many-cuts';
import { somebodyElsesAnimalReason } from './all/somebody-elses-animal';
import { steaksOfARuttingMaleReason } from './all/steaks-of-a-rutting-male';
import { twoNamesOneAnimalReason } from './all/two-names-one-animal';
import { waitForTestResultReason } from './all/wait-for-test-result';
import { wantedTooSoonReason } from './all/wanted-too-soon';
import { warmTooLongReason } from './all/warm-too-long';
import { weightsCannotBeReason } from './all/weights-cannot-be';
import { whichIsMadeFirstReason } from './all/which-is-made-first';
import { woundedPartKeptWholeReason } from './all/wounded-part-kept-whole';
import { woundsCostMeatReason } from './all/wounds-cost-meat';
import type { RuleReason } from './rule';

/** Why each rule is there, by its id. Apart from the registry, so that a form that runs the rules does not carry them. */
export const RULE_REASONS: Readonly<Record<string, RuleReason>> = {
  'after-the-last-batch': afterTheLastBatchReason,
  'allergen-in-a-product': allergenInAProductReason,
  'antlers-on-an-antlerless-animal': antlersOnAnAntlerlessAnimalReason,
  'below-batch-minimum': belowBatchMinimumReason,
  'best-meat-into-the-grinder': bestMeatIntoTheGrinderReason,
  'bone-in-a-boneless-order': boneInABonelessOrderReason,
  'boned-meat-has-no-names': bonedMeatHasNoNamesReason,
  'butterfly-is-cut-double': butterflyIsCutDoubleReason,
  'cape-after-skinning': capeAfterSkinningReason,
  'cape-shortens-the-neck': capeShortensTheNeckReason,
  'cape-takes-half-the-hide': capeTakesHalfTheHideReason,
  'cape-with-nowhere-to-go': capeWithNowhereToGoReason,
  'cut-it-first': cutItFirstReason,
  'dirty-needs-cleaning': dirtyNeedsCleaningReason,
  'frozen-cannot-be-seamed': frozenCannotBeSeamedReason,
  'gut-shot-spoils-the-inside': gutShotSpoilsTheInsideReason,
  'hang-it-short': hangItShortReason,
  'jerky-of-a-worm-carrier': jerkyOfAWormCarrierReason,
  'joint-larger-than-the-muscle': jointLargerThanTheMuscleReason,
  'killed-long-ago': killedLongAgoReason,
  'lead-near-the-wound': leadNearTheWoundReason,
  'made-only-mixed': madeOnlyMixedReason,
  'many-packets': manyPacketsReason,
  'more-fat-than-the-shop-adds': moreFatThanTheShopAddsReason,
  'more-than-the-animal-gives': moreThanTheAnimalGivesReason,
  'muscle-promised-twice': musclePromisedTwiceReason,
  'name-means-two-things': nameMeansTwoThingsReason,
  'no-bones-home-from-disease-zone': noBonesHomeFromDiseaseZoneReason,
  'no-sawn-bone-from-disease-zone': noSawnBoneFromDiseaseZoneReason,
  'note-against-a-choice': noteAgainstAChoiceReason,
  'not-food-any-more': notFoodAnyMoreReason,
  'not-into-a-shared-batch': notIntoASharedBatchReason,
  'over-the-border': overTheBorderReason,
  'pairs-do-not-divide': pairsDoNotDivideReason,
  'part-not-delivered': partNotDeliveredReason,
  'part-without-destination': partWithoutDestinationReason,
  'patties-without-fat': pattiesWithoutFatReason,
  'pellets-in-the-meat': pelletsInTheMeatReason,
  'pork-in-a-no-pork-order': porkInANoPorkOrderReason,
  'probably-short': probablyShortReason,
  'sample-before-the-knife': sampleBeforeTheKnifeReason,
  'set-aside-for-nothing': setAsideForNothingReason,
  'shares-do-not-add-up': sharesDoNotAddUpReason,
  'skull-plate-spoils-the-mount': skullPlateSpoilsTheMountReason,
  'slice-too-thin-or-too-thick': sliceTooThinOrTooThickReason,
  'small-animal-many-cuts': smallAnimalManyCutsReason,
  'somebody-elses-animal': somebodyElsesAnimalReason,
  'steaks-of-a-rutting-male': steaksOfARuttingMaleReason,
  'two-names-one-animal': twoNamesOneAnimalReason,
  'wait-for-test-result': waitForTestResultReason,
  'wanted-too-soon': wantedTooSoonReason,
  'warm-too-long': warmTooLongReason,
  'weights-cannot-be': weightsCannotBeReason,
  'which-is-made-first': whichIsMadeFirstReason,
  'wounded-part-kept-whole': woundedPartKeptWholeReason,
  'wounds-cost-meat': woundsCostMeatReason,
};
