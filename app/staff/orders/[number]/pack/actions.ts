'use server';

import { redirect } from 'next/navigation';
import type { FormAnswer } from '@/app/_components/kept-form';
import { orderOf, refusedAnswer } from '@/app/staff/_components/form-answer';
import { requireStaff } from '@/lib/auth/current-staff';
import { savePacking } from '@/lib/workflows/pack-order';

export async function packAction(_before: FormAnswer, data: FormData): Promise<FormAnswer> {
  const staff = await requireStaff('pack.weigh');
  const { number, baseVersion } = orderOf(data);
  const outcome = await savePacking(staff, number, baseVersion, data);
  if (!outcome.ok) return refusedAnswer(outcome, data);
  redirect(`/staff/orders/${number}?done=packed`);
}
