import type { Role } from './roles';

const everyone: readonly Role[] = ['owner', 'counter', 'cutter'];
const front: readonly Role[] = ['owner', 'counter'];
const owner: readonly Role[] = ['owner'];

/** The one table of who may do what. `object` completes "Your account cannot ...". */
const TABLE = {
  'order.find': { roles: everyone, object: 'find orders' },
  'order.read': { roles: everyone, object: 'open orders' },
  'order.write': { roles: front, object: 'change orders' },
  'order.receive': { roles: front, object: 'take animals in' },
  'order.answer': { roles: front, object: 'answer for a hunter' },
  'sheet.print': { roles: everyone, object: 'print cutting sheets' },
  'bench.start': { roles: everyone, object: 'put animals on the bench' },
  'pack.weigh': { roles: everyone, object: 'record weights' },
  'invoice.issue': { roles: front, object: 'issue invoices' },
  'payment.take': { roles: front, object: 'take payments' },
  'order.release': { roles: front, object: 'hand orders over' },
  'prices.read': { roles: front, object: 'open prices' },
  'prices.write': { roles: owner, object: 'change prices' },
  'yields.read': { roles: front, object: 'open the yields' },
  'yields.judge': { roles: owner, object: 'say what the forecast learns from' },
  'shop.settings': { roles: owner, object: 'open the shop settings' },
  'staff.manage': { roles: owner, object: 'open the list of people' },
  'audit.read': { roles: owner, object: 'open the record of changes' },
} as const satisfies Readonly<Record<string, { readonly roles: readonly Role[]; readonly object: string }>>;

export type Permission = keyof typeof TABLE;

/** Every permission, in the order of the table. */
export const PERMISSIONS = Object.keys(TABLE) as readonly Permission[];

/** The roles that hold a permission. */
export function rolesWith(permission: Permission): readonly Role[] {
  return TABLE[permission].roles;
}

/**
 * Says what an account without the permission cannot do.
 *
 * @example refusalWords('prices.read') // 'Your account cannot open prices. Ask the owner.'
 */
export function refusalWords(permission: Permission): string {
  return `Your account cannot ${TABLE[permission].object}. Ask the owner.`;
}
