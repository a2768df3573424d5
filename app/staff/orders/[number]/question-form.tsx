'use client';

import { FieldGroup } from '@/app/_components/field';
import { ActionForm } from '@/app/staff/_components/action-form';
import { answerAction } from './actions';

type QuestionFormProps = {
  readonly order: { readonly number: string; readonly version: number };
  readonly title: string;
  readonly question: {
    readonly id: number;
    readonly options: readonly { readonly label: string; readonly consequence: string }[];
  };
};

/** One open question, to be answered for the hunter on the phone. */
export function QuestionForm({ order, title, question }: QuestionFormProps) {
  const id = `question-${question.id}`;
  return (
    <ActionForm action={answerAction} order={order} title={title} className="stack tight">
      {({ fieldErrors, values }, pending) => (
        <>
          <input type="hidden" name="question" value={question.id} />
          <FieldGroup id={id} legend="What does the hunter say?" error={fieldErrors[id]}>
            <div className="choices">
              {question.options.map((option, index) => (
                <label className="choice" key={option.label}>
                  <input type="radio" name="option" value={index} defaultChecked={values['option'] === String(index)} />
                  <span>
                    {option.label}
                    <span className="hint">{option.consequence}</span>
                  </span>
                </label>
              ))}
            </div>
          </FieldGroup>
          <div className="buttons">
            <button className="button" disabled={pending}>
              Answer for the hunter
            </button>
          </div>
        </>
      )}
    </ActionForm>
  );
}
