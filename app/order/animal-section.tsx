'use client';

import { useFormContext, useWatch } from 'react-hook-form';
import { Caution } from '@/app/_components/caution';
import { findSpecies } from '@/lib/carcass';
import { partName, pluralOf } from '@/lib/cuts';
import { ageChoices, basisChoices, formChoices, sexChoices, speciesChoices, zoneChoices, type OrderFormValues } from '@/lib/forms';
import { CAUTIONS } from '@/lib/rules';
import { FindingsAtField } from './findings';
import { useFormWorld } from './form-context';
import { CheckField, RadioField, SelectField, TextField } from './form-fields';
import { FormSection } from './form-section';

export function AnimalSection() {
  const { shop } = useFormWorld();
  const { control } = useFormContext<OrderFormValues>();
  const speciesId = useWatch({ control, name: 'animal.speciesId' });
  const plan = findSpecies(shop.species, speciesId)?.plan ?? 'four-legged';
  return (
    <FormSection section="animal" number={1} title="The animal" lede="Tell us what you know. The shop weighs it when it comes in.">
      <RadioField name="animal.speciesId" label="Which animal is it?" layout="pill-choices" choices={speciesChoices(shop.tariff, shop.species)} />
      <RadioField name="animal.sex" label="Is it male or female?" layout="pill-choices" choices={sexChoices(findSpecies(shop.species, speciesId))} />
      <RadioField name="animal.ageClass" label="How old is it?" layout="pill-choices" choices={ageChoices()} />
      <div className="together">
        <TextField
          name="animal.weight"
          label="What does it weigh?"
          hint="A guess does no harm. Leave it empty if you do not know."
          optional
          unit={shop.unit}
          inputMode="decimal"
          maxLength={20}
        />
        <SelectField name="animal.weightBasis" label="Which weight is that?" choices={basisChoices(plan)} empty="Choose if you gave a weight" />
      </div>
      {(findSpecies(shop.species, speciesId)?.girth.length ?? 0) > 0 && (
        <TextField
          name="animal.girth"
          label="No scale? Its girth tells as well"
          hint="A tape round the chest, just behind the forelegs. Not read where a weight is given."
          optional
          unit={shop.unit === 'lb' ? 'in' : 'mm'}
          inputMode="decimal"
          maxLength={12}
        />
      )}
      <TextField
        name="animal.takenWhere"
        label="Where was it taken?"
        hint="County, unit or estate."
        optional
        maxLength={80}
      />
      <RadioField
        name="animal.diseaseZone"
        label="Is that in a disease zone?"
        hint={shop.diseaseZones.length > 0 ? `This shop counts these: ${shop.diseaseZones.join(', ')}.` : 'A zone where deer are tested, such as for chronic wasting disease.'}
        layout="pill-choices"
        choices={zoneChoices()}
      />
      <Caution texts={[CAUTIONS['disease-zone'].text]} />
      <RadioField name="animal.form" label="How will you bring it in?" choices={formChoices(plan, shop.country)} />
      {plan === 'four-legged' && (
        <CheckField
          name="animal.filletsOut"
          label={`The ${pluralOf(partName('fillet', shop.country))} are already out`}
          hint="You took them yourself, or they were lost."
        />
      )}
      <FindingsAtField field="animal" />
    </FormSection>
  );
}
