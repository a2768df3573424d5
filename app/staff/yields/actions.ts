'use server';

import { redirect } from 'next/navigation';
import { fieldNumber, fieldText } from '@/app/staff/_components/form-answer';
import { requireStaff } from '@/lib/auth/current-staff';
import { judgeYield, switchLearning } from '@/lib/workflows/yields';

/** A person's word on a doubted animal. */
export async function judgeAction(data: FormData): Promise<void> {
  const staff = await requireStaff('yields.judge');
  const verdict = fieldText(data, 'verdict') === 'confirmed' ? 'confirmed' : 'left-out';
  const outcome = await judgeYield(staff, fieldNumber(data, 'id'), verdict);
  redirect(`/staff/yields?done=${outcome.ok ? verdict : 'gone'}`);
}

/** On, off, or from today on. */
export async function switchAction(data: FormData): Promise<void> {
  const staff = await requireStaff('yields.judge');
  const to = fieldText(data, 'to');
  if (to !== 'on' && to !== 'off' && to !== 'anew') redirect('/staff/yields');
  const outcome = await switchLearning(staff, fieldText(data, 'species'), to);
  redirect(`/staff/yields?done=${outcome.ok ? to : 'gone'}`);
}
