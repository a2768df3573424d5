import BetterSqlite3 from 'better-sqlite3';

/** Tells whether a table holds any row. For the start scripts, which run without a TypeScript loader. */
export function hasRows(file, table) {
  const connection = new BetterSqlite3(file, { readonly: true, fileMustExist: true });
  try {
    return connection.prepare(`SELECT 1 FROM "${table}" LIMIT 1`).get() !== undefined;
  } finally {
    connection.close();
  }
}
