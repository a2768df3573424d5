'use client';

import { FindingsAtField } from './findings';
import { TextAreaField, TextField } from './form-fields';
import { FormSection } from './form-section';

export function WhoSection() {
  return (
    <FormSection section="who" number={5} title="Who you are">
      <TextField name="hunter.name" label="Your name" autoComplete="name" maxLength={80} />
      <TextField
        name="hunter.phone"
        label="Phone number"
        hint="The shop calls when it is ready, or when something has to be asked."
        inputMode="tel"
        autoComplete="tel"
        maxLength={30}
        className="medium"
      />
      <TextField name="hunter.email" label="E-mail" optional inputMode="email" autoComplete="email" maxLength={120} />
      <TextAreaField name="note" label="Anything else the cutter should know?" optional maxLength={1_000} />
      <FindingsAtField field="note" />
    </FormSection>
  );
}
