import { describe, expect, test } from 'vitest';
import * as description from '@/app/api/openapi.json/route';
import * as endpoint from '@/app/api/plan/route';
import { PUBLISHED_SPECIES } from '@/lib/carcass';
import { atMoment } from '@/lib/db/clock';
import { database } from '@/lib/db/client';
import { PLAN_EXAMPLES, answerPlanRequest, planProblemsSchema } from '@/lib/forms';
import { problemsBy } from '../forms/described-schemas';
import { usePreparedDatabase } from './prepared-database';

usePreparedDatabase();

const noon = new Date('2026-11-25T12:00:00Z');
const after = (seconds: number): Date => new Date(noon.getTime() + seconds * 1_000);

function ask(body: BodyInit, { at = noon, type = 'application/json' }: { at?: Date; type?: string } = {}): Promise<Response> {
  const headers = type === '' ? {} : { 'content-type': type };
  return atMoment(at, () => endpoint.POST(new Request('http://shop.example/api/plan', { method: 'POST', headers, body, duplex: 'half' } as RequestInit)));
}

/** A refusal's status and sentence; that it is of the described form goes without saying. */
async function refusalOf(answer: Response): Promise<readonly [number, string]> {
  expect(answer.headers.get('content-type')).toBe('application/json; charset=utf-8');
  expect(answer.headers.get('cache-control')).toBe('no-store');
  const { errors } = planProblemsSchema.parse(await answer.json());
  return [answer.status, errors.map(({ path, message }) => (path === '' ? message : `${path}: ${message}`)).join(' ')];
}

const least = JSON.stringify(PLAN_EXAMPLES.least);
const notJson = 'This is not JSON. Send an object in { }, at least {"animal":{"speciesId":"roe-deer"}}.';
const tooLarge = 'That is too much for one animal. Send at most 65536 bytes.';
const wrongType = 'Send JSON in UTF-8, with the header Content-Type: application/json.';

describe('the endpoint', () => {
  test('answers as the command does, and as its own description says', async () => {
    const described = await (await description.GET()).json();
    const { answerProblems, requestProblems, problemsProblems } = problemsBy(described);
    for (const asked of Object.values(PLAN_EXAMPLES)) {
      const answer = await ask(JSON.stringify(asked));
      const value: unknown = await answer.json();
      expect(answer.status).toBe(200);
      expect(requestProblems(asked)).toBeNull();
      expect(answerProblems(value)).toBeNull();
      const computed = answerPlanRequest(asked, { species: PUBLISHED_SPECIES, country: 'us', unit: 'lb' });
      expect(computed).toEqual({ ok: true, value });
    }
    expect(problemsProblems(await (await ask('{}')).json())).toBeNull();
  });

  test.each<[string, BodyInit, { type?: string }, number, string]>([
    ['a form', 'animal=roe', { type: 'application/x-www-form-urlencoded' }, 415, wrongType],
    ['plain text, as another site can send it', least, { type: 'text/plain' }, 415, wrongType],
    ['another alphabet', least, { type: 'application/json; charset=utf-16' }, 415, wrongType],
    ['a megabyte', `{"animal":{"speciesId":"${'x'.repeat(1_000_000)}"}}`, {}, 413, tooLarge],
    ['a byte too much', least.padEnd(65_537), {}, 413, tooLarge],
    ['nothing', '', {}, 400, notJson],
    ['NaN', '{"animal":{"speciesId":"elk","girthMm":NaN}}', {}, 400, notJson],
    ['no UTF-8', new Uint8Array([0x7b, 0xff, 0x7d]), {}, 400, notJson],
    ['a deep nest', '['.repeat(60_000), {}, 400, notJson],
    ['a closed deep nest', '['.repeat(30_000) + ']'.repeat(30_000), {}, 400, 'Write an object in { }, at least {"animal":{"speciesId":"roe-deer"}}.'],
    ['a prototype', '{"__proto__":{"a":1},"animal":{"speciesId":"elk"}}', {}, 400, '__proto__: "__proto__" is not known here. There can be: animal, instructions, stage, words.'],
    ['a huge number', '{"animal":{"speciesId":"elk","girthMm":1e999}}', {}, 400, 'animal.girthMm: Write the girth of the chest in millimetres, a whole number from 100 to 4000.'],
    ['a long integer', '{"animal":{"speciesId":"elk","girthMm":123456789012345678901234567890}}', {}, 400, 'animal.girthMm: Write the girth of the chest in millimetres, a whole number from 100 to 4000.'],
  ])('refuses %s in a sentence', async (_what, body, given, status, sentence) => {
    expect(await refusalOf(await ask(body, given))).toEqual([status, sentence]);
  });

  test('takes exactly as much as it says, and reads no further than that', async () => {
    expect((await ask(least.padEnd(65_536))).status).toBe(200);
    let given = 0;
    const endless = new ReadableStream<Uint8Array>({
      pull: (controller) => {
        given += 1;
        controller.enqueue(new Uint8Array(16_384).fill(0x20));
      },
    });
    expect(await refusalOf(await ask(endless))).toEqual([413, tooLarge]);
    expect(given).toBeLessThan(10);
  });

  test('takes the type with its one alphabet', async () => {
    for (const type of ['application/json; charset=utf-8', 'Application/JSON;charset="UTF-8"']) expect((await ask(least, { type })).status).toBe(200);
  });

  test('lets sixty through at a stretch, then says how long to wait; a quiet minute starts anew', async () => {
    for (let asked = 0; asked < 61; asked += 1) expect((await ask('{}')).status).toBe(400);
    const waiting = await ask(least);
    expect(waiting.headers.get('retry-after')).toBe('30');
    expect(await refusalOf(waiting)).toEqual([429, 'Too many requests came from your address. Try again in 30 seconds.']);
    expect((await ask(least, { at: after(30) })).status).toBe(200);
    expect((await ask(least, { at: after(31) })).headers.get('retry-after')).toBe('59');
    for (let asked = 0; asked < 30; asked += 1) expect((await ask('{}', { at: after(91) })).status).toBe(400);
  });

  test('keeps nothing but that somebody asked: a digest and a count', async () => {
    await ask(JSON.stringify(PLAN_EXAMPLES.wish));
    const rows = await database().signInThrottle.findMany();
    expect(rows).toEqual([{ key: expect.stringMatching(/^plan:[\w-]{43}$/), failures: 1, blockedUntil: null, updatedAt: noon }]);
    expect(await database().order.count()).toBe(0);
  });

  test('has one method, and its description has one', async () => {
    for (const refuse of [endpoint.GET, endpoint.PUT, endpoint.PATCH, endpoint.DELETE, endpoint.OPTIONS, endpoint.HEAD]) {
      expect(refuse().headers.get('allow')).toBe('POST');
      expect(await refusalOf(refuse())).toEqual([405, 'Send this with POST. GET /api/openapi.json describes it.']);
    }
    for (const refuse of [description.POST, description.PUT, description.PATCH, description.DELETE, description.OPTIONS]) {
      expect(refuse().headers.get('allow')).toBe('GET, HEAD');
      expect(await refusalOf(refuse())).toEqual([405, 'Read this with GET.']);
    }
  });
});
