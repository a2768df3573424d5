import type { z } from 'zod';

/** What a form was refused for: sentences of the whole form, and one sentence a field, keyed by its dotted path. */
export type FormErrors = {
  readonly formErrors: readonly string[];
  readonly fieldErrors: Readonly<Record<string, string>>;
};

/** The answer of a form's check. */
export type FormOutcome<T> = { readonly ok: true; readonly value: T } | ({ readonly ok: false } & FormErrors);

/** A refusal of the whole form in one sentence. */
export function refuseForm(sentence: string): { readonly ok: false } & FormErrors {
  return { ok: false, formErrors: [sentence], fieldErrors: {} };
}

/** A refusal of one field in one sentence. */
export function refuseField(path: string, sentence: string): { readonly ok: false } & FormErrors {
  return { ok: false, formErrors: [], fieldErrors: { [path]: sentence } };
}

/** Checks what was typed against a schema. Of several complaints about one field the first is kept. */
export function checkForm<T>(schema: z.ZodType<T>, typed: unknown): FormOutcome<T> {
  const checked = schema.safeParse(typed);
  if (checked.success) return { ok: true, value: checked.data };
  const formErrors: string[] = [];
  const fieldErrors: Record<string, string> = {};
  for (const issue of checked.error.issues) {
    const path = issue.path.join('.');
    if (path === '') formErrors.push(issue.message);
    else fieldErrors[path] ??= issue.message;
  }
  return { ok: false, formErrors, fieldErrors };
}
