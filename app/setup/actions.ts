'use server';

import { cookies, headers } from 'next/headers';
import { redirect } from 'next/navigation';
import { isHttps } from '@/lib/auth/client-address';
import { knownBrowserCookie } from '@/lib/auth/known-browser';
import { signIn } from '@/lib/auth/sign-in';
import { setUpShop } from '@/lib/workflows/set-up';
import type { FormAnswer } from '../_components/kept-form';
import { typedTexts, withoutPasswords } from '../_components/typed-texts';

/** Sets the shop up, signs its owner in and opens the order book. */
export async function setUpAction(_before: FormAnswer, data: FormData): Promise<FormAnswer> {
  const typed = typedTexts(data);
  const now = new Date();
  const outcome = await setUpShop(typed, { code: process.env['GAMBREL_SETUP_CODE'] ?? '', now });
  if (!outcome.ok) return { ...outcome, values: withoutPasswords(typed) };

  const sent = await headers();
  const signedIn = await signIn({
    userName: outcome.value.userName,
    password: typed['password'] ?? '',
    headers: sent,
    knownBrowser: '',
    now,
  });
  if (signedIn.ok) (await cookies()).set({ ...knownBrowserCookie(isHttps(sent)), value: signedIn.knownBrowser });
  redirect('/staff');
}
