import { readFile } from 'node:fs/promises';
import { PUBLISHED_IDS, PUBLISHED_SPECIES } from '@/lib/carcass';
import { parseSpeciesFile } from '@/lib/forms';

// `npm run -s species -- roe-deer` writes a published species as a file to start one's own from; with `check` and a file it says
// what is wrong with one.

const [what, file] = process.argv.slice(2);

if (what === 'check' && file !== undefined) await check(file);
else if (what !== undefined && file === undefined && Object.hasOwn(PUBLISHED_SPECIES, what)) {
  process.stdout.write(`${JSON.stringify(PUBLISHED_SPECIES[what], null, 2)}\n`);
} else {
  process.exitCode = 2;
  process.stderr.write(`Usage: npm run -s species -- <id>          writes a published species as JSON, to start one of your own from
       npm run -s species -- check <file>  says what is wrong with one
Published: ${PUBLISHED_IDS.join(', ')}.
`);
}

async function check(name: string): Promise<void> {
  const text = await readFile(name, 'utf8').catch((error: NodeJS.ErrnoException) => error);
  if (text instanceof Error) return refuse([`${name} cannot be read (${text.code ?? text.message}).`]);
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch (error) {
    return refuse([`${name} is not JSON: ${error instanceof Error ? error.message : 'unknown'}.`]);
  }
  const read = parseSpeciesFile(json);
  if (!read.ok) return refuse(read.problems.map(({ path, message }) => (path === '' ? message : `${path}: ${message}`)));
  process.stdout.write(`${read.value.name} is sound. Put the file in the folder species of your data folder and start Gambrel again.\n`);
}

function refuse(lines: readonly string[]): void {
  process.exitCode = 2;
  process.stderr.write(`${lines.join('\n')}\n`);
}
