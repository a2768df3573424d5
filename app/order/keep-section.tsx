'use client';

import { FieldGroup } from '@/app/_components/field';
import { antlerChoices } from '@/lib/forms';
import { FindingsAtField } from './findings';
import { CheckField, SelectField } from './form-fields';
import { FormSection } from './form-section';

export function KeepSection() {
  return (
    <FormSection section="keep" number={4} title="Keep and return">
      <FieldGroup id="keep-items" legend="What else do you want back?" hint="Tick what you want; leave the rest.">
        <div className="choices two">
          <CheckField name="keep.heart" label="Heart" />
          <CheckField name="keep.liver" label="Liver" />
          <CheckField name="keep.bones" label="Bones for stock" />
          <CheckField name="keep.cape" label="Cape for a shoulder mount" />
        </div>
      </FieldGroup>
      <SelectField name="keep.antlers" label="Antlers" choices={antlerChoices()} />
      <FindingsAtField field="keep" />
    </FormSection>
  );
}
