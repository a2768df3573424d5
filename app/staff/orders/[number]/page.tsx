import Link from 'next/link';
import { FindingCard } from '@/app/_components/finding-card';
import { OrderNumber } from '@/app/_components/order-number';
import { RangeBar } from '@/app/_components/range-bar';
import { WhereItGoesFigure } from '@/app/_components/where-it-goes';
import { momentWords } from '@/app/staff/_components/moments';
import { OrderChart } from '@/app/staff/_components/order-chart';
import { FindingCards } from '@/app/staff/_components/finding-cards';
import { StateTag } from '@/app/staff/_components/state-tag';
import '@/app/staff/_components/counter.css';
import { can } from '@/lib/access';
import { capital } from '@/lib/forms';
import { hasStop } from '@/lib/rules';
import type { StaffOrder } from '@/lib/workflows/read-order';
import { AnimalFacts } from './animal-facts';
import { InstructionTable } from './instruction-table';
import { MoneyFacts } from './money-facts';
import { NextSteps, Way } from './next-steps';
import { openOrder } from './open-order';
import { OrderForms } from './order-forms';
import { PackedTable } from './packed-table';
import { QuestionForm } from './question-form';

export const metadata = { title: null };

/** One order at a glance, and what may be done with it now. */
export default async function OrderPage({ params, searchParams }: PageProps<'/staff/orders/[number]'>) {
  const { staff, order } = await openOrder((await params).number, 'order.read');
  const { done, sheet } = await searchParams;
  const { assessment, questions, shop, hunter, planView } = order;
  const open = questions.filter((question) => question.answeredAt === null);
  const answered = questions.filter((question) => question.answeredAt !== null);
  const standing = isClosed(order) ? [] : assessment.findings;
  // What has been asked of the hunter stands among the questions.
  const asked = new Set(open.map((question) => question.findingKey));
  const findings = standing.filter((finding) => !asked.has(finding.key));
  const forShop = findings.filter((finding) => finding.whom === 'shop');
  const stops = findings.filter((finding) => finding.whom === 'hunter' && finding.severity === 'stop');
  const others = findings.filter((finding) => finding.whom === 'hunter' && finding.severity !== 'stop');
  const title = `${order.numberText} ${hunter.name}`;
  const said = doneWords(done, { open: open.length, forShop: forShop.filter((finding) => finding.severity !== 'note').length });
  const printed = typeof sheet === 'string' && /^\d{1,3}$/.test(sheet) ? Number(sheet) : null;

  return (
    <main className="page wide order" id="main">
      <header className="order-header">
        <Link className="back" href="/staff">
          All orders
        </Link>
        <div className="row apart">
          <OrderNumber number={order.numberText} big />
          <span className="row tags">
            <StateTag state={order.state} words={order.stateWords} />
            {open.length > 0 && <span className="tag stop">{open.length === 1 ? 'question open' : `${open.length} questions open`}</span>}
          </span>
        </div>
        <h1>
          {hunter.name} <span className="animal">{order.animalWords}</span>
        </h1>
        <p className="row">
          <a className="button quiet call" href={`tel:${hunter.phone.replace(/[^+\d]/g, '')}`}>
            Call {hunter.phone}
          </a>
          {hunter.email !== '' && (
            <a className="button quiet" href={`mailto:${encodeURIComponent(hunter.email)}`}>
              {hunter.email}
            </a>
          )}
        </p>
      </header>

      {said && (
        <p className={done === 'unchanged' ? 'notice' : 'notice good'} role="status">
          {said}
        </p>
      )}
      {printed !== null && printed < order.instructionVersion && (
        <div className="notice stop" role="alert">
          <p>
            The sheet you scanned is version {printed}. The instructions are version {order.instructionVersion} now: throw that sheet away and print it again.
          </p>
          <p>
            <a className="button" href={`/staff/orders/${order.number}/sheet.pdf`} target="_blank">
              Print version {order.instructionVersion}
            </a>
          </p>
        </div>
      )}

      <OrderForms order={{ number: order.number, version: order.version }} title={title}>
        <section className="panel raised" aria-label="What comes next">
          {order.state === 'cancelled' ? <p>This order was cancelled.</p> : <Way state={order.state} />}
          <NextSteps order={order} staff={staff} isBlocked={hasStop(findings) || open.length > 0} />
          {order.handover && (
            <p>
              Collected by <b>{order.handover.collectedBy}</b>, {momentWords(order.handover.at, shop)}; handed over by {order.handover.by}.
            </p>
          )}
        </section>

        <FindingCards findings={stops} />
        {forShop.length > 0 && (
          <section className="stack" aria-labelledby="for-shop">
            <h2 id="for-shop">For the shop</h2>
            <FindingCards findings={forShop} />
          </section>
        )}

        <div className="split">
          <div className="stack">
            {open.length > 0 && (
              <section className="stack" aria-labelledby="questions">
                <h2 id="questions">{open.length === 1 ? 'One question is open' : `${open.length} questions are open`}</h2>
                {open.map((question) => {
                  // The animal may have been weighed since it was asked: what stands now is said.
                  const now = standing.find((finding) => finding.key === question.findingKey);
                  return (
                    <FindingCard key={question.id} severity={now?.severity ?? 'ask'} title={now?.title} message={now?.message ?? question.message} ruleId={question.ruleId}>
                      <div className="question">
                        {can(staff, 'order.answer') && <QuestionForm question={question} />}
                        <p className="quiet-text">Asked {momentWords(question.askedAt, shop)}. The hunter can answer on their own page.</p>
                      </div>
                    </FindingCard>
                  );
                })}
              </section>
            )}

            <section className="section" aria-labelledby="instructions">
              <div className="row apart">
                <h2 id="instructions">How it is cut</h2>
                <span className="tag">version {order.instructionVersion}</span>
              </div>
              <InstructionTable order={order} />
            </section>

            {others.length > 0 && (
              <section className="section" aria-labelledby="findings">
                <h2 id="findings">Worth knowing</h2>
                <FindingCards findings={others} />
              </section>
            )}

            <section className="section" aria-labelledby="chart">
              <h2 id="chart">Part by part</h2>
              <OrderChart parts={planView.parts} />
            </section>

            {order.weighings.length > 0 ? (
              <section className="section" aria-labelledby="gave">
                <h2 id="gave">What it gave</h2>
                <PackedTable order={order} />
              </section>
            ) : (
              <section className="section" aria-labelledby="yield">
                <h2 id="yield">What it should give</h2>
                <ul className="ranges">
                  {[planView.packedTotal, ...planView.pools].map((row) => (
                    <li key={row.key}>
                      <RangeBar
                        label={capital(row.label)}
                        low={row.range.low}
                        likely={row.range.likely}
                        high={row.range.high}
                        max={planView.packedTotal.range.high}
                        text={row.text}
                      />
                    </li>
                  ))}
                </ul>
                {order.went && <WhereItGoesFigure {...order.went} />}
              </section>
            )}
          </div>

          <aside className="stack">
            <section className="section" aria-labelledby="animal">
              <h2 id="animal">The animal</h2>
              <AnimalFacts order={order} />
            </section>
            <MoneyFacts order={order} />
            {answered.length > 0 && (
              <section className="section" aria-labelledby="answers">
                <h2 id="answers">Answered</h2>
                <dl className="facts wide-terms">
                  {answered.map((question) => (
                    <div key={question.id}>
                      <dt>{question.message}</dt>
                      <dd>
                        <b>{question.answer}</b>
                        {question.answeredAt && `, ${momentWords(question.answeredAt, shop)}`}
                      </dd>
                    </div>
                  ))}
                </dl>
              </section>
            )}
            <section className="section" aria-labelledby="versions">
              <h2 id="versions">Versions</h2>
              <ol className="timeline">
                {order.versions.map((version) => (
                  <li key={version.number}>
                    <b>Version {version.number}</b>, {version.reason}
                    <br />
                    <span className="quiet-text">
                      {version.by}, {momentWords(version.at, shop)}
                    </span>
                  </li>
                ))}
              </ol>
            </section>
            <section className="section" aria-labelledby="history">
              <h2 id="history">What happened</h2>
              <ol className="timeline">
                {order.timeline.toReversed().map((entry) => (
                  <li key={`${entry.at.getTime()} ${entry.words}`}>
                    <b>{entry.words}</b>
                    <br />
                    <span className="quiet-text">
                      {entry.who}, {momentWords(entry.at, shop)}
                    </span>
                  </li>
                ))}
              </ol>
            </section>
          </aside>
        </div>
      </OrderForms>
    </main>
  );
}

/** Of an order that is over, nothing can be mended. */
function isClosed({ state }: Pick<StaffOrder, 'state'>): boolean {
  return state === 'collected' || state === 'cancelled';
}

function doneWords(done: string | string[] | undefined, { open, forShop }: { readonly open: number; readonly forShop: number }): string | null {
  const shop = forShop === 0 ? '' : forShop === 1 ? ' One thing is for the shop to settle.' : ` ${forShop} things are for the shop to settle.`;
  const goes = open === 0 ? 'Nothing has to be asked.' : open === 1 ? 'One question goes to the hunter.' : `${open} questions go to the hunter.`;
  switch (done) {
    case 'received':
      return `Taken in. ${goes}${shop}`;
    case 'weighed':
      return `Weighed on the rail. ${goes}${shop}`;
    case 'hold':
      return 'On hold: the knife stays down until the hold is lifted.';
    case 'free':
      return 'The hold is lifted.';
    case 'start-cutting':
      return 'On the bench.';
    case 'cancel':
      return 'The order is cancelled.';
    case 'answered':
      return `Answered. ${open === 0 ? 'No question is open.' : goes}`;
    case 'changed':
      return `The cuts are changed. ${goes}${shop}`;
    case 'unchanged':
      return 'Nothing was different, so nothing was changed. The order stands as it did.';
    case 'packed':
      return `The weights are saved.${shop}`;
    case 'released':
      return 'Handed over. The order is closed.';
    default:
      return null;
  }
}
