/** Where a coefficient comes from: a published source, common practice, memory, or our own judgement. */
export const SOURCES = {
  AHDBLAMB14: 'AHDB/EBLEX Lamb Yield Guide, page 14 (leg cuts)',
  B589R: 'The Mule Deer Carcass, University of Wyoming bulletin B-589R (2003), read as tabulated by others',
  HILLBILLY: 'Venison cuts page: typical northern field-dressed weights',
  HUNTCONS:
    'How much meat should you get from your elk or deer?, The Hunter Conservationist, 2019; summarises University of Wyoming B-589R and B-594R',
  KAY1981: 'Kay et al., Carcass characteristics of young red deer farmed on hill pasture, J. Agric. Sci. (Cambridge)',
  MASSEY1985: 'The carcass composition and meat quality of male fallow deer, thesis, Massey University, 1985',
  NOBLE2012: 'Estimating deer weight from field-dressed weight, Noble Research Institute, February 2012',
  PAREY: 'Parey Jagdausbildung, worked weighing of one roe-size animal',
  PJFNS2009:
    'Utility value of carcass of European deer and its meat evaluation, Pol. J. Food Nutr. Sci. 59(2):151-156, 2009',
  ROEGROW: 'Changes in body proportion of roe deer with age (abstract)',
  WVP_RED: 'Red deer page of a UK venison supplier: typical carcass weights',
  WVP_ROE: 'Roe deer page of a UK venison supplier: typical carcass weights',
  PRACTICE: 'common practice, no source',
  MEMORY: 'from memory',
  JUDGEMENT: 'judgement',
} as const;

export type SourceKey = keyof typeof SOURCES;
