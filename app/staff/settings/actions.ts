'use server';

import { redirect } from 'next/navigation';
import { requireStaff } from '@/lib/auth/current-staff';
import { nestEntries } from '@/lib/forms';
import { saveShopSettings } from '@/lib/workflows/shop-settings';
import type { FormAnswer } from '../../_components/kept-form';
import { typedTexts } from '../../_components/typed-texts';
import { fieldNumber } from '../_components/form-answer';

export async function saveSettingsAction(_before: FormAnswer, data: FormData): Promise<FormAnswer> {
  const actor = await requireStaff('shop.settings');
  const typed = typedTexts(data);
  const version = fieldNumber(data, 'baseVersion');
  const outcome = await saveShopSettings(actor, nestEntries(data), version);
  if (!outcome.ok) return { ...outcome, values: typed };
  redirect(`/staff/settings?done=saved&version=${version + 1}`);
}
