'use client';

import Link from 'next/link';
import { Field } from '../../_components/field';
import { FormProblems } from '../../_components/form-problems';
import { useKeptForm, type FormAnswer } from '../../_components/kept-form';
import { PlaceFields, RadioField, SelectField, TextField } from '../../_components/place-fields';
import { saveSettingsAction } from './actions';
import { MadeThings } from './made-things';

type Choice = { readonly value: string; readonly text: string };

type SettingsFormProps = {
  /** What the inputs hold at first; its 'baseVersion' is the state of the settings on the screen: a save over a newer one is refused. */
  readonly settings: Readonly<Record<string, string>>;
  readonly currencies: readonly Choice[];
  readonly timeZones: readonly Choice[];
  readonly locales: readonly Choice[];
  /** What the shop may make. */
  readonly products: readonly Choice[];
  /** What ground meat is called here. */
  readonly mince: string;
};

export function SettingsForm({ settings, currencies, timeZones, locales, products, mince }: SettingsFormProps) {
  const { answer, pending, form } = useKeptForm(saveSettingsAction, settings);
  return (
    <form {...form} className="stack loose">
      <FormProblems title="Settings" answer={answer} />
      <input type="hidden" name="baseVersion" value={answer.values['baseVersion'] ?? ''} />
      <section className="section stack" aria-labelledby="shop-heading">
        <h2 id="shop-heading">The shop</h2>
        <TextField name="name" label="Name of the shop" autoComplete="organization" answer={answer} />
        <LinesField name="address" label="Address" hint="As it stands on invoices." answer={answer} />
        <TextField name="phone" label="Phone" optional autoComplete="tel" inputMode="tel" size="medium" answer={answer} />
        <TextField
          name="questionsContact"
          label="Whom hunters ask"
          hint="A name, a number, the hours. It stands under every hunter's page."
          optional
          answer={answer}
        />
      </section>
      <section className="section stack" aria-labelledby="measures-heading">
        <h2 id="measures-heading">Measures, money and words</h2>
        <PlaceFields answer={answer} currencies={currencies} timeZones={timeZones} />
        <SelectField name="locale" legend="Numbers and dates" choices={locales} answer={answer} />
      </section>
      <section className="section stack" aria-labelledby="law-heading">
        <h2 id="law-heading">What your place demands</h2>
        <p className="quiet-text">
          What may be sawn, go home, cross a border, and how long the book is kept is on its own page: <Link href="/staff/law">Law</Link>
        </p>
        <LinesField
          name="diseaseZones"
          label="Places whose animals need a disease test"
          hint="Counties or hunting units, one a line, as hunters name them. An animal from there needs its result before it is cut."
          answer={answer}
        />
        <RadioField
          name="cookGameTo"
          legend="Tell customers to cook game to"
          hint="160 °F (71 °C) is the usual figure. Where yours is stricter, choose it."
          choices={[
            { value: '160 F', text: '160 °F (71 °C)' },
            { value: '165 F', text: '165 °F (74 °C)' },
          ]}
          answer={answer}
        />
        <LinesField name="storageCaution" label="Keeping the meat" hint="Stands on the invoice." answer={answer} />
        <TextField
          name="collectWithinDays"
          label="Days to collect"
          hint="From the day an order is ready."
          size="short"
          inputMode="numeric"
          answer={answer}
        />
      </section>
      <section className="section stack" aria-labelledby="ways-heading">
        <h2 id="ways-heading">How you hang and trim</h2>
        <p className="quiet-text">
          Where you do it otherwise than the rules say: <Link href="/staff/rules">Rules</Link>
        </p>
        <p className="quiet-text">The forecast reads these: a carcass dries on the rail, and a close trim leaves less in the packet.</p>
        <TextField
          name="hangDays"
          label="Days on the rail, as a rule"
          hint="From coming in to the knife. Leave it empty if it differs too much to say."
          optional
          size="short"
          inputMode="numeric"
          answer={answer}
        />
        <RadioField
          name="hangHide"
          legend="Carcasses hang"
          choices={[
            { value: 'off', text: 'skinned' },
            { value: 'on', text: 'in the hide' },
          ]}
          answer={answer}
        />
        <label className="choice">
          <input type="checkbox" name="closeTrim" defaultChecked={answer.values['closeTrim'] === 'on'} />
          <span>We trim to clean muscle: all fat and membrane off</span>
        </label>
      </section>
      <MadeThings answer={answer} products={products} mince={mince} />
      <div className="buttons">
        <button className="button primary" disabled={pending}>
          Save the settings
        </button>
      </div>
    </form>
  );
}

type LinesFieldProps = { readonly name: string; readonly label: string; readonly hint: string; readonly answer: FormAnswer };

function LinesField({ name, label, hint, answer }: LinesFieldProps) {
  return (
    <Field id={name} label={label} hint={hint} optional error={answer.fieldErrors[name]}>
      {(wiring) => <textarea {...wiring} name={name} rows={3} defaultValue={answer.values[name]} />}
    </Field>
  );
}
