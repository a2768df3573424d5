import { randomUUID } from 'node:crypto';
import { isRole, type Role } from '@/lib/access';
import type { Database, DatabaseTransaction } from './client';

/** A person who works here, as the list of people shows them. */
export type StaffMember = {
  readonly id: string;
  readonly name: string;
  readonly userName: string;
  readonly role: Role;
  readonly disabledAt: Date | null;
};

const shown = { id: true, name: true, username: true, role: true, disabledAt: true } as const;

/** Every person, the enabled first, each part by name. */
export async function listStaff(client: Database | DatabaseTransaction): Promise<readonly StaffMember[]> {
  const rows = await client.staffMember.findMany({ select: shown, orderBy: { name: 'asc' } });
  const all = rows.map(asStaffMember);
  return [...all.filter((member) => member.disabledAt === null), ...all.filter((member) => member.disabledAt !== null)];
}

export async function hasStaff(client: Database | DatabaseTransaction): Promise<boolean> {
  return (await client.staffMember.findFirst({ select: { id: true } })) !== null;
}

export async function findStaff(
  client: Database | DatabaseTransaction,
  by: { readonly id: string } | { readonly userName: string },
): Promise<StaffMember | null> {
  const where = 'id' in by ? { id: by.id } : { username: by.userName };
  const row = await client.staffMember.findUnique({ where, select: shown });
  return row && asStaffMember(row);
}

/**
 * Saves a person with the account to sign in by. Breaks the unique field `username` when the name is taken. The sign-in
 * library wants an e-mail address: it gets one under `.invalid`, which no mail can reach.
 */
export async function createStaff(
  transaction: DatabaseTransaction,
  member: { readonly name: string; readonly userName: string; readonly role: Role; readonly passwordHash: string },
): Promise<StaffMember> {
  const id = randomUUID();
  const row = await transaction.staffMember.create({
    select: shown,
    data: {
      id,
      name: member.name,
      email: `${member.userName}@staff.invalid`,
      username: member.userName,
      displayUsername: member.userName,
      role: member.role,
      accounts: { create: { id: randomUUID(), accountId: id, providerId: 'credential', password: member.passwordHash } },
    },
  });
  return asStaffMember(row);
}

/** Shuts a person out, sessions and all, or lets them in again. */
export async function setStaffDisabled(transaction: DatabaseTransaction, id: string, disabledAt: Date | null): Promise<void> {
  await transaction.staffMember.update({ where: { id }, data: { disabledAt } });
  if (disabledAt !== null) await endSessions(transaction, id);
}

/** Replaces a person's password and ends every session that the old one opened. */
export async function replacePassword(transaction: DatabaseTransaction, id: string, passwordHash: string): Promise<void> {
  await transaction.staffAccount.updateMany({ where: { userId: id, providerId: 'credential' }, data: { password: passwordHash } });
  await endSessions(transaction, id);
}

/** How many owners can sign in. */
export async function countOwners(transaction: DatabaseTransaction): Promise<number> {
  return transaction.staffMember.count({ where: { role: 'owner', disabledAt: null } });
}

/** Forgets sessions that ran out. */
export async function removeExpiredSessions(transaction: DatabaseTransaction, now: Date): Promise<void> {
  await transaction.staffSession.deleteMany({ where: { expiresAt: { lt: now } } });
}

async function endSessions(transaction: DatabaseTransaction, userId: string): Promise<void> {
  await transaction.staffSession.deleteMany({ where: { userId } });
}

type StaffRow = { id: string; name: string; username: string | null; role: string; disabledAt: Date | null };

function asStaffMember({ id, name, username, role, disabledAt }: StaffRow): StaffMember {
  if (!isRole(role)) throw new Error(`Staff member ${id} has the unknown role ${role}`);
  return { id, name, userName: username ?? '', role, disabledAt };
}
