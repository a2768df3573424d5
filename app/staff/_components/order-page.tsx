import type { ReactNode } from 'react';
import { OrderNumber } from '@/app/_components/order-number';
import type { StaffOrder } from '@/lib/workflows/read-order';
import { StateTag } from './state-tag';
import './counter.css';

type OrderPageProps = {
  readonly order: Pick<StaffOrder, 'number' | 'numberText' | 'hunter' | 'animalWords' | 'state' | 'stateWords'>;
  /** What is done on this page: 'Take it in'. */
  readonly task: string;
  /** Whether a form on the page writes its title, so that it can say "Error:". */
  readonly hasForm: boolean;
  readonly children: ReactNode;
};

/** A page for one task on one order: which animal it is stands on top, so that nobody works on the wrong one. */
export function OrderPage({ order, task, hasForm, children }: OrderPageProps) {
  return (
    <main className="page wide" id="main">
      <header className="order-header">
        <a className="back" href={`/staff/orders/${order.number}`}>
          Back to the order
        </a>
        <div className="order-line">
          <h1>{task}</h1>
          <p className="order-line">
            <OrderNumber number={order.numberText} />
            <b>{order.hunter.name}</b>
            <span>{order.animalWords}</span>
            <StateTag state={order.state} words={order.stateWords} />
          </p>
        </div>
      </header>
      {children}
      {!hasForm && <title>{`${task} · ${order.numberText} · Gambrel`}</title>}
    </main>
  );
}
