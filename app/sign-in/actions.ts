'use server';

import { cookies, headers } from 'next/headers';
import { redirect } from 'next/navigation';
import { isHttps } from '@/lib/auth/client-address';
import { knownBrowserCookie } from '@/lib/auth/known-browser';
import { nextPath } from '@/lib/auth/request-path';
import { signIn, signOut } from '@/lib/auth/sign-in';
import { waitWords } from '@/lib/auth/wait-words';
import type { FormAnswer } from '../_components/kept-form';

/** Signs in and goes on to where the person wanted to be. The name stays typed after a refusal, the password does not. */
export async function signInAction(_before: FormAnswer, data: FormData): Promise<FormAnswer> {
  const text = (name: string): string => String(data.get(name) ?? '').slice(0, 300);
  const userName = text('userName').trim();
  const refused = (fieldErrors: Record<string, string>, formErrors: string[] = []): FormAnswer => ({
    formErrors,
    fieldErrors,
    values: { userName },
  });
  const missing = {
    ...(userName === '' && { userName: 'Enter your user name' }),
    ...(text('password') === '' && { password: 'Enter your password' }),
  };
  if (Object.keys(missing).length > 0) return refused(missing);

  const sent = await headers();
  const jar = await cookies();
  const secure = isHttps(sent);
  const cookie = knownBrowserCookie(secure);
  const now = new Date();
  const outcome = await signIn({
    userName,
    password: text('password'),
    headers: sent,
    knownBrowser: jar.get(cookie.name)?.value ?? '',
    now,
  });
  if (!outcome.ok) {
    switch (outcome.reason) {
      case 'wrong':
        return refused({ password: 'This password does not go with this user name. Check both' });
      case 'wait':
        return refused({}, [`Too many wrong tries. ${waitWords(outcome.until, now)}`]);
      case 'closed':
        return refused({}, ['Too many wrong passwords for this user name. Sign in on a device you have used before, or ask the owner for a new password']);
    }
  }
  jar.set({ ...cookie, value: outcome.knownBrowser });
  redirect(nextPath(text('next')));
}

/** Ends the session. */
export async function signOutAction(): Promise<void> {
  await signOut(await headers());
  redirect('/sign-in?done=signed-out');
}
