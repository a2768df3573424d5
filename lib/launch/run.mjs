import { spawn } from 'node:child_process';
import { accessSync, constants } from 'node:fs';
import { delimiter, dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The checkout. Every command runs here. */
export const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');

/** Runs a command with the terminal as its own; its exit code, 1 when a signal ended it or it is not there. */
export function run(command, args, environment = {}) {
  return new Promise((resolve) => {
    const child = spawn(command, args, { cwd: root, stdio: 'inherit', env: { ...process.env, ...environment } });
    child.on('error', () => resolve(1));
    child.on('close', (code) => resolve(code ?? 1));
  });
}

/** `run` for a script in Node. */
export function runNode(args, environment) {
  return run(process.execPath, args, environment);
}

/** `run` for a TypeScript file of ours. */
export function runTypeScript(args, environment) {
  return runNode(['--import', 'tsx', ...args], environment);
}

/** The full path of a program, or null when it is not installed. */
export function findProgram(name) {
  for (const folder of (process.env.PATH ?? '').split(delimiter)) {
    try {
      const path = join(folder, name);
      accessSync(path, constants.X_OK);
      return path;
    } catch {
      continue;
    }
  }
  return null;
}
