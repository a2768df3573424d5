/** The answer of a function that reads what a person typed: a value, or one sentence that says how to mend it. */
export type Result<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly message: string };
