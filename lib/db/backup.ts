import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { copyDatabase } from './copy-database';
import { backupFolder, databaseFile } from './data-folder';

// `npm run backup`: safe while the shop is open.
const file = databaseFile();
if (existsSync(file)) {
  const moment = new Date().toISOString().replace(/\.\d+/, '').replaceAll(':', '-');
  const target = join(backupFolder(), `gambrel-${moment}.db`);
  copyDatabase(file, target);
  console.log(target);
} else {
  console.error(`There is no database at ${file} yet.`);
  process.exitCode = 1;
}
