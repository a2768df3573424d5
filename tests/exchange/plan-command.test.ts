import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { PUBLISHED_SPECIES } from '@/lib/carcass';
import { PLAN_EXAMPLES, answerPlanRequest } from '@/lib/forms';

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'gambrel-plan-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Runs the command as a shell does: exit code, standard output and error. The data folder it is told of is not there. */
function plan(names: readonly string[], stdin: string | Buffer = ''): { readonly code: number | null; readonly out: string; readonly told: string } {
  const ran = spawnSync(process.execPath, ['node_modules/tsx/dist/cli.mjs', 'lib/exchange/plan-command.ts', ...names], {
    input: stdin,
    encoding: 'utf8',
    env: { ...process.env, GAMBREL_DATA: join(folder, 'no-data') },
  });
  return { code: ran.status, out: ran.stdout, told: ran.stderr };
}

const refused = (told: string) => ({ code: 2, out: '', told });

test('a good file is answered on standard output, with no database about', () => {
  const file = join(folder, 'order.json');
  writeFileSync(file, JSON.stringify(PLAN_EXAMPLES.wish));
  const { code, out, told } = plan([file]);
  const answer = answerPlanRequest(PLAN_EXAMPLES.wish, { species: PUBLISHED_SPECIES, country: 'us', unit: 'lb' });
  expect({ code, told, ok: answer.ok }).toEqual({ code: 0, told: '', ok: true });
  expect(answer.ok && `${JSON.stringify(answer.value, null, 2)}\n`).toBe(out);
  expect(existsSync(join(folder, 'no-data'))).toBe(false);
});

test('npm runs it, and - is standard input', () => {
  const ran = spawnSync('npm', ['run', '-s', 'plan', '--', '-'], { input: '\uFEFF{"animal":{"speciesId":"elk"}}', encoding: 'utf8' });
  expect({ code: ran.status, told: ran.stderr, species: JSON.parse(ran.stdout).species }).toEqual({ code: 0, told: '', species: { id: 'elk', name: 'elk' } });
});

test('each mistake is a line with its path, and nothing is on standard output', () => {
  const asked = { animal: { speciesId: 'roe-deer', weight: { grams: 16_000, basis: 'dressed' }, colour: 'red' } };
  const { code, out, told } = plan(['-'], JSON.stringify(asked));
  expect({ code, out }).toEqual({ code: 2, out: '' });
  expect(told.split('\n')).toEqual([
    expect.stringMatching(/^animal\.weight\.basis: "dressed" is several different weights\. Say which: field-dressed .* hide-on .* or hanging \(skinned\)\.$/),
    expect.stringMatching(/^animal\.colour: "colour" is not known here\. There can be: speciesId, /),
    '',
  ]);
});

test.each([
  ['words', 'a roe deer, please'],
  ['nothing', ''],
  ['bytes that are no UTF-8', Buffer.from([0x7b, 0xff, 0x7d])],
])('%s is not JSON', (_what, stdin) => {
  expect(plan(['-'], stdin)).toEqual(refused('This is not JSON. Send an object in { }, at least {"animal":{"speciesId":"roe-deer"}}.\n'));
});

test('a file that is not there, and a folder, are told by name', () => {
  const missing = join(folder, 'no-such.json');
  expect(plan([missing])).toEqual(refused(`${missing}: This file cannot be read (ENOENT). Name one that is there, or - for standard input.\n`));
  expect(plan([folder])).toEqual(refused(`${folder}: This file cannot be read (EISDIR). Name one that is there, or - for standard input.\n`));
});

test('no file or two are answered with the usage; who asks for it gets it on standard output', () => {
  const help = plan(['--help']);
  expect(help).toMatchObject({ code: 0, told: '' });
  expect(help.out).toMatch(/^Usage: npm run -s plan -- order\.json\n/);
  expect(plan([])).toEqual(refused(help.out));
  expect(plan(['a.json', 'b.json'])).toEqual(refused(help.out));
});
