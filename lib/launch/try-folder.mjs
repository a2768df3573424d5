import { rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { makeFolder } from '../db/make-folder.mjs';

// Makes a folder, writes into it and takes that away again; prints why not. A program of its own, so that a disk which never answers can be given up.
const [, , folder] = process.argv;
const probe = join(folder, `.probe-${process.pid}`);
try {
  makeFolder(folder);
  writeFileSync(probe, '');
  rmSync(probe);
} catch (error) {
  console.log(error.code);
  process.exitCode = 1;
}
