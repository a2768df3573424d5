'use server';

import { redirect } from 'next/navigation';
import type { FormAnswer } from '@/app/_components/kept-form';
import { orderOf, refusedAnswer } from '@/app/staff/_components/form-answer';
import { requireStaff } from '@/lib/auth/current-staff';
import { handOver } from '@/lib/workflows/hand-over';

export async function releaseAction(_before: FormAnswer, data: FormData): Promise<FormAnswer> {
  const staff = await requireStaff('order.release');
  const { number, baseVersion } = orderOf(data);
  const outcome = await handOver(staff, number, baseVersion, data);
  if (!outcome.ok) return refusedAnswer(outcome, data);
  redirect(`/staff/orders/${number}?done=released`);
}
