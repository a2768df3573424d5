'use client';

import type { ReactNode } from 'react';
import { ErrorSummary } from '@/app/_components/error-summary';
import { type FormAnswer, useKeptForm } from '@/app/_components/kept-form';

type ActionFormProps = {
  readonly action: (before: FormAnswer, data: FormData) => Promise<FormAnswer>;
  /** The page's title, which the form writes: "Error:" goes before it while it stands refused. One such form to a page. */
  readonly title: string;
  /** What the inputs hold at first, by name. */
  readonly values?: FormAnswer['values'];
  /** The order a form is about, at the version its page was read at. */
  readonly order?: { readonly number: string; readonly version: number };
  readonly id?: string;
  readonly className?: string;
  /** Which row a field belongs to, for the list of errors, where the sentence alone does not say; '' where it does. */
  readonly rowOf?: (field: string, answer: FormAnswer) => string;
  /** The inputs, given what they hold and what was refused. */
  readonly children: (answer: FormAnswer, pending: boolean) => ReactNode;
};

/** A form of the counter: works without script, keeps what was typed, and lists on top what it was refused for. */
export function ActionForm({ action, title, values, order, id, className = 'stack', rowOf, children }: ActionFormProps) {
  const { answer, pending, form } = useKeptForm(action, values);
  const errors = [
    ...answer.formErrors.map((message) => ({ message })),
    ...Object.entries(answer.fieldErrors).map(([field, message]) => ({ id: field, message: withRow(rowOf?.(field, answer) ?? '', message) })),
  ];
  return (
    <form {...form} id={id} className={className} aria-busy={pending}>
      <title>{`${errors.length > 0 ? 'Error: ' : ''}${title} · Gambrel`}</title>
      <ErrorSummary errors={errors} />
      {order && <input type="hidden" name="number" value={order.number} />}
      {/* A form refused because somebody was quicker stays with the version it was filled in on. */}
      {order && <input type="hidden" name="baseVersion" value={answer.values['baseVersion'] ?? order.version} />}
      {children(answer, pending)}
    </form>
  );
}

function withRow(row: string, message: string): string {
  return row === '' || message.startsWith(row) ? message : `${row}: ${message.charAt(0).toLowerCase()}${message.slice(1)}`;
}
