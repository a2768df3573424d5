import { Prisma } from './generated/sqlite/client';

/** The outcome of a write that may meet a row which is already there. */
export type WriteOutcome<Value, Conflict> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly conflict: Conflict };

/**
 * Runs `write` and turns a broken unique constraint into a value. `conflicts` gives a value for the constraint's fields,
 * joined by commas in the order of the schema; a constraint not named there, and any other error, is thrown on.
 * Wraps a whole transaction, never a part of one.
 *
 * @example await orConflict(() => createOrder(order), { formKey: "sent-twice" }) // { ok: false, conflict: "sent-twice" }
 */
export async function orConflict<Value, Conflict>(
  write: () => Promise<Value>,
  conflicts: Readonly<Record<string, Conflict>>,
): Promise<WriteOutcome<Value, Conflict>> {
  try {
    return { ok: true, value: await write() };
  } catch (error) {
    const fields = brokenUniqueFields(error)?.join(',');
    if (fields === undefined || !Object.hasOwn(conflicts, fields)) throw error;
    return { ok: false, conflict: conflicts[fields] as Conflict };
  }
}

/** The fields of the unique constraint that `error` reports as broken, or null for every other error. */
export function brokenUniqueFields(error: unknown): readonly string[] | null {
  if (!(error instanceof Prisma.PrismaClientKnownRequestError) || error.code !== 'P2002') return null;
  const meta = error.meta as UniqueViolationMeta | undefined;
  return meta?.driverAdapterError?.cause?.constraint?.fields ?? null;
}

type UniqueViolationMeta = {
  readonly driverAdapterError?: { readonly cause?: { readonly constraint?: { readonly fields?: readonly string[] } } };
};
