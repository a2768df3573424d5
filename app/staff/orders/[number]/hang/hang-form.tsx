'use client';

import { type ReactNode, useState } from 'react';
import { Field } from '@/app/_components/field';
import { ActionForm } from '@/app/staff/_components/action-form';
import type { WeightUnit } from '@/lib/units';
import { hangAction } from './actions';

type HangFormProps = {
  readonly order: { readonly number: string; readonly version: number };
  readonly title: string;
  readonly weight: string;
  readonly unit: WeightUnit;
  /** The decimal mark of the shop. */
  readonly decimal: '.' | ',';
  readonly hint: string;
};

export function HangForm({ order, title, weight, unit, decimal, hint }: HangFormProps) {
  return (
    <ActionForm action={hangAction} order={order} title={title} values={{ weight }}>
      {({ values, fieldErrors }, pending) => (
        <WeightInput value={values['weight'] ?? ''} error={fieldErrors['weight']} unit={unit} decimal={decimal} hint={hint}>
          <div className="buttons">
            <button className="button primary large" disabled={pending}>
              Save the weight
            </button>
            <a className="button quiet" href={`/staff/orders/${order.number}`}>
              Back without saving
            </a>
          </div>
        </WeightInput>
      )}
    </ActionForm>
  );
}

type WeightInputProps = Pick<HangFormProps, 'unit' | 'decimal' | 'hint'> & {
  readonly value: string;
  readonly error: string | undefined;
  readonly children: ReactNode;
};

/** The weight, typed or, with wet gloves, by big keys. */
function WeightInput({ value, error, unit, decimal, hint, children }: WeightInputProps) {
  const [text, setText] = useState(value);
  const press = (key: string): void => setText((before) => `${/^[\d.,]*$/.test(before) ? before : ''}${key}`.slice(0, 8));
  const keys = ['7', '8', '9', '4', '5', '6', '1', '2', '3', decimal, '0'];
  return (
    <div className="scale">
      <div className="stack">
        <Field id="weight" label="Weight, hide, head and lower legs off" hint={hint} error={error}>
          {(wiring) => (
            <div className="with-unit">
              <input
                {...wiring}
                className="readout"
                name="weight"
                inputMode="decimal"
                autoComplete="off"
                value={text}
                onChange={(event) => setText(event.target.value)}
                maxLength={20}
                // The one thing to do here.
                // oxlint-disable-next-line jsx-a11y/no-autofocus
                autoFocus
              />
              <span className="unit">{unit}</span>
            </div>
          )}
        </Field>
        {children}
      </div>
      <div className="keypad script-only" role="group" aria-label="Keys for the weight">
        {keys.map((key) => (
          <button key={key} type="button" onClick={() => press(key)} aria-label={key === decimal ? 'Decimal mark' : undefined}>
            {key}
          </button>
        ))}
        <button type="button" onClick={() => setText((before) => (/^[\d.,]*$/.test(before) ? before.slice(0, -1) : ''))} aria-label="Take the last figure away">
          ⌫
        </button>
      </div>
    </div>
  );
}
