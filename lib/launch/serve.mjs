import { spawn } from 'node:child_process';
import { connect } from 'node:net';
import { setTimeout as pause } from 'node:timers/promises';
import { root } from './run.mjs';

/**
 * Serves until it is stopped: `next start` or `next dev` on the port, with signals handed on to it. Prints `words` once it
 * answers. Ends with the server's own exit code.
 */
export async function serve(mode, { port, environment, words }) {
  const server = spawn(process.execPath, ['node_modules/next/dist/bin/next', mode, '--port', String(port)], {
    cwd: root,
    stdio: 'inherit',
    env: { ...process.env, ...environment },
  });
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, () => server.kill(signal));
  // `npm start` runs this under a shell which a signal ends without passing it on.
  const parent = process.ppid;
  const orphaned = () => process.ppid !== parent && server.kill('SIGTERM');
  setInterval(orphaned, 500).unref();
  const ended = new Promise((resolve) => {
    server.on('error', () => resolve(1));
    server.on('close', (code) => resolve(code ?? 1));
  });
  const stopped = ended.then(() => 'stopped');
  while ((await Promise.race([answers(port), stopped])) === 'silent') await pause(100);
  if (server.exitCode === null) console.log(`\n${words.join('\n')}\n`);
  process.exitCode = await ended;
}

function answers(port) {
  return new Promise((resolve) => {
    const socket = connect({ port, host: 'localhost' });
    socket.on('error', () => resolve('silent'));
    socket.on('connect', () => {
      socket.destroy();
      resolve('answers');
    });
  });
}
