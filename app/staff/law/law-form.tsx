'use client';

import { type ReactNode, useState } from 'react';
import { Field } from '@/app/_components/field';
import { ActionForm } from '@/app/staff/_components/action-form';
import { LAW_PACKS, LAW_POINTS, type LawReader, type ShopLaw, lawPack, pointWords } from '@/lib/law';
import { saveLawAction } from './actions';
import { LawPointPanel } from './law-point-panel';

type LawFormProps = {
  readonly law: ShopLaw;
  /** What the inputs hold at first; its 'baseVersion' is the state of the settings on the screen: a save over a newer one is refused. */
  readonly values: Readonly<Record<string, string>>;
  readonly reader: LawReader;
  /** What stands between the place and its points. */
  readonly children: ReactNode;
};

/** The place, and under it each point with its change. Where script runs, another place is shown before it is saved. */
export function LawForm({ law, values, reader, children }: LawFormProps) {
  const [shown, show] = useState<string | null>(null);
  return (
    <ActionForm action={saveLawAction} title="Law" values={values} className="stack loose" rowOf={rowOf}>
      {(answer, pending) => {
        const pack = lawPack(shown ?? answer.values['packId'] ?? '');
        return (
          <>
            <input type="hidden" name="baseVersion" value={answer.values['baseVersion'] ?? ''} />
            <section className="section stack" aria-labelledby="place-heading">
              <h2 id="place-heading">Your place</h2>
              <Field id="packId" label="Place" hint="With no place chosen, the careful figure of each point holds." error={answer.fieldErrors['packId']}>
                {(wiring) => (
                  <select {...wiring} name="packId" defaultValue={answer.values['packId']} onChange={(event) => show(event.target.value)}>
                    {LAW_PACKS.map(({ id, place }) => (
                      <option key={id} value={id}>
                        {place}
                      </option>
                    ))}
                  </select>
                )}
              </Field>
              <p role="status" className="quiet-text">
                {pack.id !== values['packId'] && `Not saved yet. Below is what holds with ${pack.place}; what you changed stays as you set it.`}
              </p>
              <SaveButton pending={pending} />
            </section>
            <section className="section stack" aria-labelledby="points-heading">
              <h2 id="points-heading">Point by point</h2>
              {children}
              <ul className="law-points">
                {LAW_POINTS.map((point) => (
                  <LawPointPanel key={point} point={point} pack={pack} change={law.changes[point]} answer={answer} reader={reader} />
                ))}
              </ul>
              <SaveButton pending={pending} />
            </section>
          </>
        );
      }}
    </ActionForm>
  );
}

/** The first in the form is also what Enter presses. */
function SaveButton({ pending }: { readonly pending: boolean }) {
  return (
    <div className="buttons">
      <button className="button primary" disabled={pending}>
        {pending ? 'Saving' : 'Save'}
      </button>
    </div>
  );
}

/** The point that a field belongs to, as the list of errors says it. */
function rowOf(field: string): string {
  const point = LAW_POINTS.find((one) => field.endsWith(`.${one}`));
  return point ? pointWords(point) : '';
}
