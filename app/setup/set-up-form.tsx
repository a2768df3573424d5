'use client';

import { Field } from '../_components/field';
import { FormProblems } from '../_components/form-problems';
import { useKeptForm } from '../_components/kept-form';
import { PasswordInput } from '../_components/password-input';
import { PlaceFields, TextField } from '../_components/place-fields';
import { setUpAction } from './actions';

type Choice = { readonly value: string; readonly text: string };

type SetUpFormProps = {
  readonly currencies: readonly Choice[];
  readonly timeZones: readonly Choice[];
  /** Where the machine stands, offered as the choice. */
  readonly timeZone: string;
};

export function SetUpForm({ currencies, timeZones, timeZone }: SetUpFormProps) {
  const { answer, pending, form } = useKeptForm(setUpAction, { timeZone });
  return (
    <form {...form} className="stack loose">
      <FormProblems title="Set up the shop" answer={answer} />
      <TextField
        name="code"
        label="Code"
        hint="The console in which Gambrel was started shows it, for example K7QM-03TX-9ZHB."
        size="medium"
        answer={answer}
      />
      <section className="section stack" aria-labelledby="shop-heading">
        <h2 id="shop-heading">Your shop</h2>
        <TextField name="shopName" label="Name of the shop" hint="As it stands on your invoices." autoComplete="organization" answer={answer} />
        <PlaceFields answer={answer} currencies={currencies} timeZones={timeZones} />
      </section>
      <section className="section stack" aria-labelledby="owner-heading">
        <h2 id="owner-heading">You, the owner</h2>
        <TextField name="ownerName" label="Your name" autoComplete="name" answer={answer} />
        <TextField
          name="userName"
          label="User name"
          hint="To sign in with: small letters, digits, dots or hyphens."
          autoComplete="username"
          size="medium"
          answer={answer}
        />
        <Field
          id="password"
          label="Password"
          hint="At least 15 characters. Four or five words that do not belong together do well; spaces are fine."
          error={answer.fieldErrors['password']}
        >
          {(wiring) => <PasswordInput wiring={wiring} name="password" autoComplete="new-password" />}
        </Field>
      </section>
      <div className="buttons">
        <button className="button primary" disabled={pending}>
          Set up the shop
        </button>
      </div>
    </form>
  );
}
