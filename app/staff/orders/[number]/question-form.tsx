'use client';

import { FieldGroup } from '@/app/_components/field';
import { OrderPageForm } from './order-forms';

type QuestionFormProps = {
  readonly question: { readonly id: number; readonly options: readonly { readonly label: string; readonly consequence: string }[] };
};

/** One open question, to be answered for the hunter on the phone. */
export function QuestionForm({ question }: QuestionFormProps) {
  const id = `question-${question.id}`;
  return (
    <OrderPageForm className="stack tight">
      {({ answer, pending }) => {
        const isMine = answer.values['question'] === String(question.id);
        return (
          <>
            <input type="hidden" name="question" value={question.id} />
            <FieldGroup id={id} legend="What does the hunter say?" error={answer.fieldErrors[id]}>
              <div className="choices">
                {question.options.map((option, index) => (
                  <label className="choice" key={option.label}>
                    <input type="radio" name="option" value={index} defaultChecked={isMine && answer.values['option'] === String(index)} />
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
        );
      }}
    </OrderPageForm>
  );
}
