import { AnswerList } from '@/app/_components/answer-list';
import { writtenBase, type OrderFormState } from '@/lib/forms';

/** The button's intent: answered by the server, which knows how the order stands. */
export const AS_IT_STANDS = 'as-it-stands';

/** What the form was opened on, sent along with it. */
export function BaseFields({ base }: Pick<OrderFormState, 'base'>) {
  if (!base) return null;
  return (
    <>
      <input type="hidden" name="baseVersion" value={base.version} />
      <input type="hidden" name="baseValues" value={writtenBase(base)} />
    </>
  );
}

/** The way on after somebody else was quicker. */
export function AsItStandsButton({ formId }: { readonly formId: string }) {
  return (
    <div className="stack tight">
      <div className="buttons">
        <button type="submit" form={formId} name="intent" value={AS_IT_STANDS} className="button primary">
          Show the order as it stands now
        </button>
      </div>
      <p className="quiet-text">What you changed here is kept. Nothing is saved yet.</p>
    </div>
  );
}

/** What others changed meanwhile, above the form that was brought to it. */
export function ChangedMeanwhile({ answers }: { readonly answers: NonNullable<OrderFormState['changedMeanwhile']> }) {
  return (
    <section className="notice" id={AS_IT_STANDS} tabIndex={-1} aria-labelledby="changed-meanwhile">
      <h2 id="changed-meanwhile" className="h3">
        The order as it stands now
      </h2>
      <p>
        {answers.length > 0
          ? 'These answers were changed meanwhile. What you had changed yourself is kept, and where it was the same answer yours stands: read it over before you save.'
          : 'No answer was changed meanwhile. What you had changed yourself is kept.'}
      </p>
      {answers.length > 0 && <AnswerList answers={answers} look="facts" />}
    </section>
  );
}
