'use server';

import { redirect } from 'next/navigation';
import type { FormAnswer } from '@/app/_components/kept-form';
import { typedTexts } from '@/app/_components/typed-texts';
import { fieldNumber, fieldText } from '@/app/staff/_components/form-answer';
import { requireStaff } from '@/lib/auth/current-staff';
import { saveLaw } from '@/lib/workflows/shop-settings';

/** Saves place and changes. The button of one point that says "back" takes its change away first. */
export async function saveLawAction(_before: FormAnswer, data: FormData): Promise<FormAnswer> {
  const actor = await requireStaff('shop.settings');
  const back = fieldText(data, 'back');
  const typed = { ...typedTexts(data), ...(back !== '' && { [`value.${back}`]: '', [`reason.${back}`]: '' }) };
  const version = fieldNumber(data, 'baseVersion');
  const outcome = await saveLaw(actor, typed, version);
  if (!outcome.ok) return { ...outcome, values: typed };
  redirect(`/staff/law?done=saved&version=${version + 1}`);
}
