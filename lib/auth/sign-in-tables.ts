import type { Database } from '@/lib/db/client';

const tables = ['staffMember', 'staffSession', 'staffAccount', 'staffVerification'] as const;

/**
 * The four tables the sign-in library may touch, and no others. It passes `undefined` where it has nothing to say, which
 * our client refuses: dropped here, but never inside a filter, where a key left out would match every row.
 */
export function signInTables(client: Database): Readonly<Record<string, unknown>> {
  return Object.fromEntries(tables.map((table) => [table, tolerant(client[table])]));
}

function tolerant<T extends object>(table: T): T {
  return new Proxy(table, {
    get(target, name) {
      const member: unknown = Reflect.get(target, name);
      if (typeof member !== 'function') return member;
      return (argument: object | undefined) => member.call(target, argument && withoutUndefined(argument));
    },
  });
}

function withoutUndefined(argument: object): object {
  const given = Object.entries(argument).filter(([, part]) => part !== undefined);
  return Object.fromEntries(given.map(([name, part]) => [name, name === 'data' ? withoutUndefined(part as object) : part]));
}
