'use client';

import { Field } from '@/app/_components/field';
import type { OrderStep } from '@/lib/orders';
import { OrderPageForm } from './order-forms';

type StepFormProps = { readonly step: OrderStep; readonly text: string; readonly look?: string };

/** One step that asks nothing: a button of its own. */
export function StepForm({ step, text, look = 'button' }: StepFormProps) {
  return (
    <OrderPageForm className="step">
      {({ pending }) => (
        <button className={look} name="step" value={step} disabled={pending}>
          {text}
        </button>
      )}
    </OrderPageForm>
  );
}

/** Holds an animal, and asks why: whoever meets it in the cooler reads the reason in its history. */
export function HoldForm() {
  return (
    <OrderPageForm className="stack tight">
      {({ answer, pending }) => (
        <>
          <Field id="reason" label="Why is it held?" optional error={answer.fieldErrors['reason']}>
            {(wiring) => <input {...wiring} name="reason" autoComplete="off" maxLength={200} defaultValue={answer.values['reason']} />}
          </Field>
          <div className="buttons">
            <button className="button primary" name="step" value="hold" disabled={pending}>
              Hold it
            </button>
          </div>
        </>
      )}
    </OrderPageForm>
  );
}
