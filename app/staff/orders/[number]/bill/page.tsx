import { DoneNotice } from '@/app/_components/done-notice';
import { BillTable } from '@/app/staff/_components/bill-table';
import { FindingCards } from '@/app/staff/_components/finding-cards';
import { momentWords } from '@/app/staff/_components/moments';
import { OrderPage } from '@/app/staff/_components/order-page';
import { can } from '@/lib/access';
import { makeFormKey } from '@/lib/auth/order-link';
import { capital, figureText } from '@/lib/forms';
import { hasStop } from '@/lib/rules';
import { formatMoney, minorDigits } from '@/lib/units';
import { openOrder } from '../open-order';
import { IssueForm } from './issue-form';
import { PaymentForm } from './payment-form';

export const metadata = { title: null };

/** The bill of one animal: before it is issued, and with its payments after. */
export default async function BillPage({ params, searchParams }: PageProps<'/staff/orders/[number]/bill'>) {
  const { staff, order } = await openOrder((await params).number, 'prices.read', 'billing');
  const { bill, invoice, shop } = order;
  if (!bill) throw new Error(`Order ${order.number} has no bill for who may read prices`);
  const { done } = await searchParams;
  const money = (minor: number): string => formatMoney(minor, bill.currency, shop.locale);
  const digits = minorDigits(bill.currency);
  const task = invoice ? invoice.title : order.state === 'packed' ? 'Make the invoice' : 'Estimate';
  const title = `${task} · ${order.numberText}`;
  const key = { number: order.number, version: order.version };
  const [unpriced] = bill.unpriced;
  const issues = !invoice && order.state === 'packed' && can(staff, 'invoice.issue');
  const findings = issues ? order.assessment.findings : [];
  const mayIssue = issues && unpriced === undefined && !hasStop(findings);
  const mayPay = invoice !== null && invoice.dueMinor > 0 && can(staff, 'payment.take');

  return (
    <OrderPage order={order} task={task} hasForm={mayIssue || mayPay}>
      <DoneNotice
        done={done}
        words={{
          issued: `${invoice?.title ?? 'The invoice'} is issued. The animal is ready to collect.`,
          paid: invoice && invoice.dueMinor > 0 ? `Payment saved. ${money(invoice.dueMinor)} is still due.` : 'Payment saved. The invoice is paid.',
        }}
      />
      <div className="split">
        <div className="stack">
          {!invoice && order.state !== 'packed' && (
            <p className="notice">{order.weighings.length > 0 ? 'On the weights so far.' : 'An estimate on the likely forecast. It becomes a bill once the meat is packed and weighed.'}</p>
          )}
          <BillTable bill={bill} locale={shop.locale} />
          {order.weighings.length > 0 && !invoice && (
            <p>
              <a className="button quiet" href={`/staff/orders/${order.number}/pack`}>
                Look at the weights
              </a>
            </p>
          )}
        </div>

        <div className="stack">
          {issues && (
            <section className="panel raised" aria-labelledby="issue">
              <h2 id="issue">Issue it</h2>
              <FindingCards findings={findings} />
              {unpriced && (
                <p className="notice stop">
                  The price list has no price for {unpriced.id.replaceAll('-', ' ')}. The owner adds it under Prices; the invoice can be issued then.
                </p>
              )}
              {mayIssue && <IssueForm order={key} title={title} total={money(bill.totalMinor)} />}
            </section>
          )}

          {invoice && (
            <section className="panel raised" id="pay" aria-labelledby="balance">
              <h2 id="balance">{invoice.dueMinor > 0 ? 'Still due' : 'Paid'}</h2>
              <p className="due number">{money(invoice.dueMinor > 0 ? invoice.dueMinor : invoice.paidMinor)}</p>
              {invoice.payments.length > 0 && (
                <dl className="facts">
                  {invoice.payments.map((payment) => (
                    <div key={`${payment.at.getTime()} ${payment.amountMinor}`}>
                      <dt>
                        {capital(payment.label)}, {momentWords(payment.at, shop)}
                      </dt>
                      <dd>
                        <b>{money(payment.amountMinor)}</b>, taken by {payment.by}
                      </dd>
                    </div>
                  ))}
                </dl>
              )}
              {mayPay && (
                <PaymentForm
                  // A payment that was taken leaves a new form behind, with a key of its own.
                  key={invoice.paidMinor}
                  order={key}
                  title={title}
                  formKey={makeFormKey()}
                  due={figureText(invoice.dueMinor, { scale: digits, least: digits, locale: shop.locale })}
                  currency={bill.currency}
                  country={shop.nameCountry}
                />
              )}
              <div className="buttons">
                {invoice.dueMinor <= 0 && order.steps.includes('hand-over') && can(staff, 'order.release') && (
                  <a className="button primary" href={`/staff/orders/${order.number}/release`}>
                    Hand it over
                  </a>
                )}
                <a className="button plain" href={`/staff/orders/${order.number}/invoice.pdf`} target="_blank">
                  Print the invoice
                </a>
              </div>
            </section>
          )}
        </div>
      </div>
    </OrderPage>
  );
}
