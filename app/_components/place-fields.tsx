import { Field, FieldGroup } from './field';
import type { FormAnswer } from './kept-form';

type Choice = { readonly value: string; readonly text: string };

type ChoiceFieldProps = {
  readonly name: string;
  readonly legend: string;
  readonly choices: readonly Choice[];
  readonly answer: FormAnswer;
  readonly hint?: string;
};

/** One question answered by a row of radios. */
export function RadioField({ name, legend, choices, answer, hint }: ChoiceFieldProps) {
  return (
    <FieldGroup id={name} legend={legend} hint={hint} error={answer.fieldErrors[name]}>
      <div className="pill-choices">
        {choices.map(({ value, text }) => (
          <label className="choice" key={value}>
            <input type="radio" name={name} value={value} defaultChecked={answer.values[name] === value} />
            <span>{text}</span>
          </label>
        ))}
      </div>
    </FieldGroup>
  );
}

/** One question answered from a long list. */
export function SelectField({ name, legend, choices, answer, hint }: ChoiceFieldProps) {
  return (
    <Field id={name} label={legend} hint={hint} error={answer.fieldErrors[name]}>
      {(wiring) => (
        <select {...wiring} name={name} defaultValue={answer.values[name] ?? ''}>
          <option value="">Choose one</option>
          {choices.map(({ value, text }) => (
            <option key={value} value={value}>
              {text}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}

type PlaceFieldsProps = { readonly answer: FormAnswer; readonly currencies: readonly Choice[]; readonly timeZones: readonly Choice[] };

/** What set-up and the settings both ask of the shop's place. */
export function PlaceFields({ answer, currencies, timeZones }: PlaceFieldsProps) {
  return (
    <>
      <RadioField
        name="unit"
        legend="What does your scale show?"
        answer={answer}
        choices={[
          { value: 'lb', text: 'Pounds' },
          { value: 'kg', text: 'Kilograms' },
        ]}
      />
      <RadioField
        name="nameCountry"
        legend="Whose words do you use for cuts?"
        answer={answer}
        choices={[
          { value: 'us', text: 'American: backstrap, ground' },
          { value: 'uk', text: 'British: loin, mince' },
        ]}
      />
      <RadioField
        name="paper"
        legend="Paper in your printer"
        answer={answer}
        choices={[
          { value: 'letter', text: 'Letter' },
          { value: 'a4', text: 'A4' },
        ]}
      />
      <SelectField name="currency" legend="Currency" choices={currencies} answer={answer} />
      <SelectField
        name="timeZone"
        legend="Time zone"
        hint="By the largest city in it. Decides which day an animal came in on."
        choices={timeZones}
        answer={answer}
      />
    </>
  );
}

type TextFieldProps = {
  readonly name: string;
  readonly label: string;
  readonly answer: FormAnswer;
  readonly hint?: string;
  readonly optional?: boolean;
  readonly autoComplete?: string;
  readonly size?: 'short' | 'medium';
  readonly inputMode?: 'numeric' | 'tel';
};

/** One line of text. */
export function TextField({ name, label, answer, hint, optional, autoComplete, size, inputMode }: TextFieldProps) {
  return (
    <Field id={name} label={label} hint={hint} optional={optional} error={answer.fieldErrors[name]}>
      {(wiring) => (
        <input
          {...wiring}
          className={size}
          name={name}
          defaultValue={answer.values[name]}
          autoComplete={autoComplete ?? 'off'}
          inputMode={inputMode}
        />
      )}
    </Field>
  );
}
