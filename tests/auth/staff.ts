import { vi } from 'vitest';
import { hashPassword } from '@/lib/auth/password-hash';
import { signIn, type SignInOutcome } from '@/lib/auth/sign-in';
import type { Role } from '@/lib/access';
import { withTransaction } from '@/lib/db/client';
import { createStaff, type StaffMember } from '@/lib/db/staff';

/** Long enough to sign with, and nobody's. */
process.env['BETTER_AUTH_SECRET'] = 'tests-only-kJ8s7d6f5g4h3j2k1l0z9x8c7v6b5n4m';

// Hashing is slow on purpose, and slower beside other work.
vi.setConfig({ testTimeout: 60_000 });

export const password = 'kettle orbit lantern moss';
export const noon = new Date('2026-11-25T12:00:00Z');

export const secondsAfter = (start: Date, seconds: number): Date => new Date(start.getTime() + seconds * 1000);

let hash: Promise<string> | undefined;

/** Saves a person whose password is `password`. */
export async function saveStaff(userName = 'ada', role: Role = 'owner'): Promise<StaffMember> {
  hash ??= hashPassword(password);
  const passwordHash = await hash;
  return withTransaction((transaction) => createStaff(transaction, { name: userName.toUpperCase(), userName, role, passwordHash }));
}

type Try = { userName?: string; password?: string; now?: Date; knownBrowser?: string; headers?: Record<string, string> };

/** One try to sign in, by default ada's with the right password at noon from an unknown browser. */
export function trySignIn(given: Try = {}): Promise<SignInOutcome> {
  return signIn({
    userName: given.userName ?? 'ada',
    password: given.password ?? password,
    now: given.now ?? noon,
    knownBrowser: given.knownBrowser ?? '',
    headers: new Headers(given.headers),
  });
}

/** The headers a browser sends after it was signed in. Throws when the try was refused. */
export async function signedInHeaders(given: Try = {}): Promise<Headers> {
  const outcome = await trySignIn(given);
  if (!outcome.ok) throw new Error(`The sign-in was refused: ${outcome.reason}`);
  return new Headers({ cookie: outcome.setCookie.map((cookie) => cookie.split(';')[0]).join('; ') });
}
