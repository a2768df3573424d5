import { z } from 'zod';
import { AGE_CLASSES, DELIVERY_FORMS, FLESHES, PARTS, SEXES, WEIGHT_BASES, WOUND_SEVERITIES } from '@/lib/carcass';
import { CUT_IDS, NAME_COUNTRIES, TARGET_IDS } from '@/lib/cuts';
import { ADDED_FATS, ALLERGENS, ANTLER_CHOICES, type Instructions, LINE_SIDES, MINCE_SHAPES, MIXINGS, PLAIN_INSTRUCTIONS, PRODUCT_IDS, REST_CHOICES, usualSide } from '@/lib/instructions';
import { STAGES, TEST_STATES } from '@/lib/rules';
import { choiceProblem, gramsHint, shownValue } from './plan-request-words';

// What another program asks: one animal and how it is to be cut. The command, the endpoint and its description read this schema.

/** A strict object. Its message for an unknown key is the list of the keys that there are. */
function strict<Shape extends z.core.$ZodLooseShape>(shape: Shape): z.ZodObject<Shape, z.core.$strict> {
  return z.strictObject(shape, {
    error: ({ code, input }) => (code === 'unrecognized_keys' ? `There can be: ${Object.keys(shape).join(', ')}.${gramsHint(input)}` : undefined),
  });
}

function choice<const Values extends readonly string[]>(values: Values): z.ZodEnum<z.core.util.ToEnum<Values[number]>> {
  return z.enum(values, { error: ({ input }) => choiceProblem(input, values) });
}

/** A whole number. Every mistake with it has the one sentence that says what to write. */
function whole(from: number, to: number, what: string): z.ZodInt {
  const error = `Write ${what}, a whole number from ${from} to ${to}.`;
  return z.int({ error }).min(from, { error }).max(to, { error });
}

function list<Item extends z.ZodType>(item: Item, most: number, what: string): z.ZodArray<Item> {
  return z.array(item, { error: `Write a list of ${what} in [ ].` }).max(most, { error: `There is room for ${most} ${what}.` });
}

const HEAVIEST = 2_000_000;
const grams = (what: string): z.ZodInt => whole(1, HEAVIEST, `${what} in grams`);
const yesNo = z.boolean({ error: 'Write true or false.' });

const basis = z.enum(WEIGHT_BASES, {
  error: ({ input }) =>
    typeof input === 'string' && /^\s*dressed(\s+weight)?\s*$/i.test(input)
      ? `${shownValue(input)} is several different weights. Say which: field-dressed (gutted; hide, head and legs on), legs-off (the same without the lower legs), hide-on (head and legs off) or hanging (skinned).`
      : choiceProblem(input, WEIGHT_BASES),
});

const partPlace = {
  part: choice(PARTS).describe('A region of the carcass; bird- parts are of birds only.'),
  place: choice(['left', 'right', 'middle']).describe('The neck, and the frame of a bird, lie in the middle.'),
};

const animal = strict({
  speciesId: z
    .string({ error: 'Write which animal it is, such as "roe-deer".' })
    .min(1, 'Write which animal it is, such as "roe-deer".')
    .describe('The only thing that has to be there.'),
  sex: choice(SEXES).default('unknown'),
  ageClass: choice(AGE_CLASSES).default('unknown'),
  weight: strict({ grams: grams('the weight'), basis: basis.describe(
    'Which weight that is. live: as it stood. field-dressed: gutted; hide, head and lower legs on. legs-off: the same without lower legs. hide-on: head and lower legs off, hide on. hanging: skinned (a bird: plucked and drawn). quarters: the bone-in quarters as they came. boneless: clean meat.',
  ) })
    .nullable()
    .default(null)
    .describe('null: nobody has weighed it, and the forecast is as wide as its kind.'),
  girthMm: whole(100, 4_000, 'the girth of the chest in millimetres')
    .nullable()
    .default(null)
    .describe('Round the chest behind the forelegs. Read only where no weight is given, of species that have a rule for it.'),
  form: choice(DELIVERY_FORMS).default('hide-on').describe('How it comes through the door. quartered: two hind legs, two shoulders and the backstraps.'),
  missing: list(strict(partPlace), 20, 'parts').default([]).describe('Parts that do not come, such as fillets taken out in the field.'),
  wounds: list(strict({ ...partPlace, severity: choice(WOUND_SEVERITIES) }), 20, 'wounds').default([]),
  gutShot: yesNo.default(false).describe('Belly contents reached the meat.'),
  flesh: choice(FLESHES).default('usual').describe('How much fat it carries, for its kind and season.'),
  hung: strict({ days: whole(0, 60, 'the days it hangs'), hide: choice(['on', 'off']) })
    .nullable()
    .optional()
    .describe('Days from the weighing to the knife; null: as usual. Left out: as the shop hangs.'),
  closeTrim: yesNo.optional().describe('Trimmed to clean muscle. Left out: as the shop trims.'),
  diseaseZone: yesNo.default(false).describe('It is from a zone of chronic wasting disease or the like.'),
  test: choice(TEST_STATES).default('none').describe('Of a disease sample.'),
});

const AS_SEEN_FIT = { kind: 'as-seen-fit' } as const;
const asSeenFit = strict({ kind: z.literal('as-seen-fit') });
const ofKind = (kinds: readonly string[]): z.core.$ZodErrorMap =>
  ({ code, input }) => code === 'invalid_union' ? choiceProblem((input as { readonly kind?: unknown }).kind, kinds) : `Write an object with a kind: ${kinds.join(', ')}.`;

const size = z.discriminatedUnion(
  'kind',
  [
    asSeenFit,
    strict({ kind: z.literal('thickness'), thicknessMm: whole(1, 500, 'the thickness in millimetres') }),
    strict({ kind: z.literal('weight'), grams: grams('the weight of one piece') }),
    strict({ kind: z.literal('people'), people: whole(1, 100, 'how many people one piece is for') }),
  ],
  { error: ofKind(['as-seen-fit', 'thickness', 'weight', 'people']) },
);
const pack = z.discriminatedUnion(
  'kind',
  [
    asSeenFit,
    strict({ kind: z.literal('pieces'), pieces: whole(1, 100, 'how many pieces go in a packet') }),
    strict({ kind: z.literal('weight'), grams: grams('the weight of a packet') }),
  ],
  { error: ofKind(['as-seen-fit', 'pieces', 'weight']) },
);

const lineShape = {
  id: z.string({ error: 'Write an id in quotes, or leave it out.' }).regex(/^[\w-]{1,40}$/, 'Write an id of 1 to 40 letters, digits, - or _.'),
  target: choice(TARGET_IDS).describe('A part, a muscle, or two parts joined by bone.'),
  side: choice(LINE_SIDES),
  cut: choice(CUT_IDS).describe('Each can be made from some targets only; a wrong pair is answered with what can be made.'),
  size: size.default(AS_SEEN_FIT),
  pack: pack.default(AS_SEEN_FIT),
  askedGrams: grams('the amount asked').nullable().default(null).describe('How much of it is wanted, packed; null: whatever there is.'),
};

const lineAsked = strict({
  ...lineShape,
  id: lineShape.id.optional().describe('Left out, lines are line-1, line-2, ...'),
  side: lineShape.side.optional().describe('Left out: both, or the middle where there are no sides.'),
});

const instructionsShape = {
  lines: list(lineAsked, 40, 'lines').default([]).describe('Wishes. The first that names a muscle keeps it.'),
  rest: choice(REST_CHOICES).default('mince').describe('What becomes of all that no line names.'),
  squaredOff: choice(['stew', 'mince']).default('stew').describe('What becomes of pieces squared off a joint.'),
  mince: strict({
    addedFat: choice(ADDED_FATS).default('none'),
    fatPercent: whole(0, 50, 'the fat in percent').default(10).describe('Of the finished mince. Read only where fat is added.'),
    packGrams: grams('the weight of a packet').default(500),
    shape: choice(MINCE_SHAPES).default('bulk'),
  }).prefault({}),
  stewPackGrams: grams('the weight of a packet').default(500),
  products: list(strict({ productId: choice(PRODUCT_IDS), gameGrams: grams('the own meat that goes in') }), PRODUCT_IDS.length, 'products')
    .default([])
    .describe('What is made of own meat, the most wanted first.'),
  keep: strict({
    heart: yesNo.default(false),
    liver: yesNo.default(false),
    bones: yesNo.default(false),
    antlers: choice(ANTLER_CHOICES).default('none'),
    cape: yesNo.default(false),
    hide: yesNo.default(false),
  }).prefault({}),
  mixing: choice(MIXINGS).default('own-meat-only').describe('Whether made things may come from a batch with other hunters’ meat.'),
  noPork: yesNo.default(false),
  avoid: list(choice(ALLERGENS), ALLERGENS.length, 'allergens').default([]).describe('What nobody in the household may eat.'),
  boneless: yesNo.default(false).describe('No bone in any packet.'),
  shares: list(strict({ name: z.string({ error: 'Write a name in quotes.' }).max(40, 'A name has room for 40 characters.'), percent: whole(0, 100, 'the share in percent'), isGiven: yesNo.default(false) }), 4, 'shares')
    .default([])
    .describe('Those who share the animal, by what is packed; given: to a food bank or the like.'),
  overBorder: yesNo.default(false).describe('It is taken over a state or country border.'),
};

export const planRequestSchema = z.strictObject(
  {
    animal,
    instructions: strict(instructionsShape).prefault({}),
    stage: choice(STAGES).default('order').describe('Which rules are asked: as the wish is written, when the animal is in, or before the knife starts.'),
    words: strict({
      country: choice(NAME_COUNTRIES).optional(),
      unit: choice(['lb', 'kg']).optional(),
    })
      .prefault({})
      .describe('How findings speak. Left out: as the shop does; the command, which has no shop, says us and lb. Figures are grams all the same.'),
  },
  {
    error: ({ code }) =>
      code === 'unrecognized_keys'
        ? 'There can be: animal, instructions, stage, words.'
        : 'Write an object in { }, at least {"animal":{"speciesId":"roe-deer"}}.',
  },
);

/** A plan request whose shape is right, with everything left out filled in. */
export type PlanRequest = z.output<typeof planRequestSchema>;

/** Instructions with nothing left out, as an answer gives them; a request takes them as they are. */
export const fullInstructionsSchema = z.strictObject({ ...instructionsShape, lines: z.array(strict(lineShape)) });
export type FullInstructions = z.output<typeof fullInstructionsSchema>;

/** The instructions a request stands for: every line with an id and a side. A free id is the line's own number, or the next. */
export function instructionsOf({ instructions }: Pick<PlanRequest, 'instructions'>): Instructions {
  const taken = new Set(instructions.lines.map((line) => line.id));
  const freeId = (from: number): string => {
    let n = from;
    while (taken.has(`line-${n}`)) n += 1;
    taken.add(`line-${n}`);
    return `line-${n}`;
  };
  const lines = instructions.lines.map((line, at) => ({ ...line, id: line.id ?? freeId(at + 1), side: line.side ?? usualSide(line.target) }));
  // The list of products is the order in which they are served.
  return { ...PLAIN_INSTRUCTIONS, ...instructions, isPriorityStated: true, lines, keep: { ...PLAIN_INSTRUCTIONS.keep, ...instructions.keep } };
}
