import { describe, expect, test } from 'vitest';
import type { AnimalFacts } from '@/lib/carcass';
import { type InstructionLine, type Instructions, PLAIN_INSTRUCTIONS, newLine } from '@/lib/instructions';
import { CAREFUL } from '@/lib/law';
import { type Circumstances, PLAIN_TERMS, type RuledOrder, type Stage, afterEdits, findAll } from '@/lib/rules';
import { orderOf } from './any-order';

// Orders that give trouble, as people write them. Common practice, no source: the trouble is what a master cutter would name.

const POUND = 453.592_37;
const pounds = (lb: number): number => Math.round(lb * POUND);
const line = (id: string, target: InstructionLine['target'], cut: InstructionLine['cut'], more: Partial<InstructionLine> = {}): InstructionLine => ({
  ...newLine(id, target, cut),
  ...more,
});
const quarterInch = { size: { kind: 'thickness', thicknessMm: 6 } } as const;
const keep = PLAIN_INSTRUCTIONS.keep;

const doe: AnimalFacts = { speciesId: 'white-tailed-deer', sex: 'female', ageClass: 'adult', weight: { grams: pounds(80), basis: 'field-dressed' }, form: 'hide-on', missing: [], wounds: [] };
const buck: AnimalFacts = { ...doe, sex: 'male', weight: { grams: pounds(140), basis: 'field-dressed' } };

type Trouble = {
  readonly what: string;
  readonly facts: AnimalFacts;
  readonly instructions: Partial<Instructions>;
  readonly stage?: Stage;
  readonly around?: Partial<Circumstances>;
  /** Rules that speak, as often as they speak, in the order they are read. */
  readonly told: readonly string[];
  /** Stops that no tap of the hunter mends. */
  readonly left?: readonly string[];
};

const open = { ...CAREFUL.points, pooling: 'allowed' } as const;

const TROUBLES: readonly Trouble[] = [
  {
    // Fifteen pounds of finished sticks take about 23 of own meat.
    what: 'a small doe all in thin steaks, with sticks of 23 lb of meat and jerky of 10',
    facts: doe,
    instructions: {
      lines: [line('a', 'fillet', 'whole'), line('b', 'loin', 'steaks', quarterInch), line('c', 'haunch', 'steaks', quarterInch)],
      products: [{ productId: 'snack-sticks', gameGrams: pounds(23) }, { productId: 'jerky', gameGrams: pounds(10) }],
    },
    told: ['more-than-the-animal-gives', 'more-than-the-animal-gives', 'slice-too-thin-or-too-thick', 'slice-too-thin-or-too-thick'],
  },
  {
    what: 'a buck with one backstrap whole and chops of both, its tenderloins saved though they are out already',
    facts: { ...buck, missing: [{ part: 'fillet', place: 'left' }, { part: 'fillet', place: 'right' }] },
    instructions: { lines: [line('a', 'loin', 'whole', { side: 'left' }), line('b', 'loin', 'chops'), line('c', 'fillet', 'whole')] },
    told: ['muscle-promised-twice', 'part-not-delivered'],
  },
  {
    what: 'a zone deer with its test open: neck on the bone, bones for the dog, summer sausage from a shared batch, wanted in three days',
    facts: doe,
    instructions: {
      lines: [line('a', 'neck', 'on-the-bone'), line('b', 'fillet', 'whole'), line('c', 'loin', 'medallions')],
      products: [{ productId: 'summer-sausage', gameGrams: pounds(8) }],
      mixing: 'may-be-mixed',
      keep: { ...keep, bones: true },
      wantedBy: '2026-11-28',
    },
    around: { diseaseZone: true, test: 'pending', today: '2026-11-25', shop: { ...PLAIN_TERMS, plainDays: 7, madeDays: 28 }, law: open },
    stage: 'receiving',
    told: ['no-sawn-bone-from-disease-zone', 'no-bones-home-from-disease-zone', 'not-into-a-shared-batch', 'wanted-too-soon'],
  },
  {
    what: 'a deer whose test is open, when somebody goes to cut it',
    facts: doe,
    instructions: { lines: [line('b', 'fillet', 'whole'), line('c', 'loin', 'medallions')] },
    around: { diseaseZone: true, test: 'pending' },
    stage: 'cutting',
    told: ['wait-for-test-result'],
    left: ['wait-for-test-result'],
  },
  {
    what: 'both shoulders hit, shoulder roasts of both, all else in patties without fat',
    facts: { ...buck, wounds: [{ part: 'shoulder', place: 'left', severity: 'heavy' }, { part: 'shoulder', place: 'right', severity: 'heavy' }] },
    instructions: { lines: [line('a', 'shoulder', 'boned-and-rolled')], mince: { addedFat: 'none', fatPercent: 0, packGrams: 454, shape: 'patties' } },
    stage: 'receiving',
    told: ['wounded-part-kept-whole', 'best-meat-into-the-grinder', 'patties-without-fat', 'lead-near-the-wound', 'wounds-cost-meat'],
  },
  {
    what: 'boned meat in a cooler, with top round steaks and three roasts',
    facts: { ...doe, form: 'boned-out', weight: { grams: pounds(40), basis: 'boneless' } },
    instructions: { lines: [line('a', 'topside', 'steaks'), line('b', 'silverside', 'joint'), line('c', 'thick-flank', 'joint'), line('d', 'rump', 'joint')] },
    told: ['boned-meat-has-no-names'],
  },
  {
    what: 'a household without pork, with fresh sausage and medallions in bacon',
    facts: doe,
    instructions: {
      lines: [line('a', 'loin', 'bacon-wrapped'), line('b', 'fillet', 'whole')],
      products: [{ productId: 'fresh-sausage', gameGrams: pounds(5) }],
      noPork: true,
    },
    told: ['pork-in-a-no-pork-order', 'pork-in-a-no-pork-order'],
  },
  {
    what: 'a shoulder mount of a doe, with the antlers sawn off and no taxidermist',
    facts: doe,
    instructions: { keep: { ...keep, cape: true, antlers: 'skull-plate' } },
    told: ['antlers-on-an-antlerless-animal', 'skull-plate-spoils-the-mount', 'cape-with-nowhere-to-go'],
  },
  {
    what: 'shares of 50, 30 and 30 percent, and nothing said of what remains',
    facts: doe,
    instructions: { shares: [50, 30, 30].map((percent) => ({ name: 'Edda', percent, isGiven: false })), rest: 'undecided' },
    told: ['shares-do-not-add-up', 'part-without-destination'],
  },
  {
    what: 'an elk with one steak a packet and ground meat by the pound',
    facts: { ...doe, speciesId: 'elk', sex: 'male', weight: { grams: pounds(480), basis: 'field-dressed' } },
    instructions: {
      lines: [line('a', 'fillet', 'whole'), line('b', 'loin', 'medallions', { size: { kind: 'thickness', thicknessMm: 25 }, pack: { kind: 'pieces', pieces: 1 } })],
    },
    told: ['many-packets'],
  },
  {
    what: 'a bear to be jerky and summer sausage from a shared batch',
    facts: { ...doe, speciesId: 'black-bear', weight: { grams: pounds(200), basis: 'field-dressed' } },
    instructions: {
      lines: [line('a', 'haunch', 'set-aside-whole'), line('b', 'fillet', 'whole'), line('c', 'loin', 'whole')],
      products: [{ productId: 'jerky', gameGrams: pounds(8) }, { productId: 'summer-sausage', gameGrams: pounds(8) }],
      mixing: 'may-be-mixed',
    },
    around: { law: open },
    told: ['jerky-of-a-worm-carrier', 'not-into-a-shared-batch'],
  },
  {
    what: 'a gut-shot doe, wet and full of hair, with fillets, heart and liver wanted, in a shop that hangs a week',
    facts: { ...doe, gutShot: true },
    instructions: { lines: [line('a', 'fillet', 'whole'), line('b', 'loin', 'whole')], keep: { ...keep, heart: true, liver: true } },
    around: { conditions: ['gut-shot', 'wet', 'dirty'], shop: { ...PLAIN_TERMS, hangDays: 7 } },
    stage: 'receiving',
    told: ['gut-shot-spoils-the-inside', 'gut-shot-spoils-the-inside', 'cut-it-first', 'dirty-needs-cleaning'],
  },
  {
    what: 'a child allergic to milk, with sticks the shop puts milk in and sausage of which it has said nothing',
    facts: buck,
    instructions: { products: [{ productId: 'snack-sticks', gameGrams: pounds(9) }, { productId: 'fresh-sausage', gameGrams: pounds(5) }], avoid: ['milk'] },
    around: { shop: { ...PLAIN_TERMS, allergens: { 'snack-sticks': ['milk', 'mustard'] } } },
    told: ['allergen-in-a-product', 'allergen-in-a-product'],
  },
  {
    what: 'a buck to go home over the border: chops, a haunch on the bone and the whole head',
    facts: buck,
    instructions: { lines: [line('a', 'loin', 'chops'), line('b', 'haunch', 'on-the-bone'), line('c', 'fillet', 'whole')], keep: { ...keep, antlers: 'whole-head' }, overBorder: true },
    told: ['over-the-border', 'over-the-border', 'over-the-border'],
  },
  {
    what: 'a zone buck over the border with no bone in any packet, and chops: the worst is told, once',
    facts: buck,
    instructions: { lines: [line('a', 'loin', 'chops'), line('c', 'fillet', 'whole')], overBorder: true, boneless: true },
    around: { diseaseZone: true },
    told: ['no-sawn-bone-from-disease-zone'],
  },
  {
    what: 'a cape and the whole hide, with the neck as a roast',
    facts: buck,
    instructions: {
      lines: [line('a', 'neck', 'boned-and-rolled'), line('b', 'fillet', 'whole'), line('c', 'loin', 'whole')],
      keep: { ...keep, cape: true, hide: true, antlers: 'whole-head', taxidermist: 'Nyberg' },
    },
    told: ['cape-takes-half-the-hide', 'cape-shortens-the-neck'],
  },
  {
    what: 'no bone in any packet, with chops, shank slices and a rack',
    facts: buck,
    instructions: { lines: [line('a', 'loin', 'chops'), line('b', 'hind-shank', 'shank-slices'), line('c', 'rib-rack', 'rack'), line('d', 'fillet', 'whole')], boneless: true },
    told: ['bone-in-a-boneless-order', 'bone-in-a-boneless-order', 'bone-in-a-boneless-order'],
  },
  {
    what: 'a deer frozen through, shot with buckshot, brought by a friend, fifteen days old by its papers and still in steaks',
    facts: doe,
    instructions: { lines: [line('a', 'haunch', 'steaks'), line('b', 'fillet', 'whole'), line('c', 'loin', 'whole')] },
    around: { conditions: ['frozen'], shotWith: 'pellets', killedBy: 'Jonas Tveit', killedDaysAgo: 15, hunterName: 'Edda & Jonas' },
    stage: 'receiving',
    told: ['somebody-elses-animal', 'frozen-cannot-be-seamed', 'pellets-in-the-meat', 'two-names-one-animal'],
  },
  {
    what: 'a deer that came in sour: nothing else is worth telling the shop',
    facts: doe,
    instructions: {},
    around: { conditions: ['sour', 'warm', 'dirty'], celsiusTenths: 180, killedDaysAgo: 3, shop: { ...PLAIN_TERMS, hangDays: 7 } },
    stage: 'receiving',
    told: ['not-food-any-more'],
    left: ['not-food-any-more'],
  },
  {
    what: 'more packed than hung',
    facts: { ...doe, weight: { grams: pounds(60), basis: 'hanging' } },
    instructions: { lines: [line('a', 'fillet', 'whole'), line('b', 'loin', 'whole')] },
    around: { weights: { brought: { grams: pounds(80), basis: 'field-dressed' }, hangingGrams: pounds(60), ownPackedGrams: pounds(72) } },
    stage: 'packing',
    told: ['weights-cannot-be'],
    left: ['weights-cannot-be'],
  },
];

function orderFor({ facts, instructions, stage = 'order', around = {} }: Trouble): RuledOrder {
  return orderOf({ ...PLAIN_INSTRUCTIONS, ...instructions }, facts, { stage, words: { country: 'us', unit: 'lb' }, diseaseZone: false, test: 'none', ...around });
}

describe.each(TROUBLES)('$what', (trouble) => {
  test('is told by these rules and no others, the worst first', () => {
    expect(findAll(orderFor(trouble)).map(({ ruleId }) => ruleId)).toEqual(trouble.told);
  });

  test('ends with no stop when the first suggestion of each is tapped, in order', () => {
    const mended = findAll(orderFor(trouble)).reduce((order, { key }) => {
      const now = findAll(order).find((finding) => finding.key === key);
      return afterEdits(order, now?.suggestions[0]?.edits ?? []);
    }, orderFor(trouble));
    expect(findAll(mended).filter(({ severity }) => severity === 'stop').map(({ ruleId }) => ruleId)).toEqual(trouble.left ?? []);
  });
});
