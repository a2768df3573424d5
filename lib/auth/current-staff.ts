import { headers } from 'next/headers';
import { redirect } from 'next/navigation';
import { cache } from 'react';
import { can, isRole, type Permission, type StaffActor } from '@/lib/access';
import { auth } from './auth';
import { isHttps } from './client-address';
import { pathHeader } from './request-path';
import { logSecurity } from './security-log';
import { REFUSED } from './turned-away';

/** Whose session the cookies name: null without one, when it ran out or was ended, and when its account is disabled. */
export async function staffOf(requestHeaders: Headers): Promise<StaffActor | null> {
  const found = await auth({ secure: isHttps(requestHeaders) }).api.getSession({ headers: requestHeaders });
  if (!found || found.user.disabledAt || !isRole(found.user.role)) return null;
  return { kind: 'staff', id: found.user.id, name: found.user.name, role: found.user.role };
}

/** Who is signed in, asked of the database once a request. */
export const currentStaff = cache(async (): Promise<StaffActor | null> => staffOf(await headers()));

/**
 * The signed-in person, who holds the permission. Otherwise the page or action ends here: at the sign-in page when nobody
 * is signed in, with "Your account cannot ..." and status 403 when the permission is missing.
 */
export async function requireStaff(permission: Permission): Promise<StaffActor> {
  const staff = await currentStaff();
  const path = (await headers()).get(pathHeader) ?? '/staff';
  if (staff === null) redirect(`/sign-in?next=${encodeURIComponent(path)}`);
  if (!can(staff, permission)) {
    logSecurity('page refused', { staffId: staff.id, permission, path: path.split('?')[0] ?? '' });
    redirect(`${REFUSED}?from=${encodeURIComponent(path.split('?')[0] ?? '')}`);
  }
  return staff;
}
