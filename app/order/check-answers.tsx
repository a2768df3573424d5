'use client';

import { AnswerList } from '@/app/_components/answer-list';
import { findSpecies } from '@/lib/carcass';
import { cookingCaution, estimateView, planView } from '@/lib/documents';
import { capital, describedInstructions, orderAnswers, orderFormEntries, type OrderFormValues, type planForm } from '@/lib/forms';
import { Caution } from '@/app/_components/caution';
import { PageHeader } from '@/app/_components/page-header';
import { CAUTIONS } from '@/lib/rules';
import { FindingList } from './findings';
import { useFormWorld, useOutlook } from './form-context';
import { SendBar, type Sending } from './send-bar';

type CheckAnswersProps = {
  readonly values: OrderFormValues;
  readonly sending: Sending;
  readonly words: { readonly send: string; readonly after: string };
};

/** Everything once more before it is sent: what does not fit, the answers with a way to change each, what comes of it. */
export function CheckAnswers({ values, sending, words }: CheckAnswersProps) {
  const { shop } = useFormWorld();
  const { planned, findings } = useOutlook(values);
  const stops = findings.filter((finding) => finding.severity === 'stop');
  const others = findings.filter((finding) => finding.severity !== 'stop');
  return (
    <div className="stack loose check-answers">
      <PageHeader
        title={<span id="check-heading" tabIndex={-1}>Check your answers</span>}
        lede={stops.length > 0 ? 'Something does not fit yet. Settle it, then send.' : 'Read it over. Change what is not right, then send.'}
      />
      <input type="hidden" name="step" value="check" />
      {orderFormEntries(values).map(([name, value]) => (
        <input key={name} type="hidden" name={name} value={value} />
      ))}
      {stops.length > 0 && (
        <section className="stack" aria-labelledby="stops">
          <h2 id="stops">This cannot be sent as it is</h2>
          <FindingList findings={stops} />
        </section>
      )}
      {orderAnswers(values, shop).map(({ section, title, answers }) => (
        <section key={section} aria-labelledby={`answers-${section}`}>
          <div className="row apart">
            <h2 id={`answers-${section}`}>{title}</h2>
            <button type="submit" name="intent" value={`change:${section}`} className="button quiet">
              Change<span className="visually-hidden">: {title}</span>
            </button>
          </div>
          <AnswerList answers={answers} look="answers" />
        </section>
      ))}
      {planned && <Outlook values={values} planned={planned} />}
      {others.length > 0 && (
        <section className="stack" aria-labelledby="others">
          <h2 id="others">Worth a look</h2>
          <p className="quiet-text">You may send it as it is; the shop asks you about what is open.</p>
          <FindingList findings={others} />
        </section>
      )}
      <Caution texts={[cookingCaution(shop.cookGameTo, findSpecies(shop.species, values.animal.speciesId)), CAUTIONS['keep-cold'].text]} />
      <SendBar canSend={stops.length === 0} sending={sending} words={words} />
    </div>
  );
}

function Outlook({ values, planned }: { readonly values: OrderFormValues; readonly planned: NonNullable<ReturnType<typeof planForm>> }) {
  const { shop } = useFormWorld();
  const view = planView(planned.plan, shop);
  const estimate = estimateView(planned, describedInstructions(values, shop), shop);
  const rows = [view.hanging, ...view.lines, ...view.pools, view.packedTotal].filter(({ range }) => range.high > 0);
  return (
    <section className="panel raised" aria-labelledby="outlook">
      <h2 id="outlook" className="h3">
        What you can expect
      </h2>
      <dl className="facts">
        {rows.map(({ key, label, text }) => (
          <div key={key}>
            <dt>{capital(label)}</dt>
            <dd className="number">{text}</dd>
          </div>
        ))}
        <div>
          <dt>Price, as far as it can be told now</dt>
          <dd className="number">{estimate.text}</dd>
        </div>
      </dl>
      <p className="quiet-text">A forecast and an estimate. The shop cuts and bills what it weighs.</p>
    </section>
  );
}
