'use client';

import { Field } from '../../../_components/field';
import { FormProblems } from '../../../_components/form-problems';
import { useKeptForm } from '../../../_components/kept-form';
import { PasswordInput } from '../../../_components/password-input';
import { givePasswordAction, setDisabledAction } from '../actions';

type PersonFormsProps = { readonly id: string; readonly name: string; readonly disabled: boolean; readonly self: boolean };

export function PersonForms({ id, name, disabled, self }: PersonFormsProps) {
  const password = useKeptForm(givePasswordAction.bind(null, id));
  const access = useKeptForm(setDisabledAction.bind(null, id, !disabled));
  const problems = {
    formErrors: [...password.answer.formErrors, ...access.answer.formErrors],
    fieldErrors: password.answer.fieldErrors,
    values: {},
  };
  return (
    <>
      <FormProblems title={name} answer={problems} />
      <form {...password.form} className="section stack">
        <h2>New password</h2>
        <Field
          id="password"
          label={`New password for ${name}`}
          hint="At least 15 characters: four or five words do well. The old one stops working, and every open session ends."
          error={password.answer.fieldErrors['password']}
        >
          {(wiring) => <PasswordInput wiring={wiring} name="password" autoComplete="new-password" />}
        </Field>
        <div className="buttons">
          <button className="button primary" disabled={password.pending}>
            Save the new password
          </button>
        </div>
      </form>
      {!self && (
        <form {...access.form} className="section stack">
          <h2>{disabled ? 'Let in again' : 'Shut out'}</h2>
          <p>
            {disabled
              ? `${name} can sign in again, with the password from before.`
              : `${name} is signed out everywhere at once and cannot sign in until you let them in again. What they did stays in the record.`}
          </p>
          <div className="buttons">
            <button className={disabled ? 'button plain' : 'button stop'} disabled={access.pending}>
              {disabled ? `Let ${name} in again` : `Shut ${name} out`}
            </button>
          </div>
        </form>
      )}
    </>
  );
}
