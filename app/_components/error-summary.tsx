'use client';

import { useEffect, useRef, type MouseEvent } from 'react';

export type SummaryError = {
  /** The input's id; left out for an error of the whole form. */
  readonly id?: string;
  readonly message: string;
};

type ErrorSummaryProps = {
  readonly errors: readonly SummaryError[];
  readonly heading?: string;
};

/** The list of what a form was refused for. It takes focus each time a new list arrives, and vanishes when empty. */
export function ErrorSummary({ errors, heading = 'There is a problem' }: ErrorSummaryProps) {
  const box = useRef<HTMLElement>(null);

  useEffect(() => {
    if (errors.length > 0) box.current?.focus();
  }, [errors]);

  if (errors.length === 0) return null;
  return (
    <section className="error-summary" ref={box} tabIndex={-1} aria-labelledby="error-summary-heading">
      <h2 id="error-summary-heading">{heading}</h2>
      <ul>
        {errors.map(({ id, message }) => (
          <li key={`${id ?? ''} ${message}`}>
            {id ? (
              <a href={`#${id}`} onClick={goToInput}>
                {message}
              </a>
            ) : (
              <span>{message}</span>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}

/** Shows the label as well as the input: a jump to the bare input would leave its label above the screen. */
function goToInput(event: MouseEvent<HTMLAnchorElement>) {
  const input = document.getElementById(event.currentTarget.hash.slice(1));
  if (!input) return;
  event.preventDefault();
  (input.closest('.field') ?? input).scrollIntoView({ block: 'start' });
  input.focus({ preventScroll: true });
}
