'use client';

import Link from 'next/link';
import { Field, FieldGroup } from '../../../_components/field';
import { FormProblems } from '../../../_components/form-problems';
import { useKeptForm } from '../../../_components/kept-form';
import { PasswordInput } from '../../../_components/password-input';
import { TextField } from '../../../_components/place-fields';
import { addPersonAction } from '../actions';

type AddPersonFormProps = { readonly roles: readonly { readonly value: string; readonly name: string; readonly work: string }[] };

export function AddPersonForm({ roles }: AddPersonFormProps) {
  const { answer, pending, form } = useKeptForm(addPersonAction);
  return (
    <form {...form} className="stack">
      <FormProblems title="Add a person" answer={answer} />
      <TextField name="name" label="Name" hint="As it stands beside what this person does." answer={answer} />
      <TextField name="userName" label="User name" hint="To sign in with. It stays as it is." size="medium" answer={answer} />
      <FieldGroup id="role" legend="What does this person do here?" error={answer.fieldErrors['role']}>
        <div className="choices">
          {roles.map(({ value, name, work }) => (
            <label className="choice" key={value}>
              <input type="radio" name="role" value={value} defaultChecked={answer.values['role'] === value} />
              <span>
                {name} <span className="hint">{work}</span>
              </span>
            </label>
          ))}
        </div>
      </FieldGroup>
      <Field
        id="password"
        label="First password"
        hint="At least 15 characters: four or five words do well. Tell it to the person, not by mail."
        error={answer.fieldErrors['password']}
      >
        {(wiring) => <PasswordInput wiring={wiring} name="password" autoComplete="new-password" />}
      </Field>
      <div className="buttons">
        <button className="button primary" disabled={pending}>
          Add the person
        </button>
        <Link className="button quiet" href="/staff/people">
          Back without adding
        </Link>
      </div>
    </form>
  );
}
