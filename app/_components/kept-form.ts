'use client';

import { startTransition, useActionState, type FormEvent } from 'react';

/** What a form's action answers when it does not go on to another page. */
export type FormAnswer = {
  readonly formErrors: readonly string[];
  readonly fieldErrors: Readonly<Record<string, string>>;
  /** What was typed, to be shown again; never a password. */
  readonly values: Readonly<Record<string, string>>;
};

const untouched: FormAnswer = { formErrors: [], fieldErrors: {}, values: {} };

type FormAction = (before: FormAnswer, data: FormData) => Promise<FormAnswer>;

/**
 * A form on a server action, with or without script. With script the action is called by hand, since React would
 * otherwise empty the form of a refused try.
 */
export function useKeptForm(action: FormAction, values: FormAnswer['values'] = {}) {
  const [answer, dispatch, pending] = useActionState(action, { ...untouched, values });
  const onSubmit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const data = new FormData(event.currentTarget, (event.nativeEvent as SubmitEvent).submitter);
    startTransition(() => dispatch(data));
  };
  return { answer, pending, form: { action: dispatch, onSubmit, noValidate: true } as const };
}
