import { type AnimalFacts, PUBLISHED_SPECIES } from '@/lib/carcass';
import { type CuttingSheet, type InvoiceDocument, type SheetInput, buildCuttingSheet, buildInvoice, threeSentences, whereItGoes } from '@/lib/documents';
import { PLAIN_INSTRUCTIONS, type InstructionLine, type Instructions } from '@/lib/instructions';
import { CAREFUL } from '@/lib/law';
import { type ArrivalDetails, type DescribedAnimal, assessOrder, makeOrderNumber, packRows } from '@/lib/orders';
import { priceOrder } from '@/lib/pricing';
import { makeFacts, sampleTariff } from '../pricing/sample';

const animal: DescribedAnimal = {
  speciesId: 'white-tailed-deer',
  sex: 'female',
  ageClass: 'adult',
  weight: { grams: 54_431, basis: 'field-dressed' },
  form: 'hide-on',
  takenWhere: 'Alder County',
  diseaseZone: 'no',
  missing: [],
};

const arrival: ArrivalDetails = {
  licence: 'L-2041',
  tag: 'WT-881204',
  killedOn: '2026-11-21',
  killedWhere: 'Alder County',
  diseaseZone: false,
  test: 'none',
  sampleNumber: '',
  sex: 'female',
  ageClass: 'adult',
  form: 'hide-on',
  weight: { grams: 54_431, basis: 'field-dressed' },
  missing: [],
  wounds: [],
  conditions: ['clean'],
  celsiusTenths: null,
  shotWith: 'bullet',
  killedBy: '',
  hasTransferNote: false,
  note: '',
};

const seen = { kind: 'as-seen-fit' } as const;
const thick = (thicknessMm: number) => ({ kind: 'thickness', thicknessMm }) as const;
const pieces = (count: number) => ({ kind: 'pieces', pieces: count }) as const;
const weighing = (grams: number) => ({ kind: 'weight', grams }) as const;

let lineCount = 0;
export function makeLine(target: InstructionLine['target'], cut: InstructionLine['cut'], rest: Partial<InstructionLine> = {}): InstructionLine {
  lineCount += 1;
  return { id: `line-${lineCount}`, target, side: target === 'neck' ? 'middle' : 'both', cut, size: seen, pack: seen, askedGrams: null, ...rest };
}

const plain: Instructions = {
  ...PLAIN_INSTRUCTIONS,
};

/** A sheet of invented words, planned and built as the program does. */
export function makeSheet(changes: {
  readonly sequence?: number;
  readonly version?: number;
  readonly hunterName?: string;
  readonly country?: 'us' | 'uk';
  readonly unit?: 'lb' | 'kg';
  readonly animal?: Partial<DescribedAnimal>;
  readonly arrival?: Partial<ArrivalDetails> | null;
  readonly hangingGrams?: number | null;
  readonly fromZone?: boolean;
  readonly instructions?: Partial<Instructions>;
  readonly openQuestions?: number;
}): CuttingSheet {
  const instructions = { ...plain, ...changes.instructions };
  const described = { ...animal, ...changes.animal };
  const found = changes.arrival === null ? null : { ...arrival, sex: described.sex, ageClass: described.ageClass, ...changes.arrival };
  const shop = { name: 'Alder Creek Game Processing', species: PUBLISHED_SPECIES, locale: 'en-US', unit: changes.unit ?? 'lb', country: changes.country ?? 'us', diseaseZones: [], law: CAREFUL.points } as const;
  const hangingGrams = changes.hangingGrams ?? null;
  const { plan } = assessOrder({ stage: 'cutting', animal: described, arrival: found, hangingGrams, instructions }, shop);
  const input: SheetInput = {
    number: makeOrderNumber(changes.sequence ?? 10427),
    version: changes.version ?? 1,
    printed: 'Nov 25, 2026, 10:41',
    shop,
    hunterName: changes.hunterName ?? 'Ada Thorn',
    animal: described,
    arrival: found,
    hangingGrams,
    fromZone: changes.fromZone ?? false,
    instructions,
    plan,
    openQuestions: changes.openQuestions ?? 0,
  };
  return buildCuttingSheet(input);
}

/** Ten lines, three of them departures. */
export function typicalSheet(sequence = 10427): CuttingSheet {
  return makeSheet({
    sequence,
    hangingGrams: 41_912,
    instructions: {
      lines: [
        makeLine('fillet', 'whole'),
        makeLine('loin', 'butterfly', { size: thick(19), pack: pieces(4) }),
        makeLine('topside', 'joint', { size: weighing(1361) }),
        makeLine('thick-flank', 'joint', { size: weighing(1361) }),
        makeLine('silverside', 'steaks', { size: thick(19), pack: pieces(2) }),
        makeLine('rump', 'tenderised-steaks', { size: thick(13), pack: pieces(4) }),
        makeLine('neck', 'boned-and-rolled'),
      ],
      mince: { addedFat: 'pork', fatPercent: 10, packGrams: 454, shape: 'bulk' },
      products: [{ productId: 'fresh-sausage', gameGrams: 4536 }],
      keep: { heart: true, liver: false, bones: false, antlers: 'none', cape: false, hide: false, taxidermist: '' },
      note: 'Shank bones for the dog if there is room in the box.',
    },
  });
}

/** What the shop does anyway, in the words of the other country and in kilograms. */
export function usualSheet(): CuttingSheet {
  return makeSheet({
    sequence: 20311,
    country: 'uk',
    unit: 'kg',
    animal: { speciesId: 'roe-deer', weight: { grams: 14_000, basis: 'field-dressed' } },
    hangingGrams: null,
    arrival: null,
    instructions: { lines: [makeLine('fillet', 'whole'), makeLine('loin', 'medallions', { size: thick(25), pack: pieces(6) })] },
  });
}

/** Left and right different everywhere, wounds, parts that did not come, and every bar. */
export function heavySheet(): CuttingSheet {
  const halves = (target: InstructionLine['target'], left: InstructionLine['cut'], right: InstructionLine['cut']): readonly InstructionLine[] => [
    makeLine(target, left, { side: 'left', size: left.includes('steaks') ? thick(19) : seen, pack: left.includes('steaks') ? pieces(2) : seen }),
    makeLine(target, right, { side: 'right', size: right.includes('steaks') ? thick(25) : seen, pack: right.includes('steaks') ? pieces(4) : seen }),
  ];
  return makeSheet({
    sequence: 10588,
    version: 3,
    hunterName: 'Halvor Ørsted-Łukasz',
    animal: { sex: 'male' },
    hangingGrams: 50_802,
    fromZone: true,
    openQuestions: 1,
    arrival: {
      test: 'pending',
      conditions: ['gut-shot', 'wet'],
      wounds: [
        { part: 'haunch', place: 'left', severity: 'heavy' },
        { part: 'shoulder', place: 'right', severity: 'lost' },
      ],
      missing: [{ part: 'fillet', place: 'left' }, { part: 'fillet', place: 'right' }],
    },
    instructions: {
      lines: [
        ...halves('loin', 'butterfly', 'chops'),
        ...halves('hind-shank', 'shank-on-bone', 'shank-slices'),
        ...halves('rump', 'steaks', 'tenderised-steaks'),
        ...halves('topside', 'joint', 'steaks'),
        ...halves('thick-flank', 'steaks', 'joint'),
        ...halves('silverside', 'tenderised-steaks', 'steaks'),
        ...halves('salmon-cut', 'medallions', 'whole'),
        ...halves('shoulder', 'boned-and-rolled', 'mince'),
        makeLine('neck', 'diced', { pack: weighing(907) }),
        ...halves('ribs', 'leave-out', 'mince'),
      ],
      mince: { addedFat: 'beef', fatPercent: 15, packGrams: 907, shape: 'bulk' },
      products: [{ productId: 'fresh-sausage', gameGrams: 6804 }],
      keep: { heart: true, liver: true, bones: true, antlers: 'skull-plate', cape: true, hide: false, taxidermist: '' },
      noPork: true,
      note: 'The left half goes to my brother, please keep the boxes apart and write his name on them. No bone dust in the sausage meat.',
    },
  });
}

/** Everything that is rarely asked, at once. */
export function rareSheet(): CuttingSheet {
  return makeSheet({
    sequence: 10433,
    hangingGrams: 41_912,
    instructions: {
      lines: [makeLine('fillet', 'whole'), makeLine('loin', 'butterfly', { size: thick(19), pack: pieces(4) }), makeLine('topside', 'joint', { size: weighing(1361) })],
      mince: { addedFat: 'beef', fatPercent: 10, packGrams: 454, shape: 'patties' },
      products: [{ productId: 'jerky', gameGrams: 2268 }, { productId: 'snack-sticks', gameGrams: 4536 }],
      isPriorityStated: true,
      mixing: 'may-be-mixed',
      keep: { heart: true, liver: false, bones: false, antlers: 'none', cape: true, hide: true, taxidermist: 'Ida Falk' },
      noPork: true,
      avoid: ['milk', 'mustard'],
      boneless: true,
      overBorder: true,
      wantedBy: '2026-12-01',
      shares: [{ name: 'Edda', percent: 50, isGiven: false }, { name: 'Jonas', percent: 30, isGiven: false }, { name: '', percent: 20, isGiven: true }],
      note: 'Jonas comes for his boxes himself.',
    },
  });
}

/** A big animal with wounds and two bars, on one page. */
export function elkSheet(): CuttingSheet {
  return makeSheet({
    sequence: 777,
    version: 2,
    hunterName: 'Bartholomew Featherstonehaugh-Cholmondeley',
    animal: { speciesId: 'elk', sex: 'male', weight: { grams: 230_000, basis: 'field-dressed' } },
    arrival: { form: 'quartered', wounds: [{ part: 'shoulder', place: 'left', severity: 'heavy' }, { part: 'loin', place: 'left', severity: 'light' }], weight: { grams: 230_000, basis: 'field-dressed' } },
    instructions: {
      lines: [
        makeLine('loin', 'steaks', { size: thick(25), pack: pieces(2) }),
        makeLine('topside', 'joint', { size: weighing(1814) }),
        makeLine('silverside', 'steaks', { size: thick(19), pack: pieces(2) }),
        makeLine('rump', 'steaks', { size: thick(19), pack: pieces(2) }),
        makeLine('thick-flank', 'joint', { size: { kind: 'people', people: 6 } }),
        makeLine('shoulder', 'diced', { side: 'right', pack: weighing(907) }),
      ],
      keep: { heart: false, liver: false, bones: false, antlers: 'skull-plate', cape: true, hide: false, taxidermist: '' },
      noPork: true,
    },
  });
}

/** An issued invoice, or the estimate before it. */
export function makeInvoice(isEstimate = false): InvoiceDocument {
  const facts: AnimalFacts = { speciesId: animal.speciesId, sex: 'female', ageClass: 'adult', weight: animal.weight, form: 'hide-on', missing: [], wounds: [] };
  const instructions: Instructions = {
    ...plain,
    lines: [makeLine('loin', 'medallions'), makeLine('haunch', 'boned-and-rolled')],
    products: [{ productId: 'fresh-sausage', gameGrams: 4_422 }],
  };
  const { plan } = assessOrder(
    { stage: 'cutting', animal, arrival: null, hangingGrams: 41_912, instructions },
    { unit: 'lb', country: 'us', diseaseZones: [], law: CAREFUL.points, species: PUBLISHED_SPECIES },
  );
  const rows = packRows(instructions, plan, 'us');
  const gramsOf: Readonly<Record<string, number>> = { medallions: 1_905, 'boned-and-rolled': 5_200, mince: 8_164, product: 5_896 };
  const weighings = rows.map(({ lineKey, cutId }) => ({ lineKey, grams: gramsOf[cutId] ?? 0, packages: 8 }));
  const goes = whereItGoes({ plan, told: [animal.weight], packing: isEstimate ? null : { rows, weighings } }, { unit: 'lb', country: 'us', locale: 'en-US' });
  return buildInvoice({
    title: isEstimate ? 'Estimate, not an invoice' : 'Invoice 2026-0042',
    isEstimate,
    issued: 'Nov 25, 2026',
    shop: { name: 'Alder Creek Game Processing', address: '14 Mill Road, Alder Creek', phone: '555 0142', unit: 'lb', locale: 'en-US', cookGameTo: '160 F', storageCaution: 'Keep frozen at 0 F or colder.' },
    number: makeOrderNumber(10427),
    hunter: 'Ada Thorn',
    animal: 'white-tailed deer, doe',
    origin: 'Tag WT-881204, Alder County',
    bill: priceOrder(
      makeFacts({
        speciesId: facts.speciesId,
        hangingGrams: 41_912,
        packed: [{ cutId: 'boned-and-rolled', label: 'Both hind legs, boned, rolled and tied', grams: 5_200, packages: 4 }],
        extras: [{ extraId: 'box', count: 3 }],
        products: [{ productId: 'fresh-sausage', finishedGrams: 5_896, addedGrams: 1_360 }],
      }),
      sampleTariff,
    ),
    packed: [
      { label: 'Both backstraps, medallions', grams: 1_905, packages: 8 },
      { label: 'Both hind legs, boned, rolled and tied', grams: 5_200, packages: 4 },
      { label: 'Ground meat', grams: 8_164, packages: 18 },
      { label: 'Fresh sausage', grams: 5_896, packages: 13 },
    ],
    plan,
    went: goes && { goes, sentences: threeSentences(goes, { unit: 'lb', locale: 'en-US' }) },
    addedGrams: 1_360,
  });
}
