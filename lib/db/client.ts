import { databaseFile } from './data-folder';
import { type Prisma, PrismaClient } from './generated/sqlite/client';
import { runAsTransactionBody, safeSqliteFactory } from './safe-adapter';

/** The whole database, outside a transaction. */
export type Database = PrismaClient;

/** What a transaction's body is given. A query that may run in either place takes this. */
export type DatabaseTransaction = Prisma.TransactionClient;

// Development reloads modules, and every client in use costs 80 MB and two connections.
const keeper = globalThis as typeof globalThis & { gambrelDatabase?: Database | undefined };

/** Opens a client on one SQLite file. The caller disconnects it; the running program uses `database()`. */
export function openDatabase(file: string): Database {
  return new PrismaClient({
    adapter: safeSqliteFactory(file),
    transactionOptions: { maxWait: 10_000, timeout: 10_000 },
  });
}

/** The one client of this process, opened at its first use from the data folder. */
export function database(): Database {
  keeper.gambrelDatabase ??= openDatabase(databaseFile());
  return keeper.gambrelDatabase;
}

/** Closes the one client; the next `database()` opens the data folder afresh. For tests and short scripts. */
export async function closeDatabase(): Promise<void> {
  const open = keeper.gambrelDatabase;
  keeper.gambrelDatabase = undefined;
  await open?.$disconnect();
}

/**
 * Runs `body` in one transaction, all of it kept or none. One transaction writes at a time, so nothing slow belongs in it
 * (network, hashing, drawing), and an error caught inside must be thrown on. `body` writes through its argument only.
 */
export async function withTransaction<T>(
  body: (transaction: DatabaseTransaction) => Promise<T>,
  client: Database = database(),
): Promise<T> {
  // The client's own timers do not keep a script alive while it waits for its turn.
  const keepAlive = setInterval(() => {}, 60_000);
  try {
    // A query starts when it is awaited, so it is awaited in here.
    return await client.$transaction((transaction) => runAsTransactionBody(async () => await body(transaction)));
  } finally {
    clearInterval(keepAlive);
  }
}
