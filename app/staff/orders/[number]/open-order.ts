import { nothingHere } from '@/app/_components/turn-away';
import type { Permission, StaffActor } from '@/lib/access';
import { requireStaff } from '@/lib/auth/current-staff';
import { parseOrderNumber } from '@/lib/orders';
import type { Stage } from '@/lib/rules';
import { type StaffOrder, readOrder } from '@/lib/workflows/read-order';

/**
 * The order an address names, for a person who holds the permission, with what the rules say at its own stage or at the
 * one it is opened for. Dashes and blanks do not matter; none is a 404.
 */
export async function openOrder(text: string, permission: Permission, stage?: Stage): Promise<{ readonly staff: StaffActor; readonly order: StaffOrder }> {
  const staff = await requireStaff(permission);
  const number = parseOrderNumber(decodeURIComponent(text));
  const order = number.ok ? await readOrder(staff, number.value, stage) : null;
  if (!order) nothingHere('staff');
  return { staff, order };
}
