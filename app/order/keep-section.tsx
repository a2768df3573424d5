'use client';

import { useFormContext, useWatch } from 'react-hook-form';
import { FieldGroup } from '@/app/_components/field';
import { findSpecies } from '@/lib/carcass';
import { antlerChoices, capital, type OrderFormValues } from '@/lib/forms';
import { FindingsAtField } from './findings';
import { useFormWorld } from './form-context';
import { CheckField, SelectField, TextField } from './form-fields';
import { FormSection } from './form-section';

export function KeepSection() {
  const { shop } = useFormWorld();
  const { control } = useFormContext<OrderFormValues>();
  const species = findSpecies(shop.species, useWatch({ control, name: 'animal.speciesId' }));
  const isCaped = useWatch({ control, name: 'keep.cape' });
  return (
    <FormSection section="keep" number={4} title="Keep and return">
      <FieldGroup id="keep-items" legend="What else do you want back?" hint="Tick what you want; leave the rest.">
        <div className="choices two">
          <CheckField name="keep.heart" label="Heart" />
          <CheckField name="keep.liver" label="Liver" />
          <CheckField name="keep.bones" label="Bones for stock" />
          {species?.plan !== 'bird' && <CheckField name="keep.hide" label="The whole hide" />}
          {species?.plan !== 'bird' && <CheckField name="keep.cape" label="Cape for a shoulder mount" />}
        </div>
      </FieldGroup>
      <div className={isCaped ? undefined : 'script-hidden'}>
        <TextField name="keep.taxidermist" label="Who mounts it, or comes for the cape?" hint="Raw, it spoils in days." optional maxLength={80} />
      </div>
      {(species === null || species.trophy !== null) && (
        <SelectField name="keep.antlers" label={capital(species?.trophy?.name ?? 'antlers')} choices={antlerChoices(species?.trophy?.name)} />
      )}
      <FindingsAtField field="keep" />
    </FormSection>
  );
}
