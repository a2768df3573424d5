import { betterAuth } from 'better-auth';
import { prismaAdapter } from 'better-auth/adapters/prisma';
import { nextCookies } from 'better-auth/next-js';
import { username } from 'better-auth/plugins';
import { isUserName, longestPassword, shortestPassword } from '@/lib/forms';
import { database, type Database } from '@/lib/db/client';
import { hashPassword, verifyPassword } from './password-hash';
import { authSecret } from './secret';
import { signInTables } from './sign-in-tables';

/** A session ends for good after two weeks, used or not: long enough for the counter's tablet, short enough for a lost one. */
const sessionSeconds = 14 * 86_400;

export type Auth = ReturnType<typeof createAuth>;

/**
 * The sign-in library on our tables. Its own web routes are not mounted: sign-in, sign-out and the reading of a session
 * are called from the server, accounts are made by set-up and by the owner only.
 */
export function createAuth(client: Database, { secret, secure }: { readonly secret: string; readonly secure: boolean }) {
  return betterAuth({
    appName: 'Gambrel',
    // No link is ever made from it: the library only wants one, and to know whether it is https.
    baseURL: secure ? 'https://gambrel.invalid' : 'http://gambrel.invalid',
    secret,
    database: prismaAdapter(signInTables(client), { provider: 'sqlite', transaction: false }),
    user: {
      modelName: 'staffMember',
      additionalFields: {
        role: { type: 'string', input: false },
        disabledAt: { type: 'date', required: false, input: false },
      },
    },
    session: { modelName: 'staffSession', expiresIn: sessionSeconds, disableSessionRefresh: true, cookieCache: { enabled: false } },
    account: { modelName: 'staffAccount' },
    verification: { modelName: 'staffVerification' },
    emailAndPassword: {
      enabled: true,
      disableSignUp: true,
      minPasswordLength: shortestPassword,
      maxPasswordLength: longestPassword * 2,
      password: { hash: hashPassword, verify: ({ hash, password }) => verifyPassword(hash, password) },
    },
    // The library limits by address and path only. Ours (throttle.ts) goes by account as well.
    rateLimit: { enabled: false },
    telemetry: { enabled: false },
    logger: { level: 'error' },
    advanced: {
      useSecureCookies: false,
      cookies: { session_token: { name: secure ? '__Host-gambrel' : 'gambrel', attributes: { secure } } },
      ipAddress: { disableIpTracking: true },
    },
    plugins: [username({ minUsernameLength: 2, maxUsernameLength: 30, usernameValidator: isUserName }), nextCookies()],
  });
}

type AuthPair = { readonly plain: Auth; readonly secure: Auth };
const made = new WeakMap<Database, AuthPair>();

/** The program's own instance, for a browser that speaks https or for one on the shop's plain network. */
export function auth({ secure }: { readonly secure: boolean }): Auth {
  const client = database();
  const secret = authSecret();
  const pair = made.get(client) ?? {
    plain: createAuth(client, { secret, secure: false }),
    secure: createAuth(client, { secret, secure: true }),
  };
  made.set(client, pair);
  return secure ? pair.secure : pair.plain;
}
