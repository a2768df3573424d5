import { join } from 'node:path';
import { checkDataFolder, checkNode, checkPort } from './checks.mjs';
import { ensureInstalled } from './packages.mjs';
import { Problem } from './problem.mjs';
import { root, runNode, runTypeScript } from './run.mjs';
import { keptSecret, oneTimeCode } from './secrets.mjs';
import { digest, onceFor } from './stamp.mjs';

const buildSources = [
  'app', 'lib', 'seed', 'prisma', 'public', 'package-lock.json', 'next.config.ts', 'tsconfig.json',
  'prisma.config.ts', 'proxy.ts', 'instrumentation.ts',
];

/**
 * Makes a data folder ready to be served: packages, client, build and database, each only when it is stale. What can be
 * refused at once is refused before the long work. `fill` may put rows into the database and returns what to say of them.
 * Returns what `serve` needs.
 */
export async function prepareShop({ dataFolder, build, fill = async () => null }) {
  checkNode();
  const folder = checkDataFolder(dataFolder);
  const port = await checkPort();
  await ensureProgram();
  if (build) await ensureBuilt();
  await ensureMigrated(folder);
  const address = `http://localhost:${port}`;
  const environment = serverEnvironment(folder);
  const said = await fill(folder, environment);
  const words = [`Gambrel is open at ${address}`, ...(said === null ? [] : [said])];
  // Loads a package, so it cannot be imported before the packages are installed.
  const { hasRows } = await import('../db/has-rows.mjs');
  if (!hasRows(join(folder, 'gambrel.db'), 'StaffMember')) {
    const code = oneTimeCode();
    environment.GAMBREL_SETUP_CODE = code;
    words.push(`Nobody works here yet: open ${address}/setup and enter this code: ${code}`);
  }
  return { folder, port, environment, words };
}

/** Installs the packages and generates the database client. */
export async function ensureProgram() {
  await ensureInstalled();
  await ensureClient();
}

/** Builds the program when its sources changed. */
export async function ensureBuilt() {
  await onceFor(digest(buildSources), '.next/gambrel-sources', async () => {
    console.log('Building.');
    const code = await runNode(['node_modules/next/dist/bin/next', 'build'], { ...quietNext(), ...actionKey() });
    if (code !== 0) throw new Problem('The program could not be built; the message is above.');
  });
}

async function ensureClient() {
  const sources = ['prisma/schema', 'prisma.config.ts', 'package-lock.json'];
  await onceFor(digest(sources), 'lib/db/generated/.stamp', async () => {
    const code = await runNode(['node_modules/prisma/build/index.js', 'generate']);
    if (code !== 0) throw new Problem('The database client could not be generated; the message is above.');
  });
}

// The migrator prints its own sentence when it refuses.
async function ensureMigrated(folder) {
  const code = await runTypeScript(['lib/db/migrate/cli.ts', 'apply'], { GAMBREL_DATA: folder });
  if (code !== 0) throw new Problem('Gambrel was not started.');
}

function serverEnvironment(folder) {
  return {
    ...quietNext(),
    ...actionKey(),
    GAMBREL_DATA: folder,
    BETTER_AUTH_SECRET: process.env.BETTER_AUTH_SECRET || keptSecret(join(folder, 'secret')),
  };
}

function quietNext() {
  return { NEXT_TELEMETRY_DISABLED: '1' };
}

// Every data folder is served by the one build, so its key stays with the checkout, outside what a build empties.
// A new key would make every page that is open in a browser fail at its next button.
function actionKey() {
  const key = process.env.NEXT_SERVER_ACTIONS_ENCRYPTION_KEY || keptSecret(join(root, '.gambrel', 'build-key'));
  return { NEXT_SERVER_ACTIONS_ENCRYPTION_KEY: key };
}
