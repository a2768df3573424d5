/** Where a reader is sent for whom there is nothing to see, or nothing they may see. The proxy gives these pages their status. */
export const NOTHING_HERE = '/nothing-here';
export const STAFF_NOTHING_HERE = '/staff/nothing-here';
export const REFUSED = '/staff/refused';

const STATUS: ReadonlyMap<string, number> = new Map([
  [NOTHING_HERE, 404],
  [STAFF_NOTHING_HERE, 404],
  [REFUSED, 403],
]);

/** The status a page answers with by its address alone; null for every other page. */
export function statusOf(pathname: string): number | null {
  return STATUS.get(pathname) ?? null;
}
