import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ensureBrowser } from './browser.mjs';
import { checkNode } from './checks.mjs';
import { Problem } from './problem.mjs';
import { runNode, runTypeScript } from './run.mjs';
import { ensureBuilt, ensureProgram } from './set-up.mjs';

// `npm test`: everything, from a clean clone. A failing stage does not keep the others from telling what they know.
const totals = { passed: 0, failed: 0, skipped: 0 };
const scratch = mkdtempSync(join(tmpdir(), 'gambrel-run-'));
// No test may reach the shop's own data.
Object.assign(process.env, { GAMBREL_DATA: join(scratch, 'data'), NEXT_TELEMETRY_DISABLED: '1' });

if (await succeeds('set-up', async () => { checkNode(); await ensureProgram(); })) {
  await check('types', async () => {
    const code = await runNode(['node_modules/next/dist/bin/next', 'typegen']);
    return code === 0 ? runNode(['node_modules/typescript/bin/tsc', '--noEmit']) : code;
  });
  await check('lint', () => runNode(['node_modules/oxlint/bin/oxlint', '--deny-warnings']));
  await check('migrations', () => runTypeScript(['lib/db/migrate/cli.ts', 'check']));
  await test('unit', 'reference', 'database');
  if ((await succeeds('build', ensureBuilt)) && (await succeeds('browser', ensureBrowser))) await test('journeys');
}

rmSync(scratch, { recursive: true, force: true });
process.exitCode = totals.failed > 0 || totals.passed === 0 ? 1 : 0;
console.log(`${totals.passed} passed, ${totals.failed} failed, ${totals.skipped} skipped`);

/** Runs a step that the following ones need. It counts only when it fails. */
async function succeeds(name, work) {
  console.log(`\n== ${name}`);
  try {
    await work();
    return true;
  } catch (error) {
    console.error(error instanceof Problem ? error.message : error);
    totals.failed += 1;
    return false;
  }
}

/** Runs a command that passes or fails as a whole, and counts it as one. */
async function check(name, command) {
  console.log(`\n== ${name}`);
  totals[(await command()) === 0 ? 'passed' : 'failed'] += 1;
}

/** Runs vitest projects and counts their tests; a file that does not load, or an error beside the tests, counts as one. */
async function test(...projects) {
  console.log(`\n== ${projects.join(', ')}`);
  const report = join(scratch, `${projects[0]}.json`);
  const code = await runNode([
    'node_modules/vitest/vitest.mjs', 'run', '--passWithNoTests',
    ...projects.flatMap((project) => ['--project', project]),
    '--reporter=default', '--reporter=json', `--outputFile.json=${report}`,
  ]);
  const before = totals.failed;
  if (existsSync(report)) {
    const { numPassedTests, numPendingTests, numTodoTests, testResults } = JSON.parse(readFileSync(report, 'utf8'));
    totals.passed += numPassedTests;
    totals.skipped += numPendingTests + numTodoTests;
    for (const file of testResults) {
      const failed = file.assertionResults.filter((result) => result.status === 'failed').length;
      totals.failed += failed === 0 && file.status === 'failed' ? 1 : failed;
    }
  }
  if (code !== 0 && totals.failed === before) totals.failed += 1;
}
