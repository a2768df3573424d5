import { expect, test } from 'vitest';
import { type AnimalFacts, forecastCarcass, PUBLISHED_SPECIES } from '@/lib/carcass';
import { PLAIN_INSTRUCTIONS, type Instructions, type InstructionLine, newLine } from '@/lib/instructions';
import { planOrder } from '@/lib/plan';
import { type Circumstances, PLAIN_CIRCUMSTANCES, findAll } from '@/lib/rules';

const nothingNamed: Instructions = {
  ...PLAIN_INSTRUCTIONS,
  lines: [],
  rest: 'stew',
  squaredOff: 'stew',
  mince: { addedFat: 'none', fatPercent: 0, packGrams: 454, shape: 'bulk' },
  stewPackGrams: 454,
  products: [],
  keep: { heart: false, liver: false, bones: false, antlers: 'none', cape: false, hide: false, taxidermist: '' },
  noPork: false,
  note: '',
};

type Case = {
  readonly what: string;
  readonly lines: readonly InstructionLine[];
  readonly facts?: Partial<AnimalFacts>;
  readonly instructions?: Partial<Instructions>;
  readonly circumstances?: Partial<Circumstances>;
  readonly told: readonly string[];
};

const asked = (line: InstructionLine, askedGrams: number): InstructionLine => ({ ...line, askedGrams });

const cases: readonly Case[] = [
  {
    what: 'a topside wanted twice, and far more of it than there is',
    lines: [newLine('a', 'haunch', 'on-the-bone'), asked(newLine('b', 'topside', 'joint'), 90_000)],
    told: ['muscle-promised-twice'],
  },
  {
    what: 'meat promised twice while sausage waits for what is left',
    lines: [newLine('a', 'haunch', 'diced'), newLine('b', 'haunch', 'mince')],
    instructions: { rest: 'stew', products: [{ productId: 'fresh-sausage', gameGrams: 15_000 }] },
    told: ['muscle-promised-twice'],
  },
  {
    what: 'a joint for twelve from a topside wanted twice',
    lines: [newLine('a', 'haunch', 'mince'), { ...newLine('b', 'topside', 'joint'), size: { kind: 'people', people: 12 } }],
    told: ['muscle-promised-twice'],
  },
  {
    what: 'two pounds of fillet where one fillet came',
    lines: [asked(newLine('a', 'fillet', 'whole'), 900)],
    facts: { missing: [{ part: 'fillet', place: 'left' }] },
    told: ['part-not-delivered'],
  },
  {
    what: 'chops of a loin that did not come, and a saddle of it too',
    lines: [newLine('a', 'loin', 'chops'), newLine('b', 'saddle', 'on-the-bone')],
    facts: { missing: [{ part: 'loin', place: 'left' }, { part: 'loin', place: 'right' }] },
    told: ['part-not-delivered', 'part-not-delivered'],
  },
  {
    what: 'a leg on the bone and a large joint of boned meat',
    lines: [newLine('a', 'haunch', 'on-the-bone', 'left'), { ...newLine('b', 'topside', 'joint', 'right'), size: { kind: 'weight', grams: 9_000 } }],
    facts: { form: 'boned-out' },
    told: ['boned-meat-has-no-names'],
  },
  {
    what: 'a neck joint from quarters, which hold no neck',
    lines: [asked(newLine('a', 'neck', 'on-the-bone'), 5_000)],
    facts: { form: 'quartered' },
    told: ['part-not-delivered'],
  },
  {
    what: 'more than likely but not more than there can be',
    lines: [asked(newLine('a', 'loin', 'medallions'), 2_850)],
    told: ['probably-short'],
  },
];

test.each(cases)('$what is told as $told', ({ lines, facts, instructions, circumstances, told }) => {
  const animal: AnimalFacts = {
    speciesId: 'white-tailed-deer', sex: 'female', ageClass: 'adult', weight: { grams: 45_359, basis: 'field-dressed' }, form: 'hide-on',
    missing: [], wounds: [], ...facts,
  };
  const wishes = { ...nothingNamed, ...instructions, lines };
  const findings = findAll({
    stage: 'order',
    instructions: wishes,
    plan: planOrder(wishes, forecastCarcass(animal, PUBLISHED_SPECIES)),
    circumstances: { ...PLAIN_CIRCUMSTANCES, ...circumstances, sex: animal.sex, form: animal.form },
    words: { country: 'uk', unit: 'lb' },
  });
  expect(findings.map(({ ruleId }) => ruleId).toSorted()).toEqual(told.toSorted());
});
