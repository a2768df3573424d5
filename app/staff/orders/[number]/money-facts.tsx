import { formatMoney } from '@/lib/units';
import type { StaffOrder } from '@/lib/workflows/read-order';
import { Fact } from './instruction-table';

/** What it comes to: the estimate, the bill on the weights, or the invoice with what is still due. Nothing for who may not read prices. */
export function MoneyFacts({ order }: { readonly order: StaffOrder }) {
  const { bill, invoice, shop, number } = order;
  if (!bill) return null;
  const money = (minor: number): string => formatMoney(minor, bill.currency, shop.locale);
  return (
    <section className="section" aria-labelledby="money">
      <h2 id="money">Money</h2>
      <dl className="facts">
        {invoice ? (
          <>
            <Fact name={invoice.title}>{money(invoice.totalMinor)}</Fact>
            <Fact name="Paid">{money(invoice.paidMinor)}</Fact>
            <Fact name="Due">
              <b>{money(invoice.dueMinor)}</b>
            </Fact>
          </>
        ) : (
          <Fact name={order.weighings.length > 0 ? 'On the weights' : 'Estimate'}>
            <b>{money(bill.totalMinor)}</b>
          </Fact>
        )}
      </dl>
      <p>
        <a className="button quiet flush" href={`/staff/orders/${number}/bill`}>
          {invoice ? 'Invoice and payments' : 'Every line of it'}
        </a>
      </p>
    </section>
  );
}
