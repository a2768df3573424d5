import { afterTheLastBatch } from './all/after-the-last-batch';
import { allergenInAProduct } from './all/allergen-in-a-product';
import { antlersOnAnAntlerlessAnimal } from './all/antlers-on-an-antlerless-animal';
import { belowBatchMinimum } from './all/below-batch-minimum';
import { bestMeatIntoTheGrinder } from './all/best-meat-into-the-grinder';
import { boneInABonelessOrder } from './all/bone-in-a-boneless-order';
import { bonedMeatHasNoNames } from './all/boned-meat-has-no-names';
import { butterflyIsCutDouble } from './all/butterfly-is-cut-double';
import { capeAfterSkinning } from './all/cape-after-skinning';
import { capeShortensTheNeck } from './all/cape-shortens-the-neck';
import { capeTakesHalfTheHide } from './all/cape-takes-half-the-hide';
import { capeWithNowhereToGo } from './all/cape-with-nowhere-to-go';
import { cutItFirst } from './all/cut-it-first';
import { dirtyNeedsCleaning } from './all/dirty-needs-cleaning';
import { frozenCannotBeSeamed } from './all/frozen-cannot-be-seamed';
import { gutShotSpoilsTheInside } from './all/gut-shot-spoils-the-inside';
import { hangItShort } from './all/hang-it-short';
import { jerkyOfAWormCarrier } from './all/jerky-of-a-worm-carrier';
import { jointLargerThanTheMuscle } from './all/joint-larger-than-the-muscle';
import { killedLongAgo } from './all/killed-long-ago';
import { leadNearTheWound } from './all/lead-near-the-wound';
import { madeOnlyMixed } from './all/made-only-mixed';
import { manyPackets } from './all/many-packets';
import { moreFatThanTheShopAdds } from './all/more-fat-than-the-shop-adds';
import { moreThanTheAnimalGives } from './all/more-than-the-animal-gives';
import { musclePromisedTwice } from './all/muscle-promised-twice';
import { nameMeansTwoThings } from './all/name-means-two-things';
import { noBonesHomeFromDiseaseZone } from './all/no-bones-home-from-disease-zone';
import { noSawnBoneFromDiseaseZone } from './all/no-sawn-bone-from-disease-zone';
import { noteAgainstAChoice } from './all/note-against-a-choice';
import { notFoodAnyMore } from './all/not-food-any-more';
import { notIntoASharedBatch } from './all/not-into-a-shared-batch';
import { overTheBorder } from './all/over-the-border';
import { pairsDoNotDivide } from './all/pairs-do-not-divide';
import { partNotDelivered } from './all/part-not-delivered';
import { partWithoutDestination } from './all/part-without-destination';
import { pattiesWithoutFat } from './all/patties-without-fat';
import { pelletsInTheMeat } from './all/pellets-in-the-meat';
import { porkInANoPorkOrder } from './all/pork-in-a-no-pork-order';
import { probablyShort } from './all/probably-short';
import { sampleBeforeTheKnife } from './all/sample-before-the-knife';
import { setAsideForNothing } from './all/set-aside-for-nothing';
import { sharesDoNotAddUp } from './all/shares-do-not-add-up';
import { skullPlateSpoilsTheMount } from './all/skull-plate-spoils-the-mount';
import { sliceTooThinOrTooThick } from './all/slice-too-thin-or-too-thick';
import { smallAnimalManyCuts } from './all/small-animal-many-cuts';
import { somebodyElsesAnimal } from './all/somebody-elses-animal';
import { steaksOfARuttingMale } from './all/steaks-of-a-rutting-male';
import { twoNamesOneAnimal } from './all/two-names-one-animal';
import { waitForTestResult } from './all/wait-for-test-result';
import { wantedTooSoon } from './all/wanted-too-soon';
import { warmTooLong } from './all/warm-too-long';
import { weightsCannotBe } from './all/weights-cannot-be';
import { whichIsMadeFirst } from './all/which-is-made-first';
import { woundedPartKeptWhole } from './all/wounded-part-kept-whole';
import { woundsCostMeat } from './all/wounds-cost-meat';
import type { Rule } from './rule';

/** Every rule there is, in the order their findings are read when severity and part are the same. */
export const RULES: readonly Rule[] = [
  waitForTestResult,
  notFoodAnyMore,
  weightsCannotBe,
  noSawnBoneFromDiseaseZone,
  noBonesHomeFromDiseaseZone,
  overTheBorder,
  gutShotSpoilsTheInside,
  porkInANoPorkOrder,
  allergenInAProduct,
  jerkyOfAWormCarrier,
  afterTheLastBatch,
  notIntoASharedBatch,
  madeOnlyMixed,
  boneInABonelessOrder,
  musclePromisedTwice,
  moreThanTheAnimalGives,
  belowBatchMinimum,
  sharesDoNotAddUp,
  capeTakesHalfTheHide,
  bonedMeatHasNoNames,
  partNotDelivered,
  woundedPartKeptWhole,
  sampleBeforeTheKnife,
  warmTooLong,
  cutItFirst,
  somebodyElsesAnimal,
  killedLongAgo,
  frozenCannotBeSeamed,
  dirtyNeedsCleaning,
  pelletsInTheMeat,
  whichIsMadeFirst,
  probablyShort,
  wantedTooSoon,
  bestMeatIntoTheGrinder,
  jointLargerThanTheMuscle,
  setAsideForNothing,
  sliceTooThinOrTooThick,
  pattiesWithoutFat,
  moreFatThanTheShopAdds,
  manyPackets,
  capeShortensTheNeck,
  antlersOnAnAntlerlessAnimal,
  capeAfterSkinning,
  skullPlateSpoilsTheMount,
  capeWithNowhereToGo,
  twoNamesOneAnimal,
  pairsDoNotDivide,
  partWithoutDestination,
  noteAgainstAChoice,
  nameMeansTwoThings,
  leadNearTheWound,
  woundsCostMeat,
  steaksOfARuttingMale,
  hangItShort,
  butterflyIsCutDouble,
  smallAnimalManyCuts,
];
