import { type ChildProcess, spawn } from 'node:child_process';
import { createServer } from 'node:net';
import { rmSync } from 'node:fs';
import { setTimeout as pause } from 'node:timers/promises';
import { closeDatabase } from '@/lib/db/client';
import { preparedDataFolder } from '../database/prepared-database';

const SECRET = 'journeys-only-secret-of-more-than-32-characters';
export const SETUP_CODE = 'AAAA-BBBB-CCCC';

/** The built program, served on a port of its own over a database of its own. */
export type ShopServer = {
  readonly url: string;
  readonly folder: string;
  /** Everything the server said so far: its console, where nothing private may stand. */
  readonly output: () => string;
  readonly stop: () => Promise<void>;
};

/**
 * Serves the built program over a fresh database. `fill` runs before, in this process, with the same database: what it
 * writes through the workflows is there when the first page opens.
 */
export async function serveShop(fill: () => Promise<void> = async () => {}): Promise<ShopServer> {
  const folder = preparedDataFolder();
  Object.assign(process.env, { GAMBREL_DATA: folder, BETTER_AUTH_SECRET: SECRET });
  await fill();
  await closeDatabase();
  const port = await freePort();
  const server = spawn(process.execPath, ['node_modules/next/dist/bin/next', 'start', '--port', String(port)], {
    env: { ...process.env, NODE_ENV: 'production', NEXT_TELEMETRY_DISABLED: '1', GAMBREL_SETUP_CODE: SETUP_CODE },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let said = '';
  server.stdout.on('data', (text: Buffer) => (said += text.toString()));
  server.stderr.on('data', (text: Buffer) => (said += text.toString()));
  const url = `http://localhost:${port}`;
  await answering(url, server, () => said);
  return {
    url,
    folder,
    output: () => said,
    stop: async () => {
      const ended = new Promise((resolve) => server.once('close', resolve));
      server.kill('SIGTERM');
      await ended;
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

async function answering(url: string, server: ChildProcess, said: () => string): Promise<void> {
  const giveUp = Date.now() + 30_000;
  while (Date.now() < giveUp) {
    if (server.exitCode !== null) throw new Error(`The server ended: ${said()}`);
    const answer = await fetch(url).catch(() => null);
    if (answer) return;
    await pause(100);
  }
  throw new Error(`The server did not answer in 30 s: ${said()}`);
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.once('error', reject);
    probe.listen(0, () => {
      const address = probe.address();
      probe.close(() => (address && typeof address === 'object' ? resolve(address.port) : reject(new Error('No port'))));
    });
  });
}
