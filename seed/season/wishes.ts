import type { CutId, TargetId } from '@/lib/cuts';
import type { LineSide } from '@/lib/instructions';
import { AS_SEEN_FIT, type OrderFormValues, blankOrderForm } from '@/lib/forms';

/** What a hunter wants, as the form's inputs would hold it. */
export type Wish = Partial<Pick<OrderFormValues, 'lines' | 'rest' | 'squaredOff' | 'mince' | 'stewPack' | 'products' | 'noPork' | 'note'>> & {
  readonly keep?: Partial<OrderFormValues['keep']>;
};

function madeOf(own: Partial<OrderFormValues['products']>): OrderFormValues['products'] {
  return { ...blankOrderForm('').products, ...own };
}

type Line = readonly [
  target: TargetId,
  cut: CutId,
  more?: { readonly side?: LineSide; readonly size?: string; readonly pack?: string; readonly asked?: string },
];

function lines(...wanted: readonly Line[]): OrderFormValues['lines'] {
  return wanted.map(([target, cut, more = {}], at) => ({
    id: `line-${at + 1}`,
    target,
    cut,
    side: more.side ?? (target === 'neck' ? 'middle' : 'both'),
    size: more.size ?? AS_SEEN_FIT,
    pack: more.pack ?? AS_SEEN_FIT,
    asked: more.asked ?? '',
  }));
}

const pound = { addedFat: 'none', fatPercent: '10', pack: '454', shape: 'bulk' } as const;

/** The wishes of the season, from 'grind it all' to the whole menu. Sizes are codes of the form's menus: 't:19' is 19 mm. */
export const wishes = {
  grindItAll: { rest: 'mince', mince: { ...pound, pack: '907' } },
  usual: {
    lines: lines(['fillet', 'whole'], ['loin', 'medallions', { size: 't:25', pack: 'n:4' }], ['topside', 'joint', { size: 'p:4' }], ['silverside', 'steaks', { size: 't:13', pack: 'n:4' }], ['rump', 'steaks', { pack: 'n:2' }]),
    rest: 'mince',
    mince: pound,
  },
  steaksAndSausage: {
    lines: lines(['fillet', 'whole'], ['loin', 'butterfly', { size: 't:25', pack: 'n:2' }], ['haunch', 'steaks', { size: 't:13', pack: 'n:4' }]),
    rest: 'mince',
    mince: pound,
    products: madeOf({ 'fresh-sausage': '5' }),
  },
  burgers: {
    lines: lines(['fillet', 'medallions'], ['loin', 'whole']),
    rest: 'mince',
    mince: { addedFat: 'beef', fatPercent: '10', pack: '454', shape: 'bulk' },
    note: 'Burger meat for the church supper; the lean packs for us.',
  },
  porkFat: {
    lines: lines(['loin', 'medallions', { size: 't:19', pack: 'n:6' }]),
    rest: 'mince',
    mince: { addedFat: 'pork', fatPercent: '20', pack: '907', shape: 'bulk' },
    keep: { heart: true, liver: true },
  },
  noPork: {
    lines: lines(['fillet', 'whole'], ['loin', 'whole'], ['haunch', 'diced', { pack: 'w:680' }]),
    rest: 'mince',
    mince: pound,
    noPork: true,
    note: 'No pork in the house. Keep it apart from anything with pork in it.',
  },
  leftAndRight: {
    lines: lines(
      ['loin', 'chops', { side: 'left', size: 't:25', pack: 'n:4' }],
      ['loin', 'whole', { side: 'right' }],
      ['haunch', 'on-the-bone', { side: 'left' }],
      ['haunch', 'tenderised-steaks', { side: 'right', size: 't:13', pack: 'n:4' }],
    ),
    rest: 'stew',
    squaredOff: 'stew',
    mince: pound,
    stewPack: '680',
  },
  mount: {
    lines: lines(['fillet', 'whole'], ['loin', 'butterfly', { size: 't:32', pack: 'n:2' }], ['shoulder', 'boned-and-rolled', { size: 'p:6' }]),
    rest: 'mince',
    mince: pound,
    keep: { antlers: 'whole-head', cape: true },
    note: 'For a shoulder mount: long on the brisket, do not split the ears.',
  },
  skullPlate: {
    lines: lines(['fillet', 'whole'], ['loin', 'medallions', { size: 't:25', pack: 'n:4' }], ['neck', 'boned-and-rolled', { size: 'p:8' }]),
    rest: 'mince',
    mince: pound,
    keep: { antlers: 'skull-plate', heart: true },
  },
  roasts: {
    lines: lines(
      ['saddle', 'on-the-bone'],
      ['topside', 'joint', { size: 'p:6' }],
      ['thick-flank', 'joint', { size: 'p:4' }],
      ['hind-shank', 'shank-on-bone'],
      ['fore-shank', 'shank-slices', { size: 't:38', pack: 'n:2' }],
    ),
    rest: 'stew',
    mince: pound,
    stewPack: '907',
    keep: { bones: true, liver: true },
  },
  smallAndSimple: { lines: lines(['saddle', 'boned-and-rolled', { size: 'p:6' }], ['haunch', 'on-the-bone']), rest: 'stew', mince: pound, stewPack: '454' },
  wholeMenu: {
    lines: lines(
      ['fillet', 'whole'],
      ['loin', 'butterfly', { size: 't:32', pack: 'n:2' }],
      ['rump', 'steaks', { size: 't:19', pack: 'n:2' }],
      ['topside', 'tenderised-steaks', { size: 't:13', pack: 'n:4' }],
      ['thick-flank', 'joint', { size: 'w:1361' }],
      ['silverside', 'diced', { pack: 'w:907' }],
      ['salmon-cut', 'medallions', { size: 't:25', pack: 'n:6' }],
      ['hind-shank', 'shank-on-bone'],
      ['blade', 'joint', { size: 'p:8' }],
      ['neck', 'diced', { pack: 'w:907' }],
      ['rib-rack', 'rack'],
    ),
    rest: 'mince',
    mince: { addedFat: 'beef', fatPercent: '15', pack: '907', shape: 'bulk' },
    products: madeOf({ 'fresh-sausage': '20' }),
    keep: { heart: true, antlers: 'skull-plate' },
  },
  chopsByTheBoxful: {
    lines: lines(['loin', 'chops', { size: 't:25', pack: 'n:4', asked: '15' }]),
    rest: 'mince',
    mince: pound,
  },
  rolledShoulders: {
    lines: lines(['shoulder', 'boned-and-rolled', { size: 'p:6' }], ['loin', 'medallions', { size: 't:25', pack: 'n:4' }], ['fillet', 'whole']),
    rest: 'mince',
    mince: pound,
  },
  bonesForBroth: {
    lines: lines(['loin', 'chops', { size: 't:25', pack: 'n:2' }], ['haunch', 'steaks', { size: 't:19', pack: 'n:2' }]),
    rest: 'mince',
    mince: pound,
    keep: { bones: true },
  },
  nothingSaid: { lines: lines(['fillet', 'whole'], ['loin', 'whole']), rest: 'undecided' },
} as const satisfies Readonly<Record<string, Wish>>;

export type WishName = keyof typeof wishes;
