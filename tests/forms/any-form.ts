import fc from 'fast-check';
import { AGE_CLASSES, DELIVERY_FORMS, SEXES, PUBLISHED_IDS, WEIGHT_BASES, PUBLISHED_SPECIES } from '@/lib/carcass';
import { CUT_IDS, TARGET_IDS } from '@/lib/cuts';
import { type OrderFormShop, type OrderFormValues, SHARE_ROWS, readOrderForm } from '@/lib/forms';
import { ADDED_FATS, ALLERGENS, ANTLER_CHOICES, LINE_SIDES, MINCE_SHAPES, MIXINGS, PRODUCT_IDS, REST_CHOICES } from '@/lib/instructions';
import { CAREFUL } from '@/lib/law';

/** What people, their telephones and those who mean harm put into a field. */
export const hostileTexts = [
  '', ' ', '0', '-1', '-0', '1e9', '1e-9', 'NaN', 'Infinity', '0x10', '900', '999999999999999999999', '12..5', '1,5', '1.234,5', '1’200',
  '12 1/2', '½', '3 lb 4 oz', '700 g', '5#', '1/0', '٣', '１２', '12;DROP TABLE', 'null', 'undefined', '[object Object]', '__proto__',
  'constructor', 'toString', '<script>alert(1)</script>', 'javascript:alert(1)', '"quoted" & \'so\'', '=1+1', '@SUM(A1)', '🦌🔪', '👨‍👩‍👧‍👦', 'מַקָּבִי', 'עברית',
  '\u202Egnp.exe', '\u0000', 'a\nb\r\nc', '\uFEFF12', 'e\u0301', '\uD800', 'x'.repeat(10_000), '9'.repeat(10_000), ' '.repeat(10_000),
] as const;

const text = fc.oneof({ weight: 2, arbitrary: fc.constantFrom(...hostileTexts) }, fc.string({ unit: 'binary', maxLength: 40 }));
const chosen = (values: readonly string[]): fc.Arbitrary<string> => fc.oneof({ weight: 9, arbitrary: fc.constantFrom(...values) }, text);
const weight = fc.oneof(
  fc.integer({ min: 1, max: 200_000 }).map((grams) => `${grams} g`),
  fc.integer({ min: 1, max: 99_999 }).map((hundredths) => (hundredths / 100).toFixed(2)),
  text,
  fc.constant(''),
);
const ticked = fc.constantFrom('', 'on');
const served = fc.oneof({ weight: 4, arbitrary: fc.shuffledSubarray([...PRODUCT_IDS]).map((ids) => ids.join(' ')) }, text);
const agreed = fc.oneof({ weight: 4, arbitrary: fc.subarray(['shares-not-whole|shares', 'note-says-otherwise|note', 'x']).map((keys) => keys.join(' ')) }, text);

/** Rows of who shares: mostly none, else names and parts that may make 100. */
const shareEntries = fc.oneof(
  { weight: 3, arbitrary: fc.constant([]) },
  fc.array(fc.record({ name: chosen(['Edda', 'Jonas', '']), percent: chosen(['50', '30', '100', '0', '101', ' 20 ', '33.3']), isGiven: ticked }), { maxLength: SHARE_ROWS + 1 }),
);

const anyLineEntries = fc.record({
  id: chosen(['line-1', 'line-2', 'line-3', 'line-4', 'line-5', 'line-9999']),
  target: chosen(TARGET_IDS),
  side: chosen(LINE_SIDES),
  cut: chosen(CUT_IDS),
  size: chosen(['fit', 't:19', 't:25', 'w:907', 'p:4', 'p:0', 't:99999', 't:1e3', 'w:-5']),
  pack: chosen(['fit', 'n:2', 'n:8', 'w:454', 'n:0', 'n:1000']),
  asked: weight,
});

/** Anything a browser may send as the order form, well filled in for the most part. */
export const anyOrderForm: fc.Arbitrary<OrderFormValues> = fc
  .record({
    head: fc.record({
      formKey: chosen(['form-key-1']),
      'animal.speciesId': chosen(PUBLISHED_IDS),
      'animal.sex': chosen(SEXES),
      'animal.ageClass': chosen(AGE_CLASSES),
      'animal.weight': weight,
      'animal.weightBasis': chosen(WEIGHT_BASES),
      'animal.girth': weight,
      'animal.takenWhere': text,
      'animal.diseaseZone': chosen(['yes', 'no', 'unsure']),
      'animal.form': chosen(DELIVERY_FORMS),
      'animal.filletsOut': ticked,
      rest: chosen(REST_CHOICES),
      squaredOff: chosen(['stew', 'mince']),
      'mince.addedFat': chosen(ADDED_FATS),
      'mince.fatPercent': chosen(['0', '5', '10', '50', '60', '05']),
      'mince.shape': chosen(MINCE_SHAPES),
      'mince.pack': chosen(['454', '907', '49', '20001']),
      stewPack: chosen(['454', '1000']),
      ...Object.fromEntries(PRODUCT_IDS.map((id) => [`products.${id}`, weight])),
      served,
      mixing: chosen(MIXINGS),
      'keep.heart': ticked,
      'keep.bones': ticked,
      'keep.antlers': chosen(ANTLER_CHOICES),
      'keep.cape': ticked,
      'keep.hide': ticked,
      'keep.taxidermist': text,
      noPork: ticked,
      ...Object.fromEntries(ALLERGENS.map((id) => [`avoid.${id}`, fc.constantFrom('', '', '', 'on')])),
      boneless: ticked,
      wantedBy: chosen(['', '2026-12-01', '2027-02-29', '1-12-2026']),
      overBorder: ticked,
      agreed,
      note: text,
      'hunter.name': text,
      'hunter.phone': text,
      'hunter.email': text,
    }),
    lines: fc.array(anyLineEntries, { maxLength: 7 }),
    shares: shareEntries,
  })
  .map(({ head, lines, shares }) =>
    readOrderForm([
      ...Object.entries(head),
      ...rowEntries('lines', lines),
      ...rowEntries('shares', shares),
    ]),
  );

function rowEntries(list: string, rows: readonly Readonly<Record<string, string>>[]): readonly [string, string][] {
  return rows.flatMap((row, at) => Object.entries(row).map(([name, value]): [string, string] => [`${list}.${at}.${name}`, value]));
}

/** Shops that weigh and write in different ways. */
export const formShops: readonly OrderFormShop[] = [
  { unit: 'lb', locale: 'en-US', country: 'us', diseaseZones: ['Osmer County'], law: CAREFUL.points, species: PUBLISHED_SPECIES },
  { unit: 'kg', locale: 'de-DE', country: 'uk', diseaseZones: [], law: CAREFUL.points, species: PUBLISHED_SPECIES },
  { unit: 'kg', locale: 'de-CH', country: 'uk', diseaseZones: [], law: CAREFUL.points, species: PUBLISHED_SPECIES },
  { unit: 'lb', locale: 'fr-CA', country: 'us', diseaseZones: [], law: CAREFUL.points, species: PUBLISHED_SPECIES },
];

export const anyFormShop = fc.constantFrom(...formShops);
