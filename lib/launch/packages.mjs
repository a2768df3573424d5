import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { Problem } from './problem.mjs';
import { findProgram, root, run, runNode } from './run.mjs';
import { digest, onceFor } from './stamp.mjs';

/** Installs the packages when package-lock.json asks for others than are there. */
export async function ensureInstalled() {
  await onceFor(digest(['package-lock.json']), 'node_modules/.gambrel-packages', async () => {
    // They may have been installed by hand.
    if (installIsCurrent()) return;
    console.log('Installing packages. The first time takes some minutes.');
    const code = await runNpm(['ci', '--include=dev', '--no-audit', '--no-fund', '--loglevel=error']);
    if (code !== 0) throw new Problem(`The packages could not be installed. ${compilerAdvice()}`);
  });
  if (!canOpenSqlite()) {
    console.log('Fitting the database driver to this Node.');
    const code = await runNpm(['rebuild', 'better-sqlite3', '--loglevel=error']);
    if (code !== 0 || !canOpenSqlite()) throw new Problem(`The database driver could not be built. ${compilerAdvice()}`);
  }
}

function installIsCurrent() {
  const packages = (file) => JSON.parse(readFileSync(join(root, file), 'utf8')).packages;
  const listed = 'node_modules/.package-lock.json';
  if (!existsSync(join(root, listed))) return false;
  const installed = packages(listed);
  return Object.entries(packages('package-lock.json')).every(
    ([path, wanted]) =>
      path === '' ||
      installed[path]?.version === wanted.version ||
      ((wanted.optional || wanted.extraneous) && installed[path] === undefined),
  );
}

function canOpenSqlite() {
  try {
    const Database = createRequire(join(root, 'package.json'))('better-sqlite3');
    new Database(':memory:').close();
    return true;
  } catch {
    return false;
  }
}

function runNpm(args) {
  const npm = process.env.npm_execpath;
  return npm ? runNode([npm, ...args]) : run('npm', args);
}

function compilerAdvice() {
  const missing = ['python3', 'make', 'g++'].filter((program) => findProgram(program) === null);
  return missing.length === 0
    ? 'The message is above.'
    : `The database driver may have to be compiled here, and ${missing.join(', ')} is missing: on Debian or Ubuntu run apt-get install -y python3 make g++, then try again.`;
}
