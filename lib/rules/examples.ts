import { afterTheLastBatchExamples } from './all/after-the-last-batch';
import { allergenInAProductExamples } from './all/allergen-in-a-product';
import { antlersOnAnAntlerlessAnimalExamples } from './all/antlers-on-an-antlerless-animal';
import { belowBatchMinimumExamples } from './all/below-batch-minimum';
import { bestMeatIntoTheGrinderExamples } from './all/best-meat-into-the-grinder';
import { boneInABonelessOrderExamples } from './all/bone-in-a-boneless-order';
import { bonedMeatHasNoNamesExamples } from './all/boned-meat-has-no-names';
import { butterflyIsCutDoubleExamples } from './all/butterfly-is-cut-double';
import { capeAfterSkinningExamples } from './all/cape-after-skinning';
import { capeShortensTheNeckExamples } from './all/cape-shortens-the-neck';
import { capeTakesHalfTheHideExamples } from './all/cape-takes-half-the-hide';
import { capeWithNowhereToGoExamples } from './all/cape-with-nowhere-to-go';
import { cutItFirstExamples } from './all/cut-it-first';
import { dirtyNeedsCleaningExamples } from './all/dirty-needs-cleaning';
import { frozenCannotBeSeamedExamples } from './all/frozen-cannot-be-seamed';
import { gutShotSpoilsTheInsideExamples } from './all/gut-shot-spoils-the-inside';
import { hangItShortExamples } from './all/hang-it-short';
import { jerkyOfAWormCarrierExamples } from './all/jerky-of-a-worm-carrier';
import { jointLargerThanTheMuscleExamples } from './all/joint-larger-than-the-muscle';
import { killedLongAgoExamples } from './all/killed-long-ago';
import { leadNearTheWoundExamples } from './all/lead-near-the-wound';
import { madeOnlyMixedExamples } from './all/made-only-mixed';
import { manyPacketsExamples } from './all/many-packets';
import { moreFatThanTheShopAddsExamples } from './all/more-fat-than-the-shop-adds';
import { moreThanTheAnimalGivesExamples } from './all/more-than-the-animal-gives';
import { musclePromisedTwiceExamples } from './all/muscle-promised-twice';
import { nameMeansTwoThingsExamples } from './all/name-means-two-things';
import { noBonesHomeFromDiseaseZoneExamples } from './all/no-bones-home-from-disease-zone';
import { noSawnBoneFromDiseaseZoneExamples } from './all/no-sawn-bone-from-disease-zone';
import { noteAgainstAChoiceExamples } from './all/note-against-a-choice';
import { notFoodAnyMoreExamples } from './all/not-food-any-more';
import { notIntoASharedBatchExamples } from './all/not-into-a-shared-batch';
import { overTheBorderExamples } from './all/over-the-border';
import { pairsDoNotDivideExamples } from './all/pairs-do-not-divide';
import { partNotDeliveredExamples } from './all/part-not-delivered';
import { partWithoutDestinationExamples } from './all/part-without-destination';
import { pattiesWithoutFatExamples } from './all/patties-without-fat';
import { pelletsInTheMeatExamples } from './all/pellets-in-the-meat';
import { porkInANoPorkOrderExamples } from './all/pork-in-a-no-pork-order';
import { probablyShortExamples } from './all/probably-short';
import { sampleBeforeTheKnifeExamples } from './all/sample-before-the-knife';
import { setAsideForNothingExamples } from './all/set-aside-for-nothing';
import { sharesDoNotAddUpExamples } from './all/shares-do-not-add-up';
import { skullPlateSpoilsTheMountExamples } from './all/skull-plate-spoils-the-mount';
import { sliceTooThinOrTooThickExamples } from './all/slice-too-thin-or-too-thick';
import { smallAnimalManyCutsExamples } from './all/small-animal-many-cuts';
import { somebodyElsesAnimalExamples } from './all/somebody-elses-animal';
import { steaksOfARuttingMaleExamples } from './all/steaks-of-a-rutting-male';
import { twoNamesOneAnimalExamples } from './all/two-names-one-animal';
import { waitForTestResultExamples } from './all/wait-for-test-result';
import { wantedTooSoonExamples } from './all/wanted-too-soon';
import { warmTooLongExamples } from './all/warm-too-long';
import { weightsCannotBeExamples } from './all/weights-cannot-be';
import { whichIsMadeFirstExamples } from './all/which-is-made-first';
import { woundedPartKeptWholeExamples } from './all/wounded-part-kept-whole';
import { woundsCostMeatExamples } from './all/wounds-cost-meat';
import type { RuleExamples } from './rule';

/** The examples of every rule, by its id. Apart from the registry, so that a form that runs the rules does not carry them. */
export const RULE_EXAMPLES: Readonly<Record<string, () => RuleExamples>> = {
  'after-the-last-batch': afterTheLastBatchExamples,
  'allergen-in-a-product': allergenInAProductExamples,
  'antlers-on-an-antlerless-animal': antlersOnAnAntlerlessAnimalExamples,
  'below-batch-minimum': belowBatchMinimumExamples,
  'best-meat-into-the-grinder': bestMeatIntoTheGrinderExamples,
  'bone-in-a-boneless-order': boneInABonelessOrderExamples,
  'boned-meat-has-no-names': bonedMeatHasNoNamesExamples,
  'butterfly-is-cut-double': butterflyIsCutDoubleExamples,
  'cape-after-skinning': capeAfterSkinningExamples,
  'cape-shortens-the-neck': capeShortensTheNeckExamples,
  'cape-takes-half-the-hide': capeTakesHalfTheHideExamples,
  'cape-with-nowhere-to-go': capeWithNowhereToGoExamples,
  'cut-it-first': cutItFirstExamples,
  'dirty-needs-cleaning': dirtyNeedsCleaningExamples,
  'frozen-cannot-be-seamed': frozenCannotBeSeamedExamples,
  'gut-shot-spoils-the-inside': gutShotSpoilsTheInsideExamples,
  'hang-it-short': hangItShortExamples,
  'jerky-of-a-worm-carrier': jerkyOfAWormCarrierExamples,
  'joint-larger-than-the-muscle': jointLargerThanTheMuscleExamples,
  'killed-long-ago': killedLongAgoExamples,
  'lead-near-the-wound': leadNearTheWoundExamples,
  'made-only-mixed': madeOnlyMixedExamples,
  'many-packets': manyPacketsExamples,
  'more-fat-than-the-shop-adds': moreFatThanTheShopAddsExamples,
  'more-than-the-animal-gives': moreThanTheAnimalGivesExamples,
  'muscle-promised-twice': musclePromisedTwiceExamples,
  'name-means-two-things': nameMeansTwoThingsExamples,
  'no-bones-home-from-disease-zone': noBonesHomeFromDiseaseZoneExamples,
  'no-sawn-bone-from-disease-zone': noSawnBoneFromDiseaseZoneExamples,
  'note-against-a-choice': noteAgainstAChoiceExamples,
  'not-food-any-more': notFoodAnyMoreExamples,
  'not-into-a-shared-batch': notIntoASharedBatchExamples,
  'over-the-border': overTheBorderExamples,
  'pairs-do-not-divide': pairsDoNotDivideExamples,
  'part-not-delivered': partNotDeliveredExamples,
  'part-without-destination': partWithoutDestinationExamples,
  'patties-without-fat': pattiesWithoutFatExamples,
  'pellets-in-the-meat': pelletsInTheMeatExamples,
  'pork-in-a-no-pork-order': porkInANoPorkOrderExamples,
  'probably-short': probablyShortExamples,
  'sample-before-the-knife': sampleBeforeTheKnifeExamples,
  'set-aside-for-nothing': setAsideForNothingExamples,
  'shares-do-not-add-up': sharesDoNotAddUpExamples,
  'skull-plate-spoils-the-mount': skullPlateSpoilsTheMountExamples,
  'slice-too-thin-or-too-thick': sliceTooThinOrTooThickExamples,
  'small-animal-many-cuts': smallAnimalManyCutsExamples,
  'somebody-elses-animal': somebodyElsesAnimalExamples,
  'steaks-of-a-rutting-male': steaksOfARuttingMaleExamples,
  'two-names-one-animal': twoNamesOneAnimalExamples,
  'wait-for-test-result': waitForTestResultExamples,
  'wanted-too-soon': wantedTooSoonExamples,
  'warm-too-long': warmTooLongExamples,
  'weights-cannot-be': weightsCannotBeExamples,
  'which-is-made-first': whichIsMadeFirstExamples,
  'wounded-part-kept-whole': woundedPartKeptWholeExamples,
  'wounds-cost-meat': woundsCostMeatExamples,
};
