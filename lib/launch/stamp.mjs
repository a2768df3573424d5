import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { root } from './run.mjs';

/** A digest of files and folders of the checkout, names and contents; what is missing counts as such. */
export function digest(paths) {
  const hash = createHash('sha256');
  for (const path of paths) addTo(hash, path);
  return hash.digest('hex');
}

/** Does `work` unless it was last done for the same digest, which `stampFile` remembers. `work` throws when it fails. */
export async function onceFor(currentDigest, stampFile, work) {
  const stamp = join(root, stampFile);
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === currentDigest) return;
  rmSync(stamp, { force: true });
  await work();
  mkdirSync(dirname(stamp), { recursive: true });
  writeFileSync(stamp, currentDigest);
}

function addTo(hash, path) {
  const full = join(root, path);
  // Made from the schema, which counts by itself.
  if (path === 'lib/db/generated' || !existsSync(full)) return;
  if (statSync(full).isDirectory()) {
    for (const name of readdirSync(full).sort()) addTo(hash, `${path}/${name}`);
  } else {
    hash.update(`${path}\0`).update(readFileSync(full)).update('\0');
  }
}
