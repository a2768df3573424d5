'use client';

import { Field } from '@/app/_components/field';
import type { FormAnswer } from '@/app/_components/kept-form';
import { ActionForm } from '@/app/staff/_components/action-form';
import type { RuleChoice } from '@/lib/forms';
import { saveRulesAction } from './actions';

type RulesFormProps = {
  readonly groups: readonly { readonly topic: string; readonly title: string; readonly rules: readonly RuleChoice[] }[];
  /** What the inputs hold at first; its 'baseVersion' is the state of the settings on the screen: a save over a newer one is refused. */
  readonly values: FormAnswer['values'];
};

export function RulesForm({ groups, values }: RulesFormProps) {
  const titles = new Map(groups.flatMap(({ rules }) => rules.flatMap(({ title, fields }) => [[fields.severity, title], [fields.reason, title]])));
  return (
    <ActionForm action={saveRulesAction} title="Rules" values={values} className="stack loose" rowOf={(field) => titles.get(field) ?? ''}>
      {(answer, pending) => (
        <>
          <input type="hidden" name="baseVersion" value={answer.values['baseVersion'] ?? ''} />
          {groups.map(({ topic, title, rules }) => (
            <section className="section stack" key={topic} aria-labelledby={`about-${topic}`}>
              <h2 id={`about-${topic}`}>{title}</h2>
              {rules.map((rule) => (
                <SoftenedRule key={rule.id} rule={rule} answer={answer} />
              ))}
            </section>
          ))}
          <div className="buttons">
            <button className="button primary" disabled={pending}>
              Save the rules
            </button>
          </div>
        </>
      )}
    </ActionForm>
  );
}

function SoftenedRule({ rule: { id, title, line, fields, choices }, answer }: { readonly rule: RuleChoice; readonly answer: FormAnswer }) {
  return (
    <div role="group" aria-labelledby={`rule-${id}`} className={answer.values[fields.severity] ? 'softened-rule is-softened' : 'softened-rule'}>
      <div>
        <h3 id={`rule-${id}`}>{title}</h3>
        <p>
          {line}{' '}
          <a href={`/rules/${id}`} target="_blank" rel="noopener">
            Read more<span className="visually-hidden"> of “{title}”, opens a new tab</span>
          </a>
        </p>
      </div>
      <Field id={fields.severity} label="In your shop" error={answer.fieldErrors[fields.severity]}>
        {(wiring) => (
          <select {...wiring} name={fields.severity} defaultValue={answer.values[fields.severity] ?? ''}>
            {choices.map(({ value, text }) => (
              <option key={value} value={value}>
                {text}
              </option>
            ))}
          </select>
        )}
      </Field>
      <Field id={fields.reason} label="Why, if you change it" error={answer.fieldErrors[fields.reason]}>
        {(wiring) => <textarea {...wiring} name={fields.reason} rows={1} defaultValue={answer.values[fields.reason]} />}
      </Field>
    </div>
  );
}
