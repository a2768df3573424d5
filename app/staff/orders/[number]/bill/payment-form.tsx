'use client';

import { Field, FieldGroup } from '@/app/_components/field';
import { ActionForm } from '@/app/staff/_components/action-form';
import type { NameCountry } from '@/lib/cuts';
import { PAYMENT_METHODS, capital, paymentWord } from '@/lib/forms';
import { payAction } from './actions';

type PaymentFormProps = {
  readonly order: { readonly number: string; readonly version: number };
  readonly title: string;
  readonly formKey: string;
  readonly due: string;
  readonly currency: string;
  readonly country: NameCountry;
};

export function PaymentForm({ order, title, formKey, due, currency, country }: PaymentFormProps) {
  return (
    <ActionForm action={payAction} order={order} title={title} values={{ amount: due, formKey }}>
      {({ values, fieldErrors }, pending) => (
        <>
          <input type="hidden" name="formKey" value={values['formKey']} />
          <Field id="amount" label="Amount" hint="Less than is due leaves the rest open." error={fieldErrors['amount']}>
            {(wiring) => (
              <div className="with-unit">
                <input {...wiring} name="amount" inputMode="decimal" autoComplete="off" maxLength={20} defaultValue={values['amount']} />
                <span className="unit">{currency}</span>
              </div>
            )}
          </Field>
          <FieldGroup id="method" legend="Paid by" error={fieldErrors['method']}>
            <div className="pill-choices">
              {PAYMENT_METHODS.map((method) => (
                <label className="choice" key={method}>
                  <input type="radio" name="method" value={method} defaultChecked={values['method'] === method} />
                  <span>{capital(paymentWord(method, country))}</span>
                </label>
              ))}
            </div>
          </FieldGroup>
          <div className="buttons">
            <button className="button primary large" disabled={pending}>
              {pending ? 'Saving' : 'Save the payment'}
            </button>
          </div>
        </>
      )}
    </ActionForm>
  );
}
