import type { ReactNode } from 'react';

export type FindingSeverity = 'stop' | 'ask' | 'note';

type FindingCardProps = {
  readonly severity: FindingSeverity;
  readonly message: ReactNode;
  readonly title?: ReactNode;
  /** The rule that says it: its page tells why. */
  readonly ruleId?: string;
  /** Opens that page beside this one, where something is typed. */
  readonly opensApart?: boolean;
  readonly id?: string;
  /** Suggestion buttons or forms. */
  readonly children?: ReactNode;
};

const WORDS = { stop: 'Stop', ask: 'Question', note: 'Note' } as const;

/** One finding of the rules: an octagon to stop, a speech mark to ask, a folded leaf to note. */
export function FindingCard({ severity, message, title, ruleId, opensApart, id, children }: FindingCardProps) {
  return (
    <article className={`finding ${severity}`} id={id} tabIndex={id ? -1 : undefined}>
      <FindingSign severity={severity} />
      <div>
        <p className="finding-word">{WORDS[severity]}</p>
        {title && <h3>{title}</h3>}
        <p>{message}</p>
        {ruleId && (
          <p className="finding-why">
            <a href={`/rules/${ruleId}`} {...(opensApart && { target: '_blank', rel: 'noopener' })}>
              Why?{opensApart && ' (opens a new tab)'}
              <span className="visually-hidden"> {message}</span>
            </a>
          </p>
        )}
        {children && <div className="finding-actions">{children}</div>}
      </div>
    </article>
  );
}

const SHAPES = {
  stop: 'M12 2 L24 2 L34 12 L34 24 L24 34 L12 34 L2 24 L2 12 Z',
  ask: 'M5 3 L31 3 Q34 3 34 6 L34 23 Q34 26 31 26 L19 26 L10 34 L10 26 L5 26 Q2 26 2 23 L2 6 Q2 3 5 3 Z',
  note: 'M6 2 L23 2 L31 10 L31 34 L6 34 Z',
} as const;

const MARKS = {
  stop: 'M18 9 L18 20 M18 25.5 L18 26.5',
  ask: 'M13 11 C13 5.5 23 5.5 23 11 C23 14 18 14.5 18 17.5 M18 21.8 L18 22',
  note: 'M23 2 L23 10 L31 10 M11 17 L26 17 M11 23 L26 23 M11 29 L20 29',
} as const;

export function FindingSign({ severity }: { readonly severity: FindingSeverity }) {
  const weight = severity === 'note' ? 2 : 3.4;
  return (
    <svg viewBox="0 0 36 36" width="36" height="36" aria-hidden="true" focusable="false">
      <path className="finding-sign" d={SHAPES[severity]} strokeWidth="2" strokeLinejoin="round" />
      <path className="finding-sign-mark" d={MARKS[severity]} strokeWidth={weight} strokeLinecap="round" />
    </svg>
  );
}
