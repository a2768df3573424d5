import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { join, relative, resolve, sep } from 'node:path';
import { Problem } from './problem.mjs';
import { root } from './run.mjs';

/** Throws a Problem on a Node that the packages do not run on. */
export function checkNode() {
  const [major, minor] = process.versions.node.split('.').map(Number);
  if (major > 20 || (major === 20 && minor >= 19)) return;
  throw new Problem(`Gambrel needs Node 20.19 or newer, this is ${process.versions.node}: install it from https://nodejs.org.`);
}

/** The data folder as a full path. Throws a Problem when it cannot be written to. */
export function checkDataFolder(folder) {
  const full = resolve(root, folder);
  if (relative(root, full).split(sep).includes('.next')) {
    throw new Problem(`GAMBREL_DATA is ${full}: a build empties .next, choose a folder outside it.`);
  }
  const probe = join(full, `.probe-${process.pid}`);
  try {
    mkdirSync(full, { recursive: true, mode: 0o700 });
    writeFileSync(probe, '');
    rmSync(probe);
  } catch (error) {
    throw new Problem(`Gambrel cannot write to its data folder ${full} (${error.code}): allow it, or name another in GAMBREL_DATA.`);
  }
  return full;
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
