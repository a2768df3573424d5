import { relative } from 'node:path';
import { databaseFile, dataFolder } from '../data-folder';
import { applyMigrations, stateOf } from './apply';
import { findDrift, writeMigration } from './author';

const usage = `npm run migration -- <command>
  new <name>  write a migration from what changed in prisma/schema/models.prisma
  check       tell whether the migrations lead to the schema; exit code 2 when they do not
  status      tell how the database stands to the migrations
  apply       bring the database up to date`;

async function run(command: string | undefined, name: string | undefined): Promise<number> {
  switch (command) {
    case 'new': {
      if (name === undefined) return say(usage, 1);
      const folder = await writeMigration(name, { now: new Date() });
      return say(folder === null ? 'The migrations lead to the schema already.' : relative(process.cwd(), folder), 0);
    }
    case 'check': {
      const drift = await findDrift();
      return drift === null
        ? say('The migrations lead to the schema.', 0)
        : say(`The schema has changes that no migration makes; write one with npm run migration -- new <name>.\n${drift}`, 2);
    }
    case 'status':
      return say(JSON.stringify(stateOf(databaseFile())), 0);
    case 'apply': {
      const outcome = await applyMigrations(dataFolder());
      if (!outcome.ok) return say(outcome.message, 1);
      for (const applied of outcome.applied) console.log(`Applied ${applied}.`);
      return outcome.backup === null ? 0 : say(`The database as it was before: ${outcome.backup}`, 0);
    }
    default:
      return say(usage, 1);
  }
}

function say(text: string, exitCode: number): number {
  (exitCode === 0 ? console.log : console.error)(text);
  return exitCode;
}

process.exitCode = await run(process.argv[2], process.argv[3]);
