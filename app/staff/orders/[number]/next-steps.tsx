import { type StaffActor, can } from '@/lib/access';
import { type OrderState, hasSheet, isChangeable } from '@/lib/orders';
import type { StaffOrder } from '@/lib/workflows/read-order';
import { HoldForm, StepForm } from './step-form';

const WAY: readonly { readonly state: OrderState; readonly words: string }[] = [
  { state: 'booked', words: 'booked' },
  { state: 'received', words: 'received' },
  { state: 'hanging', words: 'hanging' },
  { state: 'on-the-bench', words: 'on the bench' },
  { state: 'packed', words: 'packed' },
  { state: 'ready', words: 'ready' },
  { state: 'collected', words: 'collected' },
];

/** How far along the animal is. A hold stands where the animal hangs. */
export function Way({ state }: { readonly state: OrderState }) {
  const at = WAY.findIndex((stop) => stop.state === (state === 'on-hold' ? 'hanging' : state));
  return (
    <ol className="steps" aria-label="How far along">
      {WAY.map(({ state: stop, words }, index) => (
        <li key={stop} className={index < at || state === 'collected' ? 'done' : undefined} aria-current={index === at && state !== 'collected' ? 'step' : undefined}>
          {words}
        </li>
      ))}
    </ol>
  );
}

type NextStepsProps = {
  readonly order: StaffOrder;
  readonly staff: StaffActor;
  /** Whether a stop stands or a question is open: the knife is then not the way on. */
  readonly isBlocked: boolean;
};

/** The buttons for what may be done now, by this person: the way on first, then what else. */
export function NextSteps({ order, staff, isBlocked }: NextStepsProps) {
  const { state, steps, number, invoice } = order;
  const here = `/staff/orders/${number}`;
  const may = (step: (typeof steps)[number]): boolean => steps.includes(step);
  const receives = can(staff, 'order.receive');
  const stands = state === 'received' || state === 'hanging' || state === 'on-hold';
  const due = invoice !== null && invoice.dueMinor > 0;
  const primary = 'button primary';

  return (
    <div className="next-steps">
      {may('receive') && receives && (
        <a className={primary} href={`${here}/receive`}>
          Take it in
        </a>
      )}
      {may('hang') && receives && (
        <a className={primary} href={`${here}/hang`}>
          Weigh on the rail
        </a>
      )}
      {may('free') && receives && <StepForm step="free" text="Lift the hold" look={primary} />}
      {may('start-cutting') && can(staff, 'bench.start') && (
        <StepForm step="start-cutting" text="Start cutting" look={state === 'hanging' && !isBlocked ? primary : 'button'} />
      )}
      {may('pack') && can(staff, 'pack.weigh') && (
        <a className={primary} href={`${here}/pack`}>
          Weigh and pack
        </a>
      )}
      {may('bill') && can(staff, 'invoice.issue') && (
        <a className={primary} href={`${here}/bill`}>
          Make the invoice
        </a>
      )}
      {due && can(staff, 'payment.take') && (
        <a className={primary} href={`${here}/bill#pay`}>
          Take the payment
        </a>
      )}
      {may('hand-over') && !due && can(staff, 'order.release') && (
        <a className={primary} href={`${here}/release`}>
          Hand it over
        </a>
      )}
      {may('hand-over') && due && <p className="quiet-text">It is handed over once the rest is paid.</p>}
      {hasSheet(state) && can(staff, 'sheet.print') && (
        <a className="button" href={`${here}/sheet.pdf`} target="_blank">
          Print the sheet
        </a>
      )}
      {invoice && can(staff, 'prices.read') && (
        <a className="button" href={`${here}/invoice.pdf`} target="_blank">
          Print the invoice
        </a>
      )}
      {state === 'packed' && can(staff, 'pack.weigh') && !invoice && (
        <a className="button" href={`${here}/pack`}>
          Correct the weights
        </a>
      )}
      {isChangeable(state) && can(staff, 'order.write') && (
        <a className="button" href={`${here}/change`}>
          Change the cuts
        </a>
      )}
      {stands && receives && state !== 'received' && (
        <a className="button" href={`${here}/hang`}>
          {order.hangingGrams === null ? 'Weigh on the rail' : 'Weigh again'}
        </a>
      )}
      {stands && receives && (
        <a className="button" href={`${here}/receive`}>
          Correct what came in
        </a>
      )}
      {may('hold') && receives && (
        <details className="cancel">
          <summary className="button">Put on hold</summary>
          <p>The knife stays down until the hold is lifted.</p>
          <HoldForm />
        </details>
      )}
      {may('cancel') && can(staff, 'order.write') && (
        <details className="cancel">
          <summary className="button quiet">Cancel the order</summary>
          <p>The animal will not be taken in. The order stays in the book and cannot be opened again.</p>
          <StepForm step="cancel" text="Cancel it for good" look="button stop" />
        </details>
      )}
    </div>
  );
}
