import { Problem } from './problem.mjs';
import { findProgram, run } from './run.mjs';

const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];

/**
 * Finds a browser for the journeys, and installs one where apt-get can. Its path goes to the tests as CHROMIUM_PATH, which
 * names another one when it is set. Throws a Problem that says what to install.
 */
export async function ensureBrowser() {
  process.env.CHROMIUM_PATH ||= findBrowser() ?? (await installBrowser());
}

async function installBrowser() {
  if (findProgram('apt-get') !== null && process.getuid?.() === 0) {
    console.log('Installing a browser for the journeys.');
    await run('apt-get', ['update', '-qq']);
    await run('apt-get', ['install', '-y', '-qq', 'chromium', 'poppler-utils', 'fonts-liberation'], { DEBIAN_FRONTEND: 'noninteractive' });
  }
  const found = findBrowser();
  if (found !== null) return found;
  throw new Problem(
    'The journeys need Chromium and poppler-utils: on Debian or Ubuntu run apt-get install -y chromium poppler-utils fonts-liberation, elsewhere set CHROMIUM_PATH.',
  );
}

function findBrowser() {
  return names.map(findProgram).find((path) => path !== null) ?? null;
}
