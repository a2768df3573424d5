import type { ReactNode } from 'react';
import { Field } from '@/app/_components/field';
import type { FormAnswer } from '@/app/_components/kept-form';
import { LAW_CHOICES, type LawChange, type LawPack, type LawPoint, type LawReader, evidenceWords, isChoicePoint, pointWords, valueWords } from '@/lib/law';

type LawPointPanelProps = {
  readonly point: LawPoint;
  readonly pack: LawPack;
  /** What the shop saved of this point against its place. */
  readonly change: LawChange | undefined;
  readonly answer: FormAnswer;
  readonly reader: LawReader;
};

/** One point: its value in force, where that comes from, and the fields that change it. */
export function LawPointPanel({ point, pack, change, answer, reader }: LawPointPanelProps) {
  const evidence = pack.evidence[point];
  const ofPlace = valueWords(point, pack.points[point], reader);
  const name = pointWords(point);
  const isRefused = [`value.${point}`, `reason.${point}`].some((field) => answer.fieldErrors[field] !== undefined);
  return (
    <li className="panel stack tight">
      <h3 id={point}>{name}</h3>
      <p className="row">
        <strong>{change ? valueWords(point, change.value, reader) : ofPlace}</strong>
        {change && <span className="tag strong">changed by you</span>}
        {!change && evidence.basis === 'not-read' && <span className="tag open">careful figure</span>}
      </p>
      <dl className="facts small">
        {change && <Fact name="Your reason">{change.reason}</Fact>}
        {change && <Fact name="The place has">{ofPlace}</Fact>}
        <Fact name="Citation">{evidence.citation}</Fact>
        <Fact name="Read">{evidenceWords(evidence, reader.locale)}</Fact>
        <Fact name="Note">{evidence.note}</Fact>
      </dl>
      <details open={isRefused}>
        <summary className="button quiet">
          Change<span className="visually-hidden">: {name}</span>
        </summary>
        <div className="stack">
          <ValueField point={point} ofPlace={ofPlace} answer={answer} reader={reader} />
          <Field id={`reason.${point}`} label="Why it differs" hint="Who told you, and when." error={answer.fieldErrors[`reason.${point}`]}>
            {(wiring) => <input {...wiring} name={`reason.${point}`} autoComplete="off" maxLength={200} defaultValue={answer.values[`reason.${point}`]} />}
          </Field>
        </div>
      </details>
      {change && (
        <div className="buttons">
          <button className="button" name="back" value={point}>
            Back to what the place has<span className="visually-hidden">: {name}</span>
          </button>
        </div>
      )}
    </li>
  );
}

function Fact({ name, children }: { readonly name: string; readonly children: ReactNode }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{children}</dd>
    </div>
  );
}

type ValueFieldProps = Pick<LawPointPanelProps, 'point' | 'answer' | 'reader'> & { readonly ofPlace: string };

/** What holds instead: one of a list, or a figure; empty is what the place has. */
function ValueField({ point, ofPlace, answer, reader }: ValueFieldProps) {
  const id = `value.${point}`;
  const words = { id, label: 'What holds here', error: answer.fieldErrors[id] };
  if (isChoicePoint(point)) {
    return (
      <Field {...words}>
        {(wiring) => (
          <select {...wiring} name={id} defaultValue={answer.values[id] ?? ''}>
            <option value="">As the place has it: {ofPlace}</option>
            {LAW_CHOICES[point].map((value) => (
              <option key={value} value={value}>
                {valueWords(point, value, reader)}
              </option>
            ))}
          </select>
        )}
      </Field>
    );
  }
  return (
    <Field {...words} hint={`Empty is what the place has: ${ofPlace}.`}>
      {(wiring) => (
        <input {...wiring} className="medium" name={id} autoComplete="off" maxLength={20} inputMode={point === 'keepRecordDays' ? 'numeric' : undefined} defaultValue={answer.values[id]} />
      )}
    </Field>
  );
}
