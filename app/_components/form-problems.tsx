'use client';

import { useMemo } from 'react';
import { ErrorSummary } from './error-summary';
import type { FormAnswer } from './kept-form';

type FormProblemsProps = {
  /** The page's title, which starts "Error:" once the form was refused. The page sets `title: null` in its metadata. */
  readonly title: string;
  /** Its field errors are keyed by the inputs' ids. */
  readonly answer: FormAnswer;
};

/** The page's title and, on top of a refused form, the list of what it was refused for. */
export function FormProblems({ title, answer }: FormProblemsProps) {
  // The summary takes the focus when it gets a new list, so it must not get one with every keystroke.
  const errors = useMemo(
    () => [
      ...answer.formErrors.map((message) => ({ message })),
      ...Object.entries(answer.fieldErrors).map(([id, message]) => ({ id, message })),
    ],
    [answer],
  );
  return (
    <>
      <title>{`${errors.length > 0 ? 'Error: ' : ''}${title} · Gambrel`}</title>
      <ErrorSummary errors={errors} />
    </>
  );
}
