import { type ChildProcess, spawn } from 'node:child_process';
import { createServer } from 'node:net';
import { rmSync } from 'node:fs';
import { setTimeout as pause } from 'node:timers/promises';
import { closeDatabase } from '@/lib/db/client';
import { afterAll, beforeAll } from 'vitest';
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

/**
 * A shop served to all tests of a file, filled once before them and stopped after them. What it is can be read from the
 * first test on.
 */
export function useShop(fill?: () => Promise<void>, timeout?: number): Pick<ShopServer, 'url' | 'folder' | 'output'> {
  let server: ShopServer | undefined;
  const running = (): ShopServer => {
    if (!server) throw new Error('The shop is served from the first test on');
    return server;
  };
  beforeAll(async () => {
    server = await serveShop(fill);
  }, timeout);
  afterAll(() => running().stop());
  return {
    get url() {
      return running().url;
    },
    get folder() {
      return running().folder;
    },
    output: () => running().output(),
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
