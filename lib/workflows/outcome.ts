import type { FieldErrors } from '@/lib/forms';

/** What a workflow that changes something answers: done, or a sentence and what is wrong at which field. */
export type Outcome = { readonly ok: true } | Refusal;

/** Stale: somebody else changed it since its page was read. */
export type Refusal = { readonly ok: false; readonly message: string; readonly fieldErrors: FieldErrors; readonly isStale?: boolean };

/** A refusal of the whole thing in one sentence. */
export function refuse(message: string, fieldErrors: FieldErrors = {}): Refusal {
  return { ok: false, message, fieldErrors };
}

/** A refusal because fields need mending. */
export function refuseFields(fieldErrors: FieldErrors): Refusal {
  const count = Object.keys(fieldErrors).length;
  return refuse(count === 1 ? 'One answer needs mending.' : `${count} answers need mending.`, fieldErrors);
}
