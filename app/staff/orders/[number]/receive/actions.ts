'use server';

import { redirect } from 'next/navigation';
import type { FormAnswer } from '@/app/_components/kept-form';
import { orderOf, refusedAnswer } from '@/app/staff/_components/form-answer';
import { requireStaff } from '@/lib/auth/current-staff';
import { receiveAnimal } from '@/lib/workflows/receive-animal';
import { readReceiveForm } from './receive-values';

export async function receiveAction(_before: FormAnswer, data: FormData): Promise<FormAnswer> {
  const staff = await requireStaff('order.receive');
  const { number, baseVersion } = orderOf(data);
  const outcome = await receiveAnimal(staff, number, baseVersion, readReceiveForm(data));
  if (!outcome.ok) return refusedAnswer(outcome, data);
  redirect(`/staff/orders/${number}?done=received`);
}
