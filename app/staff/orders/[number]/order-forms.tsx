'use client';

import { createContext, useContext, type ReactNode } from 'react';
import { ErrorSummary } from '@/app/_components/error-summary';
import { useKeptForm } from '@/app/_components/kept-form';
import { orderAction } from './actions';

type OrderKey = { readonly number: string; readonly version: number };
type OrderFormsWorld = ReturnType<typeof useKeptForm> & { readonly order: OrderKey };

const World = createContext<OrderFormsWorld | null>(null);

type OrderFormsProps = { readonly order: OrderKey; readonly title: string; readonly children: ReactNode };

/** The forms of the order's own page have one answer between them: what was refused stands on top, and in the title. */
export function OrderForms({ order, title, children }: OrderFormsProps) {
  const kept = useKeptForm(orderAction);
  const { formErrors, fieldErrors } = kept.answer;
  const errors = [...formErrors.map((message) => ({ message })), ...Object.entries(fieldErrors).map(([id, message]) => ({ id, message }))];
  return (
    <World value={{ ...kept, order }}>
      <title>{`${errors.length > 0 ? 'Error: ' : ''}${title} · Gambrel`}</title>
      <ErrorSummary errors={errors} />
      {children}
    </World>
  );
}

/** One of the forms: what it is about goes along, and the answer of the last one sent is at hand. */
export function OrderPageForm({ className, children }: { readonly className: string; readonly children: (world: Pick<OrderFormsWorld, 'answer' | 'pending'>) => ReactNode }) {
  const world = useContext(World);
  if (!world) throw new Error('A form of the order page stands outside of it');
  const { answer, pending, form, order } = world;
  return (
    <form {...form} className={className} aria-busy={pending}>
      <input type="hidden" name="number" value={order.number} />
      <input type="hidden" name="baseVersion" value={order.version} />
      {children({ answer, pending })}
    </form>
  );
}
