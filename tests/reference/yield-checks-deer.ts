import { gramsPerPerson } from '@/lib/cuts';
import { PRODUCTS } from '@/lib/plan';
import {
  GRAMS_PER_LB, HEAVY_SHOULDER_LIGHT_RIBS, animal, boneOfJoint, bonelessOf, carried, daysTo40, exactly, gramsOf, inKg, inLb, jointOfBoneAndMeat, lossOf, lostTo, ofKind, ofPart, percentOf,
  percentOfCut, percentOfHanging, percentOfMeat, poundsAtGirth, ratio, times, typicalOn,
} from './model-figures';
import { type YieldCheck, checksOf, off } from './yield-check';

const WT = 'white-tailed-deer';
const SAME = 'The figure is ours; the rest is rounding.';
const boneless = ofKind('muscle');
const tissue = (...ids: readonly string[]) => ({ tissue: id }: { readonly tissue: string }): boolean => ids.includes(id);

function slope(ageClass: 'adult' | 'young', basis: 'live' | 'field-dressed'): number {
  return (poundsAtGirth(WT, ageClass, 40, basis).likely - poundsAtGirth(WT, ageClass, 30, basis).likely) / 10;
}
function intercept(ageClass: 'adult' | 'young', basis: 'live' | 'field-dressed'): number {
  return poundsAtGirth(WT, ageClass, 30, basis).likely - 30 * slope(ageClass, basis);
}

const whiteTail = checksOf('white-tailed deer', [
  ['field_dressing_loss_pct_of_live', 'independent', 'what is missing from live to field-dressed', lossOf(percentOf(WT, 'live', 'field-dressed')), 'spread', 'Ours is the 21.6% of NOBLE2012. Minnesota deer lose 23.7 to 26.3%: the near end is within our spread, the mean is not. Both cannot be met, and Y-2 asks for NOBLE2012.'],
  ['field_dressing_loss_pct_of_live_individual_range', 'independent', 'what is missing from live to field-dressed', lossOf(percentOf(WT, 'live', 'field-dressed')), 'range', 'From one animal to another.'],
  ['field_dressed_pct_of_live_computed', 'independent', 'field-dressed of live', percentOf(WT, 'live', 'field-dressed'), 'spread', 'The same clash of NOBLE2012 and COOKCO from the other side.'],
  ['whole_weight_from_105lb_field_dressed', 'same source', '105 lb field-dressed carried to live', carried(WT, 105, 'field-dressed', 'live'), off(0.5), SAME],
  ['live_over_field_dressed_multiplier_noble_computed', 'same source', 'live over field-dressed', carried(WT, 1, 'field-dressed', 'live'), off(0.001), SAME],
  ['live_over_field_dressed_multiplier_rule', 'independent', 'live over field-dressed', carried(WT, 1, 'field-dressed', 'live'), off(0.01), 'A rule of thumb of two decimals.'],
  ['live_over_field_dressed_multiplier_WV', 'independent', 'live over field-dressed', carried(WT, 1, 'field-dressed', 'live'), 'spread', 'An older rule of thumb.'],
  ['girth_dressed_lb_adult_slope', 'same source', 'from our weights at 30 and 40 in', exactly(slope('adult', 'field-dressed')), off(0.0001), SAME],
  ['girth_dressed_lb_adult_intercept', 'same source', 'our line carried to no girth', exactly(intercept('adult', 'field-dressed')), off(0.0001), SAME],
  ['girth_dressed_lb_fawn_slope', 'same source', 'from our weights at 30 and 40 in', exactly(slope('young', 'field-dressed')), off(0.0001), SAME],
  ['girth_dressed_lb_fawn_intercept', 'same source', 'our line carried to no girth', exactly(intercept('young', 'field-dressed')), off(0.0001), SAME],
  ['girth_total_lb_adult_slope', 'same source', 'from our weights at 30 and 40 in', exactly(slope('adult', 'live')), off(0.0001), SAME],
  ['girth_total_lb_adult_intercept', 'same source', 'our line carried to no girth', exactly(intercept('adult', 'live')), off(0.0001), SAME],
  ['girth_total_lb_fawn_slope', 'same source', 'from our weights at 30 and 40 in', exactly(slope('young', 'live')), off(0.0001), SAME],
  ['girth_total_lb_fawn_intercept', 'same source', 'our line carried to no girth', exactly(intercept('young', 'live')), off(0.0001), SAME],
  ['girth_dressed_lb_WV_intercept_at_26in', 'independent', 'field-dressed at a girth of 26 in', poundsAtGirth(WT, 'adult', 26, 'field-dressed'), 'spread', 'An older rule of thumb at its light end.'],
  ['girth_dressed_lb_WV_slope', 'independent', 'from our weights at 30 and 40 in', exactly(slope('adult', 'field-dressed')), off(0.6), 'A rule of thumb: a tenth of it.'],
  ['boneless_pct_of_live_butcher', 'independent', 'boneless of live', percentOf(WT, 'live', 'boneless'), 'clash', 'BROCHU speaks of animals as they come, shot and trimmed; ours is a clean one. B589R weighed 34% of live on mule deer and PAREY 50% of gutted on a roe, so his 25 to 30% cannot stand beside them.'],
  ['boneless_kg_typical', 'independent', 'boneless of a grown deer of either sex', inKg(times(typicalOn(WT, 'unknown', 'adult', 'field-dressed'), percentOf(WT, 'field-dressed', 'boneless').likely / 100)), 'range', 'A wide range of a magazine.'],
  ['field_dressed_lb_northern_fawn_buck', 'same source', 'typical buck fawn', inLb(typicalOn(WT, 'male', 'young', 'field-dressed')), 'range', SAME],
  ['field_dressed_lb_yearling_buck', 'same source', 'typical yearling buck', inLb(typicalOn(WT, 'male', 'yearling', 'field-dressed')), 'range', SAME],
  ['field_dressed_lb_northern_adult_doe', 'same source', 'typical adult doe', inLb(typicalOn(WT, 'female', 'adult', 'field-dressed')), 'range', SAME],
  ['wound_loss_kg_shoulder_shot', 'independent', 'meat lost to a heavy wound of one shoulder and a light one of the ribs, of a typical buck', inKg(lostTo({ speciesId: WT, wounds: HEAVY_SHOULDER_LIGHT_RIBS })), 'spread', 'One animal, of which no weight is told.'],
]);

const MD = 'mule-deer';
const buckBoneless = (lb: number) => inLb(bonelessOf(MD, lb * GRAMS_PER_LB, 'field-dressed'));
const grownBuck = inLb(typicalOn(MD, 'male', 'adult', 'field-dressed'));
const muleDeer = checksOf('mule deer', [
  ['field_dressed_pct_of_live', 'same source', 'field-dressed of live', percentOf(MD, 'live', 'field-dressed'), off(0.1), SAME],
  ['buck_field_dressed_lb_1.5-2.5y', 'same source', 'typical yearling buck', inLb(typicalOn(MD, 'male', 'yearling', 'field-dressed')), off(0.1), SAME],
  ['buck_boneless_lb_1.5-2.5y', 'same source', 'boneless of 102 lb field-dressed', buckBoneless(102), off(1.5), 'The boneless share is of HUNTCONS, from the same study: 3%.'],
  ['buck_field_dressed_lb_3.5-4.5y', 'same source', 'typical adult buck', grownBuck, off(0.1), SAME],
  ['buck_boneless_lb_3.5-4.5y', 'same source', 'boneless of 150 lb field-dressed', buckBoneless(150), off(2.2), 'The boneless share is of HUNTCONS, from the same study: 3%.'],
  ['buck_field_dressed_lb_5.5-6.5y', 'independent', 'typical adult buck', grownBuck, 'spread', 'We know one class of grown bucks, of 3.5 to 4.5 years in the middle.'],
  ['buck_boneless_lb_5.5-6.5y', 'same source', 'boneless of 192 lb field-dressed', buckBoneless(192), off(2.8), 'The boneless share is of HUNTCONS, from the same study: 3%.'],
  ['buck_field_dressed_lb_7.5y+', 'independent', 'typical adult buck', grownBuck, 'clash', 'An old buck is heavier than nine in ten of our one class of grown bucks; few are shot so old. Weighed, it is forecast well: next row.'],
  ['buck_boneless_lb_7.5y+', 'same source', 'boneless of 207 lb field-dressed', buckBoneless(207), off(3), 'The boneless share is of HUNTCONS, from the same study: 3%.'],
  ['buck_mean_field_dressed_lb', 'independent', 'typical buck of unknown age', inLb(typicalOn(MD, 'male', 'unknown', 'field-dressed')), 'spread', 'How many of each age were shot is not told; ours counts each class once.'],
  ['buck_mean_boneless_lb', 'same source', 'boneless of 114 lb field-dressed', buckBoneless(114), off(1), 'Our 58% lies between its 57% and its 59% of hanging.'],
  ['buck_head_and_hide_lb', 'same source', 'what comes off 114 lb field-dressed before it hangs', times(lossOf(percentOf(MD, 'field-dressed', 'hanging')), 1.14), off(0.1), SAME],
  ['boneless_pct_of_skinned_headless_buck', 'same source', 'boneless of hanging', percentOf(MD, 'hanging', 'boneless'), off(1.1), 'The page gives 59% and, by its pounds, 57%; ours lies between.'],
  ['buck_live_lb', 'independent', 'typical adult buck, live', inLb(typicalOn(MD, 'male', 'adult', 'live')), 'range', 'An agency’s range.'],
  ['buck_dressed_lb', 'independent', 'typical adult buck, field-dressed', grownBuck, 'range', 'An agency’s range.'],
]);

const elk = checksOf('elk', [
  ['bull_mean_field_dressed_lb', 'same source', 'typical adult bull', inLb(typicalOn('elk', 'male', 'adult', 'field-dressed')), off(0.1), SAME],
  ['bull_head_and_hide_lb', 'same source', 'what comes off 437 lb field-dressed before it hangs', times(lossOf(percentOf('elk', 'field-dressed', 'hanging')), 4.37), off(0.1), SAME],
  ['bull_boneless_lean_lb', 'same source', 'boneless of 437 lb field-dressed', inLb(bonelessOf('elk', 437 * GRAMS_PER_LB, 'field-dressed')), off(1), SAME],
  ['boneless_pct_of_skinned_headless', 'same source', 'boneless of hanging', percentOf('elk', 'hanging', 'boneless'), off(0.1), SAME],
]);

const stag = inKg(typicalOn('red-deer', 'male', 'adult', 'hanging'));
const inSkin = percentOf('red-deer', 'live', 'hide-on');
const redDeer = checksOf('red deer', [
  ['carcass_pct_of_live_unfasted', 'same source', 'hanging of live', percentOf('red-deer', 'live', 'hanging'), 'range', 'Chosen to agree.'],
  ['carcass_pct_of_live_fasted_overnight', 'same source', 'hanging of live', percentOf('red-deer', 'live', 'hanging'), 'spread', 'A shot deer has not fasted.'],
  ['first_class_lean_pct_of_live', 'independent', 'boneless of live', percentOf('red-deer', 'live', 'boneless'), off(1), 'What counts as first class is not told; 1 point.'],
  ['carcass_in_skin_pct_of_live_farmed', 'independent', 'hide-on of live', inSkin, 'range', 'Farmed yearlings.'],
  ['carcass_in_skin_pct_of_live_20mo_stag', 'independent', 'hide-on of live', inSkin, 'clash', 'Fed yearling stags with little in the gut, just over our 90th percentile; KAY1981 has 49 to 52% without the skin, which leaves no room for it.'],
  ['carcass_in_skin_pct_of_live_20mo_hind', 'independent', 'hide-on of live', inSkin, 'spread', 'Farmed yearlings.'],
  ['stag_carcass_kg_2y', 'independent', 'typical yearling stag', inKg(typicalOn('red-deer', 'male', 'yearling', 'hanging')), 'spread', 'The weight of a yearling leans on it, taken between it and a UK stag.'],
  ['stag_carcass_kg_3-4y', 'same source', 'typical adult stag', stag, 'spread', 'One class of grown stags, from UK hill to Polish forest.'],
  ['stag_carcass_kg_5-6y', 'same source', 'typical adult stag', stag, 'spread', 'One class of grown stags.'],
  ['stag_carcass_kg_7-8y', 'same source', 'typical adult stag', stag, 'spread', 'One class of grown stags.'],
  ['stag_carcass_kg_9-10y', 'same source', 'typical adult stag', stag, 'clash', 'Old Polish stags are heavier than nine in ten of ours: WVP_RED has 75 kg for a UK stag, and one class serves both.'],
  ['stag_carcass_kg_11y+', 'same source', 'typical adult stag', stag, 'clash', 'As at 9 to 10 years.'],
  ['carcass_kg_typical_UK_hind', 'same source', 'typical adult hind', inKg(typicalOn('red-deer', 'female', 'adult', 'hanging')), off(0.1), SAME],
  ['carcass_kg_typical_UK_stag', 'same source', 'typical adult stag', stag, 'spread', 'Taken between it and JANKOL2006.'],
  ['meat_pct_of_carcass_hind', 'same source', 'muscle and cover of hanging', percentOfHanging('red-deer', ofKind('muscle', 'cover')), off(0.5), 'Its meat has the fat and membrane on; ours counts them as cover.'],
  ['meat_from_leg_pct', 'same source', 'haunches of the muscle', percentOfMeat('red-deer', 'haunch'), off(0.05), SAME],
  ['meat_from_saddle_pct', 'same source', 'loins and fillets of the muscle', percentOfMeat('red-deer', 'loin', 'fillet'), off(0.05), SAME],
  ['fat_pct_of_carcass_stag', 'independent', 'cover of hanging, which is fat with membrane', percentOfHanging('red-deer', ofKind('cover')), 'range', 'Farmed and fat; ours has the membrane in it.'],
  ['fat_pct_of_carcass_hind', 'independent', 'cover of hanging, which is fat with membrane', percentOfHanging('red-deer', ofKind('cover')), 'range', 'Farmed and fat; ours has the membrane in it.'],
  ['hot_carcass_kg_19_20mo_comparison', 'independent', 'typical yearling stag', inKg(typicalOn('red-deer', 'male', 'yearling', 'hanging')), 'clash', 'Farmed stags and their hybrids with a larger deer, just over our 90th percentile; JANKOL2006 has 67.6 kg for wild two-year-olds.'],
  ['portions_per_haunch', 'independent', 'haunch on the bone of a typical hind at 300 g a person', times(gramsOf(animal({ speciesId: 'red-deer', sex: 'female' }), ofPart('haunch')), 1 / 2 / gramsPerPerson('on-the-bone')), 'spread', 'The page is generous with its portions, or its haunch is small.'],
]);

const FD = 'fallow-deer';
const fallowJoint = (...parts: readonly string[]) => percentOfCut(FD, ofPart(...parts));
const fallowYearling = inKg(typicalOn(FD, 'male', 'yearling', 'hanging'));
const fallow = checksOf('fallow deer', [
  ['dressing_pct_wild_male', 'same source', 'hanging of live', percentOf(FD, 'live', 'hanging'), off(1), 'Set between it and MASSEY1985.'],
  ['dressing_pct_over_41_to_66kg', 'same source', 'hanging of live', percentOf(FD, 'live', 'hanging'), 'range', 'Set to agree.'],
  ['carcass_kg_13mo', 'independent', 'typical yearling buck', fallowYearling, 'spread', 'Our yearling is of 17 months.'],
  ['carcass_kg_17mo', 'same source', 'typical yearling buck', fallowYearling, off(0.1), SAME],
  ['carcass_kg_25mo', 'same source', 'typical adult buck', inKg(typicalOn(FD, 'male', 'adult', 'hanging')), 'spread', 'A buck that is not yet grown.'],
  ['carcass_kg_typical_UK_doe', 'same source', 'typical adult doe', inKg(typicalOn(FD, 'female', 'adult', 'hanging')), off(0.1), SAME],
  ['carcass_kg_typical_UK_buck', 'same source', 'typical adult buck', inKg(typicalOn(FD, 'male', 'adult', 'hanging')), 'range', '40 kg and more.'],
  ['haunch_pct_of_carcass', 'same source', 'haunches on the bone of what is cut', fallowJoint('haunch'), off(0.5), 'The five joints as printed sum to 100.7.'],
  ['saddle_pct_of_carcass', 'same source', 'saddle on the bone of what is cut', fallowJoint('loin', 'fillet'), off(0.5), 'The five joints as printed sum to 100.7.'],
  ['shoulder_pct_of_carcass', 'same source', 'shoulders on the bone of what is cut', fallowJoint('shoulder'), off(0.5), 'The five joints as printed sum to 100.7.'],
  ['flank_pct_of_carcass', 'same source', 'ribs with flank on the bone of what is cut', fallowJoint('ribs'), off(0.5), 'The five joints as printed sum to 100.7.'],
  ['neck_pct_of_carcass', 'same source', 'neck on the bone of what is cut', fallowJoint('neck'), off(0.5), 'The five joints as printed sum to 100.7.'],
  ['muscle_pct_of_carcass_13mo', 'same source', 'muscle of hanging', percentOfHanging(FD, boneless), 'spread', 'One share for three ages.'],
  ['muscle_pct_of_carcass_17mo', 'same source', 'muscle of hanging', percentOfHanging(FD, boneless), off(0.1), SAME],
  ['muscle_pct_of_carcass_25mo', 'same source', 'muscle of hanging', percentOfHanging(FD, boneless), off(1.5), 'One share for three ages.'],
  ['muscle_to_bone_ratio', 'same source', 'muscle over bone', exactly(ratio(FD, boneless, ofKind('bone'))), off(0.05), SAME],
  ['fat_pct_of_carcass_summer', 'independent', 'cover of a lean animal, of hanging', percentOfHanging(FD, ofKind('cover'), { flesh: 'lean' }), 'clash', 'Fat alone; our cover is all that MASSEY1985 leaves beside muscle and bone, with membrane and sinew, of farmed bucks.'],
  ['fat_pct_of_carcass_winter', 'independent', 'cover of hanging', percentOfHanging(FD, ofKind('cover')), 'clash', 'Fat alone; our cover is all that MASSEY1985 leaves beside muscle and bone, with membrane and sinew, of farmed bucks.'],
  ['chill_loss_warm_to_cold_male_computed', 'same source', 'drying of an animal that hung no full day', percentOfHanging(FD, ofKind('drying'), { hung: { days: 0, hide: 'off' } }), off(0.01), SAME],
  ['portions_per_haunch', 'independent', 'haunch on the bone of a typical doe at 300 g a person', times(gramsOf(animal({ speciesId: FD, sex: 'female' }), ofPart('haunch')), 1 / 2 / gramsPerPerson('on-the-bone')), 'clash', 'See red deer: the same supplier counts 400 g and more a portion of the larger deer.'],
]);

const RD = 'roe-deer';
const roe = checksOf('roe deer', [
  ['live_kg_fawn_1y', 'same source', 'typical male kid, live', inKg(typicalOn(RD, 'male', 'young', 'live')), off(0.1), SAME],
  ['live_kg_buck_2_3y', 'independent', 'typical adult buck, live', inKg(typicalOn(RD, 'male', 'adult', 'live')), 'spread', 'Our buck is of WVP_ROE on another basis.'],
  ['carcass_kg_UK_buck', 'same source', 'typical adult buck, hanging', inKg(typicalOn(RD, 'male', 'adult', 'hanging')), 'range', SAME],
  ['portions_per_haunch', 'independent', 'haunch on the bone of a typical buck at 300 g a person', times(gramsOf(animal({ speciesId: RD }), ofPart('haunch')), 1 / 2 / gramsPerPerson('on-the-bone')), off(1.5), 'Bears on our 300 g a person on the bone.'],
  ['g_per_person_France', 'same source', 'raw meat a person is given without bone', exactly(gramsPerPerson('joint')), off(0), SAME],
  ['ageing_degree_days_C', 'same source', 'degrees times days at 4 °C', exactly(4 * daysTo40(4)), 'range', 'At least so many.'],
]);

const parey = checksOf('roe-size deer', [
  ['skin_head_legs_pct_of_gutted', 'same source', 'what comes off a field-dressed animal before it hangs', lossOf(percentOf(RD, 'field-dressed', 'hanging')), off(0.1), SAME],
  ['boneless_meat_pct_of_gutted_computed', 'same source', 'boneless of field-dressed', percentOf(RD, 'field-dressed', 'boneless'), off(0.1), SAME],
  ['boneless_meat_pct_of_skinned_computed', 'same source', 'boneless of hanging', percentOf(RD, 'hanging', 'boneless'), off(0.1), SAME],
  ['bone_pct_of_gutted', 'same source', 'bone of hanging, of field-dressed', times(percentOfHanging(RD, ofKind('bone')), percentOf(RD, 'field-dressed', 'hanging').likely / 100), off(0.1), SAME],
  ['trim_loss_pct_of_gutted', 'same source', 'cover of hanging, of field-dressed', times(percentOfHanging(RD, ofKind('cover')), percentOf(RD, 'field-dressed', 'hanging').likely / 100), off(0.1), SAME],
  ['cutting_room_drying_loss_pct', 'same source', 'drying of hanging, of field-dressed', times(percentOfHanging(RD, ofKind('drying')), percentOf(RD, 'field-dressed', 'hanging').likely / 100), off(0.1), SAME],
  ['bone_share_of_haunch', 'same source', 'bone of bone and muscle in the haunch', boneOfJoint(RD, 'haunch'), off(2), 'Bones were rounded to shares that sum to one.'],
  ['bone_share_of_saddle', 'same source', 'bone of bone and muscle in the saddle', boneOfJoint(RD, 'loin', 'fillet'), off(2), 'Bones were rounded to shares that sum to one.'],
  ['bone_share_of_shoulder', 'same source', 'bone of bone and muscle in the shoulder', boneOfJoint(RD, 'shoulder'), off(2), 'Bones were rounded to shares that sum to one.'],
  ['bone_share_of_neck', 'same source', 'bone of bone and muscle in the neck', boneOfJoint(RD, 'neck'), off(2), 'Bones were rounded to shares that sum to one.'],
  ['bone_share_of_ribs_with_flank', 'same source', 'bone of bone and muscle in the ribs', boneOfJoint(RD, 'ribs'), off(2), 'Bones were rounded to shares that sum to one.'],
  ['haunch_pair_pct_of_cut_carcass_computed', 'same source', 'haunches of bone and muscle', jointOfBoneAndMeat(RD, 'haunch'), 'range', 'Parts as printed sum to under the whole; ours were carried up to it.'],
  ['saddle_pct_of_cut_carcass_computed', 'same source', 'saddle of bone and muscle', jointOfBoneAndMeat(RD, 'loin', 'fillet'), off(1), 'Parts as printed sum to under the whole; ours were carried up to it.'],
  ['shoulder_pair_pct_of_cut_carcass_computed', 'same source', 'shoulders of bone and muscle', jointOfBoneAndMeat(RD, 'shoulder'), off(1), 'Parts as printed sum to under the whole; ours were carried up to it.'],
  ['ribs_flank_pair_pct_of_cut_carcass_computed', 'same source', 'ribs and flank of bone and muscle', jointOfBoneAndMeat(RD, 'ribs'), off(1), 'Parts as printed sum to under the whole; ours were carried up to it.'],
  ['neck_pct_of_cut_carcass_computed', 'same source', 'neck of bone and muscle', jointOfBoneAndMeat(RD, 'neck'), off(1), 'Parts as printed sum to under the whole; ours were carried up to it.'],
  ['haunch_pair_pct_of_boneless_computed', 'same source', 'haunches of the muscle', percentOfMeat(RD, 'haunch'), off(2.3), 'The five shares sum to 95.2; ours were carried up to the whole.'],
  ['saddle_pct_of_boneless_computed', 'same source', 'loins and fillets of the muscle', percentOfMeat(RD, 'loin', 'fillet'), off(1), 'The five shares sum to 95.2; ours were carried up to the whole.'],
  ['shoulder_pair_pct_of_boneless_computed', 'same source', 'shoulders of the muscle', percentOfMeat(RD, 'shoulder'), off(1), 'The five shares sum to 95.2; ours were carried up to the whole.'],
  ['ribs_flank_pair_pct_of_boneless_computed', 'same source', 'ribs and flank of the muscle', percentOfMeat(RD, 'ribs'), off(1), 'The five shares sum to 95.2; ours were carried up to the whole.'],
  ['neck_pct_of_boneless_computed', 'same source', 'neck of the muscle', percentOfMeat(RD, 'neck'), off(1), 'The five shares sum to 95.2; ours were carried up to the whole.'],
]);

const muntjac = checksOf('muntjac', [
  ['carcass_kg_UK', 'same source', 'typical adult of either sex, hanging', inKg(typicalOn('muntjac', 'unknown', 'adult', 'hanging')), 'range', SAME],
  ['portions_both_haunches', 'independent', 'both haunches on the bone of a typical doe at 300 g a person', times(gramsOf(animal({ speciesId: 'muntjac', sex: 'female' }), ofPart('haunch')), 1 / gramsPerPerson('on-the-bone')), 'clash', 'See red deer: the same supplier counts 400 g a portion.'],
]);

const lamb = checksOf('lamb (proxy)', [
  ['topside_over_silverside_computed', 'same source', 'topside over silverside with salmon cut, of any deer', exactly(ratio(WT, tissue('topside'), tissue('silverside', 'salmon-cut'))), off(0.01), SAME],
  ['topside_over_thick_flank_computed', 'same source', 'topside over thick flank, of any deer', exactly(ratio(WT, tissue('topside'), tissue('thick-flank'))), off(0.01), SAME],
]);

const finished = (id: 'jerky' | 'snack-sticks') => exactly(PRODUCTS[id].finishedPer10k / 100);
const made = [
  ...checksOf('meat (any lean)', [['jerky_yield_pct_of_raw', 'same source', 'finished jerky of raw', finished('jerky'), off(0), SAME]]),
  ...checksOf('beef snack sausage', [
    ['snack_stick_yield_pct_lean_mix', 'same source', 'finished sticks of the raw mix', finished('snack-sticks'), off(6), 'Ours is the middle of a lean and a fat mix.'],
    ['snack_stick_yield_pct_fat_mix', 'same source', 'finished sticks of the raw mix', finished('snack-sticks'), off(6), 'Ours is the middle of a lean and a fat mix.'],
  ]),
  ...checksOf('venison, moose (Sweden)', [
    ['ageing_degree_days_C', 'same source', 'degrees times days at 5 °C', exactly(5 * daysTo40(5)), 'range', 'At least so many.'],
  ]),
];

export const DEER_CHECKS: readonly YieldCheck[] = [...whiteTail, ...muleDeer, ...elk, ...redDeer, ...fallow, ...roe, ...parey, ...muntjac, ...lamb, ...made];
