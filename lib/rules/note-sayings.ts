import { CUTS, type CutId, cutsOf, keepsBone, minceName } from '@/lib/cuts';
import type { Edit, InstructionLine, ProductId } from '@/lib/instructions';
import { PRODUCTS } from '@/lib/plan';
import type { RuledOrder } from './rule';
import { lineWords } from './wording';

/** Something the order asks for, as it is said, and what takes it back. */
export type Choice = { readonly words: string; readonly edits: readonly Edit[] };

/** What a note can say that an order can contradict. */
export type Saying = {
  readonly id: string;
  /** What doing as it says comes to, before the list of choices: 'Taken off'. */
  readonly doing: string;
  readonly against: (order: RuledOrder) => readonly Choice[];
};

/** Said of everything: 'no steaks'. Nouns as `wordsOfPhrase` reads them. */
export type Refusal = Saying & { readonly nouns: readonly string[] };

/** Said in set words. `alone`: only where a sentence begins with them. `unlessNamed`: only in a note that names no cut or muscle. */
export type Order = Saying & { readonly phrases: readonly string[]; readonly alone?: readonly string[]; readonly unlessNamed?: boolean };

function linesThat(order: RuledOrder, test: (line: InstructionLine) => boolean, change: (line: InstructionLine) => Edit): readonly Choice[] {
  return order.instructions.lines.filter(test).map((line) => ({ words: lineWords(line, order.words), edits: [change(line)] }));
}

const remove = ({ id }: InstructionLine): Edit => ({ kind: 'remove-line', lineId: id });
const cutAs = ({ id }: InstructionLine, cut: CutId): Edit => ({ kind: 'set-cut', lineId: id, cut });

function cutsAre(...cuts: readonly CutId[]): Saying['against'] {
  return (order) => linesThat(order, ({ cut }) => cuts.includes(cut), remove);
}

function minced(line: InstructionLine): Edit {
  return CUTS.mince.targets.includes(line.target) ? cutAs(line, 'mince') : remove(line);
}

function boned(line: InstructionLine): Edit {
  const without = cutsOf(line.target).filter((cut) => !keepsBone(cut) && cut !== 'leave-out');
  const cut = without.find((one) => line.cut === 'chops' && one === 'medallions') ?? without[0];
  return cut ? cutAs(line, cut) : remove(line);
}

function products({ instructions }: RuledOrder, test: (id: ProductId) => boolean): readonly Choice[] {
  return instructions.products
    .filter(({ productId }) => test(productId))
    .map(({ productId }) => ({ words: PRODUCTS[productId].name, edits: [{ kind: 'set-product', productId, gameGrams: 0 }] }));
}

function fat({ instructions, words }: RuledOrder, ...kinds: readonly string[]): readonly Choice[] {
  const { addedFat } = instructions.mince;
  return kinds.includes(addedFat)
    ? [{ words: `${addedFat} fat in the ${minceName(words.country)}`, edits: [{ kind: 'set-fat', addedFat: 'none', fatPercent: 0 }] }]
    : [];
}

/** An order without pork is another rule's. */
function pork(order: RuledOrder): readonly Choice[] {
  if (order.instructions.noPork) return [];
  return [...fat(order, 'pork'), ...products(order, (id) => PRODUCTS[id].contains.includes('pork'))];
}

function bones(order: RuledOrder): readonly Choice[] {
  const kept: Choice = { words: 'bones for stock', edits: [{ kind: 'set-keep', item: 'bones', keep: false }] };
  return [...linesThat(order, ({ cut }) => keepsBone(cut), boned), ...(order.instructions.keep.bones ? [kept] : [])];
}

function notGround(order: RuledOrder): readonly Choice[] {
  const stewed: Choice = { words: 'the rest for stew', edits: [{ kind: 'set-rest', rest: 'mince' }] };
  return [
    ...linesThat(order, ({ cut }) => cut !== 'mince' && cut !== 'leave-out', minced),
    ...(order.instructions.rest === 'stew' ? [stewed] : []),
  ];
}

const TAKEN_OFF = 'Taken off';

/** Things a note can refuse. Common practice, no source. */
export const REFUSALS: readonly Refusal[] = [
  { id: 'roast', nouns: ['roast', 'joint'], doing: TAKEN_OFF, against: cutsAre('joint', 'boned-and-rolled') },
  { id: 'steak', nouns: ['steak'], doing: TAKEN_OFF, against: cutsAre('steaks', 'tenderised-steaks', 'butterfly') },
  { id: 'chop', nouns: ['chop'], doing: TAKEN_OFF, against: cutsAre('chops') },
  { id: 'sausage', nouns: ['sausage'], doing: TAKEN_OFF, against: (order) => products(order, (id) => id.endsWith('sausage')) },
  { id: 'summer sausage', nouns: ['summer sausage'], doing: TAKEN_OFF, against: (order) => products(order, (id) => id === 'summer-sausage') },
  { id: 'sticks', nouns: ['stick', 'snack stick'], doing: TAKEN_OFF, against: (order) => products(order, (id) => id === 'snack-sticks') },
  {
    id: 'jerky',
    nouns: ['jerky'],
    doing: TAKEN_OFF,
    against: (order) => [...products(order, (id) => id === 'jerky'), ...cutsAre('set-aside-whole')(order)],
  },
  { id: 'fat', nouns: ['fat', 'added fat', 'fat added'], doing: TAKEN_OFF, against: (order) => fat(order, 'pork', 'beef') },
  { id: 'beef', nouns: ['beef', 'beef fat'], doing: TAKEN_OFF, against: (order) => fat(order, 'beef') },
  { id: 'pork', nouns: ['pork', 'pork fat'], doing: TAKEN_OFF, against: pork },
  { id: 'bone', nouns: ['bone', 'bone in'], doing: 'Off the bone', against: bones },
];

function inOnePiece(id: 'loin' | 'fillet', nouns: readonly string[]): Order {
  const sliced: readonly CutId[] = ['steaks', 'medallions', 'butterfly', 'chops', 'portions', 'diced', 'mince'];
  return {
    id: `whole ${id}`,
    phrases: nouns.flatMap((noun) => [`whole ${noun}`, `${noun} whole`, `${noun} left whole`, `${noun} in one piece`]),
    doing: 'In one piece',
    against: (order) => linesThat(order, ({ target, cut }) => target === id && sliced.includes(cut), (line) => cutAs(line, 'whole')),
  };
}

const GROUND = ['ground', 'mince', 'minced', 'burger', 'hamburger'];

/** Things a note can order. Common practice, no source. */
export const ORDERS: readonly Order[] = [
  {
    id: 'all ground',
    phrases: [
      ...GROUND.flatMap((word) => [`all ${word}`, `everything ${word}`, `all to ${word}`, `everything to ${word}`, `all into ${word}`, `everything into ${word}`]),
      ...['grind', 'mince'].flatMap((word) => [`${word} everything`, `${word} it all`, `${word} all`, `${word} all of it`]),
    ],
    unlessNamed: true,
    doing: 'To be ground',
    against: notGround,
  },
  {
    id: 'boneless',
    phrases: ['all boneless', 'everything boneless', 'everything off the bone', 'everything boned out', 'all boned out', 'bone everything out', 'bone it all out'],
    alone: ['boneless'],
    doing: 'Off the bone',
    against: bones,
  },
  {
    id: 'keep everything',
    phrases: ['keep everything', 'save everything', 'use everything', 'keep it all', 'save it all', 'waste nothing', 'throw nothing away', 'leave nothing out', "don't waste anything", "don't throw anything away", 'do not waste anything', 'do not throw anything away'],
    doing: 'Not left out',
    against: (order) => linesThat(order, ({ cut }) => cut === 'leave-out', minced),
  },
  inOnePiece('fillet', ['tenderloin', 'fillet', 'filet']),
  inOnePiece('loin', ['backstrap', 'back strap', 'loin']),
];
