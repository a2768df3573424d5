import Link from 'next/link';
import { redirect } from 'next/navigation';
import { OrderNumber } from '@/app/_components/order-number';
import { requireStaff } from '@/lib/auth/current-staff';
import { ORDER_STATES, type OrderState, hasSheet, stateWords } from '@/lib/orders';
import { shopSettings } from '@/lib/workflows/shop-settings';
import { findOrders } from '@/lib/workflows/find-orders';
import { can } from '@/lib/access';
import { agoWords, dayWords } from './_components/moments';
import { StateTag } from './_components/state-tag';
import './_components/counter.css';

export const metadata = { title: null };

type View = OrderState | 'open';

/** The lists whose sheets are printed of a morning. */
const PRINTED: readonly View[] = ['received', 'hanging', 'on-the-bench'];

const CLOSED: readonly OrderState[] = ['collected', 'cancelled'];

/** The orders of the day: find one, or see what stands where. */
export default async function DayPage({ searchParams }: PageProps<'/staff'>) {
  const staff = await requireStaff('order.find');
  const asked = await searchParams;
  const text = one(asked.find).trim();
  const view = viewOf(one(asked.state));
  const page = Math.max(1, Number(/^\d{1,5}$/.exec(one(asked.page))?.[0] ?? 1));
  const [found, shop] = await Promise.all([
    findOrders(staff, { ...(text !== '' && { text }), ...(text === '' && { state: view }), page }),
    shopSettings(),
  ]);
  if (found.exact) {
    const stale = found.staleSheet ? `?sheet=${found.staleSheet.printed}` : '';
    redirect(`/staff/orders/${found.exact}${stale}`);
  }
  const now = new Date();
  const isFinding = text !== '';
  const pageHref = (to: number): string =>
    `/staff?${new URLSearchParams({ ...(isFinding ? { find: text } : { state: view }), page: String(to) }).toString()}`;

  const toPrint = found.rows.filter((row) => hasSheet(row.state)).map((row) => row.number);
  const isPrinted = can(staff, 'sheet.print') && (isFinding ? toPrint.length > 1 : toPrint.length > 0 && PRINTED.includes(view));

  return (
    <main className="page wide day" id="main">
      <header className="row apart">
        <h1>Orders</h1>
        {can(staff, 'order.write') && (
          <Link className="button plain" href="/order">
            Book a walk-in
          </Link>
        )}
      </header>

      <form className="find" action="/staff" role="search">
        <label htmlFor="find">
          Find an order <span className="hint">Number, name, phone or tag; or scan the sheet</span>
        </label>
        <div className="find-box">
          <input
            id="find"
            name="find"
            type="search"
            defaultValue={text}
            autoComplete="off"
            autoCapitalize="none"
            spellCheck={false}
            enterKeyHint="search"
            maxLength={80}
            // The first thing the counter does here is to type or scan a number.
            // oxlint-disable-next-line jsx-a11y/no-autofocus
            autoFocus
          />
          <button className="button primary">Find</button>
        </div>
      </form>

      {found.message && (
        <p className="notice stop" role="alert">
          {found.message}
        </p>
      )}

      {isFinding ? (
        <p className="row apart" role="status">
          <span>
            <b>{countWords(found.total)}</b> for “{text}”
          </span>
          <Link className="button quiet" href="/staff">
            Show all open orders
          </Link>
        </p>
      ) : (
        <nav className="states" aria-label="By state">
          <ul>
            {(['open', ...ORDER_STATES] as const).map((state) => (
              <li key={state}>
                <a href={state === 'open' ? '/staff' : `/staff?state=${state}`} aria-current={state === view ? 'page' : undefined}>
                  <span>{state === 'open' ? 'all open' : stateWords(state)}</span>
                  <b className="number">{state === 'open' ? openCount(found.counts) : found.counts[state]}</b>
                </a>
              </li>
            ))}
          </ul>
        </nav>
      )}

      {isPrinted && (
        <p>
          <a className="button" href={`/staff/sheets.pdf?numbers=${toPrint.join(',')}`} target="_blank">
            Print the sheets of this list
          </a>
        </p>
      )}

      {found.rows.length === 0 ? (
        <p className="empty">{isFinding ? 'No order goes by that. Try the name alone, or the last digits of the phone number.' : emptyWords(view)}</p>
      ) : (
        <table className="stacks orders" role="table">
          <caption className="visually-hidden">
            {isFinding ? `Orders found for ${text}` : view === 'open' ? 'Open orders, oldest first' : `Orders that are ${stateWords(view)}`}
          </caption>
          <thead role="rowgroup">
            <tr role="row">
              <th role="columnheader" scope="col">
                Number
              </th>
              <th role="columnheader" scope="col">
                State
              </th>
              <th role="columnheader" scope="col">
                Hunter
              </th>
              <th role="columnheader" scope="col">
                Animal
              </th>
              <th role="columnheader" scope="col" className="num">
                Weight
              </th>
              <th role="columnheader" scope="col">
                Booked
              </th>
            </tr>
          </thead>
          <tbody role="rowgroup">
            {found.rows.map((row) => (
              <tr role="row" key={row.number}>
                <th role="rowheader" scope="row">
                  <a href={`/staff/orders/${row.number}`}>
                    <OrderNumber number={row.numberText} />
                  </a>
                </th>
                <td role="cell" className="where">
                  <span className="row tags">
                    <StateTag state={row.state} words={row.stateWords} />
                    {row.openQuestions > 0 && <span className="tag stop">{questionWords(row.openQuestions)}</span>}
                  </span>
                </td>
                <td role="cell" className="who">
                  <b>{row.hunterName}</b>
                </td>
                <td role="cell" className="wide">
                  {row.animalWords}
                </td>
                <td role="cell" className="num nowrap" data-label="Weight">
                  {row.weightText || 'not weighed'}
                </td>
                <td role="cell" data-label="Booked">
                  <span>
                    {dayWords(row.createdAt, shop, now)}, <span className="nowrap">{agoWords(row.createdAt, shop, now)}</span>
                  </span>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}

      {found.pages > 1 && (
        <nav className="pager" aria-label="Pages">
          {page > 1 ? (
            <a className="button" href={pageHref(page - 1)} rel="prev">
              Earlier in the list
            </a>
          ) : (
            <span />
          )}
          <span>
            Page {page} of {found.pages}
          </span>
          {page < found.pages ? (
            <a className="button" href={pageHref(page + 1)} rel="next">
              Further in the list
            </a>
          ) : (
            <span />
          )}
        </nav>
      )}
      <title>{`${isFinding ? `Orders for ${text}` : 'Orders'} · Gambrel`}</title>
    </main>
  );
}

function one(value: string | string[] | undefined): string {
  return (Array.isArray(value) ? value[0] : value) ?? '';
}

function viewOf(text: string): View {
  return ORDER_STATES.find((state) => state === text) ?? 'open';
}

function openCount(counts: Readonly<Record<OrderState, number>>): number {
  return ORDER_STATES.filter((state) => !CLOSED.includes(state)).reduce((sum, state) => sum + counts[state], 0);
}

function countWords(total: number): string {
  return total === 1 ? '1 order' : `${total} orders`;
}

function questionWords(open: number): string {
  return open === 1 ? 'question open' : `${open} questions open`;
}

function emptyWords(view: View): string {
  return view === 'open' ? 'No order is open. Hunters book on the order page, or you book a walk-in.' : `No order is ${stateWords(view)}.`;
}
