import type { Actor } from '@/lib/access';
import type { DatabaseTransaction } from './client';
import { now } from './clock';
import type { Prisma } from './generated/sqlite/client';

/** What changed: the order it concerns, and what stood before and after. Never a password, never a link's secret. */
export type AuditDetails = {
  readonly orderId?: string;
  readonly before?: Prisma.InputJsonValue;
  readonly after?: Prisma.InputJsonValue;
};

/**
 * Writes one line of the record of changes: who did what, named in the words of the trade with hyphens ('price-changed').
 * Goes in the same transaction as the change, so that neither is kept without the other.
 */
export async function recordAudit(
  transaction: DatabaseTransaction,
  actor: Actor,
  action: string,
  { orderId, before, after }: AuditDetails = {},
): Promise<void> {
  await transaction.auditEntry.create({
    data: {
      at: now(),
      ...signatureOf(actor),
      action,
      ...(orderId !== undefined && { orderId }),
      ...(before !== undefined && { before }),
      ...(after !== undefined && { after }),
    },
  });
}

function signatureOf(actor: Actor): { actorKind: string; actorId: string; actorName: string } {
  switch (actor.kind) {
    case 'staff':
      return { actorKind: 'staff', actorId: actor.id, actorName: actor.name };
    case 'hunter':
      return { actorKind: 'hunter', actorId: actor.orderId, actorName: 'The hunter' };
    case 'system':
      return { actorKind: 'system', actorId: 'gambrel', actorName: 'Gambrel' };
  }
}
