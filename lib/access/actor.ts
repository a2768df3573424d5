import { refusalWords, rolesWith, type Permission } from './permissions';
import type { Role } from './roles';

/** Who does something: a person who works here, the hunter of one order by its link, or the program itself. */
export type Actor =
  | { readonly kind: 'staff'; readonly id: string; readonly name: string; readonly role: Role }
  | { readonly kind: 'hunter'; readonly orderId: string }
  | { readonly kind: 'system' };

export type StaffActor = Extract<Actor, { kind: 'staff' }>;

/**
 * Tells whether an actor holds a permission. The program itself holds all. A hunter holds none: what a link may do is
 * for the workflow to say, which knows the order the link opens.
 *
 * @example can({ kind: 'staff', id: 's1', name: 'Bo', role: 'cutter' }, 'prices.read') // false
 */
export function can(actor: Actor, permission: Permission): boolean {
  switch (actor.kind) {
    case 'staff':
      return rolesWith(permission).includes(actor.role);
    case 'hunter':
      return false;
    case 'system':
      return true;
  }
}

/** Somebody asked for what they may not do. Its message is a sentence to show. */
export class AccessRefused extends Error {
  override readonly name = 'AccessRefused';
  readonly permission: Permission;

  constructor(permission: Permission) {
    super(refusalWords(permission));
    this.permission = permission;
  }
}

/** Throws `AccessRefused` when the actor does not hold the permission. */
export function requirePermission(actor: Actor, permission: Permission): void {
  if (!can(actor, permission)) throw new AccessRefused(permission);
}
