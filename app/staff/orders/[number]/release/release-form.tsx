'use client';

import { Field, FieldGroup } from '@/app/_components/field';
import { ActionForm } from '@/app/staff/_components/action-form';
import { releaseAction } from './actions';

type ReleaseFormProps = {
  readonly order: { readonly number: string; readonly version: number };
  readonly title: string;
  readonly hunterName: string;
  readonly tag: string;
};

export function ReleaseForm({ order, title, hunterName, tag }: ReleaseFormProps) {
  return (
    <ActionForm action={releaseAction} order={order} title={title} values={{ collectedBy: hunterName }}>
      {({ values, fieldErrors }, pending) => (
        <>
          <Field id="collectedBy" label="Who takes it away" hint="The hunter, unless you write another name." error={fieldErrors['collectedBy']}>
            {(wiring) => <input {...wiring} name="collectedBy" autoComplete="off" maxLength={100} defaultValue={values['collectedBy']} />}
          </Field>
          <Field id="address" label="Address" optional hint="Where somebody else takes it." error={fieldErrors['address']}>
            {(wiring) => <textarea {...wiring} name="address" rows={2} maxLength={220} defaultValue={values['address']} />}
          </Field>
          <Field id="boxes" label="Boxes" hint="Count them on the counter." error={fieldErrors['boxes']}>
            {(wiring) => (
              <input
                {...wiring}
                className="short"
                name="boxes"
                inputMode="numeric"
                autoComplete="off"
                maxLength={4}
                defaultValue={values['boxes']}
                // The name is there already; the boxes are what is to be counted.
                // oxlint-disable-next-line jsx-a11y/no-autofocus
                autoFocus
              />
            )}
          </Field>
          <FieldGroup id="tagReturned" legend="Legal tag" error={fieldErrors['tagReturned']}>
            <label className="choice">
              <input type="checkbox" name="tagReturned" defaultChecked={Boolean(values['tagReturned'])} />
              <span>Tag {tag} goes back with the meat</span>
            </label>
          </FieldGroup>
          <div className="buttons">
            <button className="button primary large" disabled={pending}>
              {pending ? 'Saving' : 'Hand it over'}
            </button>
            <a className="button quiet" href={`/staff/orders/${order.number}`}>
              Back without saving
            </a>
          </div>
        </>
      )}
    </ActionForm>
  );
}
