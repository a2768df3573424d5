import { defineConfig } from 'vitest/config';

const onDatabase = ['tests/database/**', 'tests/db/**', 'tests/workflows/**', 'tests/auth/**'];
const testFiles = '.test.{ts,tsx}';
const ownProject = [...onDatabase, 'tests/reference/**', 'tests/e2e/**', 'tests/load/**', 'tests/bench/**'];

export default defineConfig({
  resolve: { alias: { '@': import.meta.dirname } },
  test: {
    // No test is a race: a loaded machine is not a fault.
    testTimeout: 60_000,
    hookTimeout: 60_000,
    expect: { poll: { timeout: 15_000 } },
    setupFiles: ['tests/fixed-chance.ts'],
    projects: [
      {
        extends: true,
        test: { name: 'unit', include: [`tests/**/*${testFiles}`], exclude: ownProject },
      },
      {
        extends: true,
        test: { name: 'reference', include: [`tests/reference/**/*${testFiles}`] },
      },
      {
        extends: true,
        test: {
          name: 'database',
          include: onDatabase.map((folder) => `${folder}/*${testFiles}`),
          // Native modules do not survive worker threads.
          pool: 'forks',
          globalSetup: 'tests/database/template.ts',
        },
      },
      {
        extends: true,
        test: {
          name: 'journeys',
          include: [`tests/e2e/**/*${testFiles}`],
          pool: 'forks',
          fileParallelism: false,
          testTimeout: 120_000,
          globalSetup: 'tests/database/template.ts',
        },
      },
    ],
  },
});
