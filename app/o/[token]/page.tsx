import { cache } from 'react';
import { nothingHere } from '@/app/_components/turn-away';
import { Caution } from '@/app/_components/caution';
import { HunterPage } from '@/app/_components/hunter-page';
import { OrderNumber } from '@/app/_components/order-number';
import { PageHeader } from '@/app/_components/page-header';
import { cookingCaution } from '@/lib/documents';
import { CAUTIONS } from '@/lib/rules';
import { readHunterOrder } from '@/lib/workflows/hunter-orders';
import '../../order/order.css';
import { OrderAnswers } from './order-answers';
import { OrderProgress, OrderTimeline } from './order-progress';
import { OrderYield } from './order-yield';
import { QuestionList } from './question-list';
import { SentConfirmation } from './sent-confirmation';

const readOnce = cache(readHunterOrder);

export async function generateMetadata({ params }: PageProps<'/o/[token]'>) {
  const order = await readOnce((await params).token);
  return { title: order ? `Order ${order.numberText}` : 'Nothing here', robots: { index: false, follow: false } };
}

/** One order as its hunter sees it: what has happened, what is asked, what it gave, what it costs. */
export default async function OrderPage({ params, searchParams }: PageProps<'/o/[token]'>) {
  const { token } = await params;
  const { sent, done } = await searchParams;
  const order = await readOnce(token);
  if (!order) nothingHere('public');
  const { shop } = order;
  const open = order.questions.filter((question) => question.answeredAt === null).length;
  return (
    <HunterPage shop={shop}>
      {sent === '1' ? (
        <SentConfirmation order={order} />
      ) : (
        <PageHeader
          title={order.animalWords.charAt(0).toUpperCase() + order.animalWords.slice(1)}
          kicker={`Order of ${order.hunterName}`}
          lede={`Now: ${order.stateWords}`}
        >
          <OrderNumber number={order.numberText} label="Order number" />
        </PageHeader>
      )}
      {done === 'changed' && (
        <p className="notice good" role="status">
          Your change is in. These are instructions number {order.instructionVersion}.
        </p>
      )}
      {done === 'unchanged' && (
        <p className="notice" role="status">
          Nothing was different, so nothing was changed. The shop goes by instructions number {order.instructionVersion}, as before.
        </p>
      )}
      {done === 'answered' && (
        <p className="notice good" role="status">
          Answered. The shop cuts it that way.
        </p>
      )}
      {order.questions.length > 0 && (
        <section className="section" id="questions" aria-labelledby="questions-title">
          <h2 id="questions-title">{open > 0 ? 'The shop asks you' : 'Questions, all answered'}</h2>
          <QuestionList token={token} questions={order.questions} isOpen={order.isChangeable} />
        </section>
      )}
      <section className="section" aria-labelledby="where">
        <h2 id="where">Where it is</h2>
        <OrderProgress state={order.state} />
        <OrderTimeline entries={order.timeline} locale={shop.locale} timeZone={shop.timeZone} />
      </section>
      {order.invoice && (
        <section className="panel raised" aria-labelledby="bill">
          <h2 id="bill">What it costs</h2>
          <dl className="facts">
            <div>
              <dt>{order.invoice.title}</dt>
              <dd className="number">{order.invoice.totalText}</dd>
            </div>
            <div>
              <dt>Still to pay</dt>
              <dd className="number">{order.invoice.isPaid ? 'nothing, it is paid' : order.invoice.dueText}</dd>
            </div>
          </dl>
          <p>
            <a href={`/o/${encodeURIComponent(token)}/invoice.pdf`}>The whole invoice, line by line (PDF)</a>
          </p>
        </section>
      )}
      <OrderYield order={order} />
      <OrderAnswers order={order} token={token} />
      <Caution
        texts={[
          CAUTIONS['keep-cold'].text,
          cookingCaution(shop.cookGameTo, order.assessment.plan.forecast.species),
          ...(order.assessment.facts.wounds.length > 0 ? [CAUTIONS['wound-trim'].text] : []),
          ...(order.animal.diseaseZone === 'yes' ? [CAUTIONS['disease-zone'].text] : []),
        ]}
      />
    </HunterPage>
  );
}
