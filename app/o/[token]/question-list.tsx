'use client';

import { useActionState } from 'react';
import { FindingCard } from '@/app/_components/finding-card';
import { MuscleFigure } from '@/app/_components/muscle-figure';
import type { HunterOrder } from '@/lib/workflows/hunter-orders';
import { answerOrderQuestion } from './actions';

type Question = HunterOrder['questions'][number];

/** What the shop wants to know, each with its answers as buttons; then what has been answered. */
export function QuestionList({ token, questions, isOpen }: { readonly token: string; readonly questions: readonly Question[]; readonly isOpen: boolean }) {
  const open = questions.filter((question) => question.answeredAt === null);
  const answered = questions.filter((question) => question.answeredAt !== null);
  return (
    <>
      {open.map((question) => (
        <OpenQuestion key={question.id} token={token} question={question} isOpen={isOpen} />
      ))}
      {answered.length > 0 && (
        <dl className="answers">
          {answered.map(({ id, message, answer }) => (
            <div key={id}>
              <dt>{message}</dt>
              <dd>{answer ? `Answered: ${answer}` : 'Settled'}</dd>
            </div>
          ))}
        </dl>
      )}
    </>
  );
}

function OpenQuestion({ token, question, isOpen }: { readonly token: string; readonly question: Question; readonly isOpen: boolean }) {
  const [{ message }, answer, isPending] = useActionState(answerOrderQuestion, { message: '' });
  return (
    <FindingCard severity="ask" message={question.message} ruleId={question.ruleId}>
      {message !== '' && (
        <p className="error" role="alert">
          {message}
        </p>
      )}
      {isOpen && question.options.length > 0 ? (
        <form action={answer} className="mends">
          <input type="hidden" name="token" value={token} />
          <input type="hidden" name="questionId" value={question.id} />
          {question.options.map(({ label, consequence, figure }, at) => (
            <div key={label}>
              {figure && figure.target !== question.options[at - 1]?.figure?.target && <MuscleFigure {...figure} />}
              <button type="submit" name="option" value={at} className="button large" disabled={isPending}>
                {label}
              </button>
              <p className="quiet-text">{consequence}</p>
            </div>
          ))}
        </form>
      ) : (
        <p>Call the shop to settle this.</p>
      )}
    </FindingCard>
  );
}
