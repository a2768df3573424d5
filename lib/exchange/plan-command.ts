import { readFile } from 'node:fs/promises';
import { buffer } from 'node:stream/consumers';
import { PUBLISHED_SPECIES } from '@/lib/carcass';
import { NOT_JSON, type PlanProblem, answerPlanRequest } from '@/lib/forms';
import { parseJson } from './read-json';

// `npm run -s plan -- order.json`: the plan of one animal, by the published species, without a database.

const USAGE = `Usage: npm run -s plan -- order.json
Reads a wish as JSON from a file, or from standard input where the file is -, and writes the plan as JSON.
The least there can be: {"animal":{"speciesId":"roe-deer"}}. GET /api/openapi.json of a running shop describes the rest.
`;

/** Runs the command. What is wrong goes to standard error, one line a mistake, with exit code 2. */
async function run(names: readonly string[]): Promise<void> {
  if (names.length === 1 && (names[0] === '--help' || names[0] === '-h')) {
    process.stdout.write(USAGE);
    return;
  }
  const [name] = names;
  if (name === undefined || names.length > 1) {
    process.exitCode = 2;
    process.stderr.write(USAGE);
    return;
  }
  const bytes = await (name === '-' ? buffer(process.stdin) : readFile(name)).catch((error: NodeJS.ErrnoException) => error);
  if (bytes instanceof Error) return refuse([{ path: name, message: `This file cannot be read (${bytes.code ?? bytes.message}). Name one that is there, or - for standard input.` }]);
  const read = parseJson(bytes);
  if (!read.ok) return refuse([{ path: '', message: NOT_JSON }]);
  const answer = answerPlanRequest(read.value, { species: PUBLISHED_SPECIES, country: 'us', unit: 'lb' });
  if (!answer.ok) return refuse(answer.errors);
  process.stdout.write(`${JSON.stringify(answer.value, null, 2)}\n`);
}

function refuse(errors: readonly PlanProblem[]): void {
  process.exitCode = 2;
  for (const { path, message } of errors) process.stderr.write(path === '' ? `${message}\n` : `${path}: ${message}\n`);
}

await run(process.argv.slice(2));
