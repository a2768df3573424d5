'use client';

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
  readonly draftName: string;
  /** Grows when only the lines are others than before: then the cuts alone are drawn afresh. */
  readonly cutsDrawn: number;
};

/** The form to fill in, as the last state has it. */
export function EditForm({ draftName, cutsDrawn }: EditFormProps) {
  const { state } = useFormWorld();
  return (
    <LiveFormProvider>
      <div className="split">
        <div className="stack loose">
          <HiddenField name="formKey" />
          <HiddenField name="agreed" />
          <AnimalSection />
          <CutsSection key={cutsDrawn} />
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
  );
}
