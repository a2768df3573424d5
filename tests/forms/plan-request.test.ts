import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { PUBLISHED_IDS, PUBLISHED_SPECIES, publishedSpecies } from '@/lib/carcass';
import { CUT_IDS, CUTS, TARGET_IDS, cutsOf, targetsOfPlan } from '@/lib/cuts';
import { PLAN_EXAMPLES, type PlanDesk, answerPlanRequest, parsePlanRequest, planAnswerSchema, planOpenApi, planProblemsSchema } from '@/lib/forms';
import { DEFERENCE } from '@/lib/rules';
import { anyPlanRequest } from './any-plan-request';
import { describedSchemas } from './described-schemas';

const desk: PlanDesk = { species: PUBLISHED_SPECIES, country: 'us', unit: 'lb' };
const roe = { speciesId: 'roe-deer' };

/** What is said of a request: 'path: sentence' each. */
function said(asked: unknown): readonly string[] {
  const answer = answerPlanRequest(asked, desk);
  return answer.ok ? [] : answer.errors.map(({ path, message }) => `${path}: ${message}`);
}

describe('a plan request', () => {
  test('need be no more than a species; everything else is as usual', () => {
    expect(parsePlanRequest({ animal: roe }, PUBLISHED_SPECIES)).toEqual({
      ok: true,
      value: {
        animal: {
          speciesId: 'roe-deer', sex: 'unknown', ageClass: 'unknown', weight: null, girthMm: null, form: 'hide-on', missing: [], wounds: [],
          gutShot: false, flesh: 'usual', diseaseZone: false, test: 'none',
        },
        instructions: {
          lines: [],
          rest: 'mince',
          squaredOff: 'stew',
          mince: { addedFat: 'none', fatPercent: 10, packGrams: 500, shape: 'bulk' },
          stewPackGrams: 500,
          products: [],
          keep: { heart: false, liver: false, bones: false, antlers: 'none', cape: false, hide: false },
          mixing: 'own-meat-only',
          noPork: false,
          avoid: [],
          boneless: false,
          shares: [],
          overBorder: false,
        },
        stage: 'order',
        words: {},
      },
    });
  });

  test.each<[string, unknown, readonly string[]]>([
    ['dressed', { animal: { ...roe, weight: { grams: 16_000, basis: 'dressed' } } }, [
      'animal.weight.basis: "dressed" is several different weights. Say which: field-dressed (gutted; hide, head and legs on), legs-off (the same without the lower legs), hide-on (head and legs off) or hanging (skinned).',
    ]],
    ['no weight it can have', { animal: { ...roe, weight: { grams: 408_233, basis: 'live' } } }, [
      'animal.weight.grams: That would be a roe deer of 408233 grams alive; they run from 6000 to 45000. Check the grams, the basis and the species.',
    ]],
    ['pounds', { animal: { ...roe, weight: { grams: 16_000, basis: 'live', pounds: 35 } } }, [
      'animal.weight.pounds: "pounds" is not known here. There can be: grams, basis. Weights are in grams: 35 pounds are 15876.',
    ]],
    ['half a gram', { animal: { ...roe, weight: { grams: 16_000.5, basis: 'live' } } }, ['animal.weight.grams: Write the weight in grams, a whole number from 1 to 2000000.']],
    ['a weight in quotes', { animal: { ...roe, weight: { grams: '16000', basis: 'live' } } }, ['animal.weight.grams: Write the weight in grams, a whole number from 1 to 2000000.']],
    ['another species', { animal: { speciesId: 'unicorn' } }, [`animal.speciesId: "unicorn" is not known here. Write one of: ${PUBLISHED_IDS.join(', ')}.`]],
    ['no species', { animal: {} }, ['animal.speciesId: Write which animal it is, such as "roe-deer".']],
    ['no animal', {}, ['animal: This is missing. Write an object in { }.']],
    ['a list', [], [': Write an object in { }, at least {"animal":{"speciesId":"roe-deer"}}.']],
    ['an unknown key', { animal: roe, colour: 'red' }, ['colour: "colour" is not known here. There can be: animal, instructions, stage, words.']],
    ['a girth that tells nothing', { animal: { ...roe, girthMm: 700 } }, [
      'animal.girthMm: Nothing here tells the weight of a roe deer of that age from this girth. Write a weight, or leave the girth out.',
    ]],
    ['parts of a bird', { animal: { ...roe, wounds: [{ part: 'bird-leg', place: 'left', severity: 'light' }] } }, [
      'animal.wounds.0.part: A roe deer has no bird-leg. It has: fillet, loin, haunch, shoulder, neck, ribs.',
    ]],
    ['a left neck', { animal: { ...roe, missing: [{ part: 'neck', place: 'left' }] } }, ['animal.missing.0.place: The neck lies in the middle. Write middle.']],
    ['a middle haunch', { animal: { ...roe, missing: [{ part: 'haunch', place: 'middle' }] } }, [
      'animal.missing.0.place: The haunch comes in two halves. Write left or right, one entry each.',
    ]],
    ['nothing left', { animal: { ...roe, form: 'boned-out', missing: everyPart() } }, ['animal.missing: Nothing is left of the animal then. Leave out of this list what does come.']],
    ['chops of topside', line({ target: 'topside', cut: 'chops' }), [
      'instructions.lines.0.cut: chops cannot be made from topside. There can be: joint, steaks, tenderised-steaks, diced, mince, set-aside-whole.',
    ]],
    ['a target of another body', line({ target: 'bird-breast', cut: 'whole' }), [
      `instructions.lines.0.target: A roe deer has no bird-breast. It has: ${targetsOfPlan('four-legged').join(', ')}.`,
    ]],
    ['a left saddle', line({ target: 'saddle', cut: 'on-the-bone', side: 'left' }), ['instructions.lines.0.side: saddle is not there as left. Write both, or leave the side out.']],
    ['a middle haunch line', line({ target: 'haunch', cut: 'steaks', side: 'middle' }), [
      'instructions.lines.0.side: haunch is not there as middle. Write left or right or both, or leave the side out.',
    ]],
    ['a thick joint', line({ target: 'topside', cut: 'joint', size: { kind: 'thickness', thicknessMm: 20 } }), [
      'instructions.lines.0.size.kind: The size of joint is not told by thickness. Write weight or people or as-seen-fit.',
    ]],
    ['mince by the piece', line({ target: 'topside', cut: 'mince', pack: { kind: 'pieces', pieces: 2 } }), [
      'instructions.lines.0.pack.kind: mince is not packed by pieces. Write weight or as-seen-fit.',
    ]],
    ['a size of no kind', line({ target: 'topside', cut: 'joint', size: { kind: 'huge' } }), [
      'instructions.lines.0.size.kind: "huge" is not known here. Write one of: as-seen-fit, thickness, weight, people.',
    ]],
    ['no cut', line({ target: 'topside' }), [`instructions.lines.0.cut: This is missing. Write one of: ${CUT_IDS.join(', ')}.`]],
    ['an id twice', { animal: roe, instructions: { lines: [0, 1].map(() => ({ id: 'a', target: 'neck', cut: 'mince' })) } }, [
      'instructions.lines.1.id: "a" is there already. Write it once.',
    ]],
    ['a product twice', { animal: roe, instructions: { products: [1, 2].map((gameGrams) => ({ productId: 'jerky', gameGrams })) } }, [
      'instructions.products.1.productId: "jerky" is there already. Write it once.',
    ]],
    ['a product of nothing', { animal: roe, instructions: { products: [{ productId: 'jerky', gameGrams: 0 }] } }, [
      'instructions.products.0.gameGrams: Write the own meat that goes in in grams, a whole number from 1 to 2000000.',
    ]],
  ])('with %s is refused at its path, with the way out', (_what, asked, sentences) => {
    expect(said(asked)).toEqual(sentences);
  });

  test('is told from a girth where the species has a rule for it, and refused where that is no such animal', () => {
    const points = [{ girthMm: 500, grams: 15_000 }, { girthMm: 1_000, grams: 90_000 }];
    const rule = { ageClasses: ['adult'], basis: 'live', points, cv: 0.1 } as const;
    const measured: PlanDesk = { ...desk, species: { 'roe-deer': { ...publishedSpecies('roe-deer'), girth: [rule] } } };
    const ask = (girthMm: number) => answerPlanRequest({ animal: { ...roe, ageClass: 'adult', girthMm } }, measured);
    expect(ask(550)).toMatchObject({ ok: true, value: { basedOn: 'girth' } });
    expect(ask(900)).toEqual({
      ok: false,
      errors: [{ path: 'animal.girthMm', message: 'That would be a roe deer of 75000 grams alive; they run from 6000 to 45000. Check the millimetres and the species.' }],
    });
  });

  test('has all its mistakes of shape told at once', () => {
    expect(said({ animal: { ...roe, sex: 3, gutShot: 'yes', hung: { days: 1e300, hide: 'on' } }, stage: 'later' })).toEqual([
      'animal.sex: 3 is not known here. Write one of: male, female, unknown.',
      'animal.gutShot: Write true or false.',
      'animal.hung.days: Write the days it hangs, a whole number from 0 to 60.',
      'stage: "later" is not known here. Write one of: order, receiving, cutting, packing, billing, release.',
    ]);
  });

  test('offers for each target exactly the cuts that can be made from it', () => {
    for (const target of targetsOfPlan('four-legged')) {
      for (const cut of CUT_IDS) expect([target, cut, said(line({ target, cut })).length === 0]).toEqual([target, cut, cutsOf(target).includes(cut)]);
    }
    expect(Object.values(CUTS).flatMap(({ targets }) => targets).every((target) => TARGET_IDS.includes(target))).toBe(true);
  });

  test('that a stranger made up is refused in short sentences with nothing hidden in them', () => {
    const hostile: readonly unknown[] = [
      JSON.parse('{"__proto__":{"polluted":true},"animal":{"speciesId":"roe-deer"}}'),
      { animal: { speciesId: '__proto__' } },
      { animal: { speciesId: 'constructor' } },
      { animal: { speciesId: 'x'.repeat(60_000) } },
      { animal: { ...roe, ['\u001B[31m\u202Ekey'.repeat(1_000)]: 1 } },
      { animal: { ...roe, ...Object.fromEntries(Array.from({ length: 9_000 }, (_, n) => [`k${n}`, n])) } },
      { animal: { ...roe, weight: { grams: Infinity, basis: 'live' } } },
      { animal: { ...roe, weight: { grams: NaN, basis: 'live' } } },
      { animal: { ...roe, weight: { grams: Number.MAX_SAFE_INTEGER, basis: 'live' } } },
      { animal: { ...roe, weight: { grams: -1, basis: 'live' } } },
      { animal: roe, instructions: { lines: Array.from({ length: 5_000 }, () => ({})) } },
      JSON.parse(`${'['.repeat(30_000)}${']'.repeat(30_000)}`),
      null, true, 7, 'x',
    ];
    for (const asked of hostile) {
      const sentences = said(asked);
      expect(sentences.length).toBeGreaterThan(0);
      expect(sentences.length).toBeLessThanOrEqual(20);
      for (const sentence of sentences) expect(sentence).toMatch(/^[\x20-\x7E]{10,700}\.$|^[^:]*: Write an object in \{ \}, at least \{.*\}\.$/);
    }
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
  });
});

describe('an answer', () => {
  const answerTo = (asked: unknown) => {
    const answer = answerPlanRequest(asked, desk);
    if (!answer.ok) throw new Error(JSON.stringify(answer.errors));
    return answer.value;
  };

  test('has its keys in the order that is described', () => {
    expect(Object.keys(answerTo({ animal: roe }))).toEqual(Object.keys(planAnswerSchema.shape));
    expect(Object.keys(planAnswerSchema.shape)).toEqual([
      'hanging', 'basedOn', 'lines', 'pools', 'products', 'mince', 'packedTotal', 'tissues', 'findings', 'species', 'units', 'notLegalAdvice',
    ]);
  });

  test('says what the figure of a weighed roe deer is, and that it is no legal advice', () => {
    const { hanging, species, units, notLegalAdvice, basedOn } = answerTo({ animal: { ...roe, weight: { grams: 16_000, basis: 'field-dressed' } } });
    expect(hanging.likely).toBe(12_810);
    expect({ species, units, basedOn, notLegalAdvice }).toEqual({ species: { id: 'roe-deer', name: 'roe deer' }, units: 'grams', basedOn: 'weight', notLegalAdvice: DEFERENCE });
  });

  test('tells how likely an amount is met, and gives lines that left it out an id and a side', () => {
    const { lines } = answerTo({
      animal: roe,
      instructions: { lines: [{ id: 'line-2', target: 'neck', cut: 'diced', askedGrams: 150 }, { target: 'loin', cut: 'whole', askedGrams: 900_000 }, { target: 'saddle', cut: 'on-the-bone' }] },
    });
    expect(lines.map(({ id, side, chanceOfAsked }) => [id, side, chanceOfAsked])).toEqual([['line-2', 'middle', 0.999], ['line-3', 'both', 0], ['line-4', 'both', null]]);
  });

  test('speaks in the words that the request asks for', () => {
    const asked = { animal: roe, instructions: { lines: [{ target: 'topside', cut: 'joint' }, { target: 'topside', cut: 'steaks' }] } };
    const messages = (country: string): string => answerTo({ ...asked, words: { country } }).findings.map(({ message }) => message).join(' ');
    expect(messages('us')).toContain('top round');
    expect(messages('uk')).toContain('topside');
  });

  test('hangs and trims as the shop does where the request does not say', () => {
    const waste = (asked: object, ways: PlanDesk['ways']): number => {
      const answer = answerPlanRequest({ animal: { ...roe, ...asked } }, { ...desk, ways });
      return answer.ok ? answer.value.pools.waste.likely : 0;
    };
    const ways = { hung: { days: 14, hide: 'off' }, closeTrim: true } as const;
    expect(waste({}, ways)).toBe(waste(ways, {}));
    expect(waste({}, ways)).toBeGreaterThan(waste({}, {}));
    expect(waste({ hung: null, closeTrim: false }, ways)).toBe(waste({}, {}));
  });

  test('to any animal and wish fits its description, holds every gram once, and takes its own suggestions', () => {
    const { answerProblems, requestProblems } = describedSchemas(desk);
    fc.assert(
      fc.property(anyPlanRequest, (asked) => {
        expect(requestProblems(asked)).toBeNull();
        const read = parsePlanRequest(asked, PUBLISHED_SPECIES);
        expect(read).toMatchObject({ ok: true, value: asked });
        const answer = JSON.parse(JSON.stringify(answerTo(asked))) as ReturnType<typeof answerTo>;
        expect(answerProblems(answer)).toBeNull();
        expect(planAnswerSchema.parse(answer)).toEqual(answer);
        for (const { grams, packed, pools } of answer.tissues) expect(Object.values(pools).reduce((sum, one) => sum + one, packed)).toBe(grams);
        expect(answer.tissues.reduce((sum, { grams }) => sum + grams, 0)).toBe(answer.hanging.likely);
        for (const { instructions } of answer.findings.flatMap(({ suggestions }) => suggestions)) {
          expect(said({ ...asked, instructions })).toEqual([]);
          expect(requestProblems({ ...asked, instructions })).toBeNull();
        }
      }),
      { numRuns: 60 },
    );
  });
});

describe('the description', () => {
  test('has examples that are real: each request is taken, and its answer is the one shown', () => {
    const described = JSON.parse(JSON.stringify(planOpenApi(desk)));
    const { requestBody, responses } = described.paths['/api/plan'].post;
    const asked = requestBody.content['application/json'].examples;
    const answered = responses['200'].content['application/json'].examples;
    expect(Object.keys(asked)).toEqual(Object.keys(PLAN_EXAMPLES));
    for (const [name, { value }] of Object.entries<{ value: unknown }>(asked)) {
      expect(answerPlanRequest(value, desk)).toEqual({ ok: true, value: answered[name].value });
    }
    const { answerProblems, requestProblems, problemsProblems } = describedSchemas(desk);
    for (const { value } of Object.values<{ value: unknown }>(asked)) expect(requestProblems(value)).toBeNull();
    for (const { value } of Object.values<{ value: unknown }>(answered)) expect(answerProblems(value)).toBeNull();
    for (const status of ['400', '405', '413', '415', '429']) {
      const examples = Object.values<{ value: unknown }>(responses[status].content['application/json'].examples);
      expect(examples).not.toEqual([]);
      for (const { value } of examples) {
        expect(problemsProblems(value)).toBeNull();
        expect(planProblemsSchema.parse(value)).toEqual(value);
      }
    }
  });

  test('passes the validator of OpenAPI 3.1, and the rules that it leaves to linters', async () => {
    const { Validator } = await import('@seriousme/openapi-schema-validator');
    const described = JSON.parse(JSON.stringify(planOpenApi(desk)));
    const validator = new Validator();
    expect(await validator.validate(structuredClone(described))).toEqual({ valid: true });
    expect(validator.version).toBe('3.1');
    const operations = Object.values<Record<string, Record<string, unknown>>>(described.paths).flatMap((path) => Object.values(path));
    expect(new Set(operations.map(({ operationId }) => operationId)).size).toBe(operations.length);
    for (const { summary, tags, responses } of operations) {
      expect(summary).toMatch(/\w/);
      expect(described.tags.map(({ name }: { name: string }) => name)).toEqual(tags);
      expect(Object.keys(responses as object).some((status) => status.startsWith('4'))).toBe(true);
    }
    const text = JSON.stringify(described);
    const used = new Set([...text.matchAll(/"\$ref":"#\/components\/schemas\/(\w+)"/g)].map(([, name]) => name));
    expect([...used].toSorted()).toEqual(Object.keys(described.components.schemas).toSorted());
    expect(described.info).toMatchObject({ license: { identifier: 'MIT' }, version: expect.stringMatching(/^\d+\.\d+\.\d+$/) });
  });
});

function line(of: Readonly<Record<string, unknown>>): unknown {
  return { animal: roe, instructions: { lines: [of] } };
}

function everyPart(): readonly unknown[] {
  return [
    ...['fillet', 'loin', 'haunch', 'shoulder', 'ribs'].flatMap((part) => ['left', 'right'].map((place) => ({ part, place }))),
    { part: 'neck', place: 'middle' },
  ];
}
