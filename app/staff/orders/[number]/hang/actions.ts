'use server';

import { redirect } from 'next/navigation';
import type { FormAnswer } from '@/app/_components/kept-form';
import { fieldText, orderOf, refusedAnswer } from '@/app/staff/_components/form-answer';
import { requireStaff } from '@/lib/auth/current-staff';
import { recordHanging } from '@/lib/workflows/receive-animal';

export async function hangAction(_before: FormAnswer, data: FormData): Promise<FormAnswer> {
  const staff = await requireStaff('order.receive');
  const { number, baseVersion } = orderOf(data);
  const outcome = await recordHanging(staff, number, baseVersion, fieldText(data, 'weight'));
  if (!outcome.ok) return refusedAnswer(outcome, data);
  redirect(`/staff/orders/${number}?done=weighed`);
}
