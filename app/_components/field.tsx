import type { ReactNode } from 'react';

/** What an input must carry so that its hint and its error are read out with it. */
export type FieldWiring = {
  readonly id: string;
  readonly 'aria-describedby': string | undefined;
  readonly 'aria-invalid': true | undefined;
};

type FieldWords = {
  readonly id: string;
  readonly hint?: ReactNode;
  readonly error?: string;
  readonly optional?: boolean;
};

type FieldProps = FieldWords & {
  readonly label: ReactNode;
  /** Spread the wiring on the input: `{(wiring) => <input {...wiring} name="tag" />}`. */
  readonly children: (wiring: FieldWiring) => ReactNode;
};

function describedBy({ id, hint, error }: FieldWords): string | undefined {
  const ids = [hint && `${id}-hint`, error && `${id}-error`].filter(Boolean);
  return ids.length > 0 ? ids.join(' ') : undefined;
}

function HintAndError({ id, hint, error }: FieldWords) {
  return (
    <>
      {hint && (
        <span className="hint" id={`${id}-hint`}>
          {hint}
        </span>
      )}
      {error && (
        <p className="error" id={`${id}-error`}>
          <span className="visually-hidden">Error: </span>
          {error}
        </p>
      )}
    </>
  );
}

/** A label, its hint, its error and one input. */
export function Field({ label, children, ...words }: FieldProps) {
  const { id, error, optional } = words;
  return (
    <div className={error ? 'field has-error' : 'field'}>
      <label htmlFor={id}>
        {label}
        {optional && <span className="quiet-text"> (optional)</span>}
      </label>
      <HintAndError {...words} />
      {children({ id, 'aria-describedby': describedBy(words), 'aria-invalid': error ? true : undefined })}
    </div>
  );
}

type FieldGroupProps = FieldWords & {
  readonly legend: ReactNode;
  /** Radios, checkboxes, or several small inputs that answer one question. */
  readonly children: ReactNode;
};

/** A question answered by several inputs. The error summary may link to the id: it takes focus. */
export function FieldGroup({ legend, children, ...words }: FieldGroupProps) {
  const { id, error, optional } = words;
  return (
    <fieldset className={error ? 'field has-error' : 'field'} id={id} tabIndex={-1} aria-describedby={describedBy(words)}>
      <legend>
        {legend}
        {optional && <span className="quiet-text"> (optional)</span>}
      </legend>
      <HintAndError {...words} />
      {children}
    </fieldset>
  );
}
