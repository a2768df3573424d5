import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const program = ['lib/launch/start.mjs'];
const migrator = ['--import', 'tsx', 'lib/db/migrate/cli.ts', 'apply'];

function run(script: readonly string[], folder: string): { readonly status: number | null; readonly said: string } {
  const env = { ...process.env, GAMBREL_DATA: folder };
  const { status, stderr } = spawnSync(process.execPath, script, { env, encoding: 'utf8', timeout: 30_000, killSignal: 'SIGKILL' });
  return { status, said: stderr.trim() };
}

// Linux has it; elsewhere no such folder can be made either.
test.each([
  { by: 'the start', script: program, says: 'Gambrel cannot write to its data folder /proc/nowhere/data (' },
  { by: 'the migrator', script: migrator, says: 'Gambrel cannot write to /proc/nowhere/data/gambrel.db: ' },
])('a data folder under /proc is refused by $by in a sentence, and does not keep it waiting', ({ script, says }) => {
  const { status, said } = run(script, '/proc/nowhere/data');
  expect([status, said]).toEqual([1, expect.stringContaining(says)]);
});

test('a data folder under a file is refused in a sentence', () => {
  const folder = mkdtempSync(join(tmpdir(), 'gambrel-launch-'));
  writeFileSync(join(folder, 'file'), '');
  expect(run(program, join(folder, 'file', 'data'))).toEqual({
    status: 1,
    said: `Gambrel cannot write to its data folder ${join(folder, 'file', 'data')} (ENOTDIR): allow it, or name another in GAMBREL_DATA.`,
  });
  rmSync(folder, { recursive: true });
});

test('a data folder that is not there yet is made, and those above it', () => {
  const folder = mkdtempSync(join(tmpdir(), 'gambrel-launch-'));
  const wanted = join(folder, 'one', 'two');
  expect(run(migrator, wanted)).toEqual({ status: 0, said: '' });
  expect(existsSync(join(wanted, 'gambrel.db'))).toBe(true);
  rmSync(folder, { recursive: true });
});
