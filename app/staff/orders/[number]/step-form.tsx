'use client';

import type { OrderStep } from '@/lib/orders';
import { OrderPageForm } from './order-forms';

type StepFormProps = { readonly step: OrderStep; readonly text: string; readonly look?: string };

/** One step that asks nothing: a button of its own. */
export function StepForm({ step, text, look = 'button' }: StepFormProps) {
  return (
    <OrderPageForm className="step">
      {({ pending }) => (
        <button className={look} name="step" value={step} disabled={pending}>
          {text}
        </button>
      )}
    </OrderPageForm>
  );
}
