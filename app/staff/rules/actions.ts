'use server';

import { redirect } from 'next/navigation';
import type { FormAnswer } from '@/app/_components/kept-form';
import { typedTexts } from '@/app/_components/typed-texts';
import { fieldNumber } from '@/app/staff/_components/form-answer';
import { requireStaff } from '@/lib/auth/current-staff';
import { saveRuleChanges } from '@/lib/workflows/shop-settings';

export async function saveRulesAction(_before: FormAnswer, data: FormData): Promise<FormAnswer> {
  const actor = await requireStaff('shop.settings');
  const typed = typedTexts(data);
  const version = fieldNumber(data, 'baseVersion');
  const outcome = await saveRuleChanges(actor, typed, version);
  if (!outcome.ok) return { ...outcome, values: typed };
  redirect(`/staff/rules?done=saved&version=${version + 1}`);
}
