'use client';

import { Field } from '../_components/field';
import { FormProblems } from '../_components/form-problems';
import { useKeptForm } from '../_components/kept-form';
import { PasswordInput } from '../_components/password-input';
import { signInAction } from './actions';

export function SignInForm({ next }: { readonly next: string }) {
  const { answer, pending, form } = useKeptForm(signInAction);
  const { fieldErrors, values } = answer;
  return (
    <form {...form} className="stack">
      <FormProblems title="Sign in" answer={answer} />
      <input type="hidden" name="next" value={next} />
      <Field id="userName" label="User name" error={fieldErrors['userName']}>
        {(wiring) => (
          <input
            {...wiring}
            className="medium"
            name="userName"
            defaultValue={values['userName']}
            autoComplete="username"
            autoCapitalize="none"
            autoCorrect="off"
            spellCheck={false}
            maxLength={100}
          />
        )}
      </Field>
      <Field id="password" label="Password" error={fieldErrors['password']}>
        {(wiring) => <PasswordInput wiring={wiring} name="password" autoComplete="current-password" />}
      </Field>
      <div className="buttons">
        <button className="button primary" disabled={pending}>
          Sign in
        </button>
      </div>
      <p className="quiet-text">Forgotten it? The owner can give you a new password.</p>
    </form>
  );
}
