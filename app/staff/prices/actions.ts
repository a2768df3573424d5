'use server';

import { redirect } from 'next/navigation';
import type { FormAnswer } from '@/app/_components/kept-form';
import { typedTexts } from '@/app/_components/typed-texts';
import { fieldNumber, fieldText, refusedAnswer } from '@/app/staff/_components/form-answer';
import { requireStaff } from '@/lib/auth/current-staff';
import { applyTariffIntent, parseTariffForm, readTariffForm, tariffFormEntries } from '@/lib/forms';
import { readTariff, saveTariff } from '@/lib/workflows/prices';
import { shopSettings } from '@/lib/workflows/shop-settings';

/** Saves the price list, or, without script, adds and takes away rows of it. */
export async function pricesAction(_before: FormAnswer, data: FormData): Promise<FormAnswer> {
  const staff = await requireStaff('prices.write');
  const values = readTariffForm(data);
  const changed = applyTariffIntent(values, fieldText(data, 'intent'));
  if (changed) {
    const { versionId } = typedTexts(data);
    return { formErrors: [], fieldErrors: {}, values: { ...(versionId !== undefined && { versionId }), ...Object.fromEntries(tariffFormEntries(changed)) } };
  }
  const [{ tariff }, { locale }] = await Promise.all([readTariff(staff), shopSettings()]);
  const parsed = parseTariffForm(values, { current: tariff, locale });
  if (!parsed.ok) return refusedAnswer({ ok: false, message: 'Some prices need mending.', fieldErrors: parsed.fieldErrors }, data);
  const outcome = await saveTariff(staff, fieldNumber(data, 'versionId'), parsed.value);
  if (!outcome.ok) return refusedAnswer(outcome, data);
  redirect('/staff/prices?done=saved');
}
