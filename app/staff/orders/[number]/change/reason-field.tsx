'use client';

import { Field } from '@/app/_components/field';
import { useFormWorld } from '@/app/order/form-context';
import type { ChangeState } from './actions';

/** Why the counter changes a hunter's wish: it stands with the new version. */
export function ReasonField() {
  const { state }: { readonly state: ChangeState } = useFormWorld();
  return (
    <div className="panel raised reason">
      <Field
        id="reason"
        label="Why it is changed"
        hint="It stands with the new version, for example: called, wants it ground instead."
        error={state.fieldErrors['reason']}
      >
        {(wiring) => (
          <input
            {...wiring}
            name="reason"
            autoComplete="off"
            maxLength={200}
            defaultValue={state.reason}
            // What the hunter said on the phone comes first.
            // oxlint-disable-next-line jsx-a11y/no-autofocus
            autoFocus
          />
        )}
      </Field>
    </div>
  );
}
