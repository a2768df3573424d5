import { spawnSync } from 'node:child_process';
import { createServer } from 'node:net';
import { relative, resolve, sep } from 'node:path';
import { Problem } from './problem.mjs';
import { root } from './run.mjs';

/** Throws a Problem on a Node that the packages do not run on. */
export function checkNode() {
  const [major, minor] = process.versions.node.split('.').map(Number);
  if (major > 20 || (major === 20 && minor >= 19)) return;
  throw new Problem(`Gambrel needs Node 20.19 or newer, this is ${process.versions.node}: install it from https://nodejs.org.`);
}

const ANSWER_SECONDS = 10;

/** The data folder as a full path. Throws a Problem when it cannot be written to, or its disk does not answer. */
export function checkDataFolder(folder) {
  const full = resolve(root, folder);
  if (relative(root, full).split(sep).includes('.next')) {
    throw new Problem(`GAMBREL_DATA is ${full}: a build empties .next, choose a folder outside it.`);
  }
  const tried = spawnSync(process.execPath, ['lib/launch/try-folder.mjs', full], {
    cwd: root,
    encoding: 'utf8',
    timeout: ANSWER_SECONDS * 1000,
    killSignal: 'SIGKILL',
  });
  if (tried.status === 0) return full;
  const why = tried.error?.code === 'ETIMEDOUT' ? `no answer in ${ANSWER_SECONDS} seconds` : tried.stdout.trim();
  throw new Problem(`Gambrel cannot write to its data folder ${full} (${why}): allow it, or name another in GAMBREL_DATA.`);
}

/** The port to serve on. Throws a Problem when PORT is no port or something else listens there. */
export async function checkPort() {
  const text = process.env.PORT || '3000';
  const port = Number(text);
  if (!/^\d+$/.test(text) || port < 1 || port > 65_535) throw new Problem(`PORT is "${text}": give a number from 1 to 65535.`);
  await new Promise((free, taken) => {
    const probe = createServer();
    probe.once('error', (error) =>
      taken(
        new Problem(
          error.code === 'EADDRINUSE'
            ? `Port ${port} is in use: stop the program that uses it, or choose another, for example PORT=${port + 1} npm start.`
            : `Port ${port} cannot be opened (${error.code}): choose another, for example PORT=3000 npm start.`,
        ),
      ),
    );
    probe.listen(port, () => probe.close(free));
  });
  return port;
}
