import { PLAIN_INSTRUCTIONS, type Instructions } from '@/lib/instructions';

/** Instructions that name nothing and mince everything. */
export const nothingNamed: Instructions = {
  ...PLAIN_INSTRUCTIONS,
  lines: [],
  rest: 'mince',
  squaredOff: 'stew',
  mince: { addedFat: 'none', fatPercent: 0, packGrams: 454, shape: 'bulk' },
  stewPackGrams: 454,
  products: [],
  keep: { heart: false, liver: false, bones: false, antlers: 'none', cape: false, hide: false, taxidermist: '' },
  noPork: false,
  note: '',
};
