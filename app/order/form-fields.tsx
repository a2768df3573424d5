'use client';

import type { ReactNode } from 'react';
import { get, useFormContext, type FieldPath, type RegisterOptions } from 'react-hook-form';
import { Field, FieldGroup } from '@/app/_components/field';
import type { Choice, HintedChoice, OrderFormValues } from '@/lib/forms';
import { useFormWorld } from './form-context';

type Path = FieldPath<OrderFormValues>;

type Words = {
  readonly name: Path;
  readonly label: ReactNode;
  readonly hint?: ReactNode;
  readonly optional?: boolean;
};

type Options = Pick<RegisterOptions<OrderFormValues>, 'onChange'>;

/** The wiring of one input: its name and value from the form, its error from the last check. */
export function useFormField(name: Path, options?: Options) {
  const { state } = useFormWorld();
  const { register } = useFormContext<OrderFormValues>();
  const initial: unknown = get(state.values, name);
  return { registered: register(name, options), initial, error: state.fieldErrors[name] };
}

type TextFieldProps = Words & {
  readonly maxLength: number;
  readonly unit?: string;
  readonly inputMode?: 'text' | 'decimal' | 'tel' | 'email';
  readonly autoComplete?: string;
  readonly className?: string;
};

export function TextField({ name, unit, inputMode = 'text', autoComplete = 'off', maxLength, className, ...words }: TextFieldProps) {
  const { registered, initial, error } = useFormField(name);
  const type = inputMode === 'tel' || inputMode === 'email' ? inputMode : 'text';
  return (
    <Field id={name} error={error} {...words}>
      {(wiring) => {
        const input = (
          <input
            {...wiring}
            {...registered}
            type={type}
            inputMode={inputMode}
            autoComplete={autoComplete}
            maxLength={maxLength}
            className={className}
            defaultValue={String(initial ?? '')}
          />
        );
        return unit ? (
          <span className="with-unit">
            {input}
            <span className="unit">{unit}</span>
          </span>
        ) : (
          input
        );
      }}
    </Field>
  );
}

export function TextAreaField({ name, maxLength, ...words }: Words & { readonly maxLength: number }) {
  const { registered, initial, error } = useFormField(name);
  return (
    <Field id={name} error={error} {...words}>
      {(wiring) => <textarea {...wiring} {...registered} maxLength={maxLength} rows={3} defaultValue={String(initial ?? '')} />}
    </Field>
  );
}

type SelectFieldProps = Words & { readonly choices: readonly Choice[]; readonly options?: Options; readonly empty?: string };

export function SelectField({ name, choices, options, empty, ...words }: SelectFieldProps) {
  const { registered, initial, error } = useFormField(name, options);
  return (
    <Field id={name} error={error} {...words}>
      {(wiring) => (
        <select {...wiring} {...registered} defaultValue={String(initial ?? '')}>
          {empty && <option value="">{empty}</option>}
          {choices.map(({ value, label }) => (
            <option key={value} value={value}>
              {label}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}

type RadioFieldProps = Words & { readonly choices: readonly HintedChoice[]; readonly layout?: 'choices' | 'choices two' | 'pill-choices'; readonly children?: ReactNode };

/** A question with its answers in sight; none is chosen beforehand unless the values say so. */
export function RadioField({ name, choices, label, layout = 'choices', children, ...words }: RadioFieldProps) {
  const { registered, initial, error } = useFormField(name);
  return (
    <FieldGroup id={name} legend={label} error={error} {...words}>
      <div className={layout}>
        {choices.map(({ value, label: text, hint }) => (
          <label className="choice" key={value}>
            <input {...registered} type="radio" value={value} defaultChecked={initial === value} />
            <span>
              {text}
              {hint && <span className="hint">{hint}</span>}
            </span>
          </label>
        ))}
      </div>
      {children}
    </FieldGroup>
  );
}

type CheckFieldProps = { readonly name: Path; readonly label: ReactNode; readonly hint?: ReactNode };

export function CheckField({ name, label, hint }: CheckFieldProps) {
  const { registered, initial } = useFormField(name);
  return (
    <label className="choice">
      <input {...registered} id={name} type="checkbox" defaultChecked={initial === true} />
      <span>
        {label}
        {hint && <span className="hint">{hint}</span>}
      </span>
    </label>
  );
}

/** A day, by the browser's own calendar. */
export function DayField({ name, ...words }: Words) {
  const { registered, initial, error } = useFormField(name);
  return (
    <Field id={name} error={error} {...words}>
      {(wiring) => <input {...wiring} {...registered} type="date" className="medium" defaultValue={String(initial ?? '')} />}
    </Field>
  );
}

export function HiddenField({ name }: { readonly name: Path }) {
  const { registered, initial } = useFormField(name);
  return <input {...registered} type="hidden" defaultValue={String(initial ?? '')} />;
}
