import { readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { basename, join } from 'node:path';
import { PrismaBetterSqlite3 } from '@prisma/adapter-better-sqlite3';
import { bindMigrationAwareSqlAdapterFactory, type SqlDriverAdapter } from '@prisma/driver-adapter-utils';
import type { MigrationList, SchemaContainer, SchemaEngine } from '@prisma/schema-engine-wasm/schema_engine_bg';
import { type CommittedMigration, readCommittedMigrations } from './history';

/** Nothing in the database is managed from elsewhere. */
export const noFilters = { externalTables: [], externalEnums: [] };

/** Where the schema and the committed migrations of one provider lie. */
export type SchemaFolders = { readonly schemaFiles: readonly string[]; readonly migrations: string };

/** The folders of this checkout, for SQLite. */
export const sqliteFolders: SchemaFolders = {
  schemaFiles: ['header.sqlite.prisma', 'models.prisma'].map((name) => join(process.cwd(), 'prisma', 'schema', name)),
  migrations: join(process.cwd(), 'prisma', 'migrations', 'sqlite'),
};

/** Runs `work` with the migration engine on the SQLite file, and lets go of the file afterwards. */
export async function withEngine<T>(
  file: string,
  folders: SchemaFolders,
  work: (engine: SchemaEngine) => Promise<T>,
): Promise<T> {
  const { SchemaEngine } = await loadEngine();
  const open: SqlDriverAdapter[] = [];
  const stock = new PrismaBetterSqlite3({ url: file });
  const remember = async (connection: Promise<SqlDriverAdapter>): Promise<SqlDriverAdapter> => {
    open.push(await connection);
    return connection;
  };
  const factory = bindMigrationAwareSqlAdapterFactory({
    provider: stock.provider,
    adapterName: stock.adapterName,
    connect: () => remember(stock.connect()),
    connectToShadowDb: () => remember(stock.connectToShadowDb().then(acceptingScripts)),
  });
  const datamodels = schemaContainers(folders).map(({ path, content }): [string, string] => [path, content]);
  const engine = await SchemaEngine.new({ datamodels }, () => {}, factory);
  try {
    return await work(engine);
  } finally {
    engine.free();
    // The engine keeps the file locked until its connections are gone.
    for (const connection of open) await connection.dispose();
  }
}

/** The schema as the engine takes it. */
export function schemaContainers(folders: SchemaFolders): SchemaContainer[] {
  return folders.schemaFiles.map((path) => ({ path: basename(path), content: readFileSync(path, 'utf8') }));
}

/** The committed migrations as the engine takes them. */
export function migrationList(folders: SchemaFolders): MigrationList {
  return {
    baseDir: folders.migrations,
    lockfile: {
      path: 'migration_lock.toml',
      content: readFileSync(join(folders.migrations, 'migration_lock.toml'), 'utf8'),
    },
    shadowDbInitScript: '',
    migrationDirectories: readCommittedMigrations(folders.migrations).map(({ name, sql }: CommittedMigration) => ({
      path: name,
      migrationFile: { path: 'migration.sql', content: { tag: 'ok', value: sql } },
    })),
  };
}

type EngineModule = typeof import('@prisma/schema-engine-wasm/schema_engine_bg');

let loading: Promise<EngineModule> | undefined;

function loadEngine(): Promise<EngineModule> {
  loading ??= instantiateEngine();
  return loading;
}

// The package's own entry imports the .wasm file as a module, which Node 20 does not do.
async function instantiateEngine(): Promise<EngineModule> {
  const bindings = await import('@prisma/schema-engine-wasm/schema_engine_bg');
  const entry = createRequire(import.meta.url).resolve('@prisma/schema-engine-wasm/schema_engine_bg');
  const bytes = await readFile(entry.replace(/\.js$/, '.wasm'));
  Object.assign(globalThis, {
    PRISMA_WASM_PANIC_REGISTRY: {
      set_message(message: string) {
        throw new Error(`The migration engine stopped: ${message}`);
      },
    },
  });
  const { instance } = await WebAssembly.instantiate(bytes, {
    './schema_engine_bg.js': bindings as unknown as WebAssembly.ModuleImports,
  });
  bindings.__wbg_set_wasm(instance.exports);
  (instance.exports['__wbindgen_start'] as () => void)();
  return bindings;
}

// A migration is several statements, and the engine sends it to a shadow database as if it were one.
function acceptingScripts(connection: SqlDriverAdapter): SqlDriverAdapter {
  const executeRaw = connection.executeRaw.bind(connection);
  return Object.assign(connection, {
    async executeRaw(query: Parameters<typeof executeRaw>[0]) {
      if (query.args.length > 0) return executeRaw(query);
      await connection.executeScript(query.sql);
      return 0;
    },
  });
}
