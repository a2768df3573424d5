'use server';

import { redirect } from 'next/navigation';
import type { FormAnswer } from '@/app/_components/kept-form';
import { orderOf, refusedAnswer } from '@/app/staff/_components/form-answer';
import { requireStaff } from '@/lib/auth/current-staff';
import { issueInvoice, takePayment } from '@/lib/workflows/bill-order';

export async function issueAction(_before: FormAnswer, data: FormData): Promise<FormAnswer> {
  const staff = await requireStaff('invoice.issue');
  const { number, baseVersion } = orderOf(data);
  const outcome = await issueInvoice(staff, number, baseVersion);
  if (!outcome.ok) return refusedAnswer(outcome, data);
  redirect(`/staff/orders/${number}/bill?done=issued`);
}

export async function payAction(_before: FormAnswer, data: FormData): Promise<FormAnswer> {
  const staff = await requireStaff('payment.take');
  const { number } = orderOf(data);
  const outcome = await takePayment(staff, number, data);
  if (!outcome.ok) return refusedAnswer(outcome, data);
  redirect(`/staff/orders/${number}/bill?done=paid`);
}
