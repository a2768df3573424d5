'use client';

import { FindingsAtField } from './findings';
import { CheckField, DayField, TextAreaField, TextField } from './form-fields';
import { FormSection } from './form-section';
import { Shares } from './shares';

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
      <DayField name="wantedBy" label="Do you need it by a certain day?" optional />
      <FindingsAtField field="wanted" />
      <CheckField name="overBorder" label="I take it over a state or country border" hint="What may cross with you is limited, deer above all." />
      <Shares />
      <FindingsAtField field="shares" />
      <TextAreaField name="note" label="Anything else the cutter should know?" optional maxLength={1_000} />
      <FindingsAtField field="note" />
    </FormSection>
  );
}
