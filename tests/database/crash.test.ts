import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { rmSync } from 'node:fs';
import { setTimeout as pause } from 'node:timers/promises';
import { expect, test } from 'vitest';
import { openDatabase } from '@/lib/db/client';
import { assertSound } from '@/lib/db/copy-database';
import { databaseFile } from '@/lib/db/data-folder';
import { preparedDataFolder } from './prepared-database';

test('every row acknowledged before kill -9 is there afterwards, once', { timeout: 60_000 }, async () => {
  const folder = preparedDataFolder();
  const file = databaseFile(folder);
  for (let kill = 0; kill < 3; kill += 1) {
    const writer = spawn(process.execPath, ['--import', 'tsx', 'tests/database/killed-writer.ts', file], {
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    let output = '';
    writer.stdout.setEncoding('utf8').on('data', (text: string) => {
      output += text;
    });
    await once(writer.stdout, 'data');
    await pause(150 + 50 * kill);
    writer.kill('SIGKILL');
    await once(writer, 'close');

    const acknowledged = output.split('\n').slice(0, -1);
    const client = openDatabase(file);
    const names = (await client.counter.findMany({ select: { name: true } })).map((row) => row.name);
    expect(acknowledged.length).toBeGreaterThan(0);
    expect(acknowledged.filter((name) => !names.includes(name))).toEqual([]);
    await client.counter.deleteMany();
    await client.$disconnect();
    assertSound(file);
  }
  rmSync(folder, { recursive: true, force: true });
});
