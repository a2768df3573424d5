/** Published rows that the forecast has nothing to say to, by reason: species, then quantities. */
export const NOT_EXPRESSIBLE: readonly { readonly why: string; readonly rows: Readonly<Record<string, readonly string[]>> }[] = [
  {
    why: 'Part of an equation whose other terms are not told, or need a muscle, a bone or a depth of fat measured by itself.',
    rows: {
      'white-tailed deer': ['live_kg_Florida_const'],
      'caribou (barren-ground)': [
        'ln_muscle_kg_from_ln_gastrocnemius_g_slope', 'ln_muscle_kg_intercept', 'ln_bone_kg_from_ln_femur_g_slope', 'ln_bone_kg_intercept', 'fat_kg_per_cm_backfat',
      ],
    },
  },
  { why: 'Says how well a line fits, not what an animal weighs.', rows: { 'white-tailed deer': ['dressed_to_live_R2_S_Texas'] } },
  {
    why: 'How shares move as an animal grows; ours are the same at every size.',
    rows: {
      'fallow deer': ['allometric_b_muscle_on_carcass'],
      'red deer': ['allometric_b_trunk_muscles', 'allometric_b_distal_forelimb_muscles', 'allometric_b_hindlimb_bone'],
    },
  },
  { why: 'No hunted deer is castrated.', rows: { 'fallow deer': ['castration_shift_leg_gkg'] } },
  { why: 'Organs and what is in the gut are off before the first weight that is forecast.', rows: { 'fallow deer': ['edible_offal_pct_of_live_male', 'gut_fill_kg_summer_vs_winter'] } },
  { why: 'Fat found by chemistry, much of it inside the muscle.', rows: { 'red deer': ['chemical_fat_pct_of_empty_carcass'] } },
  {
    why: 'Which joints are first class is not told; KAY1981 means all lean by the same words and has twice as much.',
    rows: { 'red deer': ['first_class_lean_pct_of_live_farmed'] },
  },
  { why: 'Where the forequarter ends is not told.', rows: { impala: ['forequarter_pct_of_cold_carcass_male', 'forequarter_pct_of_cold_carcass_female'] } },
  { why: 'Meat on back and neck counts as bone of the frame, since nobody cuts it out, so our bone is another.', rows: { pheasant: ['meat_to_bone'] } },
  {
    why: 'A lamb, which no shop of this kind cuts; only the ratios between the seams of its leg are taken over, and those are checked.',
    rows: {
      'lamb (proxy)': [
        'leg_incl_sirloin_pct', 'loin_untrimmed_pct', 'rack_8rib_pct', 'shoulder_5rib_pct', 'breast_shank_neck_pct', 'boneless_from_untrimmed_loin_pct',
        'boneless_from_rack_pct', 'boneless_from_square_shoulder_pct', 'boneless_from_breast_shank_neck_pct', 'boneless_from_long_saddle_pct',
        'leg_pair_pct_of_carcass_computed', 'non_carcass_pct_of_live', 'topside_pct_of_carcass_each_side', 'silverside_with_heel_pct_of_carcass_each_side',
        'thick_flank_pct_of_carcass_each_side', 'shank_meaty_pct_of_carcass_each_side', 'tenderloin_head_with_tender_flank_pct_of_carcass_each_side',
      ],
    },
  },
  { why: 'Loss in the oven: the forecast ends at the packet.', rows: { 'red deer': ['roasting_loss_saddle_pct'] } },
  { why: 'A sausage that is dried for 45 days; ours is cooked and smoked.', rows: { 'beef-pork summer sausage': ['dried_summer_sausage_shrink_pct_45d'] } },
  { why: 'How a study was made, or how warm a room is, not a yield.', rows: { 'elk, mule deer, pronghorn': ['ageing_days_in_study'], 'game (general)': ['ageing_temperature_F'] } },
  {
    why: 'A serving of 3 oz cooked, or light eaters; we reckon 200 g raw a person without bone (MAGCUISINE, checked), which is more.',
    rows: {
      'any red meat': [
        'servings_per_lb_ground_or_stew', 'servings_per_lb_boneless_steak_roast', 'servings_per_lb_some_bone', 'servings_per_lb_much_bone', 'cooked_serving_oz',
        'raw_lb_per_serving_boneless', 'lb_per_person_boneless_roast_light', 'lb_per_person_bone_in_light',
      ],
    },
  },
  { why: 'Pieces a person, whatever they weigh.', rows: { 'roe/red deer': ['chops_per_person_France'] } },
  { why: 'Room in a freezer is not forecast.', rows: { 'any cut and wrapped meat': ['freezer_lb_per_cubic_foot'] } },
];
