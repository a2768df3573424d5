'use server';

import { redirect } from 'next/navigation';
import { requireStaff } from '@/lib/auth/current-staff';
import { addPerson, givePassword, setPersonDisabled } from '@/lib/workflows/people';
import type { FormAnswer } from '../../_components/kept-form';
import { typedTexts, withoutPasswords } from '../../_components/typed-texts';

export async function addPersonAction(_before: FormAnswer, data: FormData): Promise<FormAnswer> {
  const actor = await requireStaff('staff.manage');
  const typed = typedTexts(data);
  const outcome = await addPerson(actor, typed);
  if (!outcome.ok) return { ...outcome, values: withoutPasswords(typed) };
  redirect('/staff/people?done=added');
}

export async function givePasswordAction(id: string, _before: FormAnswer, data: FormData): Promise<FormAnswer> {
  const actor = await requireStaff('staff.manage');
  const outcome = await givePassword(actor, id, typedTexts(data)['password'] ?? '');
  if (!outcome.ok) return { ...outcome, values: {} };
  redirect('/staff/people?done=password');
}

export async function setDisabledAction(id: string, disabled: boolean, _before: FormAnswer): Promise<FormAnswer> {
  const actor = await requireStaff('staff.manage');
  const outcome = await setPersonDisabled(actor, id, disabled);
  if (!outcome.ok) return { ...outcome, values: {} };
  redirect(`/staff/people?done=${disabled ? 'disabled' : 'enabled'}`);
}
