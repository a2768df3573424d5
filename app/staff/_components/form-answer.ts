import type { FormAnswer } from '@/app/_components/kept-form';
import { typedTexts } from '@/app/_components/typed-texts';
import type { FieldErrors } from '@/lib/forms';

type Refusal = { readonly ok: false; readonly message: string; readonly fieldErrors: FieldErrors };

/** What a workflow refused, with everything that was typed. The sentence for the whole form stands where no field has one. */
export function refusedAnswer({ message, fieldErrors }: Refusal, data: FormData): FormAnswer {
  return {
    formErrors: Object.keys(fieldErrors).length > 0 ? [] : [message],
    fieldErrors,
    values: typedTexts(data),
  };
}

/** The text of one field of a form, '' where there is none. */
export function fieldText(data: FormData, name: string): string {
  const value = data.get(name);
  return typeof value === 'string' ? value.slice(0, 10_000) : '';
}

/** A whole number from 0 in a field of a form; -1, which nothing has, when there is none. */
export function fieldNumber(data: FormData, name: string): number {
  const text = fieldText(data, name);
  return /^\d{1,9}$/.test(text) ? Number(text) : -1;
}

/** Which order a form is about, and the version it was opened on. */
export function orderOf(data: FormData): { readonly number: string; readonly baseVersion: number } {
  return { number: fieldText(data, 'number'), baseVersion: fieldNumber(data, 'baseVersion') };
}
