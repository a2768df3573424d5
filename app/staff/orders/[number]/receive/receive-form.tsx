'use client';

import { useRef } from 'react';
import type { DrawnShapes } from '@/app/_components/carcass-drawing';
import { Field, FieldGroup } from '@/app/_components/field';
import type { FormAnswer } from '@/app/_components/kept-form';
import { ActionForm } from '@/app/staff/_components/action-form';
import { CONDITION_WORDS, FLESH_WORDS, SHOT_WORDS, TEST_WORDS } from '@/app/staff/_components/arrival-words';
import { type BodyPlan, CONDITIONS, FLESHES, SHOT_WITH } from '@/lib/carcass';
import type { NameCountry } from '@/lib/cuts';
import { type Choice, capital, licenceWord } from '@/lib/forms';
import { TEST_STATES } from '@/lib/rules';
import type { WeightUnit } from '@/lib/units';
import { receiveAction } from './actions';
import { SpotGrid } from './spot-grid';

type ReceiveFormProps = {
  readonly order: { readonly number: string; readonly version: number };
  readonly title: string;
  readonly values: Readonly<Record<string, string>>;
  readonly days: { readonly today: string; readonly yesterday: string };
  readonly unit: WeightUnit;
  readonly country: NameCountry;
  /** How the animal is built: which parts it has. */
  readonly plan: BodyPlan;
  readonly shapes: DrawnShapes;
  /** What the hunter's telling comes to, as a check on the scale. */
  readonly expected: string;
  readonly choices: Readonly<Record<'sex' | 'age' | 'form' | 'basis', readonly Choice[]>>;
};

const SHOTS = SHOT_WITH.toReversed().map((value) => ({ value, label: SHOT_WORDS[value] }));

export function ReceiveForm({ order, title, values, days, unit, country, plan, shapes, expected, choices }: ReceiveFormProps) {
  const killedOn = useRef<HTMLInputElement>(null);
  const setDay = (day: string): void => {
    if (killedOn.current) killedOn.current.value = day;
  };
  const tests = TEST_STATES.map((value) => ({ value, label: TEST_WORDS[value] }));
  return (
    <ActionForm action={receiveAction} order={order} title={title} values={values}>
      {(answer, pending) => (
        <>
          <div className="three">
            <section className="stack" aria-labelledby="papers">
              <h2 id="papers">Papers</h2>
              <div className="pair">
                <Text name="licence" label={`${capital(licenceWord(country))} number`} answer={answer} isFirst />
                <Text name="tag" label="Tag, seal or confirmation" answer={answer} />
              </div>
              <Field id="killedOn" label="Day it was killed" error={answer.fieldErrors['killedOn']}>
                {(wiring) => (
                  <div className="killed-on">
                    <input {...wiring} ref={killedOn} type="date" name="killedOn" max={days.today} defaultValue={answer.values['killedOn']} />
                    <button className="button script-only" type="button" onClick={() => setDay(days.today)}>
                      Today
                    </button>
                    <button className="button script-only" type="button" onClick={() => setDay(days.yesterday)}>
                      Yesterday
                    </button>
                  </div>
                )}
              </Field>
              <div className="pair">
                <Text name="killedWhere" label="Where: county, unit or estate" answer={answer} />
                <Menu name="shotWith" label="Killed with" choices={SHOTS} answer={answer} />
              </div>
              <BroughtBySomebodyElse answer={answer} />
              <Pills
                name="diseaseZone"
                legend="In a disease zone"
                choices={[
                  { value: 'no', label: 'No' },
                  { value: 'yes', label: 'Yes' },
                ]}
                answer={answer}
              />
              <Pills name="test" legend="Disease sample" choices={tests} answer={answer} />
              <Text name="sampleNumber" label="Sample number, where one was taken" answer={answer} />
              <Field id="note" label="Note" optional error={answer.fieldErrors['note']}>
                {(wiring) => <textarea {...wiring} className="two-lines" name="note" rows={2} defaultValue={answer.values['note']} maxLength={500} />}
              </Field>
            </section>

            <section className="stack" aria-labelledby="animal">
              <h2 id="animal">Animal and scale</h2>
              <Field id="weight" label="Weight" hint={expected} error={answer.fieldErrors['weight']}>
                {(wiring) => (
                  <div className="with-unit">
                    <input {...wiring} name="weight" inputMode="decimal" autoComplete="off" defaultValue={answer.values['weight']} maxLength={20} />
                    <span className="unit">{unit}</span>
                  </div>
                )}
              </Field>
              <Pills name="weightBasis" legend="Weighed how" choices={choices.basis} answer={answer} />
              <div className="pair">
                <Menu name="sex" label="Sex" choices={choices.sex} answer={answer} />
                <Menu name="ageClass" label="Age" choices={choices.age} answer={answer} />
              </div>
              <div className="pair">
                <Menu name="form" label="How it came" choices={choices.form} answer={answer} />
                <Field id="temperature" label="Temperature" optional error={answer.fieldErrors['temperature']}>
                  {(wiring) => (
                    <div className="with-unit">
                      <input {...wiring} name="temperature" autoComplete="off" defaultValue={answer.values['temperature']} maxLength={12} />
                      <span className="unit">°{unit === 'lb' ? 'F' : 'C'}</span>
                    </div>
                  )}
                </Field>
              </div>
              <FieldGroup id="flesh" legend="Fat on it">
                <div className="pill-choices thirds">
                  {FLESHES.map((id) => (
                    <label className="choice" key={id}>
                      <input type="radio" name="flesh" value={id} defaultChecked={(answer.values['flesh'] || 'usual') === id} />
                      <span>{FLESH_WORDS[id]}</span>
                    </label>
                  ))}
                </div>
              </FieldGroup>
              <FieldGroup id="conditions" legend="Condition" optional>
                <div className="pill-choices thirds">
                  {CONDITIONS.map((id) => (
                    <label className="choice" key={id}>
                      <input type="checkbox" name={`conditions.${id}`} defaultChecked={Boolean(answer.values[`conditions.${id}`])} />
                      <span>{CONDITION_WORDS[id]}</span>
                    </label>
                  ))}
                </div>
              </FieldGroup>
            </section>

            <section className="stack" aria-labelledby="parts">
              <h2 id="parts">Wounds and what did not come</h2>
              <SpotGrid shapes={shapes} values={answer.values} country={country} plan={plan} />
            </section>
          </div>
          <div className="buttons bar">
            <button className="button primary large" disabled={pending}>
              {pending ? 'Saving' : 'Save and check the cuts'}
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

type InputProps = { readonly name: string; readonly label: string; readonly answer: FormAnswer };

function Text({ name, label, answer, hint, isFirst = false }: InputProps & { readonly hint?: string; readonly isFirst?: boolean }) {
  return (
    <Field id={name} label={label} hint={hint} error={answer.fieldErrors[name]}>
      {(wiring) => (
        <input
          {...wiring}
          name={name}
          defaultValue={answer.values[name]}
          autoComplete="off"
          autoCapitalize="characters"
          spellCheck={false}
          // The counter comes here to type the licence.
          // oxlint-disable-next-line jsx-a11y/no-autofocus
          autoFocus={isFirst}
          maxLength={90}
        />
      )}
    </Field>
  );
}

/** Rare, so folded away; open where something is written in it. */
function BroughtBySomebodyElse({ answer }: { readonly answer: FormAnswer }) {
  const { values, fieldErrors } = answer;
  return (
    <details className="fold" open={Boolean(values['killedBy'] || values['hasTransferNote'] || fieldErrors['killedBy'])}>
      <summary>Brought by somebody else</summary>
      <div className="stack tight">
        <Text name="killedBy" label="Who killed it" answer={answer} />
        <label className="choice">
          <input type="checkbox" name="hasTransferNote" defaultChecked={Boolean(values['hasTransferNote'])} />
          <span>Their signed note came with it</span>
        </label>
      </div>
    </details>
  );
}

type PillsProps = { readonly name: string; readonly legend: string; readonly choices: readonly Choice[]; readonly answer: FormAnswer };

function Pills({ name, legend, choices, answer }: PillsProps) {
  return (
    <FieldGroup id={name} legend={legend} error={answer.fieldErrors[name]}>
      <div className="pill-choices halves">
        {choices.map(({ value, label }) => (
          <label className="choice" key={value}>
            <input type="radio" name={name} value={value} defaultChecked={answer.values[name] === value} />
            <span>{label}</span>
          </label>
        ))}
      </div>
    </FieldGroup>
  );
}

function Menu({ name, label, choices, answer }: InputProps & { readonly choices: readonly Choice[] }) {
  return (
    <Field id={name} label={label} error={answer.fieldErrors[name]}>
      {(wiring) => (
        <select {...wiring} name={name} defaultValue={answer.values[name]}>
          {choices.map(({ value, label: words }) => (
            <option key={value} value={value}>
              {words}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}
