import { join } from 'node:path';
import { afterEach, expect, test, vi } from 'vitest';
import { databaseFile, dataFolder } from '@/lib/db/data-folder';

afterEach(() => {
  vi.unstubAllEnvs();
});

test('the data folder is GAMBREL_DATA, or data in the checkout', () => {
  vi.stubEnv('GAMBREL_DATA', '/srv/shop');
  expect(databaseFile()).toBe('/srv/shop/gambrel.db');
  vi.stubEnv('GAMBREL_DATA', '');
  expect(dataFolder()).toBe(join(process.cwd(), 'data'));
});

test('a data folder that a build would empty is refused', () => {
  vi.stubEnv('GAMBREL_DATA', '.next/data');
  expect(() => dataFolder()).toThrow('a build empties .next');
});
