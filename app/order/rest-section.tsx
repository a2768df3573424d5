'use client';

import { useFormContext, useWatch } from 'react-hook-form';
import { Caution } from '@/app/_components/caution';
import { findSpecies } from '@/lib/carcass';
import { minceName } from '@/lib/cuts';
import { cookingCaution } from '@/lib/documents';
import { capital, fatChoices, fatPercentChoices, poolPackMenu, productChoices, restChoices, shapeChoices, squaredOffChoices, type OrderFormValues } from '@/lib/forms';
import { PRODUCTS } from '@/lib/plan';
import { CAUTIONS } from '@/lib/rules';
import { FindingsAtField } from './findings';
import { useFormWorld } from './form-context';
import { CheckField, RadioField, SelectField } from './form-fields';
import { FormSection } from './form-section';
import { MadeThings } from './made-section';

export function RestSection() {
  const { shop, state } = useFormWorld();
  const { control } = useFormContext<OrderFormValues>();
  const addedFat = useWatch({ control, name: 'mince.addedFat' });
  const mince = minceName(shop.country);
  const { values } = state;
  return (
    <FormSection section="rest" number={3} title={`The rest and the ${mince}`}>
      <RadioField name="rest" label="What becomes of everything you have not named?" choices={restChoices(shop.country)} />
      <FindingsAtField field="rest" />
      <SelectField
        name="squaredOff"
        label="Pieces squared off joints and steaks go"
        hint="What comes off to make straight edges is good meat."
        choices={squaredOffChoices(shop.country)}
      />
      <CheckField name="boneless" label="Nothing on the bone" hint="No chops, ribs or shanks with bone in any packet." />
      <h3>{capital(mince)}</h3>
      <div className="line-choices">
        <SelectField name="mince.addedFat" label="Fat to add" choices={fatChoices()} />
        <div className={addedFat === 'none' ? 'script-hidden' : undefined}>
          <SelectField name="mince.fatPercent" label="Share of fat" choices={fatPercentChoices(values.mince.fatPercent)} />
        </div>
        <SelectField name="mince.shape" label="Loose or in patties" choices={shapeChoices()} />
        <SelectField name="mince.pack" label={`Packs of ${mince}`} choices={poolPackMenu(shop, values.mince.pack)} />
        <SelectField name="stewPack" label="Packs of stewing meat" choices={poolPackMenu(shop, values.stewPack)} />
      </div>
      <FindingsAtField field="mince" />
      <MadeThings />
      <Caution
        texts={[
          cookingCaution(shop.cookGameTo, findSpecies(shop.species, values.animal.speciesId)),
          CAUTIONS['keep-cold'].text,
          CAUTIONS['wound-trim'].text,
          ...(productChoices(shop.tariff, values).some((id) => PRODUCTS[id].finishedPer10k < 10_000) ? [CAUTIONS['cured-and-dried'].text] : []),
        ]}
      />
    </FormSection>
  );
}
