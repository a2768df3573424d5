import { existsSync, mkdirSync } from 'node:fs';
import { dirname } from 'node:path';

/** Makes a folder and those above it, one by one, open to their owner only. Node's own way of making all at once never ends under /proc. */
export function makeFolder(folder) {
  if (existsSync(folder)) return;
  makeFolder(dirname(folder));
  try {
    mkdirSync(folder, { mode: 0o700 });
  } catch (error) {
    // Another start was quicker.
    if (error.code !== 'EEXIST') throw error;
  }
}
