import { defineConfig } from 'prisma/config';

// The command-line tool would fetch an engine binary. Nothing here uses it: migrations run through
// lib/db/migrate. Naming any existing program keeps `prisma generate` off the network.
process.env.PRISMA_SCHEMA_ENGINE_BINARY ??= process.execPath;

export default defineConfig({
  schema: 'prisma/schema',
  migrations: { path: 'prisma/migrations/sqlite' },
});
