import { isAPIError } from 'better-auth/api';
import type { StaffActor } from '@/lib/access';
import { isUserName, longestPassword, normalizeUserName } from '@/lib/forms';
import { recordAudit } from '@/lib/db/audit';
import { database, withTransaction } from '@/lib/db/client';
import { findStaff, removeExpiredSessions } from '@/lib/db/staff';
import { auth } from './auth';
import { clientAddress, isHttps } from './client-address';
import { knownBrowserMark, withKnownBrowserMark } from './known-browser';
import { verifyPassword } from './password-hash';
import { authSecret } from './secret';
import { logSecurity } from './security-log';
import {
  accountPolicy,
  addressPolicy,
  forgiveTry,
  knownBrowserPolicy,
  takeTry,
  throttleKey,
  type ThrottledKey,
} from './throttle';

export type SignInTry = {
  readonly userName: string;
  readonly password: string;
  /** The request's headers, cookies included. */
  readonly headers: Headers;
  /** The known-browser cookie as sent, '' when there is none. */
  readonly knownBrowser: string;
  readonly now: Date;
};

export type SignInOutcome =
  | { readonly ok: true; readonly staff: StaffActor; readonly knownBrowser: string; readonly setCookie: readonly string[] }
  | { readonly ok: false; readonly reason: 'wrong' | 'closed' }
  | { readonly ok: false; readonly reason: 'wait'; readonly until: Date };

/**
 * Signs a person in: a new session, and the one this browser held before ends. An unknown name, a wrong password and a
 * disabled account all take as long and look the same.
 */
export async function signIn({ userName: typedName, password, headers, knownBrowser, now }: SignInTry): Promise<SignInOutcome> {
  const userName = normalizeUserName(typedName);
  const keys = throttledKeys(userName, { headers, knownBrowser });
  const taken = await takeTry(keys, now);
  if (taken.outcome === 'wait' || (taken.outcome === 'closed' && keys[0]?.policy !== knownBrowserPolicy)) {
    logSecurity('sign-in has to wait', { address: clientAddress(headers) });
    return taken.outcome === 'wait' ? { ok: false, reason: 'wait', until: taken.until } : { ok: false, reason: 'closed' };
  }
  // A browser that used up its own tries is a stranger again.
  if (taken.outcome === 'closed') return signIn({ userName, password, headers, knownBrowser: '', now });

  // A password longer than any of ours would be refused before it is hashed, and so tell by its speed that the name exists.
  const possible = isUserName(userName) && password.length <= longestPassword * 2;
  const member = possible ? await findStaff(database(), { userName }) : null;
  if (member === null || member.disabledAt !== null) {
    await verifyPassword(null, password);
    logSecurity('sign-in refused', { staffId: member?.id ?? null, address: clientAddress(headers) });
    return { ok: false, reason: 'wrong' };
  }

  const library = auth({ secure: isHttps(headers) });
  const before = await library.api.getSession({ headers });
  const setCookie = await openSession(library, { userName, password, headers });
  if (setCookie === null) {
    logSecurity('sign-in refused', { staffId: member.id, address: clientAddress(headers) });
    return { ok: false, reason: 'wrong' };
  }

  const staff = { kind: 'staff', id: member.id, name: member.name, role: member.role } as const;
  await withTransaction(async (transaction) => {
    await forgiveTry(transaction, [...keys, { key: throttleKey('account', userName), policy: accountPolicy }], now);
    if (before) await transaction.staffSession.deleteMany({ where: { token: before.session.token } });
    await removeExpiredSessions(transaction, new Date());
    await recordAudit(transaction, staff, 'signed-in');
  });
  return { ok: true, staff, knownBrowser: withKnownBrowserMark(knownBrowser, userName, authSecret()), setCookie };
}

/** Ends the session that the cookies name, if they name one. */
export async function signOut(headers: Headers): Promise<void> {
  await auth({ secure: isHttps(headers) }).api.signOut({ headers });
}

/** Opens an account that too many wrong passwords closed or slowed down. Part of giving it a new password. */
export function throttledAccount(userName: string): ThrottledKey {
  return { key: throttleKey('account', userName), policy: accountPolicy };
}

function throttledKeys(userName: string, { headers, knownBrowser }: Pick<SignInTry, 'headers' | 'knownBrowser'>): ThrottledKey[] {
  const mark = knownBrowserMark(knownBrowser, userName, authSecret());
  // A known browser is let by its address too: a stranger on the shop's own network must not shut it out.
  if (mark !== null) return [{ key: throttleKey('browser', mark), policy: knownBrowserPolicy }];
  const address = clientAddress(headers);
  const account = throttledAccount(userName);
  return address === null ? [account] : [account, { key: throttleKey('address', address), policy: addressPolicy }];
}

type Credentials = Pick<SignInTry, 'userName' | 'password' | 'headers'>;

/** The cookies of a new session, or null for a wrong password. */
async function openSession(library: ReturnType<typeof auth>, { userName, password, headers }: Credentials): Promise<string[] | null> {
  try {
    const opened = await library.api.signInUsername({ body: { username: userName, password }, headers, returnHeaders: true });
    return opened.headers.getSetCookie();
  } catch (error) {
    if (isAPIError(error) && error.statusCode < 500) return null;
    throw error;
  }
}
