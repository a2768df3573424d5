import { spawn } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { hasRows } from '../db/has-rows.mjs';
import { Problem } from './problem.mjs';
import { root } from './run.mjs';

/** Fills the demonstration's database once. Returns what the seed printed then: the names to sign in with. */
export async function ensureSeason(folder, environment) {
  // Written last: without it, rows are what a broken-off filling left.
  const namesFile = join(folder, 'sign-in-names.txt');
  if (!existsSync(namesFile)) {
    if (hasRows(join(folder, 'gambrel.db'), 'Order')) {
      throw new Problem(`The demonstration was broken off while it was filled: remove ${folder}, then start it again.`);
    }
    console.log('Inventing a season.');
    writeFileSync(namesFile, await outputOf('seed/demo.ts', environment), { mode: 0o600 });
  }
  return readFileSync(namesFile, 'utf8').trimEnd();
}

function outputOf(script, environment) {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, ['--import', 'tsx', script], {
      cwd: root,
      stdio: ['ignore', 'pipe', 'inherit'],
      env: { ...process.env, ...environment },
    });
    let output = '';
    child.stdout.setEncoding('utf8').on('data', (text) => {
      output += text;
    });
    child.on('error', reject);
    child.on('close', (code) => {
      if (code === 0) resolve(output);
      else reject(new Problem('The season could not be invented; the message is above.'));
    });
  });
}
