import { AsyncLocalStorage } from 'node:async_hooks';
import { setTimeout as pause } from 'node:timers/promises';
import { PrismaBetterSqlite3 } from '@prisma/adapter-better-sqlite3';
import {
  DriverAdapterError,
  type IsolationLevel,
  isDriverAdapterError,
  type SqlDriverAdapter,
  type SqlDriverAdapterFactory,
  type SqlQuery,
  type Transaction,
} from '@prisma/driver-adapter-utils';
import type BetterSqlite3 from 'better-sqlite3';

const busyLimitMs = 10_000;
const nativeBusyTimeoutMs = 50;
const settings = 'PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON;';
const readsOnly = /^\s*(SELECT|EXPLAIN)\b/i;
const insideTransaction = new AsyncLocalStorage<true>();

/** Runs `work` marked as the inside of a transaction: a write on the root client then throws at once, not after a wait for itself. */
export function runAsTransactionBody<T>(work: () => T): T {
  return insideTransaction.run(true, work);
}

/**
 * Makes connections to one SQLite file for PrismaClient, with one writing and one reading connection each.
 *
 * The stock adapter has a single connection, so a query outside a transaction runs inside whichever one is open: it reads
 * what was never committed, and what it writes goes when that one rolls back. Here writes queue, reads see committed rows.
 */
export function safeSqliteFactory(file: string): SqlDriverAdapterFactory {
  const stock = new PrismaBetterSqlite3({ url: file, timeout: nativeBusyTimeoutMs });
  return {
    provider: stock.provider,
    adapterName: stock.adapterName,
    async connect() {
      const writer = await stock.connect();
      await retryWhileBusy(() => writer.executeScript(settings));
      await assertFullSync(writer);
      const reader = await stock.connect();
      await retryWhileBusy(() => reader.executeScript(`${settings} PRAGMA query_only = ON;`));
      return new SafeSqliteAdapter(writer, reader);
    },
  };
}

class SafeSqliteAdapter implements SqlDriverAdapter {
  readonly provider = 'sqlite';
  readonly adapterName: string;
  #lastInQueue: Promise<void> = Promise.resolve();

  constructor(
    private readonly writer: SqlDriverAdapter,
    private readonly reader: SqlDriverAdapter,
  ) {
    this.adapterName = writer.adapterName;
  }

  queryRaw(query: SqlQuery) {
    return readsOnly.test(query.sql)
      ? retryWhileBusy(() => this.reader.queryRaw(query))
      : this.#write(() => this.writer.queryRaw(query));
  }

  executeRaw(query: SqlQuery) {
    return this.#write(() => this.writer.executeRaw(query));
  }

  executeScript(script: string) {
    return this.#write(() => this.writer.executeScript(script));
  }

  async startTransaction(isolationLevel?: IsolationLevel): Promise<Transaction> {
    if (isolationLevel && isolationLevel !== 'SERIALIZABLE') {
      throw new DriverAdapterError({ kind: 'InvalidIsolationLevel', level: isolationLevel });
    }
    const release = await this.#queueForWriting();
    try {
      await retryWhileBusy(() => this.writer.executeScript('BEGIN IMMEDIATE'));
    } catch (error) {
      release();
      throw error;
    }
    return transactionOn(this.writer, release);
  }

  async dispose() {
    await this.reader.dispose();
    await this.writer.dispose();
  }

  async #write<T>(work: () => Promise<T>): Promise<T> {
    const release = await this.#queueForWriting();
    try {
      return await retryWhileBusy(work);
    } finally {
      release();
    }
  }

  async #queueForWriting(): Promise<() => void> {
    if (insideTransaction.getStore()) {
      throw new Error("A write on the root client inside a transaction would wait for itself: use the transaction's client.");
    }
    const before = this.#lastInQueue;
    let release = (): void => {};
    this.#lastInQueue = new Promise((resolve) => {
      release = resolve;
    });
    await before;
    return release;
  }
}

function transactionOn(writer: SqlDriverAdapter, release: () => void): Transaction {
  const isOpen = (): boolean => nativeConnection(writer).inTransaction;
  // SQLite may roll back by itself (disk full, failed write); what followed would then be saved one by one.
  const whileOpen = async <T>(work: () => Promise<T>): Promise<T> => {
    if (!isOpen()) throw new DriverAdapterError({ kind: 'TransactionAlreadyClosed', cause: 'SQLite has rolled it back' });
    return work();
  };
  const run = (sql: string): Promise<void> => whileOpen(() => writer.executeScript(sql));
  const rollBackIfOpen = async (): Promise<void> => {
    if (isOpen()) await writer.executeScript('ROLLBACK');
  };
  return {
    provider: writer.provider,
    adapterName: writer.adapterName,
    // The engine leaves COMMIT and ROLLBACK to the two functions below.
    options: { usePhantomQuery: true },
    queryRaw: (query) => whileOpen(() => writer.queryRaw(query)),
    executeRaw: (query) => whileOpen(() => writer.executeRaw(query)),
    createSavepoint: (name) => run(`SAVEPOINT ${name}`),
    rollbackToSavepoint: (name) => run(`ROLLBACK TO ${name}`),
    releaseSavepoint: (name) => run(`RELEASE SAVEPOINT ${name}`),
    async commit() {
      try {
        await retryWhileBusy(() => run('COMMIT'));
      } finally {
        await rollBackIfOpen().finally(release);
      }
    },
    async rollback() {
      await rollBackIfOpen().finally(release);
    },
  };
}

/** Waits without blocking the event loop, which SQLite's own busy timeout would. */
async function retryWhileBusy<T>(work: () => Promise<T>): Promise<T> {
  const deadline = Date.now() + busyLimitMs;
  for (let waitMs = 5; ; waitMs = Math.min(waitMs * 2, 100)) {
    try {
      return await work();
    } catch (error) {
      if (!isBusy(error) || Date.now() > deadline) throw error;
      await pause(waitMs * (0.5 + Math.random()));
    }
  }
}

function isBusy(error: unknown): boolean {
  return isDriverAdapterError(error) && error.cause.kind === 'SocketTimeout';
}

async function assertFullSync(writer: SqlDriverAdapter): Promise<void> {
  const level: unknown = nativeConnection(writer).pragma('synchronous', { simple: true });
  if (Number(level) !== 2) throw new Error(`PRAGMA synchronous is ${String(level)}, not 2: a power cut could lose saved orders.`);
}

// The one untyped field of the stock adapter that is read here, hence its exact pin in package.json.
function nativeConnection(adapter: SqlDriverAdapter): BetterSqlite3.Database {
  const { client } = adapter as SqlDriverAdapter & { readonly client: BetterSqlite3.Database };
  return client;
}
