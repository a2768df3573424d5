'use client';

import { useState } from 'react';
import { FormProvider, useForm } from 'react-hook-form';
import { readOrderForm, type OrderFormValues } from '@/lib/forms';
import { AnimalSection } from './animal-section';
import { CutsSection } from './cuts-section';
import { DraftKeeper } from './draft-keeper';
import { ForecastPanel } from './forecast-panel';
import { LiveFormProvider, useFormWorld } from './form-context';
import { HiddenField } from './form-fields';
import { KeepSection } from './keep-section';
import { RestSection } from './rest-section';
import { WhoSection } from './who-section';

type EditFormProps = {
  /** Whether the page came with this form filled in already: then what was typed before the script ran is taken over. */
  readonly isFirst: boolean;
  readonly draftName: string;
  readonly formId: string;
};

/** The form to fill in. It is drawn afresh for each new set of values, so the state it is drawn from is its only past. */
export function EditForm({ isFirst, draftName, formId }: EditFormProps) {
  const { state } = useFormWorld();
  const [values] = useState(() => (isFirst ? typedBeforeScript(formId) : null) ?? state.values);
  const form = useForm<OrderFormValues>({ defaultValues: values });
  return (
    <FormProvider {...form}>
      <LiveFormProvider>
        <div className="split">
          <div className="stack loose">
            <HiddenField name="formKey" />
            <AnimalSection />
            <CutsSection />
            <RestSection />
            <KeepSection />
            <WhoSection />
            <div className="stack tight">
              <div className="buttons">
                <button type="submit" name="intent" value="check" className="button primary large">
                  Check your answers
                </button>
              </div>
              <p className="without-script">
                <button type="submit" name="intent" value="refresh" className="button plain">
                  Work out what I will get
                </button>
              </p>
              <p className="quiet-text">Nothing is sent yet. You see everything once more first.</p>
              <DraftKeeper name={draftName} opened={state.values} />
            </div>
          </div>
          <ForecastPanel />
        </div>
      </LiveFormProvider>
    </FormProvider>
  );
}

function typedBeforeScript(formId: string): OrderFormValues | null {
  if (typeof document === 'undefined') return null;
  const form = document.getElementById(formId);
  if (!(form instanceof HTMLFormElement)) return null;
  const typed = readOrderForm(new FormData(form).entries());
  return typed.formKey === '' ? null : typed;
}
