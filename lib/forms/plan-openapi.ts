import { z } from 'zod';
import { type PlanDesk, answerPlanRequest } from './answer-plan-request';
import { planAnswerSchema, rangeSchema } from './plan-answer';
import { fullInstructionsSchema, planRequestSchema } from './plan-request';
import { MOST_PROBLEMS } from './plan-request-words';

/** Of the endpoint, not of the program: raised in its first figure when an old client would no longer be understood. */
export const PLAN_API_VERSION = '1.0.0';
export const LARGEST_PLAN_BYTES = 65_536;

/** Sentences of the endpoint that are about no key. */
export const TOO_LARGE = `That is too much for one animal. Send at most ${LARGEST_PLAN_BYTES} bytes.`;
export const NOT_JSON_TYPE = 'Send JSON in UTF-8, with the header Content-Type: application/json.';
export const NOT_JSON = 'This is not JSON. Send an object in { }, at least {"animal":{"speciesId":"roe-deer"}}.';

export const planProblemsSchema = z.strictObject({
  errors: z.array(
    z.strictObject({
      path: z.string().describe('Dotted, such as instructions.lines.0.cut; empty where it is about the whole.'),
      message: z.string().describe('A sentence that says what to do.'),
    }),
  ),
});

/** The least that can be asked, and a wish with most of what can be said. Shown where the book has the species. */
export const PLAN_EXAMPLES = {
  least: { animal: { speciesId: 'roe-deer' } },
  wish: {
    animal: {
      speciesId: 'white-tailed-deer',
      sex: 'male',
      ageClass: 'adult',
      weight: { grams: 61_235, basis: 'field-dressed' },
      wounds: [{ part: 'shoulder', place: 'left', severity: 'heavy' }],
    },
    instructions: {
      lines: [
        { target: 'loin', cut: 'medallions', size: { kind: 'thickness', thicknessMm: 25 } },
        { target: 'haunch', side: 'left', cut: 'steaks', pack: { kind: 'pieces', pieces: 2 }, askedGrams: 4_000 },
      ],
      rest: 'mince',
      mince: { addedFat: 'pork', fatPercent: 15, packGrams: 454, shape: 'bulk' },
      products: [{ productId: 'fresh-sausage', gameGrams: 2_000 }],
    },
  },
} as const;

type Json = Readonly<Record<string, unknown>>;

/** The OpenAPI 3.1 description of the endpoint, from the schemas that check it. Its example answers are worked out from the desk's own book. */
export function planOpenApi(desk: PlanDesk): Json {
  const examples = Object.entries(PLAN_EXAMPLES).flatMap(([name, asked]) => {
    const answered = answerPlanRequest(asked, desk);
    return answered.ok ? [{ name, asked, answer: answered.value }] : [];
  });
  const mistaken = answerPlanRequest({ animal: { speciesId: Object.keys(desk.species)[0], weight: { grams: 16_000, basis: 'dressed' } } }, desk);
  const refusal = (description: string, message: string, headers?: Json): Json => ({
    description,
    ...(headers && { headers }),
    content: { 'application/json': { schema: ref('PlanProblems'), examples: { refused: { value: { errors: [{ path: '', message }] } } } } },
  });
  return {
    openapi: '3.1.1',
    info: {
      title: 'Gambrel plan',
      version: PLAN_API_VERSION,
      summary: 'What one carcass is likely to give, cut as wished.',
      description:
        'The computation behind the order form, for other programs: forecast, plan and findings of one animal. Nothing of the request is kept. Weights are whole grams, lengths millimetres. Keys of an answer keep their order; new ones may come, so pass over those you do not know.',
      license: { name: 'MIT', identifier: 'MIT' },
    },
    servers: [{ url: '/', description: 'This shop' }],
    security: [],
    tags: [{ name: 'plan', description: 'One animal, one wish, one answer.' }],
    paths: {
      '/api/plan': {
        post: {
          operationId: 'planAnimal',
          tags: ['plan'],
          summary: 'Forecast, plan and findings of one animal',
          description: `Computes and keeps nothing. No sign-in. Of the caller only a digest of the address is counted. At most ${LARGEST_PLAN_BYTES} bytes of UTF-8; too many requests from one address have to wait.`,
          requestBody: {
            required: true,
            content: {
              'application/json': {
                schema: ref('PlanRequest'),
                examples: Object.fromEntries(examples.map(({ name, asked }) => [name, { value: asked }])),
              },
            },
          },
          responses: {
            200: { description: 'The plan.', content: { 'application/json': { schema: ref('PlanAnswer'), examples: Object.fromEntries(examples.map(({ name, answer }) => [name, { value: answer }])) } } },
            400: {
              description: `Mistakes, at most ${MOST_PROBLEMS} at once: those of shape first, then what does not fit together.`,
              content: { 'application/json': { schema: ref('PlanProblems'), examples: mistaken.ok ? {} : { dressed: { value: { errors: mistaken.errors } } } } },
            },
            405: refusal('Another method than POST.', 'Send this with POST.', { Allow: header('The method that there is.', { const: 'POST' }) }),
            413: refusal('Too large.', TOO_LARGE),
            415: refusal('Not JSON.', NOT_JSON_TYPE),
            429: refusal('Too many requests from this address.', 'Too many requests came from your address. Try again in 30 seconds.', {
              'Retry-After': header('Seconds to wait.', { type: 'integer', minimum: 1 }),
            }),
          },
        },
      },
      '/api/openapi.json': {
        get: {
          operationId: 'describePlan',
          tags: ['plan'],
          summary: 'This description',
          responses: {
            200: { description: 'OpenAPI 3.1.', content: { 'application/json': { schema: { type: 'object' } } } },
            405: refusal('Another method than GET.', 'Read this with GET.', { Allow: header('The methods that there are.', { type: 'string' }) }),
          },
        },
      },
    },
    components: { schemas: { ...requestSchemas(desk), ...answerSchemas() } },
  };
}

function ref(name: string): Json {
  return { $ref: `#/components/schemas/${name}` };
}

function header(description: string, schema: Json): Json {
  return { description, required: true, schema };
}

/** The request, which knows the species of the book. */
function requestSchemas({ species }: PlanDesk): Json {
  return schemasOf('input', { PlanRequest: planRequestSchema }, (schema, path) => {
    if (path.at(-1) === 'speciesId') schema['enum'] = Object.keys(species);
  });
}

/** What is answered, open to keys that come later. */
function answerSchemas(): Json {
  const named = { PlanAnswer: planAnswerSchema, Range: rangeSchema, Instructions: fullInstructionsSchema, PlanProblems: planProblemsSchema };
  return schemasOf('output', named, (schema) => {
    if (schema['additionalProperties'] === false) delete schema['additionalProperties'];
  });
}

/** JSON schemas of zod's, as parts of a description that refer to each other. */
function schemasOf(
  io: 'input' | 'output',
  named: Readonly<Record<string, z.ZodType>>,
  change: (schema: Record<string, unknown>, path: readonly (string | number)[]) => void,
): Json {
  const registry = z.registry<{ id: string }>();
  for (const [id, schema] of Object.entries(named)) registry.add(schema, { id });
  const { schemas } = z.toJSONSchema(registry, {
    io,
    target: 'draft-2020-12',
    uri: (id) => `#/components/schemas/${id}`,
    override: ({ jsonSchema, path }) => change(jsonSchema as Record<string, unknown>, path),
  });
  return Object.fromEntries(
    Object.entries(schemas).map(([id, schema]) => {
      const { $schema: _dialect, $id: _id, ...rest } = schema as Record<string, unknown>;
      return [id, rest];
    }),
  );
}
