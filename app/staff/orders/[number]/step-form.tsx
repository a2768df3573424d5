'use client';

import type { OrderStep } from '@/lib/orders';
import { ActionForm } from '@/app/staff/_components/action-form';
import { takeStepAction } from './actions';

type StepFormProps = {
  readonly order: { readonly number: string; readonly version: number };
  readonly title: string;
  readonly step: OrderStep;
  readonly text: string;
  readonly look?: string;
};

/** One step that asks nothing: a button of its own. */
export function StepForm({ order, title, step, text, look = 'button' }: StepFormProps) {
  return (
    <ActionForm action={takeStepAction} order={order} title={title} className="step">
      {(_, pending) => (
        <button className={look} name="step" value={step} disabled={pending}>
          {text}
        </button>
      )}
    </ActionForm>
  );
}
